import { readFrontMatter, type Raw } from '../core/pack/front-matter.ts';

/** The fields as typed, for the form to show. Undefined when the file cannot be read. */
export interface Fields {
  readonly raw: Readonly<Record<string, Raw>> | undefined;
  readonly body: string;
}

export function fieldsIn(text: string): Fields {
  const front = readFrontMatter(plainLines(text), 'pack.md');
  return { raw: front.value?.raw, body: front.value?.body ?? '' };
}

/** As the reader of packs takes a text: without a mark of byte order, and with one kind of line end. */
export function plainLines(text: string): string {
  return text.replace(/^\ufeff/, '').replace(/\r\n?/g, '\n');
}
