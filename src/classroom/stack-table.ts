import { bestOf, wholeBook, type Value } from '../core/booklet/booklet.ts';
import type { FileWords } from '../core/booklet/write-booklet-file.ts';
import { isJudged, type Scores } from './judging.ts';
import { answersIn, type Stack, type StackBooklet } from './stack.ts';
import type { StackPack } from '../core/pack/stack-pack.ts';

export interface TableWords {
  readonly heads: { readonly bookmark: string; readonly book: string; readonly stop: string; readonly question: string; readonly how: string; readonly words: string };
  /** Head of a colleague's column, from 1. */
  readonly colleague: (trait: string, which: number) => string;
  readonly markOf: (booklet: StackBooklet) => string;
  /** As in the booklet's own file. */
  readonly file: Pick<FileWords, 'kinds' | 'whole' | 'chosen'>;
}

/** Everything on the desk as a table: a row for each thing that was kept, with the scores of its answer on the answer's first row. Scores stand only where something is judged. */
export function stackTable(stack: Stack, pack: StackPack, scores: Scores, others: readonly Scores[], words: TableWords): readonly (readonly (string | number)[])[] {
  const traits = (pack.rubric ?? []).map(({ trait }) => trait);
  const { heads } = words;
  const rows = stack.booklets
    .filter(({ booklet }) => booklet.pack.slug === pack.slug && booklet.pack.language === pack.language)
    .flatMap((one) =>
      answersIn(one).flatMap(({ key, to, entries }) => {
        const index = pack.stops.findIndex(({ id }) => id === to);
        const stop = pack.stops[index];
        const place: readonly (string | number)[] = stop
          ? [index + 1, stop.ask]
          : to === wholeBook
            ? [words.file.whole, pack.rating?.ask ?? '']
            : to === bestOf
              ? [words.file.kinds.chosen, pack.bestOf?.ask ?? '']
              : [to, ''];
        return entries.map(({ value }, row) => [
          words.markOf(one),
          pack.title,
          ...place,
          words.file.kinds[value.kind],
          wordsOf(value, words),
          ...[scores, ...others].flatMap((each) => traits.map((trait) => (row === 0 && stop && isJudged(stop) ? (each[key]?.[trait] ?? '') : ''))),
        ]);
      }),
    );
  return [
    [heads.bookmark, heads.book, heads.stop, heads.question, heads.how, heads.words, ...traits, ...others.flatMap((_, index) => traits.map((trait) => words.colleague(trait, index + 1)))],
    ...rows,
  ];
}

/** What a cell can hold of a value: its words, or the words beside it. */
function wordsOf(value: Value, { file }: TableWords): string | number {
  switch (value.kind) {
    case 'written':
    case 'said':
    case 'acted':
    case 'because':
      return value.text;
    case 'feeling':
      return value.word;
    case 'drawing':
    case 'photo':
      return value.about;
    case 'stars':
      return value.stars;
    case 'chosen':
      return file.chosen(value.best, value.last);
    case 'voice':
    case 'passed':
    case 'cannot-tell':
      return '';
  }
}
