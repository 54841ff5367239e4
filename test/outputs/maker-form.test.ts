/** The form that makes packs holds every field of the schema, with its words in each language; and a pack as published reads as it was. */
import { readdirSync, readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { isInEnglish, phrasesFor, interfaceLanguages } from '../../src/core/languages/pick-language.ts';
import { everyField, formFields } from '../../src/core/pack/form-fields.ts';
import { readPack } from '../../src/core/pack/read-pack.ts';
import { makerForm, type FormNode } from '../../src/outputs/maker-form.ts';
import { packFile } from '../../src/outputs/pack-file.ts';

const nodesIn = (nodes: readonly FormNode[]): readonly FormNode[] => nodes.flatMap((node) => [node, ...nodesIn(node.fields ?? []), ...nodesIn(node.item ? [node.item] : [])]);

describe.each(interfaceLanguages)('the form in %s', (language) => {
  const say = phrasesFor(language);
  const chapters = makerForm(say);
  const nodes = nodesIn(chapters.flatMap((chapter) => chapter.fields));

  test('holds every field of the schema once, and no other', () => {
    // A group that is parted over chapters is there by its fields.
    const whole = everyField(formFields).filter((field) => !['book', 'by', 'for'].includes(field.path));
    expect(nodes.map((node) => node.path).sort()).toEqual([...whole.map((field) => field.path), 'body'].sort());
  });

  test('has a label, a hint and one example for each field that somebody writes in', () => {
    const written = everyField(formFields).filter((field) => field.kind !== 'group' && !field.path.endsWith('.*') && field.item?.kind !== 'group');
    expect(written.length).toBeGreaterThan(90);
    const isWhole = (words: readonly (string | undefined)[] = []) => words.length === 3 && words.every((each) => each !== undefined && each.trim() !== '');
    expect(written.flatMap(({ path }) => (isWhole(say.maker.fields[path]) ? [] : [path]))).toEqual([]);
  });

  test('has a label and a hint for each group and each list of groups, and words for its items', () => {
    const groups = everyField(formFields).filter((field) => (field.kind === 'group' && !field.path.endsWith('.*')) || field.item?.kind === 'group');
    expect(groups.flatMap(({ path }) => ((say.maker.fields[path]?.length ?? 0) >= 2 ? [] : [path]))).toEqual([]);
    const lists = groups.filter((field) => field.kind === 'list');
    expect(lists.flatMap(({ path }) => (say.maker.items[path] ? [] : [path]))).toEqual([]);
  });

  test('has no words for a field that is not there', () => {
    const known = new Set(everyField(formFields).map((field) => field.path));
    expect(Object.keys(say.maker.fields).filter((path) => !known.has(path))).toEqual([]);
  });

  test('names every choice in words', () => {
    const unnamed = nodes.flatMap((node) =>
      (node.choices ?? [])
        .filter(([value, label]) => label === '' || (label === value && language !== 'en' && !isInEnglish(language, 'maker') && !/^\d$/.test(value)))
        .map(([value]) => `${node.path}: ${value}`),
    );
    expect(unnamed).toEqual([]);
  });
});

describe('a pack as published', () => {
  const files = ['content/packs', 'test/packs/sound'].flatMap((folder) =>
    readdirSync(folder).flatMap((slug) =>
      readdirSync(`${folder}/${slug}`)
        .filter((name) => name.endsWith('.md'))
        .map((name) => `${folder}/${slug}/${name}`),
    ),
  );
  const read = (text: string) => readPack({ slug: 'a-pack', file: 'pack.md', text, languageOfFile: undefined, pictureFiles: [], passage: undefined }).value;
  const meaning = (text: string) => {
    const { body, ...fields } = read(text) ?? { body: { markdown: '' } };
    return { fields: { ...fields, places: {} }, body: body.markdown.replace(/\n{3,}/g, '\n\n').trim() };
  };
  test.each(files)('%s says the same as its file', (file) => {
    const text = readFileSync(file, 'utf8');
    const pack = read(text);
    if (!pack) throw new Error('not read');
    expect(meaning(packFile(pack))).toEqual(meaning(text));
  });
});
