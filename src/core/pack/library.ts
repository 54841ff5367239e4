import * as v from 'valibot';
import { finding, stops, type Finding, type Outcome, type Place } from '../finding.ts';
import { fitToSchema } from './as-schema.ts';
import { durationsSchema, paceSchema } from './durations.ts';
import { readFrontMatter } from './front-matter.ts';
import { logoFindings } from './logo.ts';
import { ownParts } from './own-parts.ts';
import { placeOf, type Fields, type PictureFile, type Step } from './pack.ts';
import { camelKeys } from './camel-keys.ts';
import { sourcesSchema } from './library-sources.ts';
import { strangeCharacters } from './strange-characters.ts';
import { soundTheme, themeSchema } from './theme.ts';

/** What `content/library.yaml` says about the whole library. */
const librarySchema = v.object({
  name: v.pipe(v.string(), v.nonEmpty(), v.maxLength(80)),
  /** The name by language, where it differs; the plain `name` otherwise. */
  names: v.optional(v.record(v.string(), v.string())),
  welcome: v.optional(v.record(v.string(), v.pipe(v.string(), v.maxLength(300)))),
  language: v.pipe(v.string(), v.regex(/^[a-z]{2,3}$/)),
  languages: v.pipe(v.array(v.pipe(v.string(), v.regex(/^[a-z]{2,3}$/))), v.maxLength(40)),
  contact: v.pipe(v.string(), v.maxLength(200)),
  rights: v.pipe(v.string(), v.maxLength(300)),
  address: v.optional(v.pipe(v.string(), v.url(), v.startsWith('http'))),
  /** Where a visitor can see the packs' files, if they lie in the open: an address in which {file} and {line} stand for both. */
  files: v.optional(v.pipe(v.string(), v.regex(/^https?:\/\/\S*\{file\}\S*$/), v.maxLength(300), v.examples(['https://code.example/library/content/{file}#L{line}']))),
  /** Folders of others: schools' own checkouts or shares. */
  sources: sourcesSchema,
  pace: paceSchema,
  durations: durationsSchema,
  theme: themeSchema,
  /** Parts of pages that come from files of the library's own, `layouts/<part>.tsx`. What is not named here is not run. */
  layouts: v.optional(v.array(v.picklist(ownParts))),
  /** Packs of one book that all stay, by the names of their folders: somebody has looked at them, and nobody has to be asked again. */
  'both stay': v.optional(v.pipe(v.array(v.pipe(v.array(v.pipe(v.string(), v.maxLength(120))), v.minLength(2), v.maxLength(40))), v.maxLength(2000))),
  /** A line at the head of every page and one at its foot, by language. */
  'head note': v.optional(v.record(v.string(), v.pipe(v.string(), v.maxLength(200)))),
  'foot note': v.optional(v.record(v.string(), v.pipe(v.string(), v.maxLength(300)))),
  /** What the sheets are printed on. What stands on them fits both. */
  paper: v.optional(v.picklist(['letter', 'a4'])),
});

export type Library = Fields<v.InferOutput<typeof librarySchema>>;

export interface ReadLibrary extends Outcome<Library> {
  /** Where in the file a value stands. */
  readonly placeOf: (...steps: readonly Step[]) => Place;
}

/**
 * The library's settings; a library without the file, or with a faulty one, gets the defaults and the findings.
 *
 * @param pictures The pictures that lie beside the file, among which its logo is.
 */
export function readLibrary(text: string | undefined, file: string, pictures: readonly PictureFile[] = []): ReadLibrary {
  const atTop = () => ({ file, line: 1, column: 1 });
  if (text === undefined) return { value: defaultLibrary, findings: [], placeOf: atTop };
  const findings: Finding[] = [];
  const plain = text
    .replace(/^\ufeff/, '')
    .replace(/\r\n?/g, '\n')
    .trimEnd();
  const strange = strangeCharacters(plain, file);
  const front = readFrontMatter(`---\n${plain}\n---\n`, file);
  // The file has no line of dashes of its own, so each place stands one line lower than in the file.
  const raise = (found: Finding): Finding => ({ ...found, place: { ...found.place, line: Math.max(1, found.place.line - 1) } });
  // A feed that holds such a character is no XML any more, so the library does without its own words.
  if (!front.value || strange.length > 0 || stops(front.findings)) return { value: undefined, findings: [...strange, ...front.findings.map(raise)], placeOf: atTop };
  const { raw, places } = front.value;
  const fitted = fitToSchema(raw, librarySchema, (...steps) => placeOf({ file, places }, ...steps), places, findings);
  if (fitted.value === undefined) return { value: undefined, findings: [...front.findings, ...findings].map(raise), placeOf: atTop };
  const library = camelKeys(fitted.value as v.InferOutput<typeof librarySchema>);
  if (!library.languages.includes(library.language)) {
    findings.push(finding('pack/not-a-choice', 'stop', placeOf({ file, places }, 'language'), { field: 'language', found: library.language, choices: library.languages }));
  }
  const sound = soundTheme(library.theme ?? {}, (field) => placeOf({ file, places }, 'theme', field));
  const logo = library.theme?.logo;
  const ofLogo = logo === undefined ? [] : logoFindings(logo, library.languages, pictures, (field) => placeOf({ file, places }, 'theme', 'logo', field));
  const value = library.theme === undefined ? library : { ...library, theme: { ...sound.theme, logo: ofLogo.length === 0 ? logo : undefined } };
  const fromTop = ({ line, ...place }: Place): Place => ({ ...place, line: Math.max(1, line - 1) });
  return { value, findings: [...front.findings, ...findings, ...sound.findings, ...ofLogo].map(raise), placeOf: (...steps) => fromTop(placeOf({ file, places: fitted.places }, ...steps)) };
}

export const defaultLibrary: Library = {
  name: 'A library of read-alouds',
  language: 'en',
  languages: ['en'],
  contact: 'Ask the person who gave you this address.',
  rights: 'Each companion names its own licence.',
};
