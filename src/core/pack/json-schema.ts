import { toJsonSchema } from '@valibot/to-json-schema';
import { packSchema } from './schema.ts';

/** The shape of a pack's front matter as JSON Schema, draft-07, for editors and other programs. */
export function packJsonSchema(): string {
  const schema = toJsonSchema(packSchema, {
    errorMode: 'ignore',
    typeMode: 'input',
    target: 'draft-07',
    // An editor reads `grades: [1, 2]` as numbers; the pack's reader takes what was typed.
    overrideSchema: ({ jsonSchema }) => {
      const figures = (jsonSchema.enum ?? []).filter((each) => typeof each === 'string' && /^\d+$/.test(each));
      return figures.length === 0 ? undefined : { enum: [...(jsonSchema.enum ?? []), ...figures.map(Number)] };
    },
  });
  return `${JSON.stringify({ $schema: 'http://json-schema.org/draft-07/schema#', title: 'Front matter of a companion pack', ...schema }, null, 2)}\n`;
}
