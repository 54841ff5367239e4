import { serialize } from 'node:v8';
import type { Library } from '../core/pack/library.ts';
import type { Source } from '../core/pack/pack.ts';
import type { Page } from '../outputs/views.ts';
import { lookAt } from './look-at.ts';

/** What can be done to packs anywhere: it needs nothing but what it is given, and asks no disk. */

/** Some packs to be read, checked, measured and planned; or some pages to be made. */
export type TextTask = { readonly what: 'packs'; readonly library: Library; readonly sources: readonly Source[] } | { readonly what: 'pages'; readonly pages: readonly Page[] };

/** Of each pack what `deserialize` gives back as `Kept`, of each page its HTML; in the order of the task. */
export type TextAnswer = readonly Uint8Array[] | readonly string[];

export async function work(task: TextTask): Promise<TextAnswer> {
  if (task.what === 'packs') return task.sources.map((source) => serialize(lookAt(source, task.library)));
  // Whoever only looks at packs does without all layouts.
  const { pageHtml } = await import('../../layouts/page.tsx');
  return task.pages.map(pageHtml);
}
