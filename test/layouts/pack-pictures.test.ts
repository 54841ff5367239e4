/** The pictures of every demo pack: sound drawings, a table that says the same, a sentence that stands for them, ids of their own. */
import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import sharp from 'sharp';
import { describe, expect, test } from 'vitest';
import { PackPictures } from '../../layouts/parts/pack-pictures.tsx';
import { toHtml } from '../../layouts/to-html.ts';
import { readWholeLibrary } from '../../src/build/read-library.ts';
import { phrasesFor } from '../../src/core/languages/pick-language.ts';
import { feelingPath } from '../../src/core/measure/feeling-path.ts';
import type { PlannedPack } from '../../src/core/plan/plan.ts';
import { minutesSpent } from '../../src/outputs/minutes-spent.ts';
import { stopMap } from '../../src/outputs/stop-map.ts';
import type { PageContext } from '../../src/outputs/views.ts';

const root = fileURLToPath(new URL('../..', import.meta.url));
const { library, told } = await readWholeLibrary(join(root, 'content'), '2026-11-20');
const packs = told.flatMap(({ pack }) => pack ?? []);
const cases = packs.flatMap((pack) => library.languages.map((language) => ({ name: `${pack.slug} (${pack.language}) on a page in ${language}`, pack, language })));

function drawn(pack: PlannedPack, language: string): string {
  const page: PageContext = { library, language, url: `${language}/quality/`, alternates: [], assets: { css: '', printCss: '', scripts: {}, later: [] } };
  return toHtml(PackPictures({ pack, page, say: phrasesFor(language), headingLevel: 4 }));
}

const all = (html: string, pattern: RegExp): readonly string[] => [...html.matchAll(pattern)].map((match) => match[1] ?? match[0]);
const text = (html: string): string =>
  html
    .replace(/<[^>]*>/gu, '')
    .replace(/&amp;/gu, '&')
    .trim();
/** The drawing, the sentence and the cells of one picture. */
function picture(html: string, name: string) {
  const figure = all(html, /<figure[^]*?<\/figure>/gu).find((each) => each.includes(`-${name}-text"`)) ?? '';
  const drawing = /<svg class="figure-drawing"[^]*<\/svg>(?=<(?:ul|p|figcaption))/u.exec(figure)?.[0] ?? '';
  const rows = all(/<tbody>([^]*)<\/tbody>/u.exec(figure)?.[1] ?? '', /<tr>([^]*?)<\/tr>/gu).map((row) => all(row, /<t[hd][^>]*>([^]*?)<\/t[hd]>/gu).map(text));
  return { figure, drawing, sentence: text(/<figcaption>(<p[^]*?<\/p>)/u.exec(figure)?.[1] ?? ''), rows };
}

describe.each(cases)('$name', ({ pack, language }) => {
  const html = drawn(pack, language);
  const say = phrasesFor(language);

  test('drawings are well-formed', async () => {
    const drawings = ['stop-map', 'feeling-path', 'minutes'].map((name) => picture(html, name).drawing).filter((each) => each !== '');
    expect(drawings.length).toBeGreaterThanOrEqual(2);
    for (const drawing of drawings) {
      const whole = drawing.replace('<svg', '<svg xmlns="http://www.w3.org/2000/svg"').replace('width="100%"', 'width="320"');
      await expect(sharp(Buffer.from(whole)).png().toBuffer()).resolves.toBeDefined();
      expect(whole).not.toMatch(/NaN|undefined|Infinity/u);
    }
  });

  test('each has a name, a sentence for the drawing, and a table with heads', () => {
    for (const { figure, sentence } of ['stop-map', 'minutes'].map((name) => picture(html, name))) {
      expect(figure).toMatch(/role="img" aria-label="[^"]+" aria-describedby="([^"]+)"[^]*<p id="\1">/u);
      expect(sentence.length).toBeGreaterThan(40);
      expect(figure).toContain('<th scope="col">');
      expect(figure).toContain('<th scope="row">');
    }
  });

  test('the map of stops draws what its table says', () => {
    const map = stopMap(pack);
    const { drawing, rows } = picture(html, 'stop-map');
    expect(rows.map(([number, opening, words]) => [number, opening, words])).toEqual(map.stops.map((stop) => [stop.number, stop.opening, stop.words].map(String)));
    expect(all(drawing, /class="numeral-text">(\d+)</gu)).toEqual(rows.map(([number]) => number));
    expect(all(drawing, /class="leaf-stroke"/gu)).toHaveLength(map.stops.reduce((sum, stop) => sum + stop.depth, 0));
    expect(all(drawing, /class="seed full"/gu)).toHaveLength(rows.filter((row) => row.includes(say.pictures.stopMap.must)).length);
    expect(all(drawing, /class="seed"/gu)).toHaveLength(rows.filter((row) => row.includes(say.pictures.stopMap.may)).length);
  });

  test('the path of feelings draws what its table says', () => {
    const feelings = feelingPath(pack).flatMap((step) => step.feelings.map((feeling) => ({ ...feeling, stop: step.number })));
    const { drawing, rows } = picture(html, 'feeling-path');
    expect(rows.map(([stop, , word, , valence]) => [stop, word, valence])).toEqual(
      feelings.map(({ stop, word, valence }) => [String(stop), word, String(Math.round(valence * 100)).replace('-', '−')]),
    );
    expect([...all(drawing, /class="halo word"[^>]*>([^<]+)</gu)].sort()).toEqual(rows.map((row) => row[2] ?? '').sort());
    if (feelings.length === 0) expect(html).toContain(say.pictures.path.none);
  });

  test('the minutes draw what their table says, and the table adds up to the lesson', () => {
    const { drawing, rows } = picture(html, 'minutes');
    const spent = minutesSpent(pack.plan.lesson);
    expect(rows.map(([name]) => name)).toEqual(spent.map(({ on }) => say.pictures.spent.spending[on]));
    for (const [name = '', takes = ''] of rows) expect(text(drawing)).toContain(name + takes);
    const seconds = rows.map(([, takes = '']) => takes.split(':').reduce((sum, part) => sum * 60 + Number(part), 0)).reduce((sum, each) => sum + each, 0);
    expect(Math.abs(seconds - pack.plan.lesson.total)).toBeLessThanOrEqual(rows.length / 2);
  });
});

test('many packs on a page: no id twice, and nothing points to an id that is not there', () => {
  const html = packs.map((pack) => drawn(pack, 'en')).join('');
  const ids = all(html, / id="([^"]+)"/gu);
  expect(ids.filter((id, index) => ids.indexOf(id) !== index)).toEqual([]);
  const pointed = [...all(html, /aria-describedby="([^"]+)"/gu), ...all(html, /url\(#([^)]+)\)/gu)];
  expect(pointed.filter((id) => !ids.includes(id))).toEqual([]);
});

test('letters in the drawings are at least 12 pixels, and their size does not follow the width', () => {
  const styles = readFileSync(join(root, 'layouts/styles/figures.css'), 'utf8');
  const sizes = all(styles, /^\.figure-drawing [^{]*text[^{]*\{[^}]*?(?:font|font-size): (\d+)px/gmu).map(Number);
  expect(sizes.length).toBeGreaterThanOrEqual(3);
  expect(Math.min(...sizes)).toBeGreaterThanOrEqual(12);
  for (const pack of packs) {
    for (const drawing of ['stop-map', 'feeling-path', 'minutes'].map((name) => picture(drawn(pack, 'en'), name).drawing)) {
      // Only drawings without letters may be stretched.
      for (const stretched of all(drawing, /<svg[^>]*viewBox[^>]*>([^]*?)<\/svg>/gu)) expect(stretched).not.toContain('<text');
    }
  }
});
