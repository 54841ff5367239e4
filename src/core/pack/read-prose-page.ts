import * as v from 'valibot';
import type { Finding, Outcome } from '../finding.ts';
import { fitToSchema } from './as-schema.ts';
import { readFrontMatter } from './front-matter.ts';
import { strangeCharacters } from './strange-characters.ts';
import { readBody } from './markdown.ts';
import { placeOf, type Body } from './pack.ts';

const pageSchema = v.object({
  title: v.pipe(v.string(), v.nonEmpty(), v.maxLength(120)),
  description: v.pipe(v.string(), v.nonEmpty(), v.maxLength(300)),
});

/** One of the library's own pages, such as `pages/privacy.md`: a title, a description for search results, and text. */
export interface ProsePage {
  readonly title: string;
  readonly description: string;
  readonly body: Body;
}

export function readProsePage(text: string, file: string): Outcome<ProsePage> {
  const plain = text.replace(/^\ufeff/, '').replace(/\r\n?/g, '\n');
  const findings: Finding[] = [...strangeCharacters(plain, file)];
  const front = readFrontMatter(plain, file);
  if (!front.value) return { value: undefined, findings: [...findings, ...front.findings] };
  const { raw, places, body, bodyLine } = front.value;
  const fitted = fitToSchema(raw, pageSchema, (...steps) => placeOf({ file, places }, ...steps), places, findings);
  const read = readBody(body, bodyLine, file, []);
  findings.push(...front.findings, ...read.findings);
  if (fitted.value === undefined || findings.some(({ code }) => code === 'file/control-character')) return { value: undefined, findings };
  return { value: { ...(fitted.value as v.InferOutput<typeof pageSchema>), body: read.body }, findings };
}
