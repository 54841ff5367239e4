import { finding, type Finding } from '../finding.ts';
import type { Library } from '../pack/library.ts';
import { placeOf, type Pack } from '../pack/pack.ts';

/** What only shows when a book's packs are seen together: two in one language, or one in a language that the library has no pages for. */
export function versionsOf(packs: readonly Pick<Pack, 'slug' | 'language' | 'file' | 'places'>[], library: Pick<Library, 'languages'>): readonly Finding[] {
  const findings: Finding[] = [];
  const first = new Map<string, string>();
  for (const pack of packs) {
    const at = placeOf(pack, 'language');
    if (!library.languages.includes(pack.language)) findings.push(finding('pack/unknown-language', 'stop', at, { language: pack.language }));
    const version = `${pack.slug} ${pack.language}`;
    const other = first.get(version);
    if (other === undefined) first.set(version, pack.file);
    else findings.push(finding('pack/two-of-a-language', 'stop', at, { language: pack.language, other }));
  }
  return findings;
}
