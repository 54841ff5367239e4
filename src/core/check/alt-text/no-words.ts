import type { AltRule } from './alt-context.ts';

/** Signs and emoji alone are read out by their Unicode names, or not at all. Source: ACT rule qt1vmo; W3C technique H86. */
export const noWords: AltRule<'alt-text/no-words'> = {
  code: 'alt-text/no-words',
  level: 'stop',
  look: (alt) => (/[\p{L}\p{N}]/u.test(alt.text.replace(/[\d#*]\ufe0f?\u20e3/gu, '')) ? undefined : { found: [...alt.text].slice(0, 20).join('') }),
};
