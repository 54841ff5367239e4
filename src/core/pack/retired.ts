import * as v from 'valibot';
import { finding, type Finding, type Outcome } from '../finding.ts';
import { fitToSchema, isGroup } from './as-schema.ts';
import { camelKeys } from './camel-keys.ts';
import { readFrontMatter } from './front-matter.ts';
import type { Owner } from './library-sources.ts';
import { placeOf, type PackFields, type Places, type Source } from './pack.ts';
import { strangeCharacters } from './strange-characters.ts';
import { packSchema } from './schema.ts';

/**
 * A companion that was taken out of the library. Of its file only the title, the language and what it says about its retirement
 * are read, so that one line retires a pack that can no longer be read, or whose text has to go.
 */
export interface RetiredPack extends Pick<PackFields, 'title' | 'language'> {
  readonly slug: string;
  readonly file: string;
  readonly places: Places;
  readonly retired: NonNullable<PackFields['retired']>;
  /** True when it had a recording, whose page had an address too. */
  readonly hadRecording: boolean;
  readonly owner?: Owner;
}

const { title, language, retired } = packSchema.entries;
const retiredSchema = v.object({ title, language, retired: retired.wrapped });

/** The retired pack of a source; nothing for a pack that is not retired, or not yet on that day. */
export function readRetired(source: Source, today: string): Outcome<RetiredPack> | undefined {
  // Asked of the text first: reading YAML is the dearest part of a build, and hardly any pack is retired.
  if (!/^retired[ \t]*:/m.test(source.text)) return undefined;
  const text = source.text.replace(/^\ufeff/, '').replace(/\r\n?/g, '\n');
  const front = readFrontMatter(text, source.file);
  const { raw, places } = front.value ?? {};
  if (!raw || !places || raw['retired'] === undefined) return undefined;
  const findings: Finding[] = [...strangeCharacters(text, source.file), ...front.findings];
  const some = Object.fromEntries(Object.keys(retiredSchema.entries).flatMap((name) => (raw[name] === undefined ? [] : [[name, raw[name]] as const])));
  const fitted = fitToSchema(some, retiredSchema, (...steps) => placeOf({ file: source.file, places }, ...steps), places, findings);
  if (fitted.value === undefined) return { value: undefined, findings };
  const fields = camelKeys(fitted.value as v.InferOutput<typeof retiredSchema>);
  if (fields.retired.on > today) return undefined;
  const hadRecording = raw['recording'] !== undefined && isGroup(raw['recording']);
  const value: RetiredPack = { ...fields, slug: source.slug, file: source.file, places: fitted.places, hadRecording, ...(source.owner && { owner: source.owner }) };
  if (source.languageOfFile !== undefined && source.languageOfFile !== fields.language) {
    findings.push(finding('pack/language-of-file', 'stop', placeOf(value, 'language'), { file: source.languageOfFile, language: fields.language }));
  }
  return { value, findings };
}
