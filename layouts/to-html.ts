import type { VNode } from 'preact';
import { renderToString } from 'preact-render-to-string';

/** The only door to preact-render-to-string: what a layout made, as HTML text. */
export function toHtml(node: VNode): string {
  return renderToString(node);
}
