/** Every sheet of the demo library, read from its PDF by another program than the one that made it. */
import { readFile, readdir } from 'node:fs/promises';
import { join, sep } from 'node:path';
import { fileURLToPath } from 'node:url';
import { beforeAll, describe, expect, test } from 'vitest';
import { directionOf } from '../../src/core/languages/about-language.ts';
import { phrasesFor } from '../../src/core/languages/pick-language.ts';
import { readWholeLibrary } from '../../src/build/read-library.ts';
import { stopsOf } from '../../src/core/pack/pack.ts';
import type { PlannedPack } from '../../src/core/plan/plan.ts';
import { packUrls } from '../../src/outputs/addresses.ts';
import { rulingOf } from '../../src/outputs/sheets/ruling.ts';
import { paperKinds, type PaperKind } from '../../src/outputs/views.ts';
import { readPdf, unmarkedWords, wordsFromRight, type ReadPdf } from '../paper/read-pdf.ts';
import { builtSite } from './site.ts';

const content = fileURLToPath(new URL('../../content', import.meta.url));
const { told, library } = await readWholeLibrary(content);
const packs = told.flatMap((each) => each.pack ?? []);
let site = '';
const read = new Map<string, ReadPdf>();
const addressOf = (pack: PlannedPack, kind: PaperKind) => `${packUrls(pack.slug, pack.language, library.language).family}${kind}.pdf`;
const sheet = (pack: PlannedPack, kind: PaperKind) => {
  const one = read.get(addressOf(pack, kind));
  if (!one) throw new Error(`no ${addressOf(pack, kind)}`);
  return one;
};
/** Text as it is compared: one space, and blanks of any length as one. */
const plain = (text: string) => text.replace(/_+/g, '_').replace(/\s+/g, ' ').trim();

beforeAll(async () => {
  site = await builtSite();
  for (const pack of packs) for (const kind of paperKinds) read.set(addressOf(pack, kind), await readPdf(join(site, addressOf(pack, kind))));
});

const named = packs.map((pack) => [pack.file, pack] as const);

describe.each(named)('%s', (_, pack) => {
  test('each sheet is tagged, has its title, language and headings, its fonts within, no figure without a description, and is no heavier than 500 kB', () => {
    for (const kind of paperKinds) {
      const pdf = sheet(pack, kind);
      expect(pdf).toMatchObject({ tagged: true, language: pack.language, fontsMissing: [] });
      expect(pdf.title).toMatch(new RegExp(`^${pack.title}: .+`));
      expect(pdf.outline[0]).toBe(pack.book.title);
      expect(pdf.figures).not.toContain(undefined);
      expect(pdf.fonts.join(' ')).toContain('Andika');
      expect(pdf.bytes).toBeLessThanOrEqual(500_000);
      expect(pdf.textOfPages).not.toContain('');
    }
  });

  test('pages: substitute and letter 1, lesson at most 4, all together at most 12', () => {
    expect(sheet(pack, 'substitute').pages).toBe(1);
    expect(sheet(pack, 'letter').pages).toBe(1);
    expect(sheet(pack, 'lesson').pages).toBeLessThanOrEqual(4);
    expect(paperKinds.reduce((sum, kind) => sum + sheet(pack, kind).pages, 0)).toBeLessThanOrEqual(12);
  });

  test('what stands on it fits Letter and A4 alike, in letters of 10.5 points or more, a child’s in 14', () => {
    for (const kind of paperKinds) {
      const { runs, paper } = sheet(pack, kind);
      const side = (paper[0] - 190) / 2;
      expect(Math.min(...runs.map((run) => run.from))).toBeGreaterThan(side - (directionOf(pack.language) === 'rtl' ? 1.5 : 0.5));
      // An italic letter may lean a hair over the edge, and an Arabic one may end with a tail.
      expect(Math.max(...runs.map((run) => run.to))).toBeLessThan(paper[0] - side + 1.5);
      const foot = (run: { readonly y: number }) => run.y > paper[1] - (paper[1] - 245) / 2;
      const least = Math.min(...runs.filter((run) => !foot(run)).map((run) => run.size));
      expect(least).toBeGreaterThanOrEqual(kind === 'booklet' ? 14 : 10.5);
    }
  });

  test('the text comes out in the order of the book', () => {
    const inOrder = (text: string, parts: readonly string[]) => {
      let from = 0;
      for (const part of parts) {
        const at = text.indexOf(plain(part), from);
        expect(at, `"${part}" after place ${from}`).toBeGreaterThanOrEqual(0);
        from = at + 1;
      }
    };
    if (directionOf(pack.language) === 'rtl') {
      // Word after word from the right, whatever else stands between them. This reader passes over what a PDF says of letters that are drawn as one, so a few words are not whole for it.
      const follow = (kind: PaperKind, parts: readonly string[]) => {
        const there = wordsFromRight(sheet(pack, kind));
        const wanted = parts.flatMap(unmarkedWords);
        let at = -1;
        const inOrder = wanted.filter((word) => {
          const next = there.indexOf(word, at + 1);
          // A word far on is another of the same: the one that was meant is missing.
          if (next === -1 || next - at > 120) return false;
          at = next;
          return true;
        });
        expect(inOrder.length / wanted.length, kind).toBeGreaterThanOrEqual(0.9);
      };
      follow(
        'booklet',
        pack.stops.flatMap((stop) => [stop.ask, ...(stop.frames ?? [])]),
      );
      follow('lesson', [...(pack.aims ?? []).map((aim) => aim.skill), ...pack.plan.stops.map((stop) => stop.ask)]);
      follow('letter', [pack.summary, ...(pack.home?.prompts ?? []).slice(0, 3)]);
      expect(sheet(pack, 'booklet').outline.filter((heading) => pack.stops.some((stop) => stop.ask === heading))).toEqual(pack.stops.map((stop) => stop.ask));
      return;
    }
    const asks = (stops: PlannedPack['stops']) => stops.map((stop) => stop.ask);
    inOrder(
      plain(sheet(pack, 'booklet').text),
      pack.stops.flatMap((stop) => [stop.ask, ...(stop.frames ?? [])]),
    );
    inOrder(plain(sheet(pack, 'lesson').text), [...(pack.aims ?? []).map((aim) => aim.skill), ...asks(pack.plan.stops)]);
    inOrder(plain(sheet(pack, 'substitute').text), asks(stopsOf(pack, pack.plan.reading).filter((stop) => pack.plan.stops.includes(stop))));
    inOrder(plain(sheet(pack, 'letter').text), [pack.summary, ...(pack.home?.prompts ?? []).slice(0, 3)]);
    inOrder(
      plain(sheet(pack, 'cards').text),
      [...(pack.words ?? []), ...(pack.feelings ?? [])].map((each) => each.situation),
    );
  });

  test('98 of 100 words of what is said at the stops are on the lesson sheet', () => {
    const fromRight = directionOf(pack.language) === 'rtl';
    const words = (text: string) => (fromRight ? unmarkedWords(text) : (text.toLocaleLowerCase(pack.language).match(/[\p{L}\p{N}’']+/gu) ?? []));
    const there = new Set(fromRight ? wordsFromRight(sheet(pack, 'lesson')) : words(sheet(pack, 'lesson').text));
    const wanted = pack.stops.flatMap((stop) => words([stop.ask, stop.listenFor, stop.ifQuiet, stop.expand, ...(stop.models ?? []).map((model) => model.text), stop.at.cue].join(' ')));
    expect(wanted.filter((word) => there.has(word)).length / wanted.length).toBeGreaterThanOrEqual(fromRight ? 0.9 : 0.98);
  });

  test('no answer is on the booklet, and nothing of the passage is on any sheet', async () => {
    const booklet = plain(sheet(pack, 'booklet').text);
    for (const stop of pack.stops) for (const model of stop.models ?? []) expect(booklet).not.toContain(plain(model.text));
    const passage = (await readFile(join(content, 'packs', pack.slug, 'private', pack.language === 'es' ? 'passage.es.txt' : 'passage.txt'), 'utf8').catch(() => ''))
      .split(/(?<=[.!?])\s+/)
      .filter((sentence) => sentence.length > 60);
    for (const kind of paperKinds) for (const sentence of passage) expect(sheet(pack, kind).text).not.toContain(plain(sentence));
  });

  test('lines to write on have the size that the pack asks for, within 0.3 mm', () => {
    const { lines } = sheet(pack, 'booklet');
    const { height } = rulingOf(pack);
    const bases = lines.filter((line) => line.thickness === 1 && line.length > 150);
    expect(bases.length).toBeGreaterThan(0);
    for (const base of bases) {
      const heads = lines.filter((line) => line.page === base.page && line.thickness === 0.5 && !line.dashed && line.length > 150);
      expect(Math.min(...heads.map((head) => Math.abs(base.y - head.y - height)))).toBeLessThan(0.3);
    }
  });

  test('the pages link to the sheets and tell pages and size beforehand', async () => {
    const { lesson } = packUrls(pack.slug, pack.language, library.language);
    const html = await readFile(join(site, lesson, 'index.html'), 'utf8');
    const links = [...html.matchAll(/<a href="([^"]+\.pdf)" hreflang="([^"]+)" type="application\/pdf">.*?\((PDF[^)]+)\)/gs)].map(([, href = '', language, told]) => ({
      href: href.replace(/^(?:\.\.\/)+/, ''),
      language,
      told,
    }));
    const wanted = paperKinds.map((kind) => {
      const { pages, bytes } = sheet(pack, kind);
      return { href: addressOf(pack, kind), language: pack.language, told: phrasesFor(pack.language).paper.file(pages, Math.round(bytes / 1000)) };
    });
    const byAddress = (a: { readonly href: string }, b: { readonly href: string }) => (a.href < b.href ? -1 : 1);
    expect(links.sort(byAddress)).toEqual(wanted.sort(byAddress));
  });
});

test('no PDF lies in the site that is not one of these', async () => {
  const files = (await readdir(site, { recursive: true })).map((file) => file.split(sep).join('/')).filter((file) => file.endsWith('.pdf'));
  expect(files.sort()).toEqual([...read.keys()].sort());
});
