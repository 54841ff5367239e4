/** The commands as a person types them. */
import { readdir, readFile } from 'node:fs/promises';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { bookfellow, bookfellowAlone, smallLibrary, soundPack } from '../build/small-library.ts';

describe('bookfellow', () => {
  test('without a word shows what there is and ends with 2; asked for help it ends with 0', async () => {
    const bare = await bookfellowAlone([]);
    const asked = await bookfellowAlone(['--help']);
    expect([bare.code, asked.code]).toEqual([2, 0]);
    for (const command of ['build', 'check', 'measure', 'plan', 'new', 'stack', 'preview']) expect(asked.out).toContain(`bookfellow ${command}`);
    expect(bare.out).toBe(asked.out);
  });

  test.each(['build', 'check', 'measure', 'plan', 'new', 'preview'])('%s --help tells about that command and does nothing', async (command) => {
    const { code, out } = await bookfellow([command, '--help']);
    expect([code, out.startsWith(`bookfellow ${command}: `)]).toEqual([0, true]);
  });

  test.each([
    [['build', '--content', 'no-such-folder'], 'There is no folder "no-such-folder" here'],
    [['check', '--colour'], '"--colour" was not understood here. This command knows: --content'],
    [['constructor'], 'There is no command "constructor"'],
    [['new'], 'Name the new pack with one word'],
  ])('%j ends with 2 and a sentence, not a stack of lines', async (args, sentence) => {
    const { code, err } = await bookfellowAlone(args);
    expect([code, err]).toEqual([2, expect.stringContaining(sentence)]);
    expect(err).not.toMatch(/^\s+at /m);
  });
});

test('a library that lies elsewhere is built from its own folder', async () => {
  const { folder, site } = await smallLibrary({ 'packs/hen/pack.md': await soundPack() });
  const { code, err } = await bookfellowAlone(['build', '--no-pdf'], folder);
  expect([code, err]).toEqual([0, '']);
  expect(await readdir(join(site, 'packs'))).toEqual(['hen']);
});

describe('bookfellow new', () => {
  test('begins a pack that check tells only blanks about, and never overwrites one', async () => {
    const { content } = await smallLibrary({});
    const made = await bookfellow(['new', 'the-paper-boat', '--content', content]);
    expect(made.code).toBe(0);
    expect((await readdir(join(content, 'packs/the-paper-boat'))).sort()).toEqual(['pack.md', 'pictures', 'private']);
    const checked = await bookfellowAlone(['check', '--content', content, '--json']);
    const codes = (JSON.parse(checked.out) as readonly { readonly code: string }[]).map((found) => found.code);
    expect(new Set(codes)).toEqual(new Set(['pack/blank', 'more/of-the-same']));
    const before = await readFile(join(content, 'packs/the-paper-boat/pack.md'), 'utf8');
    const again = await bookfellow(['new', 'the-paper-boat', '--content', content]);
    expect([again.code, again.err]).toEqual([2, expect.stringContaining('it was left as it is')]);
    expect(await readFile(join(content, 'packs/the-paper-boat/pack.md'), 'utf8')).toBe(before);
  });

  test.each(['The Paper Boat', '../outside', 'con', ''])('refuses the name "%s" and makes nothing', async (name) => {
    const { content, folder } = await smallLibrary({});
    const { code } = await bookfellow(['new', name, '--content', content]);
    expect(code).toBe(2);
    expect([await readdir(join(content, 'packs')), await readdir(folder)]).toEqual([[], ['content']]);
  });
});

describe('bookfellow plan', () => {
  test('leaves out what does not fit, and shows the week', async () => {
    const { content } = await smallLibrary({ 'packs/wheelbarrow/pack.md': await soundPack() });
    const short = await bookfellow(['plan', 'wheelbarrow', '--content', content, '--minutes', '7', '--start', '9:05', '--pace', '120']);
    expect([short.code, short.out]).toEqual([0, expect.stringMatching(/^ {3}9:05 {2}Opening[^]*Left out, so that it fits into 7 minutes: "/m)]);
    const week = await bookfellow(['plan', 'wheelbarrow', '--content', content, '--week', '--json']);
    expect(JSON.parse(week.out)).toEqual([expect.objectContaining({ reading: 1, fits: true }), ...(JSON.parse(week.out) as readonly unknown[]).slice(1)]);
  });

  test.each([
    [['--with', 'crowd'], '--with takes one of: class, group, child, recording; "crowd" is none.'],
    [['--pace', 'fast'], '--pace takes a whole number from 40 to 250; "fast" is none.'],
    [['--start', '25:00'], '--start takes a time such as 9:05; "25:00" is none.'],
  ])('%j is wrong use, told in a sentence', async (args, sentence) => {
    const { content } = await smallLibrary({ 'packs/wheelbarrow/pack.md': await soundPack() });
    const { code, err } = await bookfellow(['plan', 'wheelbarrow', '--content', content, ...args]);
    expect([code, err.trim()]).toEqual([2, sentence]);
  });
});

test('what a pack holds cannot steer the terminal that a finding is shown in', async () => {
  const { content } = await smallLibrary({ 'packs/hen/pack.md': await soundPack(['kind: predict', 'kind: "\\e]0;title\\a\\e[2J"']) });
  const { out } = await bookfellow(['check', '--content', content]);
  expect(out).toContain('pack/hen/pack.md'.replace('pack/', 'packs/'));
  // eslint-disable-next-line no-control-regex -- control characters are what is looked for
  expect(out).not.toMatch(/[\u0000-\u0009\u000b-\u001f\u007f-\u009f]/);
});
