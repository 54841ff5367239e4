import { versionsOf } from '../core/check/versions.ts';
import type { Finding } from '../core/finding.ts';
import type { Library } from '../core/pack/library.ts';
import { throughStages, type Told } from '../outputs/through-stages.ts';
import type { OwnLayouts } from '../outputs/views.ts';
import { readContent, type Content } from './read-content.ts';

/** The stages that only look: every pack read, checked, measured and planned, and all findings. `today` is the day that dates are held against. */
export async function readWholeLibrary(
  folder: string,
  today = new Date().toISOString().slice(0, 10),
): Promise<{ content: Content; library: Library; own: OwnLayouts; told: readonly Told[]; findings: readonly Finding[] }> {
  const content = await readContent(folder);
  const { library } = content;
  const { own, findings: ofLayouts } = await ownLayouts(content);
  const each = content.sources.map((source) => throughStages(source, library, today));
  const told = withVersions(each, library);
  return { content, library, own, told, findings: [...content.findings, ...ofLayouts, ...told.flatMap((one) => one.findings)] };
}

/** Most libraries have none, and need nothing that makes them. */
async function ownLayouts({ library, layouts }: Content): Promise<{ readonly own: OwnLayouts; readonly findings: readonly Finding[] }> {
  if (library.layouts === undefined || library.layouts.length === 0) return { own: {}, findings: [] };
  const { readOwnLayouts } = await import('./own-layouts.ts');
  return readOwnLayouts(layouts, library);
}

/** Findings that need all of a book's packs at once: two in one language, or one in a language that the library does not have. */
function withVersions(told: readonly Told[], library: Library): readonly Told[] {
  const extra = versionsOf(
    told.flatMap((each) => each.pack ?? []),
    library,
  );
  return told.map((each) => ({ ...each, findings: [...each.findings, ...extra.filter((found) => found.place.file === each.source.file)] }));
}
