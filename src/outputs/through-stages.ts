import { checkRetired } from '../core/check/check-retired.ts';
import { checkPack } from '../core/check/check-pack.ts';
import type { Finding } from '../core/finding.ts';
import { measurePack } from '../core/measure/measure-pack.ts';
import { measurePassage } from '../core/measure/measure-passage.ts';
import { readPassage } from '../core/measure/passage-text.ts';
import type { Library } from '../core/pack/library.ts';
import type { Pack, Source } from '../core/pack/pack.ts';
import { readRetired, type RetiredPack } from '../core/pack/retired.ts';
import { readPack } from '../core/pack/read-pack.ts';
import { planLesson } from '../core/plan/plan-lesson.ts';
import type { PlannedPack } from '../core/plan/plan.ts';

/** A pack as far as it came, with what was told about it on the way. */
export interface Told {
  readonly source: Source;
  readonly pack: PlannedPack | undefined;
  /** In the place of a pack, where it was taken out of the library. */
  readonly retired?: RetiredPack;
  readonly findings: readonly Finding[];
}

/**
 * What is left of a companion that was taken out by a day; nothing for one that is in use. It is asked for first: nothing else of such a file is read.
 *
 * @param today The day of the build.
 */
export function throughRetirement(source: Source, library: Library, today: string): Told | undefined {
  const read = readRetired(source, today);
  if (!read) return undefined;
  const { value, findings } = read;
  if (!value) return { source, pack: undefined, findings };
  const checked = checkRetired(value, { roster: source.roster ?? [], today, contact: contactsOf(library, value) });
  return { source, pack: undefined, retired: value, findings: [...findings, ...checked] };
}

/** The stages that only look: read, check, measure, plan. The build and the form that makes packs go through this one way, so they say and count the same. Without a day nothing is told of dates. */
export function throughStages(source: Source, library: Library, today: string | undefined): Told {
  const read = readPack(source);
  if (!read.value) return { source, pack: undefined, findings: read.findings };
  const looked = afterReading(read.value, source, library, today);
  return { source, pack: looked.pack, findings: [...read.findings, ...looked.findings] };
}

/** Whom the library names as to be asked, and the owner of the folder: both are meant to be public. */
function contactsOf({ contact }: Library, { owner }: Pick<Pack, 'owner'>): string {
  return [contact, owner?.contact ?? ''].join(' ').trim();
}

/** The same for a pack that has been read. */
export function afterReading(pack: Pack, source: Source, library: Library, today: string | undefined): { readonly pack: PlannedPack; readonly findings: readonly Finding[] } {
  const checked = checkPack(pack, { roster: source.roster ?? [], today, contact: contactsOf(library, pack), passage: textOfPassage(source, pack.language) });
  const passage = measurePassage(checked.value, source);
  const measured = measurePack(checked.value, passage.value);
  const planned = planLesson(measured.value, library);
  return { pack: planned.value, findings: [...checked.findings, ...passage.findings, ...measured.findings, ...planned.findings] };
}

/** The book's own words, so that checks can count between cues. */
function textOfPassage({ passage }: Source, language: string): string | undefined {
  return passage === undefined
    ? undefined
    : readPassage(passage, language)
        .blocks.map(({ text }) => text)
        .join('\n\n');
}
