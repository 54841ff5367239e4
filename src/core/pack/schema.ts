import * as v from 'valibot';
import { families, grades, kinds, kindsOfBook, longestList, longestText, rightsOf, rulings, ways } from './choices.ts';
import { durationsSchema, paceSchema } from './durations.ts';

export { longestText, longestList, ways, kinds, kindsOfBook, depths, rightsOf, grades, rulings, families } from './choices.ts';

/**
 * The shape of a pack's front matter: the one source of truth. The type `Pack`, the JSON Schema that
 * the site publishes, the reader's findings and the form that makes a pack all come from here.
 *
 * Field names are the author's, spaces and all (`listen for`); in code they are camel case.
 * Every leaf is text, a number or yes/no, so that what an author typed can be read as typed
 * and turned into the kind that the schema asks for (`as-schema.ts`).
 */

const text = (most = longestText) => v.pipe(v.string(), v.trim(), v.nonEmpty(), v.maxLength(most));
const whole = (least: number, most: number) => v.pipe(v.number(), v.integer(), v.minValue(least), v.maxValue(most));
const list = <S extends v.GenericSchema>(of: S) => v.pipe(v.array(of), v.maxLength(longestList));
const some = <S extends v.GenericSchema>(of: S) => v.optional(of);
const id = v.pipe(v.string(), v.trim(), v.regex(/^[a-z0-9]+(?:-[a-z0-9]+)*$/), v.maxLength(40), v.examples(['cold-hands']));
const date = v.pipe(v.string(), v.trim(), v.isoDate(), v.examples(['2026-09-01']));
const clock = v.pipe(v.string(), v.trim(), v.regex(/^(?:\d{1,2}:)?\d{1,2}:[0-5]\d$/), v.examples(['2:40']));
/** A language tag after BCP 47 (RFC 5646): language, and perhaps script and region. */
const languageTag = v.pipe(v.string(), v.trim(), v.regex(/^[a-z]{2,3}(?:-[A-Z][a-z]{3})?(?:-[A-Z]{2}|-\d{3})?$/), v.examples(['es']));
const fileName = v.pipe(v.string(), v.trim(), v.regex(/^[^/\\:*?"<>|]+$/), v.maxLength(100), v.examples(['harbour.png']));

const model = v.object({
  text: text(400),
  shows: some(list(text(60))),
});

const place = v.object({
  opening: whole(1, 200),
  cue: text(80),
  picture: v.optional(v.picklist(['shown', 'hidden']), 'shown'),
  recording: some(clock),
});

export const stopSchema = v.object({
  id,
  at: place,
  readings: some(list(whole(1, 5))),
  ask: text(300),
  kind: v.picklist(kinds),
  depth: whole(1, 4),
  about: some(v.picklist(['character', 'me'])),
  answer: v.picklist(ways),
  or: some(v.picklist(ways)),
  seated: some(text(200)),
  materials: some(list(text(80))),
  wait: some(whole(0, 60)),
  task: some(whole(0, 1200)),
  shares: some(whole(0, 40)),
  frames: some(list(text(160))),
  words: some(list(text(40))),
  models: some(list(model)),
  'listen for': some(text(300)),
  'if quiet': some(text(300)),
  expand: some(text(300)),
  must: some(v.boolean()),
  value: some(whole(0, 10)),
  after: some(id),
});

export const packSchema = v.object({
  title: text(120),
  language: languageTag,
  summary: text(600),
  book: v.object({
    title: text(160),
    author: text(120),
    illustrator: some(text(120)),
    kinds: some(list(v.picklist(kindsOfBook))),
    year: some(whole(1400, 2100)),
    publisher: some(text(120)),
    isbn: some(v.pipe(v.string(), v.trim(), v.regex(/^[\d -]{9,16}[\dXx]$/), v.examples(['978-0-00-000000-2']))),
    openings: whole(1, 200),
    words: whole(1, 20000),
    rights: v.picklist(rightsOf),
    'rights note': some(text(300)),
  }),
  by: v.object({
    name: text(120),
    school: some(text(120)),
    licence: text(80),
    reviewed: some(date),
    version: some(text(20)),
    'based on': some(text(200)),
  }),
  translation: some(
    v.object({
      by: text(120),
      'checked by': some(text(120)),
      checked: some(date),
    }),
  ),
  retired: some(v.object({ on: date, because: text(300), instead: some(text(200)) })),
  for: v.object({
    grades: list(v.picklist(grades)),
    minutes: whole(3, 120),
    ruling: some(v.picklist(rulings)),
  }),
  aims: some(
    list(
      v.object({
        skill: text(200),
        standard: some(
          v.object({
            framework: text(120),
            code: some(text(60)),
            uri: some(v.pipe(v.string(), v.trim(), v.url(), v.regex(/^https?:\/\//i), v.examples(['https://standards.example/items/1']))),
            /** The item's identifier in CASE, the open standard of 1EdTech for lists of aims; a UUID after RFC 9562. */
            uuid: some(v.pipe(v.string(), v.trim(), v.regex(/^[\da-f]{8}(?:-[\da-f]{4}){3}-[\da-f]{12}$/i), v.examples(['0f3c9c1e-5d0b-4a7e-9a51-2f6f6c1d7b10']))),
            paraphrase: text(300),
          }),
        ),
      }),
    ),
  ),
  readings: list(
    v.object({
      reading: whole(1, 5),
      purpose: text(300),
      'must ask': some(id),
    }),
  ),
  stops: list(stopSchema),
  words: some(
    list(
      v.object({
        word: text(40),
        meaning: text(200),
        situation: text(200),
        'first met': some(whole(1, 200)),
        gesture: some(text(200)),
        picture: some(fileName),
        'in other languages': some(v.record(languageTag, text(80))),
      }),
    ),
  ),
  feelings: some(
    list(
      v.object({
        word: text(40),
        family: v.picklist(families),
        strength: whole(1, 3),
        situation: text(200),
      }),
    ),
  ),
  questions: some(list(v.object({ ask: text(300), depth: whole(1, 4), models: some(list(model)) }))),
  rubric: some(
    list(
      v.object({
        trait: text(60),
        meets: text(200),
        'not yet': text(200),
        example: some(text(300)),
      }),
    ),
  ),
  rating: some(v.object({ ask: text(200), 'out of': whole(3, 5), reasons: some(list(text(120))) })),
  'best of': some(v.object({ ask: text(200), books: list(text(120)), last: some(text(200)) })),
  home: some(
    v.object({
      prompts: list(text(300)),
      example: some(list(v.object({ who: v.picklist(['grown-up', 'child']), says: text(300) }))),
      note: some(text(400)),
    }),
  ),
  pictures: some(
    list(
      v.object({
        file: fileName,
        alt: some(v.pipe(v.string(), v.maxLength(600))),
        decorative: some(v.boolean()),
        'text in picture': some(text(300)),
        credit: some(text(160)),
        rights: some(text(200)),
        stop: some(id),
      }),
    ),
  ),
  recording: some(
    v.object({
      file: some(fileName),
      captions: some(fileName),
      link: some(v.pipe(v.string(), v.trim(), v.url(), v.regex(/^https?:\/\//i), v.examples(['https://school.example/films/crow']))),
      permission: text(300),
    }),
  ),
  care: some(list(text(400))),
  'what fell flat': some(list(v.object({ stop: id, note: text(300), seen: some(date) }))),
  pace: paceSchema,
  durations: durationsSchema,
  'allow words': some(list(text(40))),
});

/** A pack's front matter under the author's own field names. */
export type FrontMatter = v.InferOutput<typeof packSchema>;
