/**
 * What is told about a proposed change: only what it touches, and in a form that code hosts read.
 * The form is held against the JSON Schema of SARIF 2.1.0 (OASIS, errata 01), as packaged by others, with somebody else's validator (ajv).
 */
import { execFileSync } from 'node:child_process';
import { readFileSync } from 'node:fs';
import { mkdir, rm, writeFile } from 'node:fs/promises';
import { createRequire } from 'node:module';
import { join } from 'node:path';
import type { Ajv, ValidateFunction } from 'ajv';
import { fullFormats } from 'ajv-formats/dist/formats.js';
import { describe, expect, test } from 'vitest';
import { bookfellow, smallLibrary, soundPack } from '../build/small-library.ts';

interface Log {
  readonly runs: readonly {
    readonly results: readonly {
      readonly ruleId: string;
      readonly level: string;
      readonly message: { readonly text: string };
      readonly locations: readonly { readonly physicalLocation: { readonly artifactLocation: { readonly uri: string }; readonly region: { readonly startLine: number } } }[];
      readonly partialFingerprints: Readonly<Record<string, string>>;
    }[];
  }[];
}
const require = createRequire(import.meta.url);
const schema = JSON.parse(readFileSync(join(require.resolve('@microsoft/jest-sarif/package.json'), '../lib/schemas/sarif-2.1.0-rtm.5.json'), 'utf8')) as object;
// The schema is of draft 4. The package is CommonJS and gives its class as the whole of it.
const Draft4 = require('ajv-draft-04') as new (options: ConstructorParameters<typeof Ajv>[0]) => { compile(schema: object): ValidateFunction };
const isSarif = new Draft4({ strict: false, unicodeRegExp: false, formats: fullFormats }).compile(schema);

const faulty = await soundPack(['kind: predict', 'kind: prophesy']);
const history = async () => {
  const library = await smallLibrary({
    'library.yaml': 'name: Shelf\nlanguage: en\nlanguages: [en]\ncontact: Ask.\nrights: Each its own.\n',
    'packs/hen/pack.md': faulty,
    'packs/owl/pack.md': await soundPack(),
  });
  const git = (...args: readonly string[]) => execFileSync('git', ['-C', library.folder, '-c', 'user.name=A', '-c', 'user.email=a@school.example', ...args], { stdio: 'pipe' }).toString();
  git('init', '-q');
  git('add', '-A');
  git('commit', '-qm', 'as it was');
  return { ...library, git, check: (...args: readonly string[]) => bookfellow(['check', '--content', library.content, ...args]) };
};
const filesIn = (log: Log) => log.runs[0]?.results.map((result) => result.locations[0]?.physicalLocation.artifactLocation.uri) ?? [];

describe('bookfellow check --since', () => {
  test('passes over the faults of packs that nobody touched, and ends well', async () => {
    const { check, content } = await history();
    expect((await check()).code).toBe(1);
    expect(await check('--since', 'HEAD')).toMatchObject({ code: 0, out: 'Nothing was changed: nothing to tell.\n' });
    await writeFile(join(content, 'packs/owl/pack.md'), await soundPack(['kind: predict', 'kind: guess']));
    const { code, out } = await check('--since', 'HEAD');
    expect(code).toBe(1);
    expect(out).toContain('packs/owl/pack.md:');
    expect(out).not.toContain('packs/hen/');
  });

  test('takes a pack as changed when a file beside its text was, a new one too, and when a file went away', async () => {
    const { check, content, git } = await history();
    await mkdir(join(content, 'packs/hen/pictures'));
    await writeFile(join(content, 'packs/hen/pictures/new.txt'), 'new');
    expect((await check('--since', 'HEAD')).out).toContain('packs/hen/pack.md:');
    git('add', '-A');
    git('commit', '-qm', 'a picture');
    expect((await check('--since', 'HEAD')).out).toBe('Nothing was changed: nothing to tell.\n');
    await rm(join(content, 'packs/hen/pictures/new.txt'));
    expect((await check('--since', 'HEAD')).out).toContain('packs/hen/pack.md:');
    expect((await check('--since', 'HEAD~1')).out).toBe('Nothing was changed: nothing to tell.\n');
  });

  test('looks at every pack when the settings of the library were changed', async () => {
    const { check, content } = await history();
    await writeFile(join(content, 'library.yaml'), 'name: Another shelf\nlanguage: en\nlanguages: [en]\ncontact: Ask.\nrights: Each its own.\n');
    expect((await check('--since', 'HEAD')).out).toContain('packs/hen/pack.md:');
  });

  test.each([
    ['nowhere', 'git knows no revision "nowhere" here.'],
    ['--output=x', '--since takes a revision'],
    ['', '--since takes a revision'],
  ])('"%s" is no revision, and that is said', async (revision, sentence) => {
    const { content } = await history();
    expect(await bookfellow(['check', '--content', content, `--since=${revision}`])).toMatchObject({ code: 2, err: expect.stringContaining(sentence) as string });
  });

  test('a folder without a history says so', async () => {
    const { content } = await smallLibrary({ 'packs/hen/pack.md': faulty });
    expect((await bookfellow(['check', '--content', content, '--since', 'HEAD'])).err).toContain('has none');
  });
});

describe('bookfellow check --sarif', () => {
  test('is sound SARIF with places from the root of the checkout, and its marks outlive a line that moves', async () => {
    const { check, content } = await history();
    const first = JSON.parse((await check('--sarif')).out) as Log;
    expect(isSarif(first), JSON.stringify(isSarif.errors)).toBe(true);
    expect(filesIn(first)).toContain('content/packs/hen/pack.md');
    const result = first.runs[0]?.results.find(({ ruleId }) => ruleId === 'pack/not-a-choice');
    expect([result?.level, result?.message.text.includes('prophesy')]).toEqual(['error', true]);
    await writeFile(join(content, 'packs/hen/pack.md'), faulty.replace('---\n', '---\n# a remark\n'));
    const second = JSON.parse((await check('--sarif')).out) as Log;
    const moved = second.runs[0]?.results.find(({ ruleId }) => ruleId === 'pack/not-a-choice');
    expect(moved?.partialFingerprints).toEqual(result?.partialFingerprints);
    expect(moved?.locations[0]?.physicalLocation.region.startLine).toBe((result?.locations[0]?.physicalLocation.region.startLine ?? 0) + 1);
  });

  test('is sound with nothing to tell, and with names of files that an address cannot hold as they are', async () => {
    const { content } = await smallLibrary({ 'packs/owl/pack.md': await soundPack(), 'packs/owl/pictures/sea & sand #1?.png': 'no picture' });
    const { out } = await bookfellow(['check', '--content', content, '--sarif']);
    expect(isSarif(JSON.parse(out)), JSON.stringify(isSarif.errors)).toBe(true);
    expect(isSarif({ version: '2.1.0', runs: [{ results: [] }] }), 'the schema refuses a log without a tool').toBe(false);
  });
});
