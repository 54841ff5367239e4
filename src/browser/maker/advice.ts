import type { Look } from '../../outputs/maker-look.ts';

/** Advice that stands beside a field. What is missing waits until somebody asks for everything. */
export function adviceFor(look: Look | undefined, path: string, everything: boolean): readonly Look['advice'][number][] {
  if (!look) return [];
  const all =
    look.advice.length > 0 && look.early.length > 0
      ? [...look.advice, ...look.early.filter((early) => !look.advice.some((each) => each.say === early.say && each.path === early.path))]
      : [...look.advice, ...look.early];
  return all.filter((each) => each.path === path && (everything || !each.empty));
}
