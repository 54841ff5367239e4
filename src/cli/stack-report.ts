import type { Coefficient } from '../classroom/agreement.ts';
import { compare, compareAll, type Compared } from '../classroom/compare.ts';
import { booksChosen } from '../classroom/best-of.ts';
import { feelingCounts, framesUsed, starsGiven, stopCounts } from '../classroom/counts.ts';
import { judgeables, traitCounts } from '../classroom/judging.ts';
import { packBehind, packsAnswered, type StackBooklet } from '../classroom/stack.ts';
import { enBooklet } from '../core/languages/en-booklet.ts';
import { stackInEnglish as say } from '../core/languages/en-stack.ts';
import type { ReadStack } from './read-stack.ts';

/** The counts of a folder of booklets, as data and in words. Counts only: what a child wrote is in the table (`--csv`) and nowhere else. */

export function markOf({ booklet: { bookmark }, copy }: StackBooklet): string {
  return say.mark(enBooklet.screen.bookmark(bookmark.pattern, bookmark.colour), copy);
}

type Book = ReturnType<typeof booksOf>[number];

/** Every book of the stack with all that is counted in it. */
function booksOf({ stack, first, others: all }: ReadStack) {
  const others = all.filter(({ steps }) => steps === first?.steps).map(({ scores }) => scores);
  const [second] = others;
  return packsAnswered(stack).map((name) => {
    const { pack, known } = packBehind(stack, name);
    const judged = judgeables(stack, pack, '');
    const scoring = { steps: first?.steps ?? 1, seed: '', scores: first?.scores ?? {} };
    const both = second ? compare(judged, scoring, second) : [];
    return {
      pack,
      known,
      booklets: name.booklets,
      stops: stopCounts(stack, pack),
      feelings: feelingCounts(stack, pack),
      frames: framesUsed(stack, pack),
      stars: starsGiven(stack, pack),
      chosen: booksChosen(stack, pack),
      judgeable: judged.length,
      traits: traitCounts(judged, scoring),
      people: 1 + others.length,
      together: others.length > 1 ? compareAll(judged, scoring, others) : [],
      agreement: both.filter(({ agreement }) => agreement.n > 0),
    };
  });
}

/** All of it as plain data for other programs. No answer's words are in it. */
export function figuresOf(read: ReadStack): object {
  const { files, merged, aside } = read;
  return {
    files,
    merged,
    setAside: aside,
    books: booksOf(read).map(({ pack, known, booklets, stops, feelings, frames, stars, chosen, judgeable, traits, agreement, together }) => ({
      pack: pack.slug,
      language: pack.language,
      title: pack.title,
      rubricKnown: known,
      booklets,
      stops: stops.map(({ stop, number, answered, kinds }) => ({ stop: stop.id, number, answered, kinds: Object.fromEntries(kinds.map(({ kind, children }) => [kind, children])) })),
      feelings: feelings.map(({ stop, answered, cannotTell, words }) => ({ stop: stop.id, answered, cannotTell, words: words.map(({ word, children, chose }) => ({ word, children, chose })) })),
      frames: frames.map(({ stop, wrote, ownWay, frames: used }) => ({ stop: stop.id, wrote, ownWay, frames: used })),
      stars: { outOf: stars.outOf, counts: stars.stars.counts, n: stars.stars.n, middle: stars.stars.middle ?? null, mostOften: stars.stars.mostOften },
      bestOf: chosen,
      judgeable,
      traits,
      agreement: agreement.map(lineAsData),
      together: together.map(({ trait, alpha }) => ({ trait: trait ?? 'sum', alpha })),
    })),
  };
}

function lineAsData({ trait, most, agreement }: Compared): object {
  const { n, exact, withinOne, kappa, linearKappa, quadraticKappa, alphas, talkAbout } = agreement;
  return { trait: trait ?? 'sum', most, n, exact, withinOne, kappa, linearKappa, quadraticKappa, alphas, talkAbout: talkAbout.map(({ answer, first, second }) => ({ answer, first, second })) };
}

export function stackInWords(read: ReadStack): string {
  const { stack, merged, aside } = read;
  return [say.pile.read(stack.booklets.length, merged, aside.length), ...aside.map(({ file, why }) => `  ${file}: ${why}`), ...booksOf(read).flatMap(bookInWords)].join('\n');
}

function bookInWords(book: Book): readonly string[] {
  const { pack, known, booklets, stops, feelings, frames, stars, chosen, judgeable, traits, agreement, together, people } = book;
  const { kinds } = enBooklet.file;
  return [
    '',
    say.bookOf(pack.title, booklets),
    ...(known ? [] : [`  The library here has no pack "${pack.slug}" in ${pack.language}, so there is no rubric to judge with. Name its content folder with --content.`]),
    ...stops.map(({ stop, number, answered, kinds: found }) => {
      const how = found.map(({ kind, children }) => say.counts.way(kind === 'cannot-tell' ? say.counts.couldNotTell : kinds[kind], children)).join(', ');
      return `  ${say.look.stopOf(number, stop.ask)}\n     ${say.look.answered(answered, booklets)}${how === '' ? '' : ` ${how}.`}`;
    }),
    ...(feelings.length === 0
      ? []
      : [
          `  ${say.counts.feelings}`,
          ...feelings.map(({ number, words, answered }) => `     ${say.counts.feelingsText([[number, words.map(({ word, children }) => [word, children] as const), answered]])}`),
        ]),
    ...(frames.some(({ wrote }) => wrote > 0)
      ? [
          `  ${say.counts.frames}`,
          ...frames
            .filter(({ wrote }) => wrote > 0)
            .flatMap(({ number, wrote, ownWay, frames: used }) => [
              `     ${say.counts.framesCaption(number, wrote)}`,
              ...[...used, { frame: say.counts.ownWay, children: ownWay }].map(({ frame, children }) => `       ${String(children).padStart(3)}  ${frame}`),
            ]),
        ]
      : []),
    `  ${say.counts.stars}`,
    ...starsInWords(stars),
    ...(pack.bestOf || chosen.n > 0 ? [`  ${say.counts.chosen.title}`, `     ${chosenInWords(chosen)}`] : []),
    ...(judgeable === 0 ? [] : [`  ${say.answers(judgeable)} can be judged.`]),
    ...traits.filter(({ n }) => n > 0).map(({ trait, counts, n }) => `     ${trait}: ${say.agree.ofN(counts.at(-1) ?? 0, n)}`),
    ...(agreement.length === 0
      ? []
      : [
          `  ${say.agree.result}`,
          ...agreement.map(({ trait, agreement: { n, exact, kappa, alpha } }) => `     ${trait ?? say.agree.all}: ${say.agree.ofN(exact, n)}; kappa ${told(kappa)}; alpha ${told(alpha)}`),
          ...(together.length === 0 ? [] : [`  ${say.agree.together(people)}`, ...together.map(({ trait, alpha }) => `     ${trait ?? say.agree.all}: alpha ${told(alpha)}`)]),
          `     ${say.agree.notMeans[0] ?? ''}`,
        ]),
  ];
}

function starsInWords({ stars, words }: Book['stars']): readonly string[] {
  if (stars.n === 0) return [`     ${say.counts.starsNone}`];
  return [
    ...stars.counts.map((count, index) => `     ${String(count).padStart(3)}  ${say.counts.starRow(index + 1, words[index] ?? '')}`).reverse(),
    `     ${[...(stars.middle ? [say.counts.middle(...stars.middle)] : []), say.counts.mostOften(stars.mostOften)].join(' ')}`,
  ];
}

function chosenInWords({ books, n, nLast }: Book['chosen']): string {
  if (n + nLast === 0) return say.counts.chosen.none;
  const ends = (end: 'best' | 'last') => books.map((each) => [each.book, each[end]] as const);
  return say.counts.chosen.text(ends('best'), n, ends('last'), nLast);
}

function told(coefficient: Coefficient): string {
  if (coefficient.kind === 'value') return say.agree.withN(coefficient.value.toFixed(3), coefficient.n);
  return coefficient.kind === 'too few' ? say.agree.tooFew(coefficient.n, coefficient.least) : say.agree.cannot;
}
