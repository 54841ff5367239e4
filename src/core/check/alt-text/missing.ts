import type { AltRule } from './alt-context.ts';

/**
 * Every picture has an alt text, or says that it is only an ornament. An empty alt is never taken as a decision.
 * Source: WCAG 2.2, success criterion 1.1.1 Non-text Content (A); F65.
 */
export const missing: AltRule<'alt-text/missing'> = {
  code: 'alt-text/missing',
  level: 'stop',
  look: (alt) => (alt.decorative !== true && alt.text === '' ? {} : undefined),
};
