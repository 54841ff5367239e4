import { mkdtemp, rm } from 'node:fs/promises';
import { join } from 'node:path';
import Eleventy from '@11ty/eleventy';
import { pageHtml } from '../../layouts/page.tsx';
import { fileOf } from '../outputs/addresses.ts';
import type { Page } from '../outputs/views.ts';

/**
 * The only door to Eleventy. It is given an empty folder, and one paginated virtual template for each kind of
 * page; packs are data that we have read ourselves and never its templates, so nothing in a pack is ever run.
 */
export async function writePages(pages: readonly Page[], output: string, cache: string): Promise<void> {
  const empty = await mkdtemp(join(cache, 'no-input-'));
  const failures: unknown[] = [];
  try {
    const engine = new Eleventy(empty, output, {
      quietMode: true,
      configPath: false,
      config(config) {
        config.setUseGitIgnore(false);
        config.setQuietMode(true);
        config.setTemplateFormats(['11ty.js']);
        for (const [kind, ofKind] of grouped(pages)) {
          config.addTemplate<{ page_: Page }>(`${kind}.11ty.js`, {
            data: { ofKind, pagination: { data: 'ofKind', size: 1, alias: 'page_' }, permalink: (data: { page_: Page }) => fileOf(data.page_.url) },
            render: (data) => {
              try {
                return pageHtml(data.page_);
              } catch (error) {
                failures.push(error);
                throw error;
              }
            },
          });
        }
      },
    });
    engine.disableLogger();
    await engine.write();
  } catch (error) {
    throw failures[0] ?? error;
  } finally {
    await rm(empty, { recursive: true, force: true });
  }
}

function grouped(pages: readonly Page[]): ReadonlyMap<string, readonly Page[]> {
  const groups = new Map<string, Page[]>();
  for (const page of pages) {
    const group = groups.get(page.view.kind);
    if (group) group.push(page);
    else groups.set(page.view.kind, [page]);
  }
  return groups;
}
