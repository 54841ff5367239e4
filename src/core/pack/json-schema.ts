import { toJsonSchema } from '@valibot/to-json-schema';
import { packSchema } from './schema.ts';

/** The shape of a pack's front matter as JSON Schema (draft 2020-12 unless the converter says otherwise), for editors and other programs. */
export function packJsonSchema(): string {
  const schema = toJsonSchema(packSchema, { errorMode: 'ignore', typeMode: 'input' });
  return `${JSON.stringify({ ...schema, title: 'Front matter of a companion pack' }, null, 2)}\n`;
}
