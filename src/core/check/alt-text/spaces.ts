import type { AltRule } from './alt-context.ts';

/**
 * Line breaks and doubled spaces make a screen reader halt; spaces at the edges are left over. The line break at the end of a folded text and
 * two spaces behind a full stop are let be. Source: HTML standard, 4.8.4.4; common practice.
 */
const stray = /^\s|[^\S\n]\n?$|\n\n$|\n(?!$)|\t|(?<![.!?:"”»])[^\S\n]{2,}|[^\S\n]{3,}/u;

export const spaces: AltRule<'alt-text/spaces'> = {
  code: 'alt-text/spaces',
  level: 'note',
  look: (alt) => (stray.test(alt.written.slice(0, 2000)) && alt.unread === 0 ? {} : undefined),
};
