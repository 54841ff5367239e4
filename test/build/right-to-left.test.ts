/** A small library in Arabic and English: direction, letters, what stands in another language, and its printed sheets read back. */
import { readFile } from 'node:fs/promises';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { beforeAll, expect, test } from 'vitest';
import { build } from '../../src/build/build.ts';
import { readPdf, unmarkedWords, wordsFromRight } from '../paper/read-pdf.ts';
import { filesIn, smallLibrary } from './small-library.ts';

const sound = fileURLToPath(new URL('../packs/sound/', import.meta.url));
let site = '';
const page = (path: string) => readFile(join(site, path, 'index.html'), 'utf8');

beforeAll(async () => {
  const files: Record<string, string | Buffer> = {
    'library.yaml': 'name: A shelf\nnames:\n  ar: رفّ الكتب\nlanguage: ar\nlanguages: [ar, en]\ncontact: Ask at the desk.\nrights: Ours.\naddress: https://shelf.example/\n',
  };
  for (const slug of ['the-paper-boat', 'the-wheelbarrow-goes-home']) for (const file of await filesIn(join(sound, slug))) files[`packs/${slug}/${file}`] = await readFile(join(sound, slug, file));
  const { content, site: folder, cache } = await smallLibrary(files);
  await build({ content, site: folder, cache, strict: true, paper: true });
  site = folder;
}, 60_000);

test('a page in Arabic says its language and direction, and that no native reader has been through it', async () => {
  for (const path of ['', 'packs/the-paper-boat/', 'packs/the-paper-boat/booklet/', 'packs/the-paper-boat/lesson/']) {
    const html = await page(path);
    expect(html).toContain('<html lang="ar" dir="rtl">');
    expect(html).toContain('لم يراجعها بعد قارئ');
  }
  expect(await page('en/')).toContain('<html lang="en" dir="ltr">');
  expect(await page('en/')).not.toContain('لم يراجعها');
});

test('the pages of the stack, of the librarian and for programs are Arabic too, and carry no mark of English', async () => {
  for (const path of ['stack/', 'librarian/', 'programs/']) {
    const html = await page(path);
    expect(html, path).toMatch(/<main id="main" tabindex="-1">/);
    expect(html, path).not.toContain('هي هنا بالإنجليزية');
  }
  expect(await page('stack/')).toMatch(/<script type="module" src="[^"]*stack-ar-/);
  expect(await page('quality/')).toMatch(/<a class="onward" href="\.\.\/librarian\/">لمن يدير المكتبة/);
});

test('a book without a version in the reader’s language is offered in the one it has, marked with it and its direction', async () => {
  expect(await page('')).toMatch(/<li class="entry" lang="en" dir="ltr">.*href="en\/packs\/the-wheelbarrow-goes-home\/" hreflang="en"/s);
  expect(await page('en/')).toMatch(/<li class="entry" lang="ar" dir="rtl">.*href="\.\.\/packs\/the-paper-boat\/" hreflang="ar"/s);
});

test('only a book in Arabic keeps Arabic letters on the device, and their licence is published', async () => {
  const listOf = async (path: string) => (JSON.parse(await readFile(join(site, path, 'offline.json'), 'utf8')) as { files: readonly string[] }).files.filter((file) => file.includes('naskh'));
  expect(await listOf('packs/the-paper-boat')).toHaveLength(2);
  expect(await listOf('en/packs/the-wheelbarrow-goes-home')).toEqual([]);
  expect(await readFile(join(site, 'assets/fonts/noto-naskh-arabic-LICENSE.txt'), 'utf8')).toContain('SIL OPEN FONT LICENSE');
});

test.each([
  ['lesson', 'توقف المطر وليلى تحمل جريدة الأمس'],
  ['substitute', 'توقف المطر وليلى تحمل جريدة الأمس'],
  ['booklet', 'توقف المطر وليلى تحمل جريدة الأمس'],
  ['letter', 'تصنع ليلى من ورق الجريدة وتضعه في ماء الشارع بعد المطر'],
  ['cards', 'الجسر طريق فوق الماء يمر الناس عليه'],
])('the sheet "%s" is tagged Arabic, keeps its letters within, and its words come from the right in their order', async (kind, line) => {
  const pdf = await readPdf(join(site, `packs/the-paper-boat/${kind}.pdf`));
  expect(pdf).toMatchObject({ tagged: true, language: 'ar', fontsMissing: [] });
  expect(pdf.title).toContain('القارب الورقي');
  const words = wordsFromRight(pdf);
  let at = -1;
  for (const word of unmarkedWords(line).filter((each) => words.includes(each))) {
    at = words.indexOf(word, at + 1);
    expect(at, word).toBeGreaterThanOrEqual(0);
  }
  expect(unmarkedWords(line).filter((word) => words.includes(word)).length).toBeGreaterThanOrEqual(4);
});
