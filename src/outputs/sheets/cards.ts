import { languageNameIn } from '../../core/languages/about-language.ts';
import { packUrls } from '../addresses.ts';
import { faceOf, type SheetFace } from './faces.ts';
import { linesOf, sheetBase, sheetPicture, type Line, type Sheet, type SheetData, type SheetInput, type SheetPicture } from './sheet.ts';

/** Cards to cut out: the words to teach, the feelings, and for the teacher the traits of an answer. */
export interface CardsData extends SheetData {
  readonly kind: string;
  readonly book: string;
  readonly cut: string;
  readonly words: CardGroup;
  readonly feelings: CardGroup;
  readonly rubric: RubricCard | undefined;
}

interface CardGroup {
  readonly name: string;
  readonly cards: readonly Card[];
}

export interface RubricCard {
  readonly name: string;
  readonly lead: string;
  readonly heads: readonly string[];
  readonly rows: readonly (readonly string[])[];
  readonly note: string;
}

export interface Card {
  readonly word: string;
  readonly picture: SheetPicture | undefined;
  readonly face: SheetFace | undefined;
  readonly meaning: string;
  readonly lines: readonly Line[];
  readonly others: readonly { readonly language: string; readonly name: string; readonly word: string }[];
}

/** A picture on a card is about 40 mm wide. */
const cardPixels = 480;

/** The cards, or undefined when the pack has nothing for them. */
export function cardsSheet(input: SheetInput): Sheet<CardsData> | undefined {
  const { shown, say, library } = input;
  const { pack } = shown;
  const words = (pack.words ?? []).map((word): Card => {
    const picture = shown.pictures.find((each) => each.file === word.picture);
    return {
      word: word.word,
      picture: sheetPicture(picture, cardPixels, say),
      face: undefined,
      meaning: word.meaning,
      lines: linesOf([
        [say.paper.cards.situation, word.situation],
        [say.paper.cards.gesture, word.gesture],
      ]),
      others: Object.entries(word.inOtherLanguages ?? {}).map(([language, other]) => ({ language, name: languageNameIn(language, pack.language), word: other })),
    };
  });
  const feelings = (pack.feelings ?? []).map((feeling): Card => ({
    word: feeling.word,
    picture: undefined,
    face: faceOf(feeling.word, pack, say),
    meaning: '',
    lines: linesOf([[say.paper.cards.situation, feeling.situation]]),
    others: [],
  }));
  const rubric = rubricOf(input);
  if (words.length + feelings.length === 0 && !rubric) return undefined;
  return {
    kind: 'cards',
    url: `${packUrls(pack.slug, pack.language, library.language).family}cards.pdf`,
    data: {
      ...sheetBase(input, 'cards'),
      kind: say.paper.kinds.cards,
      book: pack.book.title,
      cut: say.paper.cards.cut,
      words: { name: say.lesson.words, cards: words },
      feelings: { name: say.lesson.feelings, cards: feelings },
      rubric,
    },
  };
}

function rubricOf({ shown, say }: SheetInput): RubricCard | undefined {
  const rubric = shown.pack.rubric ?? [];
  if (rubric.length === 0) return undefined;
  return {
    name: say.lesson.rubric,
    lead: say.paper.rubric.lead,
    heads: [say.lesson.trait, say.lesson.meets, say.lesson.notYet, say.lesson.example],
    rows: rubric.map((row) => [row.trait, row.meets, row.notYet, row.example ?? '']),
    note: say.lesson.rubricNote,
  };
}
