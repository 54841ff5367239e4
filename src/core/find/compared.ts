import type { PackFields } from '../pack/pack.ts';

/** What is needed of a pack to hold it beside others. */
export type Compared = Pick<PackFields, 'title' | 'language' | 'book' | 'by' | 'stops' | 'questions' | 'home'> & { readonly slug: string };

/** The questions of a pack in its maker's own words: at the stops, after the book, and at home. */
export function promptsOf({ stops, questions, home }: Pick<Compared, 'stops' | 'questions' | 'home'>): readonly string[] {
  return [...stops.map(({ ask }) => ask), ...(questions ?? []).map(({ ask }) => ask), ...(home?.prompts ?? [])];
}
