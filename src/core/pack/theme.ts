import * as v from 'valibot';
import { finding, type Finding, type Place } from '../finding.ts';
import { logoSchema, type LogoSettings } from './logo.ts';
import { between, colourOf, contrast, hexOf, nearestReadable, type Colour } from './colour.ts';

const colour = v.pipe(v.string(), v.trim(), v.regex(/^#[\da-fA-F]{6}$/), v.examples(['#8a2e1b']));

/** What a library may change about how its pages look on a screen. */
export const themeSchema = v.optional(
  v.object({
    /** The ground, the text on it, and the colour of links and marks. */
    paper: v.optional(colour),
    ink: v.optional(colour),
    accent: v.optional(colour),
    /** Size of the text in hundredths of the usual one. A reader's own setting counts on top of it. */
    'text size': v.optional(v.pipe(v.number(), v.integer(), v.minValue(100), v.maxValue(150))),
    logo: logoSchema,
  }),
);

export interface Theme {
  readonly paper?: string | undefined;
  readonly ink?: string | undefined;
  readonly accent?: string | undefined;
  readonly textSize?: number | undefined;
  readonly logo?: LogoSettings | undefined;
}

/** Least contrast of text. Source: WCAG 2.2, 1.4.3 Contrast (Minimum), AA. */
export const leastForText = 4.5;
/** Least contrast of lines that show where a field is. Source: WCAG 2.2, 1.4.11 Non-text Contrast, AA. */
export const leastForLines = 3;

/** The colours of pages by day that a theme changes, and those that follow from them. */
export const usual = { paper: '#f6efe0', ink: '#2b211a', accent: '#8a2e1b' } as const;
/** The grounds by lamplight, as in `layouts/styles/paper.css`. */
const lamplight: readonly Colour[] = [
  [0x1e, 0x18, 0x13],
  [0x28, 0x20, 0x1a],
];

export interface Palette {
  readonly paper: Colour;
  readonly plate: Colour;
  readonly ink: Colour;
  readonly soft: Colour;
  readonly hair: Colour;
  readonly accent: Colour;
  /** The accent on the dark grounds of a screen that asks for them. */
  readonly accentByLamplight: Colour;
}

const known = (text: string | undefined, otherwise: string): Colour => colourOf(text ?? otherwise) ?? colourOf(otherwise) ?? [0, 0, 0];

/** Every colour of a theme. What lies between ink and paper goes as far towards the paper as can still be read. */
export function paletteOf(theme: Theme): Palette {
  const paper = known(theme.paper, usual.paper);
  const ink = known(theme.ink, usual.ink);
  const accent = known(theme.accent, usual.accent);
  const grounds = groundsOf(paper);
  const towardsPaper = (shares: readonly number[], least: number) =>
    shares.map((share) => between(ink, paper, share)).find((each) => grounds.every((ground) => contrast(each, ground) >= least)) ?? ink;
  return {
    paper,
    plate: grounds[1] ?? paper,
    ink,
    soft: towardsPaper([0.25, 0.2, 0.15, 0.1, 0.05], Math.max(leastForText, 5)),
    hair: towardsPaper([0.5, 0.45, 0.4, 0.35, 0.3, 0.2, 0.1], leastForLines),
    accent,
    accentByLamplight: nearestReadable(accent, lamplight, leastForText) ?? [0xf0, 0xa7, 0x8e],
  };
}

/** The paper and the lighter plate that pictures and fields lie on. */
function groundsOf(paper: Colour): readonly Colour[] {
  return [paper, between(paper, [255, 255, 255], 0.5)];
}

/**
 * The theme, if it can be read by everybody; otherwise none, and for each colour that cannot be read the nearest that can.
 *
 * @param at The place of a field of the theme.
 */
export function soundTheme(theme: Theme, at: (field: string) => Place): { readonly theme: Theme | undefined; readonly findings: readonly Finding[] } {
  const palette = paletteOf(theme);
  const grounds = groundsOf(palette.paper);
  const findings = (['ink', 'accent'] as const).flatMap((field) => {
    const worst = Math.min(...grounds.map((ground) => contrast(palette[field], ground)));
    if (worst >= leastForText) return [];
    const nearest = nearestReadable(palette[field], grounds, leastForText);
    const field_ = theme[field] === undefined ? 'paper' : field;
    return [
      finding('library/contrast', 'stop', at(field_), {
        field,
        found: hexOf(palette[field]),
        paper: hexOf(palette.paper),
        ratio: Math.floor(worst * 100) / 100,
        least: leastForText,
        nearest: nearest ? hexOf(nearest) : '',
      }),
    ];
  });
  return { theme: findings.length === 0 ? theme : undefined, findings };
}
