/**
 * What holds for every pack, tried with random ones. Elsewhere: any booklet comes back out of its file (`core/booklet/round-trip.test.ts`), a plan never
 * exceeds its minutes (`core/plan/short-lesson.test.ts`), any change of a pack's file is read back as it was meant (`core/pack/write-pack.test.ts`).
 * `BOOKFELLOW_TRIES=20` tries twenty times as often; a failure prints the seed and the smallest case.
 */
import { readFileSync } from 'node:fs';
import { mkdirSync, writeFileSync } from 'node:fs';
import { dirname, join, resolve } from 'node:path';
import fc from 'fast-check';
import { HtmlValidate, StaticConfigLoader, type ConfigData } from 'html-validate';
import { afterAll, expect, test } from 'vitest';
import { showPage } from '../../src/browser/maker/show-page.ts';
import { slugOf } from '../../src/build/slug.ts';
import { readWholeLibrary } from '../../src/build/read-library.ts';
import { defaultLibrary } from '../../src/core/pack/library.ts';
import { editPack } from '../../src/core/pack/write-pack.ts';
import { fileOf, packUrls } from '../../src/outputs/addresses.ts';
import { throughStages } from '../../src/outputs/through-stages.ts';
import { smallLibrary } from '../build/small-library.ts';
import { tries } from '../runs.ts';
import { everyField } from './every-field.ts';
import { sound } from './hostile-case.ts';
import { measured } from './peak.ts';
import { record } from './record.ts';

const today = '2026-11-25';
const source = (text: string) => ({ slug: 'hen', file: 'packs/hen/pack.md', text, languageOfFile: undefined, pictureFiles: [], passage: undefined });
/** Pieces that mean something to a reader of packs, and some that mean nothing. */
const piece = fc.oneof(
  fc.constantFrom(
    '---',
    '\n',
    '\n---\n',
    ': ',
    '- ',
    '  ',
    '{',
    '}',
    '[',
    ']',
    '"',
    "'",
    '|',
    '>',
    '&a ',
    '*a',
    '!!x ',
    '<<: ',
    '? ',
    '# ',
    '%',
    '@',
    '`',
    '```',
    '~~~',
    '<!--',
    '-->',
    '![',
    '](',
    '<',
    '\\',
    '\u0000',
    '\ufeff',
    '\r',
    '\u2028',
    '\ud800',
  ),
  fc.constantFrom('title', 'stops', 'book', '__proto__', 'constructor', 'id: a', 'openings: 12', 'pictures', 'answer: say', 'javascript:', '1e9'),
  fc.string({ unit: 'binary', maxLength: 12 }),
);
/** A sound pack with pieces put in, parts cut out and parts said again. */
const changed = fc.array(fc.tuple(fc.constantFrom('in', 'out', 'again'), fc.nat(), fc.nat({ max: 80 }), piece), { minLength: 1, maxLength: 8 }).map((changes) =>
  changes.reduce((text, [how, where, length, what]) => {
    const at = where % (text.length + 1);
    if (how === 'in') return text.slice(0, at) + what + text.slice(at);
    return how === 'out' ? text.slice(0, at) + text.slice(at + length) : text.slice(0, at + length) + text.slice(at);
  }, sound),
);
const anyText = fc.oneof(
  changed,
  fc.array(piece, { maxLength: 60 }).map((pieces) => `---\n${pieces.join('')}\n---\n${pieces.reverse().join('')}`),
  fc.string({ unit: 'binary', maxLength: 400 }),
);

let held = 0;
let cases = 0;
let spent = { ms: 0, peakMB: 0 };
async function proved(work: () => void | Promise<void>): Promise<void> {
  const { ms, peakMB } = await measured(work);
  spent = { ms: spent.ms + ms, peakMB: Math.max(spent.peakMB, peakMB) };
}
const counted = (): void => void (cases += 1);
afterAll(() => {
  record({ class: 'properties of any pack', cases, held, ...spent });
});

test('any text is a pack or findings, never an exception', async () => {
  await proved(() => {
    fc.assert(
      fc.property(anyText, (text) => {
        counted();
        const { pack, findings } = throughStages(source(text), defaultLibrary, today);
        expect(pack !== undefined || findings.some(({ level }) => level === 'stop')).toBe(true);
        for (const { place } of findings) expect(place.line >= 1 && place.line <= text.split(/\r\n|[\n\r]/).length + 1).toBe(true);
        held += 1;
      }),
      { numRuns: tries(150), seed: 9 },
    );
  });
});

test('any bytes on the disk are a pack or findings, and so are any bytes beside it', async () => {
  const library = await smallLibrary({ 'packs/hen/pack.md': sound });
  const name = fc.constantFrom('pack.md', 'pack.es.md', 'pictures/hill.png', 'recording/reading.mp4', 'recording/reading.vtt', 'private/passage.txt', 'private/roster.txt');
  await proved(() =>
    fc.assert(
      fc.asyncProperty(name, fc.uint8Array({ maxLength: 300 }), async (file, bytes) => {
        counted();
        const path = join(library.content, 'packs/hen', file);
        mkdirSync(dirname(path), { recursive: true });
        writeFileSync(path, bytes);
        const { told } = await readWholeLibrary(library.content, today);
        for (const { pack, findings } of told) expect(pack !== undefined || findings.some(({ level }) => level === 'stop')).toBe(true);
        held += 1;
      }),
      { numRuns: tries(40), seed: 10 },
    ),
  );
});

/** Fields that take any text, by their steps in the pack of every field. */
const fields = [
  ['title'],
  ['summary'],
  ['book', 'title'],
  ['book', 'author'],
  ['book', 'publisher'],
  ['by', 'name'],
  ['by', 'school'],
  ['by', 'licence'],
  ['aims', 0, 'skill'],
  ['readings', 0, 'purpose'],
  ['stops', 0, 'ask'],
  ['stops', 0, 'if quiet'],
  ['stops', 0, 'at', 'cue'],
  ['stops', 1, 'frames', 0],
  ['stops', 1, 'models', 0, 'text'],
  ['words', 0, 'meaning'],
  ['words', 0, 'word'],
  ['questions', 0, 'ask'],
  ['rubric', 0, 'meets'],
  ['rating', 'ask'],
  ['home', 'note'],
  ['care', 0],
] as const;
const breaking = fc
  .array(
    fc.oneof(
      fc.constantFrom('<', '>', '"', "'", '&', '`', '=', ' onload=', '</script>', '<!--', '-->', ']]>', '<b>', '{{', '}}', 'javascript:', '&#60;', '&lt', '\n', '\\', '$', '#', '*', '___', '\u2028'),
      fc.string({ maxLength: 6 }),
    ),
    { minLength: 1, maxLength: 8 },
  )
  .map((parts) => parts.join(''));
const plain = everyField('plain words', 'Some plain words that are long enough', 'A body.\n\n[A link](https://books.example "With a title"), `code`.\n\n> A quote');
const assets = { css: 'assets/a.css', printCss: 'assets/b.css', scripts: {}, later: [] };
const kinds = ['family', 'booklet', 'lesson'] as const;
const pageOf = (text: string, kind: (typeof kinds)[number]): string | undefined =>
  showPage({ to: { text, slug: 'hen', pictureFiles: [] }, kind, onPaper: false, library: defaultLibrary, language: 'en', today, url: 'make/', assets, pictures: {} })?.html;
/** Every element and attribute of a page. All of it must be marks as our own writer of pages writes them, so that nothing hides between them. */
function marksIn(html: string): ReadonlySet<string> {
  const data = html.replace(/(<script type="application\/(?:ld\+)?json"[^>]*>)[^<]*(<\/script>)/g, '$1$2').replace(/^<!DOCTYPE html>/, '');
  const tags = [...data.matchAll(/<([a-zA-Z][a-zA-Z0-9]*)((?: [a-zA-Z0-9:-]+(?:="[^"]*")?)*)\s*\/?>/g)];
  expect(tags.length).toBe((data.match(/<(?!\/[a-zA-Z0-9]+>)/g) ?? []).length);
  return new Set(tags.flatMap(([, name = '', attributes = '']) => [name, ...[...attributes.replace(/"[^"]*"/g, '""').matchAll(/[a-zA-Z][a-zA-Z0-9:-]*/g)].map((each) => `${name} ${each[0]}`)]));
}

test('a pack that passes gives sound pages, without an element or attribute that a text brought along', async () => {
  const config = JSON.parse(readFileSync(new URL('../../.config/html-validate.json', import.meta.url), 'utf8')) as ConfigData;
  const validator = new HtmlValidate(new StaticConfigLoader(config));
  const known = new Map(kinds.map((kind) => [kind, marksIn(pageOf(plain, kind) ?? '')]));
  const edits = fc.array(fc.tuple(fc.constantFrom(...fields), breaking), { minLength: 1, maxLength: 4 });
  let passed = 0;
  await proved(() =>
    fc.assert(
      fc.asyncProperty(edits, fc.constantFrom(...kinds), breaking, async (changes, kind, body) => {
        counted();
        const text = changes.reduce((all, [steps, value]) => editPack(all, { kind: 'set', steps, value }) ?? all, plain) + body;
        const { pack, findings } = throughStages(source(text), defaultLibrary, today);
        if (pack && !findings.some(({ level }) => level === 'stop')) {
          passed += 1;
          const html = pageOf(text, kind) ?? '';
          expect([...marksIn(html)].filter((mark) => !known.get(kind)?.has(mark) && !/^(?:br|em|strong|h[3-6]|ul|ol|li|pre|hr|s|a)\b/.test(mark))).toEqual([]);
          const report = await validator.validateString(html, 'page.html');
          expect(report.results.flatMap((result) => result.messages.map((each) => `${each.ruleId} ${each.message}`))).toEqual([]);
        }
        held += 1;
      }),
      { numRuns: tries(40), seed: 11 },
    ),
  );
  expect(passed).toBeGreaterThan(tries(10));
});

test('the address of any name is a plain one, stays as it is, and its pages are below the site', async () => {
  await proved(() => {
    fc.assert(
      fc.property(
        fc.oneof(
          fc.string({ unit: 'binary', maxLength: 120 }),
          fc.array(fc.constantFrom('..', '/', '\\', '%2e', 'con', 'CON', '.', ' ', ':', '\u202e', 'é', 'a', '-'), { maxLength: 12 }).map((parts) => parts.join('')),
        ),
        fc.constantFrom('en', 'es'),
        (name, language) => {
          counted();
          const slug = slugOf(name);
          expect(slug).toMatch(/^[a-z0-9]+(?:-[a-z0-9]+)*$/);
          expect(slug.length).toBeLessThanOrEqual(85);
          expect(slugOf(slug)).toBe(slug);
          for (const url of Object.values<string>({ ...packUrls(slug, language, 'en') })) expect(resolve('/site', fileOf(url)).startsWith('/site/')).toBe(true);
          held += 1;
        },
      ),
      { numRuns: tries(500), seed: 12 },
    );
  });
});
