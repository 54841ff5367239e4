import type { AltRule } from './alt-context.ts';

/** Where a picture is all that a link holds, its alt text says where the link goes, not what the picture looks like. Source: WCAG 2.2, 2.4.4; technique G94. */
const looks = /(?<!\p{L})(?:icons?|arrow|button|logo|image|picture|symbol|icono|flecha|botón|imagen|símbolo)(?!\p{L})/iu;
const press = /^(?:click|tap|press|touch|haz|haga|pulsa|pulse|toca|toque|pincha|pinche)(?!\p{L})(?! the| la| el)/iu;
const nowhere = /^(?:a )?(?:link|here|go|more|read more|enlace|aquí|más|leer más|ver más|ir)$/iu;
/** "Arrow icon", "the red button": a few words that only name a thing. */
const mostWords = 3;

export const notPurpose: AltRule<'alt-text/not-purpose'> = {
  code: 'alt-text/not-purpose',
  level: 'warn',
  look: (alt) => {
    if (alt.use !== 'link') return undefined;
    const bare = alt.text.replace(/[.!…]+$/u, '');
    return press.test(bare) || nowhere.test(bare) || (alt.words.length <= mostWords && looks.test(bare)) ? { found: alt.text.slice(0, 60) } : undefined;
  },
};
