/** The page for whoever looks after a library, over libraries small enough to count by hand. */
import { expect, test } from 'vitest';
import { phrasesFor } from '../../src/core/languages/pick-language.ts';
import { finding } from '../../src/core/finding.ts';
import { mailTo, letterTo } from '../../src/outputs/letter-to-owner.ts';
import type { OwnerRow } from '../../src/outputs/views.ts';
import { buildSmall, smallLibrary, soundPack, textsIn } from '../build/small-library.ts';

const pack = { title: 'A Hat for the Goat', language: 'en', url: 'packs/hat/', from: 'Saltmarsh School' };
const place = { file: 'sources/salt/hat/pack.md', line: 12, column: 3 };
const row: OwnerRow = {
  owner: 'Saltmarsh School',
  contact: 'reading@saltmarsh.example',
  packs: 2,
  keptOff: 1,
  byLevel: { stop: 0, warn: 1, note: 1 },
  told: [
    { pack, finding: finding('privacy/room', 'warn', place, { found: 'Room 12, ask for Ana' }) },
    { pack, finding: finding('by/review-past', 'note', { ...place, line: 20 }, { reviewed: '2020-01-01', years: 2 }) },
  ],
  more: 3,
};

test('a letter names each place, says what to do, and repeats nothing that was found about a person', () => {
  const text = letterTo(row, 'The shelf', { contact: 'library@district.example' }, phrasesFor('en'), 'en');
  expect(text).toContain('About your 3 companions in The shelf:');
  expect(text).toContain('- A Hat for the Goat (sources/salt/hat/pack.md:12)');
  expect(text).not.toContain('Ana');
  expect(text).toContain('(sources/salt/hat/pack.md:20)');
  expect(text).toContain('… and 3 more.');
  expect(text).toContain('npx bookfellow check');
  expect(text.endsWith('library@district.example')).toBe(true);
});

test('a letter opens in a mail program as it is, cut at a line where an address would be too long, and only for a mail address', () => {
  const read = (address: string | undefined) => new URL(address ?? 'about:blank');
  const short = read(mailTo('a@b.example', 'Companions & more', 'First line\nSecond: 100 %'));
  expect([short.protocol, short.pathname, short.searchParams.get('subject'), short.searchParams.get('body')]).toEqual(['mailto:', 'a@b.example', 'Companions & more', 'First line\r\nSecond: 100 %']);
  const long = mailTo('a@b.example', 'S', Array.from({ length: 200 }, (_, line) => `line ${String(line)} of many`).join('\n')) ?? '';
  expect(long.length).toBeLessThanOrEqual(1800);
  expect(read(long).searchParams.get('body')).toMatch(/line \d+ of many\r\n…$/);
  expect(['https://school.example', 'Ask at the desk', 'a@b.example?bcc=all@c.example', undefined].map((contact) => mailTo(contact, 'S', 'T'))).toEqual([undefined, undefined, undefined, undefined]);
});

test('what came in since the site before, whose packs are kept off, and which grades have which skills', async () => {
  const skill = (name: string, grades: string) => soundPack(['grades: [K, 1]', `grades: [${grades}]`], ['readings:\n', `aims: [{ skill: ${name} }]\nreadings:\n`]);
  const files = {
    'library.yaml':
      'name: The shelf\nlanguage: en\nlanguages: [en]\ncontact: library@district.example\nrights: Each its own.\naddress: https://shelf.example/\nsources:\n  - { folder: ../salt, owner: Saltmarsh School, contact: reading@saltmarsh.example }\n',
    'packs/one/pack.md': await skill('Guess ahead', 'K, 1'),
    'packs/two/pack.md': await skill('Guess ahead', 'K'),
    'packs/odd/pack.md': 'title: Nobody may read this yet',
    '../salt/worse/pack.md': 'nothing',
    '../salt/three/pack.md': await skill('Name a feeling', '2'),
  };
  const library = await smallLibrary(files);
  await buildSmall(library);
  const first = (await textsIn(library.site)).get('librarian/index.html') ?? '';
  // Nobody knows when these came in: only the day of the last look is told.
  expect([...first.matchAll(/<tr data-day="([^"]+)"[^>]*>.*?<td>([^<]+)<\/td>/g)].map(([, day, what]) => `${day ?? ''} ${what ?? ''}`)).toEqual(Array(3).fill('2026-03-02 looked over'));
  const { writeFile, mkdir } = await import('node:fs/promises');
  await mkdir(`${library.content}/packs/four`);
  await writeFile(`${library.content}/packs/four/pack.md`, await soundPack());
  await buildSmall(library);
  const texts = await textsIn(library.site);
  const page = texts.get('librarian/index.html') ?? '';
  const today = new Date().toISOString().slice(0, 10);
  expect(JSON.parse(texts.get('arrivals.json') ?? '')).toEqual({ format: 1, pages: { 'packs/four/': today, 'packs/one/': '', 'packs/three/': '', 'packs/two/': '' } });
  expect(page).toMatch(new RegExp(`<tr data-day="${today}"><th scope="row"><a href="../packs/four/"[^>]*>[^<]*</a></th><td>came in</td>`));
  expect(page).toContain('<li>The library’s own: 1 companion</li><li>Saltmarsh School: 1 companion</li>');
  const cells = (name: string) => [...(new RegExp(`<th scope="row">${name}</th>(.*?)</tr>`).exec(page)?.[1] ?? '').matchAll(/<td>(.*?)<\/td>/g)].map(([, cell = '']) => cell.replace(/<[^>]*>/g, ''));
  // Preschool, kindergarten, grades 1 to 4.
  expect(cells('Guess ahead')).toEqual(['–', '2', '1', '–', '–', '–']);
  expect(cells('Name a feeling')).toEqual(['–', '–', '–', '1', '–', '–']);
  expect(cells('All companions')).toEqual(['–', '3', '2', '1', '–', '–']);
  // Nothing of a pack that is not published; no way there from a family's page, a search engine, or a list of pages.
  expect([...texts.values()].some((text) => text.includes('Nobody may read this yet'))).toBe(false);
  expect([...texts].filter(([file, text]) => file.endsWith('.html') && /href="[^"]*librarian\//.test(text)).map(([file]) => file)).toEqual(['quality/index.html']);
  expect(page).toContain('<meta name="robots" content="noindex"');
  expect(texts.get('sitemap.xml')).not.toContain('librarian');
});
