import * as v from 'valibot';
import { longestPictureSide, mostPicturePixels } from './picture-limits.ts';
import { finding, type Finding, type Place } from '../finding.ts';
import type { PictureFile } from './pack.ts';

/** The name of a picture that lies beside `library.yaml`, and in no folder: what a pack or a source brings can never be meant. */
const fileName = v.pipe(v.string(), v.trim(), v.maxLength(100), v.regex(/^[\p{L}\p{N}][\p{L}\p{N} ._-]*\.(?:png|jpe?g|webp)$/iu), v.examples(['logo.png']));

/** A picture before the library's name. Either its alt text by language, or that it is only decoration. */
export const logoSchema = v.optional(
  v.object({
    file: fileName,
    alt: v.optional(v.record(v.string(), v.pipe(v.string(), v.trim(), v.nonEmpty(), v.maxLength(120)))),
    decorative: v.optional(v.boolean()),
    /** Another file for screens that are dark. Without it what is see-through lies on the library's paper there. */
    'on dark': v.optional(fileName),
  }),
);

export interface LogoSettings {
  readonly file: string;
  readonly alt?: Readonly<Record<string, string>> | undefined;
  readonly decorative?: boolean | undefined;
  readonly onDark?: string | undefined;
}

/**
 * What keeps a logo off the pages. A logo with anything of it is left out whole, and the pages are built without.
 *
 * @param files The pictures that lie beside `library.yaml`.
 * @param at The place of a field of the logo.
 */
export function logoFindings(logo: LogoSettings, languages: readonly string[], files: readonly PictureFile[], at: (field: string) => Place): readonly Finding[] {
  const named = [['file', logo.file] as const, ...(logo.onDark === undefined ? [] : [['on dark', logo.onDark] as const])];
  const found = named.flatMap(([field, name]): readonly Finding[] => {
    const problem = problemOf(files.find((each) => each.name === name));
    return problem === undefined ? [] : [finding('library/logo', 'stop', at(field), { file: name, problem })];
  });
  if (logo.decorative === true) return found;
  const without = languages.filter((language) => logo.alt?.[language] === undefined);
  return without.length === 0 ? found : [...found, finding('library/logo-alt', 'stop', at('alt'), { languages: without })];
}

export type LogoProblem = 'missing' | 'format' | 'unreadable' | 'too large';

function problemOf(file: PictureFile | undefined): LogoProblem | undefined {
  if (!file) return 'missing';
  if (file.format === 'other') return 'format';
  if (file.format === 'bad' || file.width < 1 || file.height < 1) return 'unreadable';
  return Math.max(file.width, file.height) > longestPictureSide || file.width * file.height > mostPicturePixels ? 'too large' : undefined;
}
