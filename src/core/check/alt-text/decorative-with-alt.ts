import type { AltRule } from './alt-context.ts';

/** An ornament has nothing to say. Source: W3C, "An alt Decision Tree"; ACT rule 46ca7f. */
export const decorativeWithAlt: AltRule<'alt-text/decorative-with-alt'> = {
  code: 'alt-text/decorative-with-alt',
  level: 'stop',
  look: (alt) => (alt.decorative === true && alt.text !== '' ? {} : undefined),
};
