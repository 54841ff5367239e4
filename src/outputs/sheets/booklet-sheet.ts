import type { Stop, Way } from '../../core/pack/pack.ts';
import { packUrls } from '../addresses.ts';
import { rulingOf, type Ruling } from './ruling.ts';
import { faceOf, type SheetFace } from './faces.ts';
import { sheetBase, sheetPicture, type Line, type Sheet, type SheetData, type SheetInput, type SheetPicture } from './sheet.ts';

/** The child's booklet: it asks and gives room; an answer is never on it. */
export interface BookletData extends SheetData {
  readonly kind: string;
  readonly book: string;
  readonly by: string;
  readonly picture: SheetPicture | undefined;
  readonly labels: Readonly<Record<'name' | 'frames' | 'bank' | 'ruled' | 'box' | 'tell', string>>;
  readonly ruling: Ruling;
  readonly stops: readonly BookletStop[];
  readonly rating: BookletRating | undefined;
  readonly bestOf: BookletBestOf | undefined;
  readonly end: string;
}

export interface BookletStop {
  readonly number: string;
  readonly place: string;
  readonly ask: string;
  readonly answer: string;
  readonly frames: readonly string[];
  readonly words: readonly BankWord[];
  readonly picture: SheetPicture | undefined;
  readonly draw: boolean;
  readonly write: boolean;
}

/** A word to borrow, and a face where it names a feeling and there is one. */
export interface BankWord {
  readonly word: string;
  readonly face: SheetFace | undefined;
}

export interface BookletRating {
  readonly label: string;
  readonly ask: string;
  readonly how: string;
  readonly stars: number;
  readonly row: string;
  /** What one star and what all of them mean. */
  readonly ends: readonly [string, string];
  readonly because: string;
  readonly reasons: Line;
}

/** A choice among a few books: each question with the same books, to draw a ring around one. */
export interface BookletBestOf {
  readonly label: string;
  readonly how: string;
  readonly asks: readonly string[];
  readonly books: readonly string[];
}

/** Widths in pixels of what is printed: a cover of 120 mm, a picture beside a question of 60 mm. */
const coverPixels = 960;
const stopPixels = 480;

/** The booklet, or undefined when there is nothing to answer. */
export function bookletSheet(input: SheetInput): Sheet<BookletData> | undefined {
  const { shown, say, library } = input;
  const { pack } = shown;
  if (pack.stops.length === 0 && !pack.rating && !pack.bestOf) return undefined;
  const ruling = rulingOf(pack);
  const { bestOf } = pack;
  const cover = shown.pictures.find((picture) => !picture.decorative);
  return {
    kind: 'booklet',
    url: `${packUrls(pack.slug, pack.language, library.language).family}booklet.pdf`,
    data: {
      ...sheetBase(input, 'booklet'),
      kind: say.booklet.kind,
      book: pack.book.title,
      by: say.book.by(pack.book.author, pack.book.illustrator),
      picture: sheetPicture(cover, coverPixels, say),
      labels: { name: say.booklet.name, frames: say.booklet.frames, bank: say.booklet.bank, ruled: say.paper.booklet.ruled(ruling.lines), box: say.paper.booklet.box, tell: say.paper.booklet.tell },
      ruling,
      stops: pack.stops.map((stop, index) => stopOf(stop, index + 1, input)),
      rating: ratingOf(input),
      bestOf: bestOf && { label: say.booklet.file.kinds.chosen, how: say.booklet.ratingNote, asks: [bestOf.ask, ...(bestOf.last === undefined ? [] : [bestOf.last])], books: bestOf.books },
      end: say.booklet.end,
    },
  };
}

function stopOf(stop: Stop, number: number, { shown, say }: SheetInput): BookletStop {
  const { pack } = shown;
  const ways: readonly Way[] = stop.or === undefined || stop.or === stop.answer ? [stop.answer] : [stop.answer, stop.or];
  const picture = stop.at.picture === 'shown' ? shown.pictures.find((each) => each.stop === stop.id) : undefined;
  return {
    number: String(number),
    place: say.booklet.open(stop.at.opening),
    ask: stop.ask,
    answer: say.booklet.answer(say.booklet.or(ways.map((way) => say.ways[way]))),
    frames: stop.frames ?? [],
    words: (stop.words ?? []).map((word) => ({ word, face: faceOf(word, pack, say) })),
    picture: sheetPicture(picture, stopPixels, say),
    draw: ways.includes('draw'),
    write: ways.includes('write'),
  };
}

function ratingOf({ shown, say }: SheetInput): BookletRating | undefined {
  const { rating } = shown.pack;
  if (!rating) return undefined;
  const words = say.booklet.starWords;
  return {
    label: say.booklet.rating,
    ask: rating.ask,
    how: say.paper.booklet.stars,
    stars: rating.outOf,
    row: say.paper.booklet.starRow(rating.outOf),
    ends: [`${say.paper.booklet.one}: ${words[0] ?? ''}`, `${say.paper.booklet.all}: ${words.at(-1) ?? ''}`],
    because: say.paper.booklet.because,
    reasons: { label: say.booklet.reasons, text: (rating.reasons ?? []).join(' · ') },
  };
}
