import type { AltRule } from './alt-context.ts';

/** A link that holds an ornament and nothing else has no name. Source: WCAG 2.2, 2.4.4 and 4.1.2; F89. */
export const linkWithoutWords: AltRule<'alt-text/link-without-words'> = {
  code: 'alt-text/link-without-words',
  level: 'stop',
  look: (alt) => (alt.decorative === true && alt.use === 'link' && alt.text === '' ? {} : undefined),
};
