import type { AltRule } from './alt-context.ts';

/**
 * Tags, entities, Markdown and addresses are read out sign by sign: an alt text is plain text. What stands in quotation marks is left
 * alone, since a poster may show an address. Source: HTML standard, 4.8.4.4 (alt is text without markup); patterns our own.
 */
const patterns = [
  /<\/?[a-z][^<>]{0,80}>/iu,
  /&(?:[a-z]{2,8}|#\d{1,6}|#x[0-9a-f]{1,6});/iu,
  /\bhttps?:\/\/\S{0,60}/iu,
  /!?\[[^[\]]{0,200}\]\([^()]{0,200}\)/u,
  /\*\*[^*\s][^*]{0,80}\*\*|__[^_\s][^_]{0,80}__/u,
  /(?<=^| )(?:\*[^\s*][^*]{0,80}\*|_[^\s_][^_]{0,80}_|`[^`]{1,80}`)(?=$|[ .,;:!?])/u,
  /^(?:#{1,6}|>) /u,
] as const;

export const markup: AltRule<'alt-text/markup'> = {
  code: 'alt-text/markup',
  level: 'warn',
  look: (alt) => {
    const found = patterns.map((each) => each.exec(alt.unquoted)?.[0]).find((each) => each !== undefined);
    return found === undefined ? undefined : { found: found.slice(0, 60) };
  },
};
