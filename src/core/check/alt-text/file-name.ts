import type { AltRule, ReadAlt } from './alt-context.ts';

/**
 * The name of a file is no alt text: one with an ending, a name that a camera or a screenshot gives, or the file's own name with its
 * hyphens. "Owl" beside owl.png is a word, and so is "merry-go-round". Source: W3C failure F30; ACT rule qt1vmo.
 */
const ending = /\.(?:png|jpe?g|gif|webp|svg|bmp|tiff?|heic|avif|pdf)$/iu;
/** A file within a sentence. A link's `](boat.png)` is no word: that is for the rule on markup. */
const pictureFile = /^[\p{L}\p{N}._-]{1,60}\.(?:png|jpe?g|gif|webp|svg|bmp|tiff?|heic|avif)$/iu;
const camera = /^(?:IMG|IMAG|DSC[NF]?|PXL|MVI|PICT|GOPR|DJI|CIMG|SCAN)[-_ ]?\d{3,}[-\w ()~]*$/iu;
const numbered = /^(?:image|img|imagen|foto|photo|pic|picture|scan|bild|illustration|ilustracion)[-_]?\d{3,}$/iu;
const cameraCounter = /^P\d{7}$/u;
const screen = /^(?:screen ?shots?|screen captures?|scan|scanned|captura(?: de pantalla)?|escaneo|escaneado)[-_ ]*(.*\d.*)$/iu;
const dateAndTime = /^(?:image|imagen|photo|foto|picture)?[-_ ]?\d{4}-?\d{2}-?\d{2}[-_ T]\d[\d._:-]*$/iu;
const hash = /^(?:[0-9a-f]{16,}|[0-9a-f]{8}(?:-[0-9a-f]{4}){3}-[0-9a-f]{12})$/iu;
const version = /-(?:v\d+|final|copy|copia|small|large|web|cropped|edited)$/iu;
/** Words that have their hyphens by right. From memory. */
const hyphenWords = new Set(
  'merry-go-round see-saw seesaw jack-in-the-box jack-o-lantern hide-and-seek tic-tac-toe forget-me-not t-shirt x-ray teeter-totter ice-cream yo-yo ping-pong tug-of-war mother-in-law sube-y-baja tic-tac vaivén coche-cama'.split(
    ' ',
  ),
);

export const fileName: AltRule<'alt-text/file-name'> = {
  code: 'alt-text/file-name',
  level: 'stop',
  look: (alt) => {
    const found = isFileName(alt)
      ? alt.text
      : alt.unquoted
          .split(' ')
          .map(bare)
          .find((piece) => pictureFile.test(piece));
    return found === undefined ? undefined : { found: found.slice(0, 60) };
  },
};

function isFileName(alt: ReadAlt): boolean {
  const text = alt.text;
  if (ending.test(text) || camera.test(text) || numbered.test(text) || cameraCounter.test(text) || dateAndTime.test(text) || hash.test(text)) return true;
  const behind = screen.exec(text)?.[1];
  if (behind !== undefined && !/\p{L}/u.test(behind.replace(/\b(?:at|a las|am|pm|of|de)\b/giu, ''))) return true;
  return /\s/u.test(text) ? isNumberedStem(alt) : isSlug(alt);
}

/** "Boat in rain 02" of boat-in-rain-02.png: nobody counts with a nought in front but for files. */
function isNumberedStem(alt: ReadAlt): boolean {
  const words = alt.file
    .replace(/\.[^.]*$/u, '')
    .split(/[-_ ]+/u)
    .join(' ')
    .toLowerCase();
  return alt.text.toLowerCase() === words && /(?: 0\d+| v\d+| final| copy| copia)$/u.test(words);
}

/** A word without the brackets and marks around it. */
function bare(piece: string): string {
  return piece
    .slice(0, 120)
    .replace(/^\(/u, '')
    .replace(/[).,;:]+$/u, '');
}

/** One run of letters joined as files are named. A capital that the file does not have is a person's: "Merry-go-round". */
function isSlug(alt: ReadAlt): boolean {
  const stem = alt.file.replace(/\.[^.]*$/u, '');
  if (/[\p{L}\d]_+[\p{L}\d]/u.test(alt.text)) return true;
  if (/\p{Ll}-/u.test(alt.text) && version.test(alt.text)) return true;
  if (alt.use === 'word picture' || alt.text !== stem || hyphenWords.has(alt.text.toLowerCase())) return false;
  return /\p{L}-[\p{L}\d]/u.test(alt.text) || /\p{Ll}\p{Lu}/u.test(alt.text) || /\p{L}\d+$/u.test(alt.text);
}
