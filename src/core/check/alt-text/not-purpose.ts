import type { AltRule } from './alt-context.ts';

/** Where a picture is all that a link holds, its alt text says where the link goes, not what the picture looks like. Source: WCAG 2.2, 2.4.4; technique G94. */
const looks = [
  /^(?:an? |the )?(?:[\p{L}-]+ ){0,2}(?:icon|arrow|button|logo|symbol)s?(?: (?:to|pointing|facing|of|for|with|on)(?!\p{L}).{0,40})?$/iu,
  /^(?:una? |el |la |los |las )?(?:icono|flecha|botón|logo|símbolo)s?(?: .{0,40})?$/iu,
  /^(?:an? |the |una? |la |el )?(?:image|picture|imagen|dibujo|foto)$/iu,
] as const;
const press = /^(?:click|tap|press|touch|haz|haga|pulsa|pulse|toca|toque|pincha|pinche)(?!\p{L})(?! the| la| el)/iu;
const nowhere = /^(?:a )?(?:link|here|go|more|read more|enlace|aquí|más|leer más|ver más|ir)$/iu;

export const notPurpose: AltRule<'alt-text/not-purpose'> = {
  code: 'alt-text/not-purpose',
  level: 'warn',
  look: (alt) => {
    if (alt.use !== 'link') return undefined;
    const bare = alt.text.replace(/[.!…]+$/u, '');
    return press.test(bare) || nowhere.test(bare) || looks.some((each) => each.test(bare)) ? { found: alt.text.slice(0, 60) } : undefined;
  },
};
