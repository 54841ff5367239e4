import { finding, type Finding } from '../finding.ts';
import type { Library } from '../pack/library.ts';
import { meantBy, namesOf } from '../pack/lineage.ts';
import { placeOf, type Pack } from '../pack/pack.ts';
import type { RetiredPack } from '../pack/retired.ts';

/** What only shows when the whole library is seen together: a parent that is not here, and a retired pack that leads nowhere. */
export function lineageOf(packs: readonly Pack[], retired: readonly RetiredPack[], { address }: Pick<Library, 'address'>): readonly Finding[] {
  const living = new Set(packs.map(({ slug }) => slug));
  const names = namesOf([...packs.map(({ slug, title, by }) => ({ slug, title, maker: by.name })), ...retired.map(({ slug, title }) => ({ slug, title, maker: undefined }))], address);
  const findings: Finding[] = [];
  for (const pack of packs) {
    const named = pack.by.basedOn;
    const meant = named === undefined ? undefined : meantBy(named, pack.owner?.prefix, names);
    if (named !== undefined && meant?.kind === 'missing') {
      const { suggestion } = meant;
      findings.push(finding('by/parent-missing', 'warn', placeOf(pack, 'by', 'based on'), { named, ...(suggestion !== undefined && { suggestion }) }));
    }
  }
  for (const pack of retired) {
    const named = pack.retired.instead;
    if (named === undefined) continue;
    const meant = meantBy(named, pack.owner?.prefix, names);
    const why =
      meant.kind === 'words' || meant.kind === 'missing' ? 'missing' : meant.kind === 'elsewhere' ? undefined : meant.slug === pack.slug ? 'itself' : living.has(meant.slug) ? undefined : 'retired';
    const suggestion = meant.kind === 'missing' ? meant.suggestion : undefined;
    if (why !== undefined) findings.push(finding('retired/instead', 'warn', placeOf(pack, 'retired', 'instead'), { named, why, ...(suggestion !== undefined && { suggestion }) }));
  }
  return findings;
}
