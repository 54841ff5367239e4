import { phrase } from './alt-words.ts';
import type { AltRule } from './alt-context.ts';

/**
 * One word for a whole illustration, or words that fit every book. A picture of a taught word may be one word long. Scripts that put no space
 * between words are not counted. Source: ACT rule qt1vmo (descriptive); the mark of one word is common practice.
 */
const articles = new Set('a an the un una unos unas el la los las'.split(' '));
const fitsEveryBook = (
  [
    /^(?:an?|the|one|another)? ?(?:scene|page|moment|part|spread|image|picture|illustration|(?:front |back |book )?cover|title page) (?:from|of|in|for) (?:the|this|a|our|my) (?:picture ?book|book|story|tale)$/iu,
    /^(?:the )?(?:book|front|back) cover$/iu,
    /^(?:the )?(?:main |two |three |story )?characters?(?: (?:of|from|in) (?:the|this) (?:book|story))?$/iu,
    /^(?:some|several|many|various) \p{L}+$/iu,
    /^(?:un|una|otra|la|el)? ?(?:escena|página|momento|parte|imagen|ilustración|portada|tapa|cubierta) (?:del?|de la|de este|de un) (?:libro|cuento|historia|relato|álbum)$/iu,
    /^(?:los |el )?personajes?(?: principal(?:es)?)?(?: (?:del|de la|de este) (?:libro|cuento|historia))?$/iu,
    /^(?:algun[oa]s|vari[oa]s|much[oa]s) \p{L}+$/iu,
  ] as const
).map((each) => phrase(each));
const withoutSpaces = /[\p{Script=Han}\p{Script=Hiragana}\p{Script=Katakana}\p{Script=Thai}\p{Script=Lao}\p{Script=Khmer}\p{Script=Myanmar}]/u;

export const tooVague: AltRule<'alt-text/too-vague'> = {
  code: 'alt-text/too-vague',
  level: 'warn',
  look: (alt) => {
    if (alt.use === 'word picture' || alt.use === 'link' || withoutSpaces.test(alt.text)) return undefined;
    const bare = alt.unaccented.replace(/[.!]+$/u, '');
    const telling = alt.words.filter((word) => !articles.has(word)).length;
    return telling <= 1 || fitsEveryBook.some((each) => each.test(bare)) ? { found: alt.text.slice(0, 60) } : undefined;
  },
};
