import { readFile } from 'node:fs/promises';
import { join } from 'node:path';
import type { ShownPack } from '../outputs/views.ts';

/**
 * When each companion came into the site. A static build has no memory, so the site keeps it itself: `arrivals.json` of the old
 * site is read, what is not in it came in today, and the new one takes its place with the new site. The first site, or one that was
 * built where no old one lay, tells no days: nobody knows them.
 */

export const arrivalsFile = 'arrivals.json';

/** Days by the address of a pack's page, `2026-09-01`; of those that were there from the beginning an empty text. */
export type Arrivals = ReadonlyMap<string, string>;

export async function arrivalsOf(shown: readonly ShownPack[], oldSite: string, today: string): Promise<Arrivals> {
  const before = await readBefore(join(oldSite, arrivalsFile));
  return new Map(shown.map(({ urls }) => [urls.family, before === undefined ? '' : (before.get(urls.family) ?? today)] as const));
}

/** The days that are known, for the page that shows them. */
export function knownDays(arrivals: Arrivals): ReadonlyMap<string, string> {
  return new Map([...arrivals].filter(([, day]) => day !== ''));
}

export function arrivalsText(arrivals: Arrivals): string {
  const pages = Object.fromEntries([...arrivals].sort(([a], [b]) => (a < b ? -1 : 1)));
  return `${JSON.stringify({ format: 1, pages }, null, 1)}\n`;
}

async function readBefore(path: string): Promise<Arrivals | undefined> {
  try {
    const { pages } = JSON.parse(await readFile(path, 'utf8')) as { readonly pages?: unknown };
    if (typeof pages !== 'object' || pages === null) return undefined;
    // Anybody may have written there: only days are believed.
    return new Map(Object.entries(pages).flatMap(([url, day]) => (typeof day === 'string' && /^(?:\d{4}-\d\d-\d\d)?$/.test(day) ? [[url, day] as const] : [])));
  } catch {
    return undefined;
  }
}
