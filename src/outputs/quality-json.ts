import type { TextMeasure } from '../core/measure/measures.ts';
import type { PassageMeasure } from '../core/measure/passage-measures.ts';
import { isWithheld } from './quality-figures.ts';
import { picturesOf } from './quality.ts';
import type { OutputInput, QualityRow, QualityView } from './views.ts';

/**
 * `quality.json`: all that the pages about quality show, as raw figures for other programs.
 *
 *   { format: 1, library, estimates: a sentence on what they are, totals: { packs, keptOff, languages, stops, familyWords,
 *     pictures: { described, all }, withFindings, byLevel: { stop, warn, note }, byCode: [{ code, byLevel }],
 *     coverage: [{ language, byGrade }] },
 *     packs: [{ title, slug, language, version, reviewed, file, page, number, id, facets, minutes, stops,
 *       pictures, measures: { family, children, passage? }, findings: [{ code, level, file, line, column, facts }] }] }
 *
 * `page` is the family page, relative to this file. `number` and `id` say on which page of the list the pack stands, and
 * where on it. `file` is relative to the content folder. Of each text: words,
 * sentences, syllables, `wordsPerSentence`, words of the longest sentence, `longWords` (how many different ones), the
 * formula and its raw figure (null where none fits), and the lines of the sentences that cost most. The facts of findings
 * about privacy are null. No text of a pack's sentences is in it. A raw figure has decimals that mean nothing; show a band, as the pages do.
 */
export function qualityJson({ library, pages }: Pick<OutputInput, 'library' | 'pages'>): string {
  const views = pages.flatMap(({ view, language }) => (view.kind === 'quality' && language === library.language ? [view] : []));
  const [first] = views;
  const head = {
    format: 1,
    library: library.name,
    estimates: 'Readability figures are estimates from the length of words and sentences. They place no child and no book.',
    totals: first?.totals,
  };
  const packs = views.flatMap((view) => view.rows.map((row) => JSON.stringify(packOf(row, view))));
  return `${JSON.stringify(head, null, 2).replace(/\n\}$/, '')},\n  "packs": [\n${packs.join(',\n')}\n  ]\n}\n`;
}

function packOf({ shown, findings, id, facets }: QualityRow, view: QualityView): object {
  const { pack, urls } = shown;
  return {
    title: pack.title,
    slug: pack.slug,
    language: pack.language,
    version: pack.by.version,
    reviewed: pack.by.reviewed,
    file: pack.file,
    page: urls.family,
    number: view.number,
    id,
    facets,
    minutes: pack.for.minutes,
    stops: pack.stops.length,
    pictures: picturesOf(shown),
    measures: { family: figuresOf(pack.measures.family), children: figuresOf(pack.measures.children), ...(pack.measures.passage && { passage: passageFigures(pack.measures.passage) }) },
    findings: findings.map(({ code, level, place, facts }) => ({ code, level, ...place, facts: isWithheld(code) ? null : facts })),
  };
}

/** Counts alone: words of the passage, and where they stand, stay on the maker's machine. */
function passageFigures({ words, sentences, wordsPerSentence, longestSentence, estimate, copied }: PassageMeasure): object {
  return { words, sentences, wordsPerSentence: rounded(wordsPerSentence), longest: longestSentence, estimate: estimate.kind, copied: { words: copied.words, share: rounded(copied.share) } };
}

function figuresOf({ words, sentences, syllables, wordsPerSentence, longest, longWords, estimate, figure, costliest, leftOut }: TextMeasure): object {
  return {
    words,
    sentences,
    syllables,
    wordsPerSentence: rounded(wordsPerSentence),
    longest: longest?.words ?? 0,
    longWords: longWords.length,
    formula: 'formula' in estimate ? estimate.formula : null,
    figure: figure === undefined ? null : rounded(figure),
    estimate: estimate.kind,
    costliest: costliest.map(({ line, cost }) => ({ line, cost: rounded(cost) })),
    leftOut,
  };
}

function rounded(figure: number): number {
  return Math.round(figure * 1000) / 1000;
}
