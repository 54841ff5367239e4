import type { Raw } from '../../core/pack/front-matter.ts';
import type { Step } from '../../core/pack/pack.ts';
import type { Edit } from '../../core/pack/write-pack.ts';
import type { Fields } from '../../outputs/maker-fields.ts';
import { anyPath, textAt, valueAt } from './words.ts';

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

/** The steps of every text that is the same as in the language beside it, or not there: what is still to be translated. */
export function untranslated(own: Fields, beside: Fields): readonly (readonly Step[])[] {
  const left = textsIn(beside.raw ?? {}).filter((steps) => isTranslated(steps) && [textAt(beside.raw, steps), ''].includes(textAt(own.raw, steps)));
  return beside.body.trim() !== '' && [beside.body.trim(), ''].includes(own.body.trim()) ? [...left, ['body']] : left;
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
