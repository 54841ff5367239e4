import type { Raw } from '../../core/pack/front-matter.ts';
import type { Step } from '../../core/pack/pack.ts';
import type { Edit } from '../../core/pack/write-pack.ts';
import type { Fields } from '../../outputs/maker-fields.ts';
import { partnersOf } from './partners.ts';
import { anyPath, listAt, textAt, valueAt } from './words.ts';

/** What a translator writes anew: texts for people. Names, numbers, choices and addresses stay as they are. */
const anew: ReadonlySet<string> = new Set([
  ...['title', 'summary', 'book.rights note', 'aims.*.skill', 'aims.*.standard.paraphrase', 'readings.*.purpose'],
  ...['at.cue', 'ask', 'seated', 'materials.*', 'frames.*', 'words.*', 'models.*.text', 'models.*.shows.*', 'listen for', 'if quiet', 'expand'].map((name) => `stops.*.${name}`),
  ...['word', 'meaning', 'situation', 'gesture'].map((name) => `words.*.${name}`),
  ...['word', 'situation'].map((name) => `feelings.*.${name}`),
  ...['ask', 'models.*.text', 'models.*.shows.*'].map((name) => `questions.*.${name}`),
  ...['trait', 'meets', 'not yet', 'example'].map((name) => `rubric.*.${name}`),
  ...[
    'rating.ask',
    'rating.reasons.*',
    'best of.ask',
    'best of.books.*',
    'best of.last',
    'home.prompts.*',
    'home.example.*.says',
    'home.note',
    'pictures.*.alt',
    'pictures.*.text in picture',
    'care.*',
    'body',
  ],
]);

export function isTranslated(steps: readonly Step[]): boolean {
  return anew.has(anyPath(steps));
}

/** The other language's steps of every text that is the same here, or not there: what is still to be translated. */
export function untranslated(own: Fields, beside: Fields): readonly (readonly Step[])[] {
  const textOf = (fields: Fields, steps: readonly Step[]): string => (steps === bodySteps ? fields.body.trim() : textAt(fields.raw, steps));
  const partners = partnersOf(own.raw, beside.raw);
  return textsToTranslate(beside).filter((steps) => {
    const here = partners.here(steps);
    return here === undefined || [textOf(beside, steps), ''].includes(textOf(own, here));
  });
}

/** The Markdown below the fields, as a field of its own. */
export const bodySteps: readonly Step[] = ['body'];

/** The steps of every text of a pack that a translator writes anew, in the file's order. */
export function textsToTranslate({ raw, body }: Fields): readonly (readonly Step[])[] {
  const texts = textsIn(raw ?? {}).filter(isTranslated);
  return body.trim() === '' ? texts : [...texts, bodySteps];
}

/** True where a text can be written without making a new item of a list of groups, which would have nothing else in it. */
export function isThere(raw: Raw | undefined, steps: readonly Step[]): boolean {
  return steps.every((step, index) => {
    if (typeof step !== 'number') return true;
    const { length } = listAt(raw, steps.slice(0, index));
    return step < length || (step === length && index === steps.length - 1);
  });
}

function textsIn(raw: Raw, steps: readonly Step[] = []): readonly (readonly Step[])[] {
  if (typeof raw === 'string') return raw === '' ? [] : [steps];
  if (Array.isArray(raw)) return (raw as readonly Raw[]).flatMap((item, index) => textsIn(item, [...steps, index]));
  return Object.entries(raw).flatMap(([name, value]) => textsIn(value, [...steps, name]));
}

/** What makes a translation of a pack: its language, a place for who translated it, and no mark of having been looked over. */
export function translationEdits(raw: Raw | undefined, language: string): readonly Edit[] {
  return [
    { kind: 'set', steps: ['language'], value: language },
    ...(valueAt(raw, ['translation']) === undefined ? [] : [{ kind: 'remove', steps: ['translation'] } as const]),
    { kind: 'set', steps: ['translation', 'by'], value: '' },
    ...(valueAt(raw, ['by', 'reviewed']) === undefined ? [] : [{ kind: 'remove', steps: ['by', 'reviewed'] } as const]),
  ];
}
