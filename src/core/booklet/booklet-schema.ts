import * as v from 'valibot';

/**
 * The shape of a saved booklet, version 1: the one source of truth for its types and for what is taken
 * from a file. What the parts are for stands in `booklet.ts`.
 *
 * Limits are there so that a made-up file cannot fill a memory; no child's work comes near them.
 * source of the limits: common practice, no source.
 */

export const limits = {
  /** Characters of a whole file. */
  file: 120_000_000,
  /** Entries of a booklet. */
  entries: 4000,
  /** Characters of one answer: some 200,000 words. */
  text: 1_000_000,
  /** Characters of a question or a word of the pack; the pack's own limit is 2,000. */
  asked: 4000,
  /** Base64 characters of one photo or recording: some 15 MB. */
  data: 20_000_000,
  /** Marks of one drawing, and numbers of one line (three a point). */
  marks: 10_000,
  points: 300_000,
  /** Books to choose from; a pack offers no more than six. */
  books: 20,
  /** Openings of a booklet on some device that wrote into it. */
  writers: 20_000,
} as const;

/** Units of the paper that drawings are drawn on: 4 to 3, whatever the screen. */
export const paper = { width: 1200, height: 900 } as const;

export const inks = ['black', 'red', 'yellow', 'green', 'blue', 'brown'] as const;
/** Things to set down with a tap, for those who do not draw lines. */
export const stamps = ['person', 'house', 'tree', 'sun', 'rain', 'water', 'ring', 'box', 'roof', 'path', 'dot'] as const;
export const eyes = ['open', 'wide', 'shut'] as const;
export const brows = ['level', 'raised', 'drawn'] as const;
export const mouths = ['up', 'flat', 'down', 'round'] as const;

const text = (most: number = limits.text) => v.pipe(v.string(), v.maxLength(most));
const whole = (least: number, most: number) => v.pipe(v.number(), v.integer(), v.minValue(least), v.maxValue(most));
const word = v.pipe(v.string(), v.regex(/^[a-z0-9]+(?:-[a-z0-9]+)*$/), v.maxLength(80));
const random = v.pipe(v.string(), v.regex(/^[a-z0-9]{8,40}$/));
const base64 = v.pipe(v.string(), v.nonEmpty(), v.maxLength(limits.data), v.regex(/^[A-Za-z0-9+/]+={0,2}$/));
const across = whole(-paper.width, 2 * paper.width);
const down = whole(-paper.height, 2 * paper.height);
const at = { ink: v.picklist(inks), x: across, y: down, size: whole(1, paper.width) };

const mark = v.variant('do', [
  v.object({
    do: v.literal('line'),
    ink: v.picklist(inks),
    /** Width in units of the paper at middle pressure. */
    width: whole(1, 200),
    /** x, y and pressure (0 to 100; 50 where the device knows none) of each point in turn. */
    points: v.pipe(
      v.array(whole(-2 * paper.width, 2 * paper.width)),
      v.minLength(3),
      v.maxLength(limits.points),
      v.check((points) => points.length % 3 === 0),
    ),
  }),
  v.object({ do: v.literal('stamp'), shape: v.picklist(stamps), ...at }),
  v.object({ do: v.literal('face'), eyes: v.picklist(eyes), brows: v.picklist(brows), mouth: v.picklist(mouths), ...at }),
]);

/** Of a few books the one that is chosen first, and the one that could wait; `of` are all that could be chosen. */
const chosen = v.pipe(
  v.object({ kind: v.literal('chosen'), best: v.optional(text(limits.asked)), last: v.optional(text(limits.asked)), of: v.pipe(v.array(text(limits.asked)), v.maxLength(limits.books)) }),
  v.check(({ best, last, of }) => (best ?? last) !== undefined && [best, last].every((each) => each === undefined || of.includes(each)) && (best === undefined || best !== last)),
);

export const valueSchema = v.variant('kind', [
  v.object({ kind: v.literal('written'), text: text(), frames: v.pipe(v.array(text(limits.asked)), v.maxLength(200)) }),
  v.object({ kind: v.literal('feeling'), word: text(limits.asked), family: v.optional(word), strength: v.optional(whole(1, 3)) }),
  v.object({ kind: v.literal('cannot-tell') }),
  v.object({ kind: v.literal('said'), text: text() }),
  v.object({ kind: v.literal('voice'), type: v.picklist(['audio/webm', 'audio/ogg', 'audio/mp4']), seconds: whole(0, 36_000), data: base64 }),
  v.object({ kind: v.literal('drawing'), about: text(), marks: v.pipe(v.array(mark), v.maxLength(limits.marks)) }),
  v.object({ kind: v.literal('photo'), about: text(), type: v.picklist(['image/jpeg', 'image/png', 'image/webp']), width: whole(1, 20_000), height: whole(1, 20_000), data: base64 }),
  v.object({ kind: v.literal('acted'), text: text() }),
  v.object({ kind: v.literal('passed') }),
  v.object({ kind: v.literal('stars'), stars: whole(1, 5), of: whole(1, 5), words: text(limits.asked) }),
  v.object({ kind: v.literal('because'), text: text() }),
  chosen,
]);

/** A stop's id has no space, so that none can be taken for one of the others. */
const about = v.union([word, v.picklist(['whole book', 'best of'])]);
const count = whole(1, Number.MAX_SAFE_INTEGER);

export const entrySchema = v.object({
  /** Id of the stop, `whole book` or `best of`. */
  to: about,
  value: valueSchema,
  writer: random,
  count,
  order: count,
});

export const promptSchema = v.object({
  of: about,
  number: whole(1, 1000),
  opening: v.optional(whole(1, 1000)),
  ask: text(limits.asked),
  about: v.optional(v.picklist(['character', 'me'])),
});

export const headSchema = v.object({
  format: v.literal('companion booklet'),
  version: v.literal(1),
  id: random,
  pack: v.object({ slug: word, language: v.pipe(v.string(), v.regex(/^[A-Za-z0-9]+(?:-[A-Za-z0-9]+)*$/), v.maxLength(40)), title: text(limits.asked) }),
  bookmark: v.object({ pattern: word, colour: word }),
  seen: v.pipe(v.array(v.tuple([random, count])), v.maxLength(limits.writers)),
});

export type Value = v.InferOutput<typeof valueSchema>;
export type Mark = v.InferOutput<typeof mark>;
export type Entry = v.InferOutput<typeof entrySchema>;
export type Prompt = v.InferOutput<typeof promptSchema>;
export type Head = v.InferOutput<typeof headSchema>;
