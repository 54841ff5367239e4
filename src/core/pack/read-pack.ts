import { finding, type Finding, type Outcome } from '../finding.ts';
import { fitToSchema, isGroup } from './as-schema.ts';
import { camelKeys } from './camel-keys.ts';
import { readFrontMatter, type Raw } from './front-matter.ts';
import type { Given } from './library-sources.ts';
import { readBody } from './markdown.ts';
import { placeOf, type Pack, type Source } from './pack.ts';
import { packSchema, type FrontMatter } from './schema.ts';
import { strangeCharacters } from './strange-characters.ts';

/** First stage: the text of one pack file, understood. A mistake in it is a finding; nothing is thrown for what an author wrote. */
export function readPack(source: Source): Outcome<Pack> {
  const text = source.text.replace(/^\ufeff/, '').replace(/\r\n?/g, '\n');
  const strange = strangeCharacters(text, source.file);
  const front = readFrontMatter(text, source.file);
  const findings: Finding[] = [...strange, ...front.findings];
  if (!front.value) return { value: undefined, findings };
  const { places, body, bodyLine } = front.value;
  const raw = withGiven(front.value.raw, source.given);
  const where = (...steps: readonly (string | number)[]) => placeOf({ file: source.file, places }, ...steps);
  const fitted = fitToSchema(raw, packSchema, where, places, findings);
  // Where something else is missing, the list of pictures is there all the same.
  const read = readBody(body, bodyLine, source.file, pictureNames(fitted.value ?? raw));
  findings.push(...read.findings);
  if (fitted.value === undefined) return { value: undefined, findings };
  const fields = camelKeys<FrontMatter>(fitted.value as FrontMatter);
  const pack: Pack = {
    ...fields,
    slug: source.slug,
    file: source.file,
    body: read.body,
    places: fitted.places,
    partial: fitted.partial,
    pictureFiles: source.pictureFiles,
    recordingFiles: source.recordingFiles ?? [],
    ...(source.owner && { owner: source.owner }),
  };
  if (source.languageOfFile !== undefined && source.languageOfFile !== pack.language) {
    findings.push(finding('pack/language-of-file', 'stop', placeOf(pack, 'language'), { file: source.languageOfFile, language: pack.language }));
  }
  return { value: pack, findings };
}

function pictureNames(value: unknown): readonly string[] {
  const list = (value as { readonly pictures?: unknown }).pictures;
  const names = Array.isArray(list) ? list.map((picture: unknown) => (picture as { readonly file?: unknown } | null)?.file) : [];
  return names.filter((name) => typeof name === 'string');
}

/** The licence and the rights that the library names for a source's packs, where a pack names none. */
function withGiven(raw: Readonly<Record<string, Raw>>, given: Given | undefined): Readonly<Record<string, Raw>> {
  const filled = (group: Raw | undefined, field: string, value: string | undefined): Raw | undefined => {
    if (value === undefined || group === undefined || !isGroup(group) || (group[field] ?? '') !== '') return group;
    return { ...group, [field]: value };
  };
  if (given === undefined) return raw;
  const groups = { by: filled(raw['by'], 'licence', given.licence), book: filled(raw['book'], 'rights', given.rights) };
  return { ...raw, ...(groups.by !== undefined && { by: groups.by }), ...(groups.book !== undefined && { book: groups.book }) };
}
