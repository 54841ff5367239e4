/** Finding a book: the demo's own packs among 400 invented ones, asked for as people ask; slips, choices, and parts that stay small. */
import { readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import fc from 'fast-check';
import { beforeAll, describe, expect, test } from 'vitest';
import { readContent } from '../../../src/build/read-content.ts';
import { choiceFields, choiceFrom, queryOf } from '../../../src/core/find/choice.ts';
import { meantBy } from '../../../src/core/find/find.ts';
import { makeIndex, type FindIndex, type ToFind } from '../../../src/core/find/find-index.ts';
import { fold, foldedWords } from '../../../src/core/find/fold.ts';
import { slipsBetween } from '../../../src/core/find/slips.ts';
import { readPack } from '../../../src/core/pack/read-pack.ts';
import { families, grades, kinds, kindsOfBook, ways } from '../../../src/core/pack/schema.ts';
import { toFind } from '../../../src/outputs/find-files.ts';
import { ask, chosenBy } from './ask.ts';
import { crowd, slipped } from './crowd.ts';
import { seeded } from '../../speed/invented-library.ts';

const indexes = new Map<string, FindIndex>();
beforeAll(async () => {
  const { sources } = await readContent(fileURLToPath(new URL('../../../content', import.meta.url)));
  const packs = sources.flatMap((source) => readPack(source).value ?? []);
  for (const language of ['en', 'es']) {
    const own = packs.filter((pack) => pack.language === language).map((pack) => toFind(pack, pack.slug));
    const all = [...own, ...crowd(400, language)].sort((a, b) => (a.pack.title < b.pack.title ? -1 : 1));
    indexes.set(language, makeIndex(language, all));
  }
});

describe('questions as people ask them', () => {
  const questions = readFileSync(new URL('questions.txt', import.meta.url), 'utf8')
    .split('\n')
    .filter((line) => line.includes('=>'))
    .map((line) => {
      const [question = '', slug = ''] = line.split('=>').map((part) => part.trim());
      return question.startsWith('es:') ? { language: 'es', words: question.slice(3).trim(), slug } : { language: 'en', words: question, slug };
    });

  test(`the right pack is among the first three for at least 95 of 100 of the ${questions.length} questions`, () => {
    const missed = questions.filter(({ language, words, slug }) => {
      const index = indexes.get(language);
      return !index || !ask(index, { words }).urls.slice(0, 3).includes(slug);
    });
    process.stdout.write(`search: ${questions.length - missed.length} of ${questions.length} questions; missed: ${missed.map(({ words }) => words).join(', ') || 'none'}\n`);
    expect(questions.length).toBeGreaterThanOrEqual(60);
    expect(1 - missed.length / questions.length).toBeGreaterThanOrEqual(0.95);
  });

  test.each(['en', 'es'])('and so is an invented one of 400, asked for by its title and its author with a slip of the pen in each longer word (%s)', (language) => {
    const packs = crowd(400, language);
    const index = indexes.get(language) as FindIndex;
    const random = seeded(20_261_128);
    const asked = Array.from({ length: 30 }, () => {
      const { listed, pack } = packs[Math.floor(random() * packs.length)] as ToFind;
      return {
        url: listed.url,
        words: `${pack.title} ${pack.book.author}`
          .split(' ')
          .map((word) => slipped(word, random))
          .join(' '),
      };
    });
    const missed = asked.filter(({ words, url }) => !ask(index, { words }).urls.slice(0, 3).includes(url));
    process.stdout.write(`search: ${asked.length - missed.length} of ${asked.length} invented packs (${language}); missed: ${missed.map(({ words }) => words).join(', ') || 'none'}\n`);
    expect(1 - missed.length / asked.length).toBeGreaterThanOrEqual(0.95);
  });

  test('a question that nothing answers finds nothing', () => {
    expect(indexes.get('en') && ask(indexes.get('en') as FindIndex, { words: 'zzyzx' }).urls).toEqual([]);
  });
});

describe('what is chosen', () => {
  const packs = crowd(300, 'en');
  const index = makeIndex('en', packs);
  const all = packs.map(({ pack, listed }) => ({ pack, url: listed.url }));

  test('grade, minutes, kind of book, way, kind of stop, feeling, skill, school, rights, recording and review are each and together what a plain look through all packs gives', () => {
    fc.assert(
      fc.property(
        fc.record({
          grade: fc.constantFrom('', ...grades),
          minutes: fc.constantFrom('', '10', '20'),
          book: fc.constantFrom('', ...kindsOfBook),
          skill: fc.constantFrom('', '', 'Skill 3'),
          recording: fc.constantFrom('', '1'),
          way: fc.constantFrom('', ...ways),
          kind: fc.constantFrom('', ...kinds),
          feeling: fc.constantFrom('', ...families),
          school: fc.constantFrom('', 'School 3'),
          rights: fc.constantFrom('', 'our own'),
          since: fc.constantFrom('', '2024-01-01'),
        }),
        (wanted) => {
          const plain = all
            .filter(
              ({ pack }) =>
                (wanted.grade === '' || pack.for.grades.some((each) => each === wanted.grade)) &&
                (wanted.minutes === '' || pack.for.minutes <= Number(wanted.minutes)) &&
                (wanted.book === '' || (pack.book.kinds ?? []).some((each) => each === wanted.book)) &&
                (wanted.skill === '' || (pack.aims ?? []).some(({ skill }) => skill === wanted.skill)) &&
                (wanted.recording === '' || pack.recording !== undefined) &&
                (wanted.way === '' || pack.stops.some((stop) => stop.answer === wanted.way)) &&
                (wanted.kind === '' || pack.stops.some((stop) => stop.kind === wanted.kind)) &&
                (wanted.feeling === '' || (pack.feelings ?? []).some(({ family }) => family === wanted.feeling)) &&
                (wanted.school === '' || pack.by.school === wanted.school) &&
                (wanted.rights === '' || pack.book.rights === wanted.rights) &&
                (wanted.since === '' || (pack.by.reviewed ?? '') >= wanted.since),
            )
            .map(({ url }) => url);
          expect(ask(index, wanted).urls).toEqual(plain);
        },
      ),
      { numRuns: 300 },
    );
  });

  test('a pack whose maker names no school is found by the owner of the folder that it came in', () => {
    const [first, second] = packs as [ToFind, ToFind];
    const { school, ...by } = first.pack.by;
    const lent = { ...first, pack: { ...first.pack, by, owner: { name: 'Saltgate School', contact: undefined, prefix: 'saltgate' } } };
    const small = makeIndex('en', [lent, second]);
    expect(small.words.facets.schools).toEqual(['Saltgate School', second.pack.by.school]);
    expect(school).toBeDefined();
    expect([ask(small, { school: 'Saltgate School' }).urls, ask(small, { words: 'saltgate' }).urls]).toEqual([[first.listed.url], [first.listed.url]]);
  });

  test('a value that the library does not have lets nothing through; an unknown order is the order of titles', () => {
    expect(ask(index, { grade: '11' }).urls).toEqual([]);
    expect(ask(index, { school: 'Nowhere' }).urls).toEqual([]);
    expect(ask(index, { since: 'soon' }).urls).toEqual([]);
    expect(ask(index, { order: 'luck' }).urls).toEqual(all.map(({ url }) => url));
  });

  test('any choice goes into the address and comes back the same', () => {
    const field = fc.string({ maxLength: 40 }).map((text) => text.trim());
    fc.assert(
      fc.property(fc.record(Object.fromEntries(choiceFields.map((name) => [name, field]))), (fields) => {
        const choice = { ...chosenBy(fields), page: '' };
        expect(choiceFrom(new URLSearchParams(queryOf(choice)))).toEqual(choice);
      }),
      { numRuns: 300 },
    );
  });
});

describe('words', () => {
  test.each([
    ['Corazón', 'corazon'],
    ['NIÑO', 'nino'],
    ['the cat’s', 'the cat'],
    ['مَدْرَسَة', 'مدرسه'],
    ['أحمد', 'احمد'],
  ])('%s is looked for as %s', (text, folded) => {
    expect(fold(text)).toBe(folded);
  });

  test.each([
    ['button', 'buton', 1],
    ['mouse', 'mosue', 1],
    ['lamp', 'lamb', 1],
    ['weather', 'wether', 1],
    ['kitten', 'sitting', 3],
    ['', 'abc', 3],
  ])('between %s and %s lie %i slips', (a, b, slips) => {
    expect(slipsBetween(a, b, 5)).toBe(slips);
    expect(slipsBetween(b, a, 5)).toBe(slips);
    expect(slipsBetween(a, b, slips - 1)).toBeUndefined();
  });

  test('a word that is there is no slip of one two letters away; with nothing nearer, two slips are forgiven', () => {
    const words = ['fable', 'garden', 'marble', 'marbles'];
    const meant = (asked: string) => (meantBy(asked, words)[0] ?? []).map(({ place }) => words[place]);
    expect(meant('marble')).toEqual(['marble', 'marbles']);
    expect(meant('mable')).toEqual(['marble', 'fable']);
    expect(meant('graden')).toEqual(['garden']);
    expect(meant('gradn')).toEqual([]);
    expect(meant('graedn')).toEqual(['garden']);
  });

  test('signs that mean something elsewhere are words or nothing, never a fault', () => {
    fc.assert(
      fc.property(fc.string({ unit: 'binary', maxLength: 60 }), (text) => {
        expect(foldedWords(text).every((word) => word !== '')).toBe(true);
        ask(indexes.get('en') as FindIndex, { words: text });
      }),
      { numRuns: 60 },
    );
  });
});

describe('what a first search fetches', () => {
  test('stays under 120 kB compressed in a library of 1,000 packs', () => {
    const index = makeIndex('en', crowd(1000, 'en'));
    const most = ['lamp', 'the clown and the planet', 'wether boot cot plent', 'Author story', 'a'].map((words) => ask(index, { words }).kilobytes);
    process.stdout.write(`search: a first one in 1,000 packs fetches at most ${Math.max(...most).toFixed(0)} kB\n`);
    expect(Math.max(...most)).toBeLessThan(120);
  });
});
