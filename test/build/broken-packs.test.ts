/** Ten broken packs beside two sound ones: all is told in one run, nothing in them is run, and the sound ones are published. */
import { readdir } from 'node:fs/promises';
import { join } from 'node:path';
import sharp from 'sharp';
import { beforeAll, describe, expect, test } from 'vitest';
import type { Built } from '../../src/build/build.ts';
import { bookfellow, buildSmall, filesIn, smallLibrary, soundPack, type SmallLibrary } from './small-library.ts';

/** Each broken pack, and what is told about it: `line:column level code`. */
async function brokenPacks(mark: string): Promise<Readonly<Record<string, readonly [text: string, told: readonly string[]]>>> {
  const sound = await soundPack();
  const picture = (lines: string) => sound.replace('home:\n', `pictures:\n${lines}home:\n`);
  const bomb = [
    'a: &a [x, x, x, x, x, x, x, x, x]',
    ...'bcdefghi'.split('').map(
      (name, index) =>
        `${name}: &${name} [${Array<string>(9)
          .fill(`*${'abcdefgh'.charAt(index)}`)
          .join(', ')}]`,
    ),
  ];
  return {
    'bad-yaml': [sound.replace('summary: Odile borrows', 'summary: Odile borrows: and'), ['4:10 stop yaml/syntax']],
    'unknown-field': [sound.replace('  minutes: 30', '  minutes: 30\n  colour: blue'), ['18:3 warn pack/unknown-field']],
    'misspelt-field': [sound.replace('summary:', 'sumary:'), ['4:1 stop pack/misspelt-field']],
    'no-alt': [picture('  - file: hill.png\n'), ['54:5 stop alt-text/missing']],
    'no-picture': [picture('  - file: gone.png\n    alt: A hill with a path.\n'), ['54:11 stop picture/missing-file']],
    'wrong-type': [sound.replace('minutes: 30', 'minutes: a while'), ['17:12 stop pack/wrong-type']],
    'same-id': [sound.replace('id: the-long-hill', 'id: one-stone').replace('    after: one-stone\n', ''), ['32:9 stop stop/duplicate-id']],
    'no-front-matter': ['Just a text about a hill.\n', ['1:1 stop front-matter/missing']],
    'empty-file': ['', ['1:1 stop file/empty']],
    'code-in-front': [`---js\n{ title: require('node:fs').writeFileSync(${JSON.stringify(mark)}, 'run') }\n---\n\nText.\n`, ['1:4 stop front-matter/not-yaml']],
    'alias-bomb': [`---\n${bomb.join('\n')}\n---\n`, Array<string>(10).fill('stop yaml/alias')],
  };
}

let library: SmallLibrary;
let built: Built;
let ranCode = true;
let broken: Awaited<ReturnType<typeof brokenPacks>>;

beforeAll(async () => {
  const picture = await sharp({ create: { width: 40, height: 30, channels: 3, background: '#8aa' } })
    .png()
    .toBuffer();
  const empty = await smallLibrary({});
  broken = await brokenPacks(join(empty.folder, 'was-run'));
  library = await smallLibrary({
    'packs/good-one/pack.md': await soundPack(['title: The Wheelbarrow Goes Home', 'title: The First Good One']),
    'packs/good-two/pack.md': await soundPack(['title: The Wheelbarrow Goes Home', 'title: The Second Good One']),
    ...Object.fromEntries(Object.entries(broken).map(([name, [text]]) => [`packs/${name}/pack.md`, text])),
    'packs/no-alt/pictures/hill.png': picture,
  });
  built = await buildSmall(library);
  ranCode = (await readdir(empty.folder)).includes('was-run');
});

describe('a build with broken packs', () => {
  test('tells everything about every pack in one run, with file, line and column', () => {
    for (const [name, [, expected]] of Object.entries(broken)) {
      const told = built.findings.filter((found) => found.place.file === `packs/${name}/pack.md` && found.code !== 'more/of-the-same');
      const lines = told.map(({ place, level, code }) => `${place.line}:${place.column} ${level} ${code}`);
      expect([name, name === 'alias-bomb' ? lines.map((line) => line.replace(/^\S+ /, '')) : lines]).toEqual([name, expected]);
    }
    expect(built.findings.filter((found) => found.place.file.startsWith('packs/good-'))).toEqual([]);
  });

  test('runs nothing that a pack holds', () => {
    expect(ranCode).toBe(false);
  });

  test('publishes the sound packs, and the one with only a warning', async () => {
    const pages = await filesIn(library.site);
    const packs = new Set(pages.flatMap((page) => /^packs\/([^/]+)\/index\.html$/.exec(page)?.[1] ?? []));
    expect([...packs]).toEqual(['good-one', 'good-two', 'unknown-field']);
    expect(built).toMatchObject({ published: 3, leftOut: 10 });
  });

  test('leaves nothing beside the site and the cache', async () => {
    expect((await readdir(library.folder)).sort()).toEqual(['cache', 'content', 'site']);
  });
});

describe('the command line', () => {
  test('build --strict ends with 1 and publishes nothing', async () => {
    const { content, folder } = library;
    const ended = await bookfellow(['build', '--content', content, '--site', join(folder, 'strict'), '--strict']);
    expect(ended.code).toBe(1);
    expect(ended.out).toContain('packs/bad-yaml/pack.md:4:10  stop  ');
    expect(await readdir(folder)).not.toContain('strict');
  });

  test('check --json prints an array of findings with their sentences, and ends with 1', async () => {
    const { code, out } = await bookfellow(['check', '--content', library.content, '--json']);
    const findings = JSON.parse(out) as readonly Readonly<Record<string, unknown>>[];
    expect(code).toBe(1);
    for (const found of findings) {
      expect(found).toEqual({
        code: expect.stringMatching(/^[a-z-]+\/[a-z-]+$/) as string,
        level: expect.stringMatching(/^(?:stop|warn|note)$/) as string,
        file: expect.stringMatching(/^packs\//) as string,
        line: expect.any(Number) as number,
        column: expect.any(Number) as number,
        message: expect.stringMatching(/\S/) as string,
      });
    }
    expect(new Set(findings.map((found) => found['file']))).toEqual(new Set(Object.keys(broken).map((name) => `packs/${name}/pack.md`)));
  });

  test('check on a sound pack says so and ends with 0', async () => {
    const { code, out } = await bookfellow(['check', '--content', library.content, 'good-one']);
    expect([code, out.trim()]).toEqual([0, '1 looked at: nothing to tell.']);
  });

  test('wrong words end with 2 and a sentence that names the right ones', async () => {
    const unknown = await bookfellow(['biuld']);
    expect([unknown.code, unknown.err]).toEqual([2, expect.stringContaining('The commands are: build, check')]);
    const flag = await bookfellow(['check', '--jsno']);
    expect([flag.code, flag.err]).toEqual([2, expect.stringContaining('"--jsno" was not understood')]);
  });
});
