import { finding, type Finding } from '../finding.ts';
import { placeOf, type Pack } from '../pack/pack.ts';
import { foundIn, languageOf, plain, sentencesOf } from './plain-words.ts';

/** What can only be done with the book open: to look at its pictures, turn its pages, read from it. A picture that a child draws or likes is none of that. */
const needsBook = {
  en: /\blook (?:closely |again )?(?:at|on|for \w+ \w+ in) (?:the|this|that|these|each) (?:first |last |next )?(?:pictures?|pages?|cover|drawings?|illustrations?|book)\b|\bturn (?:to|back to|the) (?:the )?(?:first |last |next )?pages?\b|\b(?:on|at|to) (?:opening|page) \d|\b(?:re-?read|read (?:again )?)\s*(?:the|this|that|each) (?:\w+ )?(?:line|page|part|book|sentence|words)\b|\bopen the book\b|\bpoint to (?:the|a|each|every) (?:picture|word|page|letter|line)s?\b|\b(?:find|point to|show me|count|see|spot)\b[^.?!]{0,60}? (?:in|on) the (?:first |last |next )?(?:book|pictures?|page|cover)\b/u,
  es: /\b(?:mir(?:a|e|en|emos)|observ(?:a|e|en)|fijate en|fijense en) (?:bien |otra vez )?(?:el|la|los|las|este|esta|cada) (?:dibujos?|imagen|imagenes|ilustracion|ilustraciones|paginas?|portada|libro)\b|\b(?:abr(?:e|a|an)) el libro\b|\b(?:pas(?:a|e|en)|ve|ir|vaya|vayan|vuelv(?:e|a|an)) (?:a |de )?(?:la )?pagina\b|\ben la (?:doble )?pagina \d|\b(?:le(?:e|a|an|amos)|releer?|relee|vuelv(?:e|a|an) a leer) (?:el|la|esta|este|cada) (?:ultim[oa] |primer[oa]? )?(?:linea|pagina|parte|libro|frase|palabra)\b|\bseñal(?:a|e|en) (?:el|la|los|las|cada) (?:dibujo|imagen|palabra|pagina|letra)s?\b|\b(?:busc(?:a|ar)|busqu(?:e|en)|encuentr(?:a|e|en)|señal(?:a|e|en)|cuent(?:a|e|en)|ves|ven|vemos)\b[^.?!]{0,60}? en (?:el|la|los|las) (?:ultima |primera )?(?:libro|dibujos?|pagina|imagen|imagenes|portada)\b/u,
};
/** A sentence that is for those who have the book, and leaves the others nothing to miss. */
const onlyIf = { en: /\bif (?:you|they) (?:have|own|can borrow|borrow)|\bif the book is\b/u, es: /\bsi (?:tien(?:e|es|en)|hay|consigu\w+)\b/u };

/** Home prompts work without the book: the child tells the story. Common practice, no source. */
export function* homeWithoutBook(pack: Pack): Iterable<Finding> {
  const language = languageOf(pack);
  if (language === undefined) return;
  for (const [index, prompt] of (pack.home?.prompts ?? []).entries()) {
    for (const sentence of sentencesOf(prompt)) {
      const words = onlyIf[language].test(plain(sentence)) ? undefined : foundIn(sentence, needsBook[language]);
      if (words === undefined) continue;
      yield finding('home/needs-the-book', 'warn', placeOf(pack, 'home', 'prompts', index), { words });
      break;
    }
  }
}

/** Question, answer, and the answer said back with a little more. Common practice, no source; that one example helps more than principles leans on Huebner & Meltzoff 2005. */
const linesOfExample = 3;

/** The example for families is a short exchange: three lines, or four where the child has the last word. */
export function* homeExample(pack: Pack): Iterable<Finding> {
  const found = pack.home?.example?.length;
  if (found === undefined || found === 0 || pack.partial) return;
  if (found < linesOfExample || found > linesOfExample + 1) yield finding('home/example-length', 'note', placeOf(pack, 'home', 'example'), { found, wanted: linesOfExample });
}
