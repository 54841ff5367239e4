import type { FieldWords } from '../core/languages/en-maker-fields.ts';
import type { Phrases } from '../core/languages/en.ts';
import { everyField, fieldOrder, formFields, type FieldKind, type FormField } from '../core/pack/form-fields.ts';

/**
 * The form that makes a pack, as plain data for the page: fields from the schema, words from the catalogue, and here
 * nothing but the order in which a teacher thinks.
 */

/** Chapters of the form with the paths of their fields. `body` is the Markdown below the fields. */
const chapterPaths = {
  book: ['language', 'title', 'book.title', 'book.author', 'book.illustrator', 'book.kinds', 'book.openings', 'book.words', 'summary', 'book.year', 'book.publisher', 'book.isbn'],
  class: ['for.grades', 'for.minutes', 'aims', 'care', 'for.ruling'],
  stops: ['stops'],
  words: ['words', 'feelings'],
  after: ['questions', 'rubric', 'rating', 'best of', 'what fell flat'],
  home: ['home', 'body'],
  readings: ['readings', 'pace', 'durations'],
  pictures: ['pictures', 'recording'],
  rights: ['by.name', 'by.school', 'by.licence', 'book.rights', 'book.rights note', 'by.reviewed', 'by.version', 'by.based on', 'translation', 'allow words', 'retired'],
  share: [],
} as const satisfies Readonly<Record<string, readonly string[]>>;

export type ChapterId = keyof typeof chapterPaths;

/** What is folded away at first, since a pack is good without it. */
const folded: ReadonlySet<string> = new Set([
  'book.year',
  'book.publisher',
  'book.isbn',
  ...['id', 'readings', 'about', 'seated', 'materials', 'wait', 'task', 'shares', 'words', 'listen for', 'if quiet', 'expand', 'must', 'value', 'after'].map((name) => `stops.*.${name}`),
  'stops.*.at.recording',
  ...['first met', 'gesture', 'picture', 'in other languages'].map((name) => `words.*.${name}`),
  'readings.*.must ask',
  'pictures.*.text in picture',
  'pictures.*.stop',
]);

/** The order within a group, where a teacher's differs from the schema's. Fields that are not named follow as the schema has them. */
const order: Readonly<Record<string, readonly string[]>> = {
  'stops.*.at': ['opening', 'picture', 'cue'],
  'stops.*': ['at', 'ask', 'kind', 'depth', 'answer', 'or', 'frames', 'models'],
};

/** A field whose value is a name from elsewhere in the pack. */
const refersTo: Readonly<Record<string, 'stop' | 'picture'>> = {
  'readings.*.must ask': 'stop',
  'stops.*.after': 'stop',
  'pictures.*.stop': 'stop',
  'what fell flat.*.stop': 'stop',
  'words.*.picture': 'picture',
};

/** Texts that are longer than a line. */
const long = 161;

export interface FormNode {
  readonly name: string;
  readonly path: string;
  readonly kind: FieldKind | 'long text' | 'body' | 'reference';
  readonly required: boolean;
  readonly least?: number;
  readonly most?: number;
  readonly choices?: readonly (readonly [value: string, label: string])[];
  readonly fields?: readonly FormNode[];
  readonly item?: FormNode;
  readonly refersTo?: 'stop' | 'picture';
  readonly folded?: true;
  readonly label: string;
  readonly hint: string;
  readonly example?: string;
}

export interface FormChapter {
  readonly id: ChapterId;
  readonly title: string;
  readonly lead: string;
  readonly fields: readonly FormNode[];
}

/** The chapters of the form in a language. */
export function makerForm(say: Phrases): readonly FormChapter[] {
  return Object.entries(chapterPaths).map(([id, paths]) => {
    const [title = id, lead = ''] = say.maker.chapters[id] ?? [];
    return { id: id as ChapterId, title, lead, fields: paths.map((path) => nodeAt(path, say)) };
  });
}

/** Paths in the order in which a file has its fields. */
export const orderOfFile = fieldOrder;

const all = new Map(everyField(formFields).map((field) => [field.path, field]));

function nodeAt(path: string, say: Phrases): FormNode {
  if (path === 'body') {
    const [label, hint, example] = say.maker.body;
    return { name: 'body', path, kind: 'body', required: false, label, hint, example };
  }
  const field = all.get(path);
  if (!field) throw new Error(`the schema has no field ${path}`);
  return nodeOf(field, say);
}

function nodeOf(field: FormField, say: Phrases): FormNode {
  const [label, hint, example] = wordsOf(field, say);
  const { name, path, required, least, most, choices, fields, item } = field;
  const kind = refersTo[path] ? 'reference' : field.kind === 'text' && (most ?? 0) >= long ? 'long text' : field.kind;
  return {
    name,
    path,
    kind,
    required,
    label,
    hint,
    ...(example !== undefined && { example }),
    ...(least !== undefined && { least }),
    ...(most !== undefined && { most }),
    ...(choices && { choices: choices.map((value) => [value, choiceName(path, value, say)] as const) }),
    ...namedNumbers(path, field, say),
    ...(fields && { fields: inOrder(path, fields).map((each) => nodeOf(each, say)) }),
    ...(item && { item: nodeOf(item, say) }),
    ...(refersTo[path] && { refersTo: refersTo[path] }),
    ...(folded.has(path) && { folded: true as const }),
  };
}

/** The item of a list is called as the list. */
function wordsOf(field: FormField, say: Phrases): FieldWords {
  const own = say.maker.fields[field.path.replace(/(?:\.\*)+$/, '')];
  return own ?? [field.path, ''];
}

function inOrder(path: string, fields: readonly FormField[]): readonly FormField[] {
  const first = order[path] ?? [];
  const place = (field: FormField) => (first.includes(field.name) ? first.indexOf(field.name) : first.length);
  return [...fields].sort((a, b) => place(a) - place(b));
}

/** Numbers that people know by a name: depths and strengths. */
function namedNumbers(path: string, field: FormField, say: Phrases): Pick<FormNode, 'choices'> {
  const names = field.name === 'depth' ? say.depths : path === 'feelings.*.strength' ? say.strengths : undefined;
  if (names) return { choices: names.map((name, index) => [String(index + 1), name] as const) };
  if (path === 'stops.*.readings.*') return { choices: ['1', '2', '3', '4', '5'].map((number) => [number, number] as const) };
  return {};
}

function choiceName(path: string, value: string, say: Phrases): string {
  const last = path.split('.').findLast((step) => step !== '*') ?? '';
  const known: Readonly<Record<string, Readonly<Record<string, string>>>> = {
    kind: say.kinds,
    kinds: say.find.kindsOfBook,
    answer: say.ways,
    or: say.ways,
    rights: say.rightsOf,
    family: say.families,
    ...say.maker.choices,
  };
  return known[last]?.[value] ?? value;
}
