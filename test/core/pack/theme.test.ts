/** A library's own colours: read by everybody or refused, with the nearest that can be read. Contrast is held against axe-core's reckoning. */
import { createRequire } from 'node:module';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { colourOf, contrast, hexOf, nearestReadable, type Colour } from '../../../src/core/pack/colour.ts';
import { sayFinding } from '../../../src/core/languages/say-finding.ts';
import { readLibrary } from '../../../src/core/pack/library.ts';
import { paletteOf, soundTheme } from '../../../src/core/pack/theme.ts';
import { themeCss } from '../../../src/outputs/theme.ts';

interface AxeColor {
  parseString(text: string): void;
}
const { color } = (createRequire(import.meta.url)('axe-core') as { commons: { color: { Color: new () => AxeColor; getContrast(ground: AxeColor, text: AxeColor): number } } }).commons;
const axeContrast = (one: string, other: string) => {
  const [a, b] = [one, other].map((text) => {
    const read = new color.Color();
    read.parseString(text);
    return read;
  }) as [AxeColor, AxeColor];
  return color.getContrast(a, b);
};
const part = fc.integer({ min: 0, max: 255 });
const colours = fc.tuple(part, part, part) as fc.Arbitrary<Colour>;
const settings = (theme: string) => readLibrary(`name: Shelf\nlanguage: en\nlanguages: [en]\ncontact: Ask.\nrights: Own.\ntheme: ${theme}\n`, 'library.yaml');

test('contrast is 21 between black and white, 4.48 for the grey that just fails on white, and what axe-core reckons for any two colours', () => {
  expect(contrast([0, 0, 0], [255, 255, 255])).toBeCloseTo(21, 10);
  expect(contrast(colourOf('#777777') ?? [0, 0, 0], [255, 255, 255])).toBeCloseTo(4.48, 2);
  fc.assert(
    fc.property(colours, colours, (one, other) => {
      // axe takes the older threshold of the same standard, 0.03928; no eight-bit colour lies between the two.
      expect(contrast(one, other)).toBeCloseTo(axeContrast(hexOf(one), hexOf(other)), 9);
    }),
    { numRuns: 2000 },
  );
});

test('the nearest colour can be read on every ground, and no smaller step to black or white would do', () => {
  fc.assert(
    fc.property(colours, colours, (wanted, ground) => {
      const nearest = nearestReadable(wanted, [ground], 4.5);
      expect(nearest && contrast(nearest, ground)).toBeGreaterThanOrEqual(4.5);
      if (contrast(wanted, ground) >= 4.5) expect(nearest).toEqual(wanted);
    }),
    { numRuns: 2000 },
  );
});

describe('a theme in library.yaml', () => {
  test('that can be read changes the colours of the day, keeps text between ink and paper readable, and lightens the accent by lamplight', () => {
    const { value, findings } = settings('{paper: "#ffffff", ink: "#1a1a1a", accent: "#00558c", text size: 120}');
    expect(findings).toEqual([]);
    const css = themeCss(value?.theme);
    expect(css).toContain('--paper:#ffffff');
    expect(css).toContain('--madder:#00558c');
    expect(css).toContain('font-size:135%');
    const dark = /prefers-color-scheme:dark\)\{:root\{--madder:(#\w{6})/.exec(css)?.[1] ?? '';
    expect(axeContrast('#28201a', dark)).toBeGreaterThanOrEqual(4.5);
    expect(axeContrast('#1e1813', dark)).toBeGreaterThanOrEqual(4.5);
  });

  test('whose accent is too pale is refused at its line, with a colour that passes, and the usual colours stay', () => {
    const { value, findings } = settings('\n  paper: "#ffffff"\n  accent: "#ffa500"');
    expect(themeCss(value?.theme)).toBe('');
    expect(findings.map(({ code, level, place }) => [code, level, place.line])).toEqual([['library/contrast', 'stop', 8]]);
    const [found] = findings;
    const said = found ? sayFinding(found, 'en') : '';
    const nearest = /nearest that can be read is "(#\w{6})"/.exec(said)?.[1] ?? '';
    expect(axeContrast('#ffffff', nearest)).toBeGreaterThanOrEqual(4.5);
    expect(settings(`{paper: "#ffffff", accent: "${nearest}"}`).findings).toEqual([]);
  });

  test('whose paper alone makes the usual ink unreadable is told at the paper', () => {
    expect(settings('\n  paper: "#303030"').findings.map(({ place, facts }) => [place.line, (facts as { field: string }).field])).toEqual([
      [7, 'ink'],
      [7, 'accent'],
    ]);
  });

  test.each(['{accent: red}', '{accent: "#fff"}', '{text size: 300}', '{papper: "#ffffff"}'])('%s is no theme, and that is said', (theme) => {
    expect(settings(theme).findings).toHaveLength(1);
  });

  test('of any colours that pass has text of every kind at 4.5 or more and lines at 3 or more, on paper and plate', () => {
    fc.assert(
      fc.property(colours, colours, colours, (paper, anyInk, anyAccent) => {
        const grounds = [paper, paletteOf({ paper: hexOf(paper) }).plate];
        const [ink, accent] = [anyInk, anyAccent].map((each) => nearestReadable(each, grounds, 4.5) ?? each) as [Colour, Colour];
        const theme = { paper: hexOf(paper), ink: hexOf(ink), accent: hexOf(accent) };
        fc.pre(soundTheme(theme, () => ({ file: '', line: 1, column: 1 })).theme !== undefined);
        const palette = paletteOf(theme);
        for (const ground of [palette.paper, palette.plate]) {
          for (const text of [palette.ink, palette.soft, palette.accent]) expect(contrast(text, ground)).toBeGreaterThanOrEqual(4.5);
          expect(contrast(palette.hair, ground)).toBeGreaterThanOrEqual(3);
        }
      }),
      { numRuns: 300 },
    );
  });
});
