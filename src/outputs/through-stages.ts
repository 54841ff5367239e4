import { checkPack } from '../core/check/check-pack.ts';
import type { Finding } from '../core/finding.ts';
import { measurePack } from '../core/measure/measure-pack.ts';
import { measurePassage } from '../core/measure/measure-passage.ts';
import { readPassage } from '../core/measure/passage-text.ts';
import type { Library } from '../core/pack/library.ts';
import type { Pack, Source } from '../core/pack/pack.ts';
import { readPack } from '../core/pack/read-pack.ts';
import { planLesson } from '../core/plan/plan-lesson.ts';
import type { PlannedPack } from '../core/plan/plan.ts';

/** A pack as far as it came, with what was told about it on the way. */
export interface Told {
  readonly source: Source;
  readonly pack: PlannedPack | undefined;
  readonly findings: readonly Finding[];
}

/** The stages that only look: read, check, measure, plan. The build and the form that makes packs go through this one way, so they say and count the same. Without a day nothing is told of dates. */
export function throughStages(source: Source, library: Library, today: string | undefined): Told {
  const read = readPack(source);
  if (!read.value) return { source, pack: undefined, findings: read.findings };
  const looked = afterReading(read.value, source, library, today);
  return { source, pack: looked.pack, findings: [...read.findings, ...looked.findings] };
}

/** The same for a pack that has been read. */
export function afterReading(pack: Pack, source: Source, library: Library, today: string | undefined): { readonly pack: PlannedPack; readonly findings: readonly Finding[] } {
  const checked = checkPack(pack, { roster: source.roster ?? [], today, contact: [library.contact, pack.owner?.contact ?? ''].join(' '), passage: textOfPassage(source, pack.language) });
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
