/** A companion that is taken out leaves a page at each of its addresses that says when, why and where to go, and is found nowhere else. */
import { expect, test } from 'vitest';
import { readWholeLibrary } from '../../src/build/read-library.ts';
import { buildSmall, filesIn, smallLibrary, soundPack, textsIn } from './small-library.ts';

const settings = 'name: The shelf\nlanguage: en\nlanguages: [en, es]\ncontact: library@district.example\nrights: Each its own.\naddress: https://shelf.example/reading/\n';
const retired = (more: string, title = 'The Button Tin', language = 'en') =>
  `---\ntitle: ${title}\nlanguage: ${language}\nretired:\n  on: 2026-03-02\n  because: A newer companion asks better questions.\n${more}---\n`;

test('a retired pack keeps its addresses, in each language, and leaves search, index, sitemap and feeds but for the news', async () => {
  const library = await smallLibrary({
    'library.yaml': settings,
    'packs/hen/pack.md': await soundPack(),
    'packs/tin/pack.md': retired('  instead: hen\n'),
    'packs/jar/pack.md': retired('  instead: https://elsewhere.example/jar/\n', 'The Tall Jar'),
    // The rest of the file may be broken, or hold what has to go: nothing of it is read.
    'packs/tin/pack.es.md': retired('stops: none\nsummary: SECRET SENTENCE\nrecording: { file: tin.webm }\n', 'La lata de botones', 'es'),
  });
  expect(await buildSmall(library)).toMatchObject({ published: 1, leftOut: 0, findings: [] });
  const texts = await textsIn(library.site);
  const addresses = (await filesIn(library.site)).filter((file) => file.includes('packs/tin/'));
  const pages = ['', 'booklet/', 'lesson/'].map((part) => `packs/tin/${part}index.html`);
  const spanish = ['', 'booklet/', 'lesson/', 'recording/'].map((part) => `es/packs/tin/${part}index.html`);
  expect(addresses).toEqual([...spanish, 'es/packs/tin/offline.json', 'es/packs/tin/pack.json', ...pages, 'packs/tin/offline.json', 'packs/tin/pack.json'].sort());
  for (const page of [...pages, ...spanish]) expect(texts.get(page)).toContain('<meta name="robots" content="noindex"');
  for (const page of pages) {
    expect(texts.get(page)).toMatch(/This companion was taken out on March 2, 2026\./);
    expect(texts.get(page)).toContain('A newer companion asks better questions.');
    expect(texts.get(page)).toMatch(/href="(?:\.\.\/)+packs\/hen\/" hreflang="en">The Wheelbarrow Goes Home<\/a>/);
  }
  // A link of before, in whatever is made of the whole library, leads there no more, but for news and what the librarian reads.
  const naming = [...texts].filter(([, text]) => text.includes('packs/tin/')).map(([file]) => file);
  expect(naming.filter((file) => !file.includes('packs/tin/')).sort()).toEqual([
    'es/feed.json',
    'es/feed.xml',
    'es/librarian/index.html',
    'feed.json',
    'feed.xml',
    'librarian/index.html',
    'packs.json',
  ]);
  expect(texts.get('feed.xml')).toContain('<title>Taken out: The Button Tin</title>');
  expect([...texts.values()].some((text) => text.includes('SECRET SENTENCE'))).toBe(false);
  // Other programs are told in a list of its own, and at the pack's own address.
  const why = { on: '2026-03-02', because: 'A newer companion asks better questions.' };
  const gone = { title: 'The Tall Jar', language: 'en', retired: { ...why, instead: 'https://elsewhere.example/jar/' }, page: 'packs/jar/' };
  expect(JSON.parse(texts.get('packs.json') ?? '')).toMatchObject({ packs: [{ title: 'The Wheelbarrow Goes Home' }], retired: [gone, { page: 'packs/tin/' }, { page: 'es/packs/tin/' }] });
  expect(JSON.parse(texts.get('packs/jar/pack.json') ?? '')).toEqual(gone);
  expect(texts.get('packs/jar/index.html')).toContain('<a href="https://elsewhere.example/jar/" rel="noreferrer">');
});

test('a name or an address of a person is not published in the reason either', async () => {
  const library = await smallLibrary({
    'library.yaml': settings,
    'private/roster.txt': 'Quillon\n',
    'packs/tin/pack.md': retired('').replace('A newer companion asks better questions.', 'Quillon asked, quill@home.example'),
  });
  const { told, findings } = await readWholeLibrary(library.content);
  expect(findings.map(({ code, level }) => `${level} ${code}`).sort()).toEqual(['stop privacy/email', 'stop privacy/roster-name']);
  expect(told.map(({ pack, retired: left }) => [pack, left?.slug])).toEqual([[undefined, 'tin']]);
});

test('a companion and those that were made from it lead to each other, however the parent is named', async () => {
  const made = async (title: string, from: string, maker = 'The test shelf') =>
    soundPack(['title: The Wheelbarrow Goes Home', `title: ${title}`], ['by:\n  name: The test shelf\n', `by:\n  name: ${maker}\n  based on: ${from}\n`]);
  const library = await smallLibrary({
    'library.yaml': `${settings}sources:\n  - { folder: ../salt, owner: Saltmarsh School, prefix: salt }\n`,
    'packs/hen/pack.md': await soundPack(),
    'packs/by-slug/pack.md': await made('By its folder', 'hen'),
    'packs/by-address/pack.md': await made('By its address', 'https://shelf.example/reading/packs/hen/'),
    'packs/by-words/pack.md': await made('As the form writes it', 'The Wheelbarrow Goes Home, The test shelf, CC BY 4.0'),
    'packs/by-nothing/pack.md': await made('Only words', 'an old sheet of ours'),
    '../salt/goat/pack.md': await made('By a school', 'by-slug'),
    // In a school's own folder a name means the school's own pack first.
    '../salt/kid/pack.md': await made('Of the same school', 'goat'),
  });
  expect((await buildSmall(library)).findings).toEqual([]);
  const texts = await textsIn(library.site);
  const listed = (page: string) => [...(/<ul class="forks".*?<\/ul>/.exec(texts.get(`packs/${page}/index.html`) ?? '')?.[0] ?? '').matchAll(/hreflang="en">([^<]*)</g)].map(([, title]) => title);
  expect(listed('hen')).toEqual(['By its address', 'By its folder', 'As the form writes it']);
  expect([listed('by-slug'), listed('salt-goat'), listed('by-nothing')]).toEqual([['By a school'], ['Of the same school'], []]);
  expect(texts.get('packs/salt-goat/index.html')).toContain('Based on <a href="../../packs/by-slug/" hreflang="en">By its folder</a>.');
  expect(texts.get('packs/by-nothing/index.html')).toContain('Based on an old sheet of ours.');
  const { packs } = JSON.parse(texts.get('packs.json') ?? '') as { readonly packs: readonly { readonly title: string; readonly parent?: string; readonly forks?: readonly string[] }[] };
  expect(packs.find(({ title }) => title === 'By a school')).toMatchObject({ parent: 'packs/by-slug/', forks: ['packs/salt-kid/'] });
});
