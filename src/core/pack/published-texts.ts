import type { Place } from '../finding.ts';
import { readCaptions } from './captions.ts';
import { placeOf, type Pack, type Step } from './pack.ts';

/**
 * Every text that a pack puts before the public: each text of its front matter, whatever fields there are, and the whole
 * body, and the captions of a recording. A rule that looks for what must not be published looks here, so that a new field is looked at from its first day.
 */

export interface PublishedText {
  /** The field's steps under the author's own names: `stops`, 2, `listen for`. For the body: `body`; for captions: `recording`, `captions`, `text`. */
  readonly steps: readonly Step[];
  readonly text: string;
  readonly place: Place;
}

/** What a pack holds beside its published texts: for the house, or for the check of words alone. */
const notPublished = new Set(['slug', 'file', 'body', 'places', 'partial', 'pictureFiles', 'recordingFiles', 'allowWords', 'owner']);

/** Several rules go through the texts of one pack. */
const known = new WeakMap<Pack, readonly PublishedText[]>();

/** All published texts of a pack, in the order of its fields, the body last. */
export function publishedTexts(pack: Pack): readonly PublishedText[] {
  const texts = known.get(pack) ?? gathered(pack);
  known.set(pack, texts);
  return texts;
}

function gathered(pack: Pack): readonly PublishedText[] {
  const texts: PublishedText[] = [];
  const walk = (value: unknown, steps: readonly Step[]): void => {
    if (typeof value === 'string') texts.push(new FieldText(pack, steps, value));
    else if (Array.isArray(value))
      value.forEach((item, index) => {
        walk(item, [...steps, index]);
      });
    else if (typeof value === 'object' && value !== null) for (const [key, item] of Object.entries(value)) walk(item, [...steps, asWritten(key)]);
  };
  for (const [key, value] of Object.entries(pack)) if (!notPublished.has(key)) walk(value, [asWritten(key)]);
  for (const { text, line } of [...pack.body.blocks, ...pack.body.asides]) texts.push({ steps: ['body'], text, place: { file: pack.file, line, column: 1 } });
  const captions = pack.recordingFiles.find((file) => file.name === pack.recording?.captions)?.text;
  if (captions !== undefined) {
    // One text, as a reader hears it: a sentence may run over several captions.
    const spoken = readCaptions(captions).captions.flatMap((caption) => caption.lines);
    texts.push({ steps: ['recording', 'captions', 'text'], text: spoken.join(' '), place: placeOf(pack, 'recording', 'captions') });
  }
  return texts;
}

/** A text of the front matter. Nobody asks where a sound one stands, so its place is looked up when somebody does. */
export class FieldText implements PublishedText {
  readonly #pack: Pack;

  constructor(
    pack: Pack,
    readonly steps: readonly Step[],
    readonly text: string,
  ) {
    this.#pack = pack;
  }

  get place(): Place {
    return placeOf(this.#pack, ...this.steps);
  }
}

/** `listenFor` as the author writes it: `listen for`. */
function asWritten(key: string): string {
  return key.replace(/(?<=[a-z])[A-Z]/gu, (letter) => ` ${letter.toLowerCase()}`);
}
