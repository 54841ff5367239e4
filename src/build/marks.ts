import type { Library } from '../core/pack/library.ts';
import type { PlannedPack } from '../core/plan/plan.ts';
import type { Assets, Page, ShownPack } from '../outputs/views.ts';
import { hashOf } from './code-mark.ts';

/**
 * A mark is a hash of everything that a thing is made of. Pages and files of two builds that have the same mark are the same,
 * so the second need not make them. A page is made by a pure function of its view; so its mark is a hash of the view, in which
 * each pack is named by the mark that it got when it was read.
 */

const ofPacks = new WeakMap<PlannedPack, string>();
const ofShown = new WeakMap<ShownPack, string>();

/** Notes the mark of a pack that has been read: of its source, the library's settings and the code. */
export function markPack(pack: PlannedPack, mark: string): void {
  ofPacks.set(pack, mark);
}

/** The mark of a pack as it is shown. */
export function markOfShown(shown: ShownPack): string {
  const known = ofShown.get(shown);
  if (known !== undefined) return known;
  const mark = hashOf(JSON.stringify({ ...shown, pack: markOfPack(shown.pack) }, plainOnly));
  ofShown.set(shown, mark);
  return mark;
}

/** A pack that nobody has marked, because somebody made it of another, is its own mark. */
function markOfPack(pack: PlannedPack): string {
  const known = ofPacks.get(pack) ?? hashOf(JSON.stringify(pack, plainOnly));
  ofPacks.set(pack, known);
  return known;
}

/**
 * Marks of the pages of one site.
 *
 * @param code The mark of the code that makes them.
 * @param layouts The texts of the library's own layouts that are used.
 */
export function pageMarks(code: string, library: Library, assets: Assets, layouts: readonly (readonly [part: string, text: string])[]): (page: Page) => string {
  const common = hashOf(JSON.stringify([code, library, assets, layouts], plainOnly));
  // A page of lists holds thousands of things, and is asked for before and after it is made.
  const ofPages = new WeakMap<Page, string>();
  return (page) => {
    const { url, language, alternates, view } = page;
    const mark = ofPages.get(page) ?? hashOf(common + JSON.stringify([url, language, alternates, view], named));
    ofPages.set(page, mark);
    return mark;
  };
}

/** Packs are named by their marks; all else stands for itself. */
function named(key: string, value: unknown): unknown {
  if (isShown(value)) return markOfShown(value);
  return isPack(value) ? markOfPack(value) : plainOnly(key, value);
}

function isShown(value: unknown): value is ShownPack {
  return typeof value === 'object' && value !== null && 'pack' in value && 'bodyHtml' in value && 'urls' in value;
}

function isPack(value: unknown): value is PlannedPack {
  return typeof value === 'object' && value !== null && 'slug' in value && 'body' in value && 'places' in value;
}

/** JSON leaves out what it cannot say, and two things would then have one mark. */
function plainOnly(key: string, value: unknown): unknown {
  if (typeof value === 'function' || typeof value === 'symbol' || value instanceof Map || value instanceof Set)
    throw new TypeError(`"${key}" is no plain value, so nobody can tell whether it changed`);
  return value;
}
