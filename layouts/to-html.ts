import type { VNode } from 'preact';
import { renderToString } from 'preact-render-to-string';

/** The only door to preact-render-to-string: what a layout made, as HTML text. */
export function toHtml(node: VNode): string {
  return renderToString(node).replace(closedVoid, '<$1$2>');
}

/** A void element closed as in XML. Text holds no "<" here and attributes stand in double quotes, so nothing else can match. */
const closedVoid = /<(br|hr|img|input|link|meta|source|track)((?:\s+[^\s"'<>/=]+(?:="[^"]*")?)*)\s*\/>/g;
