import { mkdtemp, rm } from 'node:fs/promises';
import { join } from 'node:path';
import Eleventy from '@11ty/eleventy';
import { pageHtml } from '../../layouts/page.tsx';
import { fileOf } from '../outputs/addresses.ts';
import type { Page } from '../outputs/views.ts';

/** Pages of one run. The engine keeps all that it has made until it ends: two thousand packs at once need more than half a gigabyte. */
const mostAtOnce = 500;

/**
 * The only door to Eleventy. It is given an empty folder, and one paginated virtual template for each kind of
 * page; packs are data that we have read ourselves and never its templates, so nothing in a pack is ever run.
 * `made` is told of each page that it makes.
 */
export async function makePages(pages: readonly Page[], output: string, cache: string, made: (page: Page, html: string) => void): Promise<void> {
  for (let start = 0; start < pages.length; start += mostAtOnce) await makeSome(pages.slice(start, start + mostAtOnce), output, cache, made);
}

async function makeSome(pages: readonly Page[], output: string, cache: string, made: (page: Page, html: string) => void): Promise<void> {
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
          // The engine copies and merges all data it is given for each page, so it is given numbers, and the pages stay here.
          const pageOf = ({ number }: Numbered): Page => ofKind[number] as Page;
          config.addTemplate<Numbered>(`${kind}.11ty.js`, {
            data: { numbers: ofKind.map((_, index) => index), pagination: { data: 'numbers', size: 1, alias: 'number' }, permalink: (data: Numbered) => fileOf(pageOf(data).url) },
            render: (data) => {
              try {
                const html = pageHtml(pageOf(data));
                made(pageOf(data), html);
                return html;
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

interface Numbered {
  readonly number: number;
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
