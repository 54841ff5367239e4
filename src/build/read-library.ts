import { checkPack } from '../core/check/check-pack.ts';
import { versionsOf } from '../core/check/versions.ts';
import type { Finding } from '../core/finding.ts';
import { measurePassage } from '../core/measure/measure-passage.ts';
import { measurePack } from '../core/measure/measure-pack.ts';
import { defaultLibrary, readLibrary, type Library } from '../core/pack/library.ts';
import { readPassage } from '../core/measure/passage-text.ts';
import type { Source } from '../core/pack/pack.ts';
import { readPack } from '../core/pack/read-pack.ts';
import { planLesson } from '../core/plan/plan-lesson.ts';
import type { PlannedPack } from '../core/plan/plan.ts';
import { readContent, type Content } from './read-content.ts';

/** A pack as far as it came, with what was told about it on the way. */
export interface Told {
  readonly source: Source;
  readonly pack: PlannedPack | undefined;
  readonly findings: readonly Finding[];
}

/** The stages that only look: every pack read, checked, measured and planned, and all findings. `today` is the day that dates are held against. */
export async function readWholeLibrary(
  folder: string,
  today = new Date().toISOString().slice(0, 10),
): Promise<{ content: Content; library: Library; told: readonly Told[]; findings: readonly Finding[] }> {
  const content = await readContent(folder);
  const read = readLibrary(content.library, 'library.yaml');
  const library = read.value ?? defaultLibrary;
  const each = content.sources.map((source) => throughStages(source, library, today));
  const told = withVersions(each, library);
  return { content, library, told, findings: [...content.findings, ...read.findings, ...told.flatMap((one) => one.findings)] };
}

function throughStages(source: Source, library: Library, today: string): Told {
  const read = readPack(source);
  if (!read.value) return { source, pack: undefined, findings: read.findings };
  const checked = checkPack(read.value, { roster: source.roster ?? [], today, contact: library.contact, passage: textOfPassage(source, read.value.language) });
  const passage = measurePassage(checked.value, source);
  const measured = measurePack(checked.value, passage.value);
  const planned = planLesson(measured.value, library);
  return { source, pack: planned.value, findings: [...read.findings, ...checked.findings, ...passage.findings, ...measured.findings, ...planned.findings] };
}

/** The book's own words, so that checks can count between cues. */
function textOfPassage({ passage }: Source, language: string): string | undefined {
  return passage === undefined
    ? undefined
    : readPassage(passage, language)
        .blocks.map(({ text }) => text)
        .join('\n\n');
}

/** Findings that need all of a book's packs at once: two in one language, or one in a language that the library does not have. */
function withVersions(told: readonly Told[], library: Library): readonly Told[] {
  const extra = versionsOf(
    told.flatMap((each) => each.pack ?? []),
    library,
  );
  return told.map((each) => ({ ...each, findings: [...each.findings, ...extra.filter((found) => found.place.file === each.source.file)] }));
}
