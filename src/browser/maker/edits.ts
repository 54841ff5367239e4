import type { Raw } from '../../core/pack/front-matter.ts';
import type { Step } from '../../core/pack/pack.ts';
import type { Tree } from '../../core/pack/scalar-text.ts';
import type { Edit } from '../../core/pack/write-pack.ts';
import { listAt, valueAt } from './words.ts';

/** What somebody did in the form, as changes of the file. */

/** A text field has this in it now; empty takes the field away. */
export function fieldEdits(raw: Raw | undefined, steps: readonly Step[], value: string | boolean): readonly Edit[] {
  const there = valueAt(raw, steps);
  if (value !== '' && value !== false) return there === value ? [] : [{ kind: 'set', steps, value }];
  if (there === undefined) return [];
  // The last field of a list's item stays, empty, so that the item does.
  const holder = valueAt(raw, steps.slice(0, -1));
  const isAlone = typeof steps.at(-2) === 'number' && typeof holder === 'object' && !Array.isArray(holder) && Object.keys(holder).length === 1;
  return isAlone ? [{ kind: 'set', steps, value: '' }] : [{ kind: 'remove', steps }];
}

/** A new item behind the last one of a list. */
export function addEdits(raw: Raw | undefined, steps: readonly Step[], value: Tree): readonly Edit[] {
  return [{ kind: 'set', steps: [...steps, listAt(raw, steps).length], value }];
}

/** A choice of a list that is ticked or not; ticked ones stand in the order of the choices. */
export function tickEdits(raw: Raw | undefined, steps: readonly Step[], choices: readonly string[], value: string, ticked: boolean): readonly Edit[] {
  const list = listAt(raw, steps);
  const at = list.indexOf(value);
  if (!ticked) return at === -1 ? [] : [{ kind: 'remove', steps: [...steps, at] }];
  if (at !== -1) return [];
  const index = list.findIndex((each) => typeof each === 'string' && choices.indexOf(each) > choices.indexOf(value));
  return index === -1 ? addEdits(raw, steps, value) : [{ kind: 'insert', steps, index, value }];
}

/** A stop on another opening: it also moves among the others, so that the file has them in the order of the book. */
export function moveStopEdits(raw: Raw | undefined, index: number, opening: number): { readonly edits: readonly Edit[]; readonly to: number } {
  const others = listAt(raw, ['stops'])
    .map((_, each) => Number(valueAt(raw, ['stops', each, 'at', 'opening']) ?? 0))
    .filter((_, each) => each !== index);
  const before = others.filter((other, each) => (each < index ? other <= opening : other < opening)).length;
  const set: Edit = { kind: 'set', steps: ['stops', index, 'at', 'opening'], value: opening };
  return before === index ? { edits: [set], to: index } : { edits: [set, { kind: 'move', steps: ['stops'], from: index, to: before }], to: before };
}

/** True when a stop on an opening would stand before or behind one that it does not belong before or behind. */
export function isOutOfOrder(stops: readonly Raw[], index: number, opening: number): boolean {
  const at = (each: Raw | undefined): number => Number(valueAt(each, ['at', 'opening']) ?? NaN);
  return at(stops[index - 1]) > opening || at(stops[index + 1]) < opening;
}

/** A new stop on an opening, behind those on it already. */
export function newStopEdits(raw: Raw | undefined, opening: number): { readonly edits: readonly Edit[]; readonly at: number } {
  const stops = listAt(raw, ['stops']);
  const openings = stops.map((_, each) => Number(valueAt(raw, ['stops', each, 'at', 'opening']) ?? 0));
  const at = openings.filter((each) => each <= opening).length;
  const taken = new Set(stops.map((_, each) => valueAt(raw, ['stops', each, 'id'])));
  let number = stops.length + 1;
  while (taken.has(`stop-${String(number)}`)) number++;
  const value: Tree = { id: `stop-${String(number)}`, at: { opening } };
  return { edits: [at < stops.length ? { kind: 'insert', steps: ['stops'], index: at, value } : { kind: 'set', steps: ['stops', stops.length], value }], at };
}
