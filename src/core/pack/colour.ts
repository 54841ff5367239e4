/**
 * Colours as a person sees them: how far two stand apart, and what lies between.
 * Source of contrast: WCAG 2.2, "relative luminance" and "contrast ratio", with the sRGB threshold of IEC 61966-2-1 (0.04045).
 */

/** Red, green and blue, each 0 to 255. */
export type Colour = readonly [red: number, green: number, blue: number];

/** Reads `#8a2e1b`; undefined for anything else. */
export function colourOf(text: string): Colour | undefined {
  const digits = /^#([\da-f]{6})$/i.exec(text)?.[1];
  return digits === undefined ? undefined : ([0, 2, 4].map((at) => Number.parseInt(digits.slice(at, at + 2), 16)) as unknown as Colour);
}

export function hexOf(colour: Colour): string {
  return `#${colour
    .map((part) =>
      Math.min(255, Math.max(0, Math.round(part)))
        .toString(16)
        .padStart(2, '0'),
    )
    .join('')}`;
}

/** 0 for black to 1 for white. */
export function luminance(colour: Colour): number {
  const [red, green, blue] = colour.map((part) => {
    const share = part / 255;
    return share <= 0.04045 ? share / 12.92 : ((share + 0.055) / 1.055) ** 2.4;
  }) as unknown as Colour;
  return 0.2126 * red + 0.7152 * green + 0.0722 * blue;
}

/** From 1, the same, to 21, black on white. */
export function contrast(one: Colour, other: Colour): number {
  const [low = 0, high = 0] = [luminance(one), luminance(other)].sort((a, b) => a - b);
  return (high + 0.05) / (low + 0.05);
}

/** A colour on the way from one to another; `share` 0 is the first. */
export function between(one: Colour, other: Colour, share: number): Colour {
  return [0, 1, 2].map((at) => Math.round((one[at] ?? 0) + ((other[at] ?? 0) - (one[at] ?? 0)) * share)) as unknown as Colour;
}

/**
 * The colour nearest to `wanted`, on its way to black or to white, that stands at `least` or more from each ground.
 * Undefined when neither way leads there, which happens when the grounds themselves lie far apart.
 */
export function nearestReadable(wanted: Colour, grounds: readonly Colour[], least: number): Colour | undefined {
  const fits = (colour: Colour) => grounds.every((ground) => contrast(colour, ground) >= least);
  for (let step = 0; step <= 255; step++) {
    const shares = [between(wanted, [0, 0, 0], step / 255), between(wanted, [255, 255, 255], step / 255)];
    const found = shares.find(fits);
    if (found) return found;
  }
  return undefined;
}
