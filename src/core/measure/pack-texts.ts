/** Which texts of a pack are read by whom, as running prose with its lines, and what is left out because it is none. */
import { placeOf, type Pack, type Step } from '../pack/pack.ts';
import type { PlacedProse } from './blocks.ts';
import type { LeftOut } from './measures.ts';

export interface PartText {
  readonly prose: readonly PlacedProse[];
  readonly leftOut: LeftOut;
}

/** What a family reads on its page: the summary, what stands under `home`, the care notes, and the body's paragraphs. */
export function familyText(pack: Pack): PartText {
  const field = fieldsOf(pack);
  const { blocks } = pack.body;
  return {
    prose: [
      ...field(pack.summary, 'summary'),
      ...(pack.care ?? []).flatMap((note, index) => field(note, 'care', index)),
      ...(pack.home?.prompts ?? []).flatMap((prompt, index) => field(prompt, 'home', 'prompts', index)),
      ...field(pack.home?.note, 'home', 'note'),
      ...(pack.home?.example ?? []).flatMap((line, index) => field(line.says, 'home', 'example', index, 'says')),
      ...blocks.filter((block) => block.kind === 'paragraph' || block.kind === 'quote').map(({ text, line }) => ({ text, line, keepsLines: true })),
    ],
    leftOut: {
      headings: blocks.filter((block) => block.kind === 'heading').length,
      listItems: blocks.filter((block) => block.kind === 'list item' || block.kind === 'table').length,
      meanings: (pack.words ?? []).reduce((sum, word) => sum + (word.gesture === undefined ? 1 : 2), 0),
    },
  };
}

/** What a child reads in the booklet: the question of each stop, of the stars and of the choice among a few books. Frames have blanks, and banks are lists; models are for grown-ups. */
export function childrenText(pack: Pack): PartText {
  const field = fieldsOf(pack);
  return {
    prose: [
      ...pack.stops.flatMap((stop, index) => field(stop.ask, 'stops', index, 'ask')),
      ...field(pack.rating?.ask, 'rating', 'ask'),
      ...field(pack.bestOf?.ask, 'best of', 'ask'),
      ...field(pack.bestOf?.last, 'best of', 'last'),
    ],
    leftOut: {
      frames: pack.stops.reduce((sum, stop) => sum + (stop.frames?.length ?? 0), 0),
      bankWords: pack.stops.reduce((sum, stop) => sum + (stop.words?.length ?? 0), 0) + (pack.rating?.reasons?.length ?? 0),
    },
  };
}

function fieldsOf(pack: Pack): (text: string | undefined, ...steps: readonly Step[]) => readonly PlacedProse[] {
  return (text, ...steps) => (text === undefined ? [] : [{ text, line: placeOf(pack, ...steps).line }]);
}
