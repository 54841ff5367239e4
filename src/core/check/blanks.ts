import { finding, type Finding } from '../finding.ts';
import { placeOf, type Pack, type Step } from '../pack/pack.ts';

/** Blanks that a new pack marks with « and » have been filled in. Quotation marks « … » inside a longer text are left alone. */
export function* blanks(pack: Pack): Iterable<Finding> {
  // Hardly any pack has one left, and to go to each place of it takes several times as long.
  if (!holdsBlank({ ...pack, places: {} })) return;
  for (const steps of Object.keys(pack.places)) {
    if (steps === '' || steps.endsWith('.*')) continue;
    const names = steps.split('.');
    const value = names.reduce<unknown>((at, name) => (at as Record<string, unknown> | undefined)?.[name.includes(' ') ? camel(name) : name], pack);
    if (typeof value !== 'string' || !isBlank(value)) continue;
    const path: readonly Step[] = names.map((name) => (/^\d+$/.test(name) ? Number(name) : name));
    yield finding('pack/blank', 'stop', placeOf(pack, ...path), { field: path.findLast((step) => typeof step === 'string') ?? '' });
  }
  for (const block of pack.body.blocks) {
    if (isBlank(block.text)) yield finding('pack/blank', 'stop', { file: pack.file, line: block.line, column: 1 }, { field: '' });
  }
}

function holdsBlank(value: unknown): boolean {
  if (typeof value === 'string') return isBlank(value);
  return typeof value === 'object' && value !== null && Object.values(value).some(holdsBlank);
}

function isBlank(text: string): boolean {
  return /^«[^«»]*»$/.test(text.trim());
}

function camel(step: string): string {
  return step.replace(/ ([a-z])/g, (_, letter: string) => letter.toUpperCase());
}
