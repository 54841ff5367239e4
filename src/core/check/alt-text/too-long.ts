import type { AltRule } from './alt-context.ts';

/**
 * Longest alt text, in characters; what stands in quotation marks is not counted, for it may be what can be read in the picture.
 * Common practice (125 to 150), no source: no standard gives a limit, but an alt text cannot be paused or read again word by word.
 */
const longest = 150;

export const tooLong: AltRule<'alt-text/too-long'> = {
  code: 'alt-text/too-long',
  level: 'warn',
  look: (alt) => {
    const length = [...alt.unquoted].length + alt.unread;
    return length > longest ? { length, most: longest } : undefined;
  },
};
