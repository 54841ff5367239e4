import { ownLanguageName } from '../../core/languages/about-language.ts';
import { phrasesFor } from '../../core/languages/pick-language.ts';
import { packUrls } from '../addresses.ts';
import { qrSvg } from '../qr-code.ts';
import { sheetBase, type Line, type Sheet, type SheetData, type SheetInput } from './sheet.ts';
import { firstSentences } from './shorten.ts';

/** One page home: what the class hears, three questions, and where there is more. */
export interface LetterData extends SheetData {
  readonly kind: string;
  readonly book: string;
  readonly labels: Readonly<Record<'date' | 'dear' | 'words' | 'from', string>>;
  readonly heard: string;
  readonly summary: string;
  readonly ten: string;
  readonly prompts: readonly string[];
  /** Where the book's pages are: an address and its square code, or words and a line to fill in. */
  readonly where: { readonly text: string; readonly address: string; readonly code: { readonly svg: string; readonly alt: string } | undefined; readonly note: string };
  /** Other languages that there is such a letter in, each told in its own. */
  readonly also: readonly { readonly language: string; readonly text: string }[];
  /** What the template leaves out first when the page is full: the whole first, then less. */
  readonly versions: readonly { readonly note: string; readonly words: readonly Line[] }[];
}

/** Questions on a letter; a family has ten minutes. */
const mostPrompts = 3;

export function letterSheet(input: SheetInput): Sheet<LetterData> {
  const { shown, say, library } = input;
  const { pack } = shown;
  const words = say.paper.letter;
  const prompts = (pack.home?.prompts ?? []).slice(0, mostPrompts);
  const taught = (pack.words ?? []).map((word) => ({ label: word.word, text: word.meaning }));
  const note = pack.home?.note ?? '';
  return {
    kind: 'letter',
    url: `${packUrls(pack.slug, pack.language, library.language).family}letter.pdf`,
    data: {
      ...sheetBase(input, 'letter'),
      kind: say.paper.kinds.letter,
      book: pack.book.title,
      labels: { date: words.date, dear: words.dear, words: words.words, from: words.from },
      heard: words.heard(pack.book.title, say.book.by(pack.book.author, pack.book.illustrator)),
      summary: pack.summary,
      ten: prompts.length > 0 ? words.ten : words.tenPlain,
      prompts,
      where: whereOf(input),
      also: alsoIn(input),
      versions: [
        { note, words: taught },
        { note, words: taught.slice(0, 5) },
        { note: firstSentences(note, 1, pack.language), words: taught.slice(0, 3) },
        { note: '', words: [] },
      ],
    },
  };
}

/** The address of the family page, when the library has one of its own. */
function whereOf({ shown, say, library }: SheetInput): LetterData['where'] {
  const words = say.paper.letter;
  if (library.address === undefined) return { text: words.noAddress, address: '', code: undefined, note: words.ask(library.contact) };
  const address = library.address.replace(/\/*$/, '/') + shown.urls.family;
  return { text: words.address, address, code: { svg: qrSvg(address), alt: words.code(address) }, note: words.codeNote };
}

function alsoIn({ shown }: SheetInput): LetterData['also'] {
  const others = shown.versions.filter((version) => version.language !== shown.pack.language);
  return others.map(({ language }) => ({ language, text: phrasesFor(language).paper.letter.also(ownLanguageName(language)) }));
}
