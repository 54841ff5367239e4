import MarkdownIt, { type Token } from 'markdown-it';
import { finding, type Finding } from '../finding.ts';
import type { Block, Body, BodyPicture } from './pack.ts';
import { withoutRemarks } from './remarks.ts';
import { strangeBehindSigns } from './strange-characters.ts';

/**
 * The only door to markdown-it. HTML stays text, comments are taken out, links keep to an allow-list of
 * schemes, pictures must be the pack's own, and headings move down so that a page keeps its one h1.
 */

/** Schemes a link may have; a link without one stays within the site. */
const linkSchemes = new Set(['http', 'https', 'mailto', 'tel']);
/** Lists and quotes inside one another. */
const deepest = 20;
/** Characters of one body. A usual one has 1,000; a page of half a million opens on no phone, and much that is cheap to read is dear to show. */
const longest = 60_000;

/** True for a link that may stand in a published page. */
export function isAllowedLink(link: string): boolean {
  // eslint-disable-next-line no-control-regex -- control characters are what is looked for
  if (/[\u0000-\u0020\u007f-\u00a0\u2028\u2029\u200b-\u200f\u202a-\u202e\ufeff\\]/u.test(link) || /%0[0-9a-f]|%1[0-9a-f]|%7f/i.test(link)) return false;
  if (link.startsWith('//')) return false;
  const scheme = /^([^/?#]*?):/.exec(link)?.[1];
  return scheme === undefined || linkSchemes.has(scheme.toLowerCase());
}

/** The prose of a body with its lines, and what there is to tell about links, pictures and comments. */
export function readBody(markdown: string, firstLine: number, file: string, pictures: readonly string[]): { body: Body; findings: readonly Finding[] } {
  const findings: Finding[] = [];
  const at = (line: number) => ({ file, line: firstLine + line, column: 1 });
  if (markdown.length > longest) {
    findings.push(finding('body/too-long', 'stop', at(0), { most: longest, found: markdown.length }));
    return { body: { markdown: '', firstLine, blocks: [], pictures: [], asides: [] }, findings };
  }
  const stripped = withoutRemarks(markdown);
  for (const line of stripped.comments) findings.push(finding('body/comment', 'note', at(line), {}));
  if (stripped.unclosed !== undefined) findings.push(finding('body/comment-unclosed', 'stop', at(stripped.unclosed), {}));
  const { tokens, refused } = parsed(stripped.text);
  let line = 0;
  let tooDeep = false;
  for (const token of tokens) {
    if (token.map) line = token.map[0];
    if (!tooDeep && token.level > deepest * 2) findings.push(finding('body/too-deep', 'stop', at(line), { most: deepest }));
    tooDeep ||= token.level > deepest * 2;
    for (const child of token.children ?? []) {
      if (child.type === 'image') {
        const picture = pictureNameOf(child);
        if (!pictures.includes(picture)) findings.push(finding('body/picture-not-listed', 'stop', at(line), { picture: picture.slice(0, 80) }));
      }
      const hidden = strangeBehindSigns(`${child.content}${attribute(child, 'title')}`, token.content);
      if (hidden !== undefined) findings.push(finding('file/control-character', 'stop', at(line), { character: hidden }));
    }
  }
  for (const { link, line: lineOfLink } of refused) findings.push(finding('body/link-refused', 'warn', at(lineOfLink), { link: link.slice(0, 80) }));
  return { body: { markdown: stripped.text, firstLine, blocks: blocksOf(tokens, firstLine), pictures: picturesOf(tokens, firstLine), asides: asidesOf(tokens, firstLine) }, findings };
}

/** How a page shows one picture of the pack; the markup comes from the build, which knows the files made of it. */
export type ShowPicture = (fileName: string, alt: string) => string;

export interface BodyShow {
  /** The level at which the body's headings begin. */
  readonly topHeading: 2 | 3;
  readonly showPicture: ShowPicture;
  /** What the box is called in which a wide table can be moved sideways. */
  readonly tableName: string;
}

/** The body as HTML. Headings start at `topHeading`; ids carry a prefix so that none can stand in for a property of the document. */
export function bodyHtml(body: Pick<Body, 'markdown'>, show: BodyShow): string {
  const tokens = parser.parse(body.markdown, {});
  shiftHeadings(tokens, show.topHeading);
  return parser.renderer.render(tokens, parser.options, { show });
}

/** A link that was left as text, and the line on which it stands, or its paragraph begins, counted from 0. */
interface Refused {
  readonly link: string;
  readonly line: number;
}
/** What is refused while a text is parsed: markdown-it leaves it as text, and nobody would know. */
let refusing: ((link: string) => void) | undefined;

/** The tokens of a text, and the links in it that were refused, however they were written. */
function parsed(markdown: string): { readonly tokens: readonly Token[]; readonly refused: readonly Refused[] } {
  const lines = markdown.split('\n');
  const refused = new Map<string, Refused>();
  /** Between which lines the parser is: of a reference only the text as a whole is known. */
  let asked = 0;
  const lookFrom = (from: number, to: number) => (link: string) => {
    // Ten are told of a file; each costs a look through its paragraph.
    asked += 1;
    if (asked > 500) return;
    const begins = link.slice(0, 8).toLowerCase();
    const found = lines.findIndex((text, index) => index >= from && index < to && text.toLowerCase().includes(begins));
    const line = found === -1 ? from : found;
    refused.set(`${String(line)} ${link}`, { link, line });
  };
  try {
    refusing = lookFrom(0, lines.length);
    const tokens = parser.parse(markdown, { paragraph: (from: number, to: number) => (refusing = lookFrom(from, to)) });
    return { tokens, refused: [...refused.values()] };
  } finally {
    refusing = undefined;
  }
}

const parser = new MarkdownIt({ html: false, linkify: false, typographer: false, maxNesting: deepest * 2 + 4 });
parser.validateLink = (link) => {
  const allowed = isAllowedLink(link);
  if (!allowed) refusing?.(link);
  return allowed;
};
// As markdown-it's own rule, which does not tell where it is.
parser.core.ruler.at('inline', (state) => {
  const { paragraph } = state.env as { readonly paragraph?: (from: number, to: number) => void };
  for (const token of state.tokens) {
    if (token.type !== 'inline') continue;
    if (token.map) paragraph?.(...token.map);
    state.md.inline.parse(token.content, state.md, state.env, (token.children ??= []));
  }
});
parser.renderer.rules['image'] = (tokens, index, _options, env) => {
  const token = tokens[index];
  if (!token) return '';
  return showOf(env)?.showPicture(pictureNameOf(token), token.content) ?? parser.utils.escapeHtml(token.content);
};
parser.renderer.rules['link_open'] = (tokens, index, options, _env, renderer) => {
  const token = tokens[index];
  if (token && /^https?:/i.test(attribute(token, 'href'))) token.attrSet('rel', 'noreferrer');
  return renderer.renderToken(tokens, index, options);
};
parser.renderer.rules['table_open'] = (_tokens, _index, _options, env) => `<section class="wide" tabindex="0" aria-label="${parser.utils.escapeHtml(showOf(env)?.tableName ?? '')}"><table>`;
parser.renderer.rules['table_close'] = () => '</table></section>';

function showOf(env: unknown): BodyShow | undefined {
  return (env as { readonly show?: BodyShow } | undefined)?.show;
}

function attribute(token: Token, name: string): string {
  return String(token.attrGet(name) ?? '');
}

function pictureNameOf(token: Token): string {
  const source = attribute(token, 'src');
  try {
    return decodeURIComponent(source).replace(/^(?:\.\/)?pictures\//, '');
  } catch {
    return source;
  }
}

function shiftHeadings(tokens: readonly Token[], top: number): void {
  let previous = top - 1;
  let shown = top;
  for (const token of tokens) {
    if (token.type === 'heading_open') {
      // A heading may go one level deeper than the one before it, never more.
      shown = Math.min(Number(token.tag.slice(1)) - 1 + (top - 1), previous + 1, 6);
      shown = Math.max(shown, top);
      previous = shown;
    }
    if (token.type === 'heading_open' || token.type === 'heading_close') token.tag = `h${String(shown)}`;
  }
}

function blocksOf(tokens: readonly Token[], firstLine: number): readonly Block[] {
  const blocks: Block[] = [];
  const open: string[] = [];
  for (const token of tokens) {
    if (token.nesting === 1) open.push(token.type);
    if (token.nesting === -1) open.pop();
    if (token.type !== 'inline') continue;
    const text = (token.children ?? [])
      .map((child) => textOf(child))
      .join('')
      .trim();
    if (text !== '') blocks.push({ kind: kindOf(open), text, line: firstLine + (token.map?.[0] ?? 0) });
  }
  return blocks;
}

function asidesOf(tokens: readonly Token[], firstLine: number): Body['asides'] {
  const asides: { text: string; line: number }[] = [];
  let line = firstLine;
  for (const token of tokens) {
    if (token.map) line = firstLine + token.map[0];
    if (token.type === 'fence' || token.type === 'code_block') asides.push({ text: token.content, line });
    for (const child of token.children ?? []) {
      if (child.type === 'image') asides.push({ text: child.content, line });
      if (child.type === 'link_open') asides.push({ text: attribute(child, 'href'), line }, { text: attribute(child, 'title'), line });
    }
  }
  return asides.filter((aside) => aside.text !== '');
}

function picturesOf(tokens: readonly Token[], firstLine: number): readonly BodyPicture[] {
  const pictures: BodyPicture[] = [];
  for (const token of tokens) {
    /** Where the link began that is open, and how much it holds: pictures and words. */
    let link: { readonly from: number; holds: number } | undefined;
    for (const child of token.children ?? []) {
      if (child.type === 'link_open') link = { from: pictures.length, holds: 0 };
      else if (child.type === 'link_close') {
        const only = link?.holds === 1 ? pictures[link.from] : undefined;
        if (link && only) pictures[link.from] = { ...only, isWholeLink: true };
        link = undefined;
      } else if (link && (child.type === 'image' || textOf(child).trim() !== '')) link.holds += 1;
      if (child.type === 'image') pictures.push({ file: pictureNameOf(child), alt: child.content, line: firstLine + (token.map?.[0] ?? 0), isWholeLink: false });
    }
  }
  return pictures;
}

function kindOf(open: readonly string[]): Block['kind'] {
  if (open.includes('heading_open')) return 'heading';
  if (open.includes('table_open')) return 'table';
  if (open.includes('list_item_open')) return 'list item';
  return open.includes('blockquote_open') ? 'quote' : 'paragraph';
}

function textOf(token: Token): string {
  if (token.type === 'softbreak' || token.type === 'hardbreak') return '\n';
  // Alt text is not part of the running prose.
  return token.type === 'text' || token.type === 'code_inline' || token.type === 'text_special' ? token.content : '';
}
