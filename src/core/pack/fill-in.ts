import { fitToSchema } from './as-schema.ts';
import { everyField, formFields, type FormField } from './form-fields.ts';
import type { Raw } from './front-matter.ts';
import { packSchema, type FrontMatter } from './schema.ts';

/** What stands in a text that is still missing, so that somebody who looks at the page sees a gap. */
export const gap = '…';

/**
 * The front matter of a pack under way as if it were whole: what must be there and is not gets a gap, so that the rest can be
 * planned and looked at. Undefined where something that must be there is there and cannot be read.
 */
export function filledIn(raw: Raw, language: string): FrontMatter | undefined {
  if (typeof raw !== 'object' || Array.isArray(raw)) return undefined;
  const whole = filledGroup(raw as Readonly<Record<string, Raw>>, formFields, [], language);
  return fitToSchema(whole, packSchema, () => ({ file: '', line: 1, column: 1 }), {}, []).value as FrontMatter | undefined;
}

/** Every path of a field that has to be there, for whoever asks whether one that is missing matters. */
export const neededPaths: ReadonlySet<string> = new Set(
  everyField(formFields)
    .filter((field) => field.required && field.name !== '')
    .map((field) => field.path),
);

type Position = readonly number[];

function filledGroup(group: Readonly<Record<string, Raw>>, fields: readonly FormField[], position: Position, language: string): Raw {
  return Object.fromEntries(
    fields.flatMap((field): readonly (readonly [string, Raw])[] => {
      const value = Object.hasOwn(group, field.name) ? group[field.name] : undefined;
      if (value !== undefined && value !== '') return [[field.name, filled(value, field, position, language)]];
      return field.required ? [[field.name, inPlaceOf(field, position, language)]] : [];
    }),
  );
}

function filled(value: Raw, field: FormField, position: Position, language: string): Raw {
  if (field.kind === 'group' && isGroup(value)) return filledGroup(value, field.fields ?? [], position, language);
  if (field.kind === 'list' && isList(value)) {
    const { item } = field;
    return item ? value.flatMap((each, index) => (each === '' ? [] : [filled(each, item, [...position, index], language)])) : value;
  }
  return value;
}

/** A value for a field that must be there. A place in the book that nobody has said is its first opening. */
function inPlaceOf(field: FormField, position: Position, language: string): Raw {
  const number = String((position.at(-1) ?? 0) + 1);
  switch (field.kind) {
    case 'group':
      return filledGroup({}, field.fields ?? [], position, language);
    case 'list':
      return [];
    case 'choice':
      return field.choices?.[0] ?? gap;
    case 'whole number':
    case 'number':
      return field.name === 'reading' ? number : String(field.least ?? 1);
    default:
      return field.name === 'id' ? `stop-${number}` : field.name === 'language' ? language : field.name === 'file' ? `${gap}.jpg` : gap;
  }
}

function isGroup(value: Raw): value is Readonly<Record<string, Raw>> {
  return typeof value === 'object' && !Array.isArray(value);
}

function isList(value: Raw): value is readonly Raw[] {
  return Array.isArray(value);
}
