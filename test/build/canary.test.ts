/**
 * A library in which everything private holds a word of its own, found nowhere else. It is built whole, and every byte
 * of every file of the site is looked through: none of the words may be there, and of the passage only what a cue quotes.
 */
import { readFile } from 'node:fs/promises';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { deflateSync, gzipSync } from 'node:zlib';
import sharp from 'sharp';
import { afterAll, describe, expect, test } from 'vitest';
import { runFinder } from '../../src/core/measure/shared-runs.ts';
import { plainWord, tokensOf } from '../../src/core/measure/words.ts';
import { build } from '../../src/build/build.ts';
import { measured } from '../hostile/peak.ts';
import { blackPng, chunk } from '../hostile/png.ts';
import { record } from '../hostile/record.ts';
import { readPdf } from '../paper/read-pdf.ts';
import { buildSmall, filesIn, smallLibrary, soundPack } from './small-library.ts';
import { insideOf, zipEntries } from './inside-files.ts';

const cue = 'and the lantern went round';
/** Sentences of a book that nobody wrote; in each one a word that is in no language. */
const sentences = [
  'Odile found a zibellig under the stairs, and it was asleep.',
  'Nobody had told her that a vorrupine sleeps standing up.',
  `She turned it once, ${cue}, and then it was morning.`,
  'The quagmarel of the house came down and asked for bread.',
  '“I have only a thimbrick,” said Odile, and she gave it away.',
  'After that the whole hill smelled of warm drossofer.',
];
const passage = Array.from({ length: 6 }, (_, opening) => `[opening ${opening + 1}]\n${sentences[opening] ?? ''}\n${'It rained on the roof, on the lane and on the last gray field. '.repeat(3)}`).join(
  '\n\n',
);
const inSpanish = '[opening 1]\nOdile halló un cerbuñel debajo de la escalera, y dormía como una piedra en el río.\n';

/** Words that stand in something private, and where. */
const secrets: Readonly<Record<string, string>> = {
  zibellig: 'the passage',
  vorrupine: 'the passage',
  quagmarel: 'the passage',
  thimbrick: 'the passage',
  drossofer: 'the passage',
  cerbuñel: 'the passage in Spanish',
  canaryremark: 'a remark in the YAML',
  canaryvalue: 'the value of an unknown field',
  canarycomment: 'a comment in the body',
  canarylibrary: 'a remark in library.yaml',
  canarylocal: 'private/local.md',
  canarysheet: 'private/seating.csv',
  Tamsinwyck: 'private/roster.txt of the pack',
  Ossowitzky: 'private/roster.txt of the library',
  canarynotes: 'a file beside the pack',
  canarydraft: 'a hidden file',
  canarycaption: 'a remark in the captions',
  canaryphoto: 'the hidden data of a photo',
  canaryiptc: 'the news data of a photo',
  canarytext: 'the texts of a PNG',
  canaryenvironment: 'the environment of the build',
  canarybackup: 'a pack file under another name',
};

const film = await readFile(fileURLToPath(new URL('../packs/sound/every-field/recording/reading.mp4', import.meta.url)));
const photo = await sharp({ create: { width: 600, height: 400, channels: 3, background: '#8aa' } })
  .withExif({ IFD0: { Copyright: 'canaryphoto', ImageDescription: 'canaryphoto' }, IFD3: { GPSLatitudeRef: 'N', GPSLatitude: '41/1 24/1 0/1' } })
  .withXmp('<x:xmpmeta xmlns:x="adobe:ns:meta/"><rdf:RDF xmlns:rdf="http://www.w3.org/1999/02/22-rdf-syntax-ns#"><rdf:Description rdf:about="canaryphoto"/></rdf:RDF></x:xmpmeta>')
  .jpeg()
  .toBuffer();

/** News data as cameras and agencies write it: a block of Photoshop's with IPTC record 2:120, the caption. Source: IPTC-NAA IIM 4; from memory. */
const iptc = Buffer.concat([Buffer.from('Photoshop 3.0\0' + '8BIM\u0004\u0004\0\0', 'latin1'), Buffer.from([0, 0, 0, 16, 0x1c, 2, 120, 0, 10]), Buffer.from('canaryiptc'), Buffer.alloc(1)]);
const withNews = Buffer.concat([photo.subarray(0, 2), Buffer.from([0xff, 0xed, 0, iptc.length + 2]), iptc, photo.subarray(2)]);
const withTexts = blackPng(600, 400, [
  chunk('tEXt', Buffer.from('Comment\0canarytext')),
  chunk('zTXt', Buffer.concat([Buffer.from('Author\0\0'), deflateSync('canarytext')])),
  chunk('iTXt', Buffer.from('XML:com.adobe.xmp\0\0\0\0\0canarytext')),
]);

const pack = await soundPack(
  ['rights: our own', 'rights: in copyright'],
  ['words: 300', 'words: 300 # canaryremark'],
  ['title: The Wheelbarrow', '# canaryremark\ntitle: The Wheelbarrow'],
  ['  minutes: 30', '  minutes: 30\n  mood board: canaryvalue\nclass list: [canaryvalue, { of: canaryvalue }]'],
  ['and the wheel went round', cue],
  [
    '\n---\n\n## About',
    '\npictures:\n  - { file: barrow.jpg, alt: A barrow on a hill., rights: Drawn for this test. }\n  - { file: path.png, alt: A black path., rights: Drawn for this test. }\nrecording: { file: reading.mp4, captions: reading.vtt, permission: Ours to try. }\n---\n\n<!-- canarycomment\ncanarycomment -->\n\n## About',
  ],
);
const library = await smallLibrary({
  'library.yaml': '# canarylibrary\nname: The canary shelf # canarylibrary\nlanguage: en\nlanguages: [en, es]\ncontact: nobody\nrights: none\naddress: https://shelf.example/\n',
  'private/roster.txt': 'Ossowitzky\n',
  'packs/hen/pack.md': pack,
  'packs/hen/pack.es.md': pack.replace('language: en', 'language: es'),
  'packs/hen/pack.md.bak': 'canarybackup',
  'packs/hen/pack-old.md': pack.replace('Odile borrows', 'canarybackup borrows'),
  'packs/hen/private/passage.txt': passage,
  'packs/hen/private/passage.es.txt': inSpanish,
  'packs/hen/private/local.md': '# For the substitute\n\ncanarylocal, the code of the door, and who sits where',
  'packs/hen/private/seating.csv': 'canarysheet,1,2',
  'packs/hen/private/roster.txt': 'Tamsinwyck\n',
  'packs/hen/notes.txt': 'canarynotes',
  'packs/hen/.draft.md': 'canarydraft',
  'packs/hen/pictures/barrow.jpg': withNews,
  'packs/hen/pictures/path.png': withTexts,
  'packs/hen/recording/reading.mp4': film,
  'packs/hen/recording/reading.vtt': 'WEBVTT\n\nNOTE canarycaption\n\n00:01.000 --> 00:05.000\nHere we stop and think.\n',
});
process.env['BOOKFELLOW_CANARY'] = 'canaryenvironment';
const { value: built, ms, peakMB } = await measured(() => build({ content: library.content, site: library.site, cache: library.cache, strict: false, paper: true, folders: true }));
delete process.env['BOOKFELLOW_CANARY'];
const files = await filesIn(library.site);
/** What each file holds; of a PDF, its text as well, which an embedded font turns into numbers. */
const inside = new Map<string, readonly string[]>();
for (const file of files) {
  const path = join(library.site, file);
  inside.set(file, [file, ...insideOf(file, await readFile(path)), ...(file.endsWith('.pdf') ? [Buffer.from((await readPdf(path)).text, 'utf8').toString('latin1')] : [])]);
}

/** The files of each folder to take along. */
const folders = await Promise.all(files.filter((file) => file.endsWith('.zip')).map(async (file) => [file, zipEntries(await readFile(join(library.site, file)))] as const));

/** Where on this machine the library, the program and what is kept for later lie. */
const places = [
  ['library', library.folder],
  ['content', library.content],
  ['cache', library.cache],
  ['program', fileURLToPath(new URL('../../', import.meta.url))],
] as const;

/** The files that hold a word: as it is in bytes of UTF-8, or with two bytes a letter, as PDF and photos keep texts too. */
function filesWith(word: string): readonly string[] {
  const ways = [
    Buffer.from(word, 'utf8').toString('latin1'),
    Buffer.from(word, 'utf16le').toString('latin1'),
    Buffer.from(word, 'utf16le').swap16().toString('latin1'),
    Buffer.from(word, 'utf8').toString('base64').slice(0, -4),
  ];
  return [...inside].filter(([, texts]) => texts.some((text) => ways.some((way) => text.toLowerCase().includes(way.toLowerCase())))).map(([file]) => file);
}

describe('the canaries', () => {
  test('were there to be found, and the packs are published', () => {
    expect(built.findings.filter((found) => found.level === 'stop')).toEqual([]);
    expect(built.published).toBe(2);
    expect(files.length).toBeGreaterThan(20);
    expect(files.filter((file) => file.endsWith('.pdf')).length).toBeGreaterThan(1);
    expect([withNews.includes('canaryphoto'), withNews.includes('canaryiptc'), withTexts.includes('canarytext')]).toEqual([true, true, true]);
    // The folders to take along were looked into, and hold the pages.
    expect(folders.flatMap(([, entries]) => entries.map(([name]) => name)).filter((name) => name.endsWith('.html'))).toHaveLength(3 * folders.length);
    expect(folders).toHaveLength(2);
  });

  let held = 0;
  afterAll(() => {
    record({ class: 'secrets', cases: Object.keys(secrets).length + places.length, held, ms, peakMB });
  });

  test.each(Object.entries(secrets))('%s, of %s, is in no file of the site', (word) => {
    expect(filesWith(word)).toEqual([]);
    held += 1;
  });

  test.each(places)('no file says where on the machine the %s lies', (_, place) => {
    expect(filesWith(place)).toEqual([]);
    held += 1;
  });

  test('no four words of the passage follow each other in any file, but those of the cue', async () => {
    const finder = runFinder(wordsOf(passage));
    const quoted = ` ${wordsOf(cue).join(' ')} `;
    const given: string[] = [];
    let cues = 0;
    const isText = (name: string) => /\.(?:html|json|vtt|xml|txt|md|csv|ics|webmanifest|js)$/.test(name);
    const texts: (readonly [file: string, text: string])[] = [];
    for (const file of files) {
      if (file.endsWith('.pdf')) texts.push([file, (await readPdf(join(library.site, file))).text]);
      else if (isText(file)) texts.push([file, readable(await readFile(join(library.site, file), 'utf8'))]);
    }
    for (const [folder, entries] of folders) for (const [name, content] of entries) if (isText(name)) texts.push([`${folder}/${name}`, readable(content.toString('utf8'))]);
    for (const [file, text] of texts) {
      const words = wordsOf(text);
      for (const run of finder.runsIn(words)) {
        const shared = words.slice(run.from, run.from + run.words).join(' ');
        if (quoted.includes(` ${shared} `)) cues += Number(run.words === 5);
        else if (run.words >= 4) given.push(`${file}: ${shared}`);
      }
    }
    expect(given).toEqual([]);
    // The cue is on the pages, so the test does read what a visitor reads.
    expect(cues).toBeGreaterThanOrEqual(2 + folders.length);
  });
});

test('a pack that quotes more than it may is not published, and the report holds three words of it', async () => {
  const long = sentences[0]?.slice(0, -1) ?? '';
  const other = await smallLibrary({
    'packs/hen/pack.md': await soundPack(['rights: our own', 'rights: in copyright'], ['What will Odile do', `${long} at last. What will Odile do`]),
    'packs/hen/private/passage.txt': passage.replace('asleep.', 'asleep at last.'),
  });
  const { findings, published } = await buildSmall(other);
  expect(published).toBe(0);
  expect(findings.filter(({ level }) => level === 'stop').map(({ code, facts }) => [code, 'begins' in facts ? facts.begins : ''])).toEqual([['copy/long-quote', 'odile found a']]);
});

test('names of a private list keep a pack and a page off the site, and so does a list that cannot be read', async () => {
  const page = (text: string) => `---\ntitle: About us\ndescription: Who we are.\n---\n\n${text}\n`;
  const other = await smallLibrary({
    'private/roster.txt': '# the whole school\nTamsinwyck\n',
    'packs/hen/pack.md': await soundPack(['Ask your child what', 'Ask your child, as Tamsinwyck did, what']),
    'packs/owl/pack.md': await soundPack(),
    'packs/rook/pack.md': await soundPack(),
    'packs/rook/private/roster.txt': Buffer.from('Ossowitzky', 'utf16le'),
    'pages/about.md': page('Tamsinwyck helped us to draw.'),
    'pages/help.md': page('Nobody in particular helped us.'),
  });
  const { findings, published } = await buildSmall(other);
  expect(published).toBe(1);
  expect(findings.filter(({ code }) => code.startsWith('privacy/')).map(({ code, place }) => `${place.file}:${place.line} ${code}`)).toEqual([
    'packs/hen/pack.md:61 privacy/roster-name',
    'packs/rook/pack.md:1 privacy/roster-unread',
    'pages/about.md:6 privacy/roster-name',
  ]);
  expect((await filesIn(other.site)).filter((file) => /^(?:about|help)\//.test(file))).toEqual(['help/index.html']);
});

describe('looking inside', () => {
  const secret = 'canary in a cage '.repeat(20);
  test('a gz file', () => {
    expect(insideOf('a.gz', gzipSync(secret)).some((text) => text.includes('canary in a cage'))).toBe(true);
  });
  test('a zip file that another program made, and the name in it', () => {
    // Made with Python's zipfile: cage/note.txt holds the word canary eight times.
    const zip = Buffer.from(zipMadeElsewhere, 'base64');
    expect(zip.includes('canary')).toBe(false);
    expect(zipEntries(zip).map(([name, content]) => [name, content.toString('utf8')])).toEqual([['cage/note.txt', 'canary canary canary canary canary canary canary canary\n']]);
  });
  test('a packed stream of a PDF', () => {
    const pdf = Buffer.concat([Buffer.from('%PDF-1.7\n1 0 obj\n<< /Filter /FlateDecode >>\nstream\n'), deflateSync(secret), Buffer.from('\nendstream\nendobj\n')]);
    expect(insideOf('a.pdf', pdf).some((text) => text.includes('canary in a cage'))).toBe(true);
  });
});

const zipMadeElsewhere =
  'UEsDBBQAAAAIAAAAeV1OWlpWDQAAADgAAAANAAAAY2FnZS9ub3RlLnR4dEtOzEssqlRIJpHiAgBQSwECFAMUAAAACAAAAHldTlpaVg0AAAA4AAAADQAAAAAAAAAAAAAAgAEAAAAAY2FnZS9ub3RlLnR4dFBLBQYAAAAAAQABADsAAAA4AAAAAAA=';

function wordsOf(text: string): readonly string[] {
  return tokensOf(text).map(({ word }) => plainWord(word));
}

/** A page as it is read: without marks, with attributes that are read aloud, and with its letters written out. */
function readable(text: string): string {
  return text
    .replace(/<[^>]{0,4000}>/g, (mark) => ` ${[...mark.matchAll(/(?:alt|title|aria-label|content)="([^"]*)"/g)].map((match) => match[1]).join(' . ')} `)
    .replace(/\\u([0-9a-f]{4})/gi, (_, code: string) => String.fromCharCode(parseInt(code, 16)))
    .replace(/&(?:#(\d+)|#x([0-9a-f]+)|(\w+));/gi, (_, decimal?: string, hex?: string, name?: string) =>
      decimal !== undefined
        ? String.fromCodePoint(Number(decimal))
        : hex !== undefined
          ? String.fromCodePoint(parseInt(hex, 16))
          : ({ amp: '&', quot: '"', lt: '<', gt: '>', apos: "'" }[name ?? ''] ?? ' '),
    );
}
