/** What somebody does in the form, as a change of the file: only its lines change, and it means what was done. */
import { readdirSync, readFileSync } from 'node:fs';
import fc from 'fast-check';
import matter from 'gray-matter';
import { describe, expect, test } from 'vitest';
import plainMatter from '../../../src/browser/maker/plain-matter.ts';
import { addEdits, fieldEdits, moveStopEdits, newStopEdits, tickEdits } from '../../../src/browser/maker/edits.ts';
import { sameParts } from '../../../src/browser/maker/same-parts.ts';
import { partnersOf } from '../../../src/browser/maker/partners.ts';
import { isThere, isTranslated, translationEdits, untranslated } from '../../../src/browser/maker/translating.ts';
import { work } from '../../../src/browser/maker/work.ts';
import { listAt, textAt, valueAt } from '../../../src/browser/maker/words.ts';
import { fieldOrder } from '../../../src/core/pack/form-fields.ts';
import type { Raw } from '../../../src/core/pack/front-matter.ts';
import type { Step } from '../../../src/core/pack/pack.ts';
import type { Edit } from '../../../src/core/pack/write-pack.ts';

const files = ['content/packs', 'test/packs/sound', 'test/packs/one-mistake'].flatMap((folder) =>
  readdirSync(folder).flatMap((slug) =>
    readdirSync(`${folder}/${slug}`)
      .filter((name) => name.endsWith('.md'))
      .map((name) => `${folder}/${slug}/${name}`),
  ),
);
const demo = files.filter((file) => file.startsWith('content/')).map((file) => readFileSync(file, 'utf8'));
/** So many random edits; more with `BOOKFELLOW_RUNS=5000`. */
const numRuns = Number(process.env['BOOKFELLOW_RUNS'] ?? 50);

const edit = (text: string, edits: readonly Edit[]) => {
  const made = work.edit(text, edits, fieldOrder);
  if (!made) throw new Error(`not made: ${JSON.stringify(edits)}`);
  return made;
};
const known = new Map<string, Raw>();
const rawOf = (text: string): Raw => {
  const raw = known.get(text) ?? work.fields(text).raw ?? {};
  known.set(text, raw);
  return raw;
};

/** Steps of every text that a person can write in a file. */
function leaves(raw: Raw, steps: readonly Step[] = []): readonly (readonly Step[])[] {
  if (typeof raw === 'string') return [steps];
  return Object.entries(raw).flatMap(([step, value]) => leaves(value, [...steps, Array.isArray(raw) ? Number(step) : step]));
}
/** The fields with one of them different. */
function having(raw: Raw, [step, ...rest]: readonly Step[], value: string): Raw {
  if (step === undefined) return value;
  if (Array.isArray(raw)) return raw.map((item: Raw, index) => (index === step ? having(item, rest, value) : item));
  return { ...(raw as Readonly<Record<string, Raw>>), [step]: having((raw as Readonly<Record<string, Raw>>)[step] ?? {}, rest, value) };
}
const plain = (raw: Raw | undefined): unknown => JSON.parse(JSON.stringify(raw ?? null));

describe('one field typed in', () => {
  test('changes that field, and of the file only the lines it stands on', () => {
    const words = fc
      .string({ unit: fc.constantFrom(...Array.from('aeiou stñ¿¡:#-\'"“”,.[]{}&*!|>%@`0123')), minLength: 1, maxLength: 60 })
      .map((text) => text.trim())
      .filter((text) => text !== '');
    fc.assert(
      fc.property(fc.constantFrom(...demo), fc.nat(), words, (text, which, value) => {
        const raw = rawOf(text);
        const all = leaves(raw);
        const steps = all[which % all.length] ?? [];
        const made = edit(text, fieldEdits(raw, steps, value));
        expect(plain(made.fields.raw)).toEqual(plain(having(raw, steps, value)));
        const [before, after] = [text.split('\n'), made.text.split('\n')];
        let head = 0;
        while (head < before.length && before[head] === after[head]) head++;
        let tail = 0;
        while (tail < before.length - head && before[before.length - 1 - tail] === after[after.length - 1 - tail]) tail++;
        // The lines that went are those of the field: what is left of the file reads as the same field and no other.
        const gone = before.slice(head, before.length - tail);
        expect(gone.length).toBeLessThanOrEqual(
          Math.max(
            1,
            before.slice(head).findIndex((line, index) => index > 0 && /^\s*(?:- |[\w ]+:|---)/.test(line)),
          ),
        );
      }),
      { numRuns },
    );
  });

  test('as it was leaves every byte', () => {
    for (const text of demo) for (const steps of leaves(rawOf(text)).slice(0, 30)) expect(fieldEdits(rawOf(text), steps, textAt(rawOf(text), steps))).toEqual([]);
    for (const text of demo) expect(edit(text, []).text).toBe(text);
  });

  test('and emptied again leaves the file as it was', () => {
    for (const text of demo) {
      const first = edit(text, fieldEdits(rawOf(text), ['stops', 1, 'seated'], 'Show it with a finger.'));
      if (textAt(rawOf(text), ['stops', 1, 'seated']) === '') expect(edit(first.text, fieldEdits(first.fields.raw, ['stops', 1, 'seated'], '')).text).toBe(text);
    }
  });
});

describe('the form', () => {
  const empty = '---\nlanguage: en\n---\n';
  test('begins with next to nothing and writes a file in the usual order', () => {
    let { text } = edit(empty, fieldEdits(rawOf(empty), ['for', 'minutes'], '20'));
    text = edit(text, fieldEdits(rawOf(text), ['book', 'author'], 'Mina Alder')).text;
    text = edit(text, fieldEdits(rawOf(text), ['title'], 'A Hat: for the Goat')).text;
    text = edit(text, newStopEdits(rawOf(text), 4).edits).text;
    text = edit(text, [{ kind: 'body', markdown: '\n## More\n' }]).text;
    expect(text).toBe('---\ntitle: "A Hat: for the Goat"\nlanguage: en\nbook:\n  author: Mina Alder\nfor:\n  minutes: 20\nstops:\n  - id: stop-1\n    at:\n      opening: 4\n---\n\n## More\n');
  });
  test('ticks grades in their own order, and takes the list away with the last', () => {
    const grades = ['PreK', 'K', '1', '2'];
    let text = empty;
    for (const [grade, on] of [
      ['1', true],
      ['PreK', true],
      ['K', true],
      ['PreK', false],
    ] as const)
      text = edit(text, tickEdits(rawOf(text), ['for', 'grades'], grades, grade, on)).text;
    expect(listAt(rawOf(text), ['for', 'grades'])).toEqual(['K', '1']);
    for (const grade of ['K', '1']) text = edit(text, tickEdits(rawOf(text), ['for', 'grades'], grades, grade, false)).text;
    expect(valueAt(rawOf(text), ['for', 'grades'])).toBeUndefined();
  });
  test('keeps a list’s item whose last field is emptied', () => {
    const one = edit(empty, addEdits(rawOf(empty), ['words'], { word: 'stubborn' })).text;
    expect(plain(valueAt(rawOf(edit(one, fieldEdits(rawOf(one), ['words', 0, 'word'], '')).text), ['words']))).toEqual([{ word: '' }]);
  });
  test('keeps stops in the order of the book when one is moved, and puts a new one in its place', () => {
    let text = empty;
    for (const opening of [2, 9, 5]) text = edit(text, newStopEdits(rawOf(text), opening).edits).text;
    const order = () => listAt(rawOf(text), ['stops']).map((_, index) => `${textAt(rawOf(text), ['stops', index, 'id'])} on ${textAt(rawOf(text), ['stops', index, 'at', 'opening'])}`);
    expect(order()).toEqual(['stop-1 on 2', 'stop-3 on 5', 'stop-2 on 9']);
    const moved = moveStopEdits(rawOf(text), 0, 7);
    text = edit(text, moved.edits).text;
    expect([moved.to, ...order()]).toEqual([1, 'stop-3 on 5', 'stop-1 on 7', 'stop-2 on 9']);
  });
});

test('the browser’s few lines in place of gray-matter find the same text between the dashes', () => {
  const asked = (parse: (text: string, options: { language: string; engines: { yaml: { parse(yaml: string): object } } }) => unknown, text: string) => {
    const seen: string[] = [];
    parse(text, { language: 'yaml', engines: { yaml: { parse: (yaml) => (seen.push(yaml), {}) } } });
    return seen;
  };
  const texts = [
    ...files.map((file) =>
      readFileSync(file, 'utf8')
        .replace(/^\ufeff/, '')
        .replace(/\r\n?/g, '\n'),
    ),
    '---\n---\n',
    '---\n# only a remark\n---\n',
    '---\na: 1\n---',
    '---\n\n---\nbody\n---\n',
  ];
  for (const text of texts.filter((each) => /^---[ \t]*\n/.test(each))) expect(asked(plainMatter as never, text)).toEqual(asked(matter as never, text));
});

describe('a translation', () => {
  const text = demo[0] ?? '';
  const begun = edit(text, translationEdits(rawOf(text), 'es'));
  const beside = work.fields(text);
  test('begins as the same pack in another language, with everything still to do', () => {
    expect([textAt(begun.fields.raw, ['language']), valueAt(begun.fields.raw, ['by', 'reviewed']), textAt(begun.fields.raw, ['translation', 'by'])]).toEqual(['es', undefined, '']);
    const all = leaves(rawOf(text)).filter((steps) => isTranslated(steps) && textAt(rawOf(text), steps) !== '');
    expect(untranslated(begun.fields, beside)).toEqual([...all, ['body']]);
  });
  test('is less to do with each field that is written', () => {
    const left = untranslated(begun.fields, beside).length;
    const next = edit(begun.text, fieldEdits(begun.fields.raw, ['title'], 'Otro título'));
    expect(untranslated(next.fields, beside)).toHaveLength(left - 1);
  });
  test('leaves names, numbers, choices and addresses alone', () => {
    expect(
      [
        ['by', 'name'],
        ['stops', 0, 'id'],
        ['stops', 0, 'kind'],
        ['book', 'author'],
        ['pictures', 0, 'file'],
      ].filter((steps) => isTranslated(steps)),
    ).toEqual([]);
  });
});

describe('what is read again after a change', () => {
  test('has the very parts of before wherever they are the same, and means what was read', () => {
    const tree = fc.letrec((tie) => ({
      node: fc.oneof({ maxDepth: 4 }, fc.constantFrom('a', 'b', ''), fc.array(tie('node'), { maxLength: 3 }), fc.dictionary(fc.constantFrom('ask', 'at', 'id'), tie('node'), { maxKeys: 3 })),
    })).node;
    fc.assert(
      fc.property(tree, tree, (before, now) => {
        const copy: unknown = structuredClone(now);
        expect(sameParts(before, copy)).toEqual(now);
        expect(sameParts(now, copy)).toBe(now);
      }),
      { numRuns },
    );
    const stops = [
      { ask: 'Why?', at: { opening: '2' } },
      { ask: 'Who?', at: { opening: '5' } },
    ];
    const next = sameParts(stops, [
      { ask: 'Why not?', at: { opening: '2' } },
      { ask: 'Who?', at: { opening: '5' } },
    ]);
    expect([next[0]?.at === stops[0]?.at, next[0] === stops[0], next[1] === stops[1]]).toEqual([true, false, true]);
  });
});

describe('a translation', () => {
  test('has a place for a text where its item is there, or where it is the next line of a list', () => {
    const own = rawOf('---\nstops:\n  - ask: ¿Por qué?\n    frames:\n      - Creo que ___.\n---\n');
    expect([['title'], ['stops', 0, 'frames', 0], ['stops', 0, 'frames', 1], ['stops', 0, 'frames', 2], ['stops', 1, 'ask']].map((steps) => isThere(own, steps))).toEqual([
      true,
      true,
      true,
      false,
      false,
    ]);
  });
  const stops = (...all: readonly (readonly [id: string, ask: string])[]) => ({
    raw: rawOf(`---\nlanguage: en\nstops:\n${all.map(([id, ask]) => `  - { ${id === '' ? '' : `id: ${id}, `}ask: "${ask}" }\n`).join('')}---\n`),
    body: '',
  });
  test('has each stop beside the one with the same id, wherever it stands, and the rest in their order', () => {
    const theirs = stops(['rope', 'Why?'], ['door', 'Who?'], ['', 'Where?'], ['lamp', 'When?']);
    const own = stops(['lamp', '¿Cuándo?'], ['', '¿Dónde?'], ['rope', '¿Por qué?'], ['gate', '¿Quién?']);
    const { here, there, onlyHere, onlyThere } = partnersOf(own.raw, theirs.raw);
    const places = [0, 1, 2, 3].map((at) => here(['stops', at, 'ask'])?.[1]);
    // "door", the stop without a name and "gate" have no namesake: the first of each language stand beside each other, then the second.
    expect(places).toEqual([2, 1, 3, 0]);
    expect([0, 1, 2, 3].map((at) => there(['stops', at, 'ask'])?.[1])).toEqual([3, 1, 0, 2]);
    expect([onlyHere, onlyThere, here(['words', 1, 'word'])]).toEqual([[], [], ['words', 1, 'word']]);
    expect(untranslated(own as never, theirs as never)).toEqual([]);
  });
  test('says which stops have no partner, and counts what they ask as still to do', () => {
    const theirs = stops(['rope', 'Why?'], ['door', 'Who?'], ['lamp', 'When?']);
    const shorter = stops(['lamp', '¿Cuándo?']);
    expect([partnersOf(shorter.raw, theirs.raw).onlyThere, partnersOf(theirs.raw, shorter.raw).onlyHere]).toEqual([
      [0, 1],
      [0, 1],
    ]);
    expect(untranslated(shorter as never, theirs as never)).toEqual([
      ['stops', 0, 'ask'],
      ['stops', 1, 'ask'],
    ]);
    // A name that stands there twice is no name.
    expect(partnersOf(stops(['rope', 'A'], ['rope', 'B']).raw, stops(['lamp', 'C'], ['rope', 'D']).raw).here(['stops', 1, 'ask'])).toEqual(['stops', 1, 'ask']);
  });
});
