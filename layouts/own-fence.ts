import { Fragment, type ComponentType, type VNode } from 'preact';
import { jsx as make } from 'preact/jsx-runtime';

/**
 * What a library's own layout is written with: JSX that refuses at once what a page of this site may not hold. The page's policy would keep scripts,
 * styles and pictures from elsewhere out without a word; here it is said, with the line of the element.
 */

const elements = new Set(
  'a abbr address b blockquote br cite dd div dl dt em h1 h2 h3 hr i li nav ol p q section small span strong sub sup time ul svg g path circle ellipse line polyline polygon rect title'.split(' '),
);

/** Thrown for what may not stand in a layout. */
export class Refused extends Error {
  override readonly name = 'Refused';
}

type Props = Readonly<Record<string, unknown>>;

function jsx(type: string | ComponentType, props: Props, key?: string): VNode {
  if (typeof type === 'string') refuse(type, props);
  return make(type as string, props, key) as VNode;
}

function refuse(element: string, props: Props): void {
  if (!elements.has(element)) throw new Refused(`<${element}>`);
  for (const name of Object.keys(props)) {
    if (/^on/i.test(name) || name === 'style' || name === 'id' || name === 'dangerouslySetInnerHTML' || name === 'src' || name === 'srcset') throw new Refused(`"${name}" on <${element}>`);
  }
  if (element === 'nav' && !hasText(props['aria-label'])) throw new Refused('<nav> without "aria-label"');
  if (element === 'a' && !isLink(props['href'])) throw new Refused(`a link to ${typeof props['href'] === 'string' ? `"${props['href']}"` : 'nothing'}`);
  if (element === 'svg' && props['aria-hidden'] !== 'true' && props['aria-hidden'] !== true && props['role'] !== 'img') throw new Refused('<svg> without aria-hidden="true" or role="img"');
}

const hasText = (value: unknown): boolean => typeof value === 'string' && value.trim() !== '';

/** To another page of the site by a way from here, or away from it by https, mail or telephone. An address that begins with a slash would lead out of the library's folder. */
function isLink(href: unknown): boolean {
  return typeof href === 'string' && (/^(?:https|mailto|tel):/i.test(href) || !/^(?:[a-z][a-z0-9+.-]*:|\/|\\|\s)/i.test(href));
}

/** The module that stands in for `preact/jsx-runtime`. */
export const fencedJsx = { jsx, jsxs: jsx, Fragment } as const;
