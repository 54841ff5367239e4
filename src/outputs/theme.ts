import { hexOf } from '../core/pack/colour.ts';
import { paletteOf, type Theme } from '../core/pack/theme.ts';

/** What a library's theme adds to each style sheet for screens; nothing without a theme. Paper is printed in black. */
export function themeCss(theme: Theme | undefined): string {
  if (theme === undefined) return '';
  const { paper, plate, ink, soft, hair, accent, accentByLamplight } = paletteOf(theme);
  const values = { paper, plate, ink, soft, hair, madder: accent, ribbon: accent };
  const byDay = theme.paper ?? theme.ink ?? theme.accent;
  // A screen with high contrast chosen by its reader has colours of its own, and no rule here reaches those.
  const colours =
    byDay === undefined
      ? ''
      : `@media not (prefers-color-scheme:dark){:root{${Object.entries(values)
          .map(([name, colour]) => `--${name}:${hexOf(colour)}`)
          .join(';')}}}${theme.accent === undefined ? '' : `@media (prefers-color-scheme:dark){:root{--madder:${hexOf(accentByLamplight)};--ribbon:${hexOf(accentByLamplight)}}}`}`;
  const size = theme.textSize === undefined ? '' : `html{font-size:${String(1.125 * theme.textSize)}%}`;
  // The line of the head stands on its middle, since the foot of a picture is no line of writing.
  const logo = theme.logo === undefined ? '' : '.masthead-line{align-items:center}.site-name a{gap:.6em}.site-name picture{flex:none}';
  const css = `${colours}${size}${logo}`;
  return css === '' ? '' : `${css}\n`;
}
