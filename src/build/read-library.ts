import { versionsOf } from '../core/check/versions.ts';
import type { Finding } from '../core/finding.ts';
import type { Library } from '../core/pack/library.ts';
import { throughStages, type Told } from '../outputs/through-stages.ts';
import { readContent, type Content } from './read-content.ts';

/** The stages that only look: every pack read, checked, measured and planned, and all findings. `today` is the day that dates are held against. */
export async function readWholeLibrary(
  folder: string,
  today = new Date().toISOString().slice(0, 10),
): Promise<{ content: Content; library: Library; told: readonly Told[]; findings: readonly Finding[] }> {
  const content = await readContent(folder);
  const { library } = content;
  const each = content.sources.map((source) => throughStages(source, library, today));
  const told = withVersions(each, library);
  return { content, library, told, findings: [...content.findings, ...told.flatMap((one) => one.findings)] };
}

/** Findings that need all of a book's packs at once: two in one language, or one in a language that the library does not have. */
function withVersions(told: readonly Told[], library: Library): readonly Told[] {
  const extra = versionsOf(
    told.flatMap((each) => each.pack ?? []),
    library,
  );
  return told.map((each) => ({ ...each, findings: [...each.findings, ...extra.filter((found) => found.place.file === each.source.file)] }));
}
