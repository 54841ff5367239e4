import type { Finding, Level } from '../core/finding.ts';
import { grades } from '../core/pack/schema.ts';
import { kindOf, type QualityTotals } from './quality-figures.ts';
import type { QualityRow, ShownPack } from './views.ts';

/** What the page and the file about quality are made of: a row for each pack, and the totals of the library. */

/** The row of one pack. */
export function qualityRow(shown: ShownPack, findings: readonly Finding[]): QualityRow {
  const { language, slug } = shown.pack;
  const codes = findings.map((each) => (each.code === 'more/of-the-same' ? each.facts.code : each.code));
  return {
    shown,
    findings,
    id: `pack-${slug}-${language}`,
    facets: { language, grades: shown.pack.for.grades, levels: [...new Set(findings.map((each) => each.level))], kinds: [...new Set(codes.map(kindOf))] },
  };
}

/** Pictures that carry meaning, and how many of them are described. */
export function picturesOf({ pictures }: ShownPack): { readonly described: number; readonly all: number } {
  const carrying = pictures.filter((picture) => !picture.decorative);
  return { described: carrying.filter((picture) => picture.alt !== '').length, all: carrying.length };
}

/** The sums over all rows. Findings of one cause that were only counted are counted here as well. */
export function qualityTotals(rows: readonly QualityRow[], keptOff: number): QualityTotals {
  const byCode = new Map<string, Record<Level, number>>();
  const byLevel = { stop: 0, warn: 0, note: 0 };
  for (const found of rows.flatMap((row) => row.findings)) {
    const [code, times] = found.code === 'more/of-the-same' ? [found.facts.code, found.facts.more] : [found.code, 1];
    const counts = byCode.get(code) ?? { stop: 0, warn: 0, note: 0 };
    byCode.set(code, counts);
    counts[found.level] += times;
    byLevel[found.level] += times;
  }
  const sum = (of: (row: QualityRow) => number) => rows.reduce((total, row) => total + of(row), 0);
  const languages = [...new Set(rows.map((row) => row.facets.language))].sort();
  return {
    packs: rows.length,
    keptOff,
    languages,
    stops: sum((row) => row.shown.pack.stops.length),
    familyWords: sum((row) => row.shown.pack.measures.family.words),
    pictures: { described: sum((row) => picturesOf(row.shown).described), all: sum((row) => picturesOf(row.shown).all) },
    withFindings: sum((row) => (row.findings.length > 0 ? 1 : 0)),
    byLevel,
    byCode: [...byCode].map(([code, counts]) => ({ code, byLevel: counts })).sort((a, b) => (a.code < b.code ? -1 : 1)),
    coverage: languages.map((language) => ({
      language,
      byGrade: Object.fromEntries(grades.map((grade) => [grade, rows.filter((row) => row.facets.language === language && row.facets.grades.includes(grade)).length])),
    })),
  };
}
