/** What a PDF holds, read by somebody else's reader (pdfjs), and its figures from the file's own objects. */
import { readFile } from 'node:fs/promises';
import { inflateSync } from 'node:zlib';
import { getDocument, OPS } from 'pdfjs-dist/legacy/build/pdf.mjs';

export interface ReadPdf {
  readonly bytes: number;
  readonly pages: number;
  readonly tagged: boolean;
  readonly title: string;
  readonly language: string;
  /** Names of all typefaces, and of those that are not in the file itself. */
  readonly fonts: readonly string[];
  readonly fontsMissing: readonly string[];
  /** Headings of the outline, from the top down. */
  readonly outline: readonly string[];
  /** All text in the order of the file, with single spaces. */
  readonly text: string;
  readonly textOfPages: readonly string[];
  /** Alternative texts of all figures; undefined where one has none. */
  readonly figures: readonly (string | undefined)[];
  readonly lines: readonly DrawnLine[];
  /** Smallest size of any letter, in points, and the place of each run of text. */
  readonly runs: readonly { readonly page: number; readonly text: string; readonly size: number; readonly from: number; readonly to: number; readonly y: number }[];
  /** Width and height of the first page, in millimetres. */
  readonly paper: readonly [number, number];
  /** True when the file claims PDF/UA-1 in its metadata. */
  readonly claimsUa: boolean;
}

/** A straight horizontal line: millimetres from the left and from the top of its page. */
export interface DrawnLine {
  readonly page: number;
  readonly x: number;
  readonly y: number;
  readonly length: number;
  /** Points. */
  readonly thickness: number;
  readonly dashed: boolean;
}

const millimetre = 72 / 25.4;

export async function readPdf(path: string): Promise<ReadPdf> {
  const bytes = await readFile(path);
  const document = await getDocument({ data: new Uint8Array(bytes), verbosity: 0, fontExtraProperties: true, useSystemFonts: false }).promise;
  const { info } = (await document.getMetadata()) as { info: { Title?: string; Language?: string } };
  const fonts = new Map<string, boolean>();
  const textOfPages: string[] = [];
  const lines: DrawnLine[] = [];
  const runs: ReadPdf['runs'][number][] = [];
  for (let number = 1; number <= document.numPages; number++) {
    const page = await document.getPage(number);
    const operators = await page.getOperatorList();
    const height = page.view[3] ?? 0;
    for (const [index, operator] of operators.fnArray.entries()) {
      if (operator !== OPS.setFont) continue;
      const font = page.commonObjs.get((operators.argsArray[index] as [string])[0]) as { name: string; missingFile?: boolean };
      fonts.set(font.name, (fonts.get(font.name) ?? false) || font.missingFile === true);
    }
    lines.push(...linesOf(operators, height, number));
    const content = await page.getTextContent();
    let text = '';
    for (const item of content.items) {
      if (!('str' in item)) continue;
      text += item.str + (item.hasEOL ? ' ' : '');
      const [, , , , x, y] = item.transform as number[];
      if (item.str.trim() !== '')
        runs.push({ page: number, text: item.str, size: item.height, from: (x ?? 0) / millimetre, to: ((x ?? 0) + item.width) / millimetre, y: (height - (y ?? 0)) / millimetre });
    }
    textOfPages.push(text.replace(/\s+/g, ' ').trim());
  }
  const outline = headingsOf(await document.getOutline());
  const first = await document.getPage(1);
  const objects = objectsIn(bytes);
  const mark = await document.getMarkInfo();
  await document.destroy();
  return {
    bytes: bytes.length,
    pages: textOfPages.length,
    tagged: mark?.Marked === true && /\/StructTreeRoot/.test(objects),
    title: info.Title ?? '',
    language: info.Language ?? '',
    fonts: [...fonts.keys()],
    fontsMissing: [...fonts].filter(([, missing]) => missing).map(([name]) => name),
    outline,
    text: textOfPages.join(' '),
    textOfPages,
    figures: figuresIn(objects),
    lines,
    runs,
    paper: [(first.view[2] ?? 0) / millimetre, (first.view[3] ?? 0) / millimetre],
    claimsUa: /pdfuaid:part[^0-9]*1/.test(objects),
  };
}

/**
 * Words of a sheet in Arabic, line by line from the right. The reader gives each piece of a line as it can be read, but the
 * pieces from left to right, and takes letters with signs above them apart; so words with such signs are left out here.
 */
export function wordsFromRight({ runs }: Pick<ReadPdf, 'runs'>): readonly string[] {
  const lines: { readonly page: number; readonly y: number; readonly runs: ReadPdf['runs'][number][] }[] = [];
  for (const run of runs) {
    const line = lines.find((each) => each.page === run.page && Math.abs(each.y - run.y) < 1);
    if (line) line.runs.push(run);
    else lines.push({ page: run.page, y: run.y, runs: [run] });
  }
  return lines.sort((a, b) => a.page - b.page || a.y - b.y).flatMap((line) => line.runs.sort((a, b) => b.to - a.to).flatMap(({ text }) => unmarkedWords(text)));
}

/** Words of two letters or more without a sign above or below a letter. */
export function unmarkedWords(text: string): readonly string[] {
  return (text.match(/[\p{L}\p{M}\p{N}]+/gu) ?? []).filter((word) => word.length > 1 && !/[\p{M}ّ]/u.test(word));
}

interface Heading {
  readonly title: string;
  readonly items: readonly Heading[];
}

function headingsOf(headings: readonly Heading[] | null): readonly string[] {
  return (headings ?? []).flatMap((heading) => [heading.title, ...headingsOf(heading.items)]);
}

type Matrix = readonly [number, number, number, number, number, number];

/** Straight horizontal lines, wherever the transformations in force put them. */
function linesOf(operators: { readonly fnArray: readonly number[]; readonly argsArray: readonly unknown[] }, height: number, page: number): readonly DrawnLine[] {
  const found: DrawnLine[] = [];
  let state: { matrix: Matrix; thickness: number; dashed: boolean } = { matrix: [1, 0, 0, 1, 0, 0], thickness: 1, dashed: false };
  const kept: (typeof state)[] = [];
  for (const [index, operator] of operators.fnArray.entries()) {
    const args = operators.argsArray[index];
    if (operator === OPS.save) kept.push(state);
    else if (operator === OPS.restore) state = kept.pop() ?? state;
    else if (operator === OPS.transform) state = { ...state, matrix: times(state.matrix, args as Matrix) };
    else if (operator === OPS.setLineWidth) state = { ...state, thickness: (args as [number])[0] };
    else if (operator === OPS.setDash) state = { ...state, dashed: Object.keys((args as [object])[0]).length > 0 };
    else if (operator === OPS.constructPath) {
      const path = Object.values((args as [number, [Readonly<Record<string, number>>]])[1][0]);
      // A straight line is "move to" and "line to": 0 x y 1 x y.
      if (path.length !== 6 || path[0] !== 0 || path[3] !== 1) continue;
      const [from, to] = [apply(state.matrix, path[1] ?? 0, path[2] ?? 0), apply(state.matrix, path[4] ?? 0, path[5] ?? 0)];
      if (Math.abs(from[1] - to[1]) > 0.01) continue;
      found.push({
        page,
        x: Math.min(from[0], to[0]) / millimetre,
        y: (height - from[1]) / millimetre,
        length: Math.abs(to[0] - from[0]) / millimetre,
        thickness: state.thickness,
        dashed: state.dashed,
      });
    }
  }
  return found;
}

function times([a, b, c, d, e, f]: Matrix, [g, h, i, j, k, l]: Matrix): Matrix {
  return [a * g + c * h, b * g + d * h, a * i + c * j, b * i + d * j, a * k + c * l + e, b * k + d * l + f];
}

function apply([a, b, c, d, e, f]: Matrix, x: number, y: number): readonly [number, number] {
  return [a * x + c * y + e, b * x + d * y + f];
}

/** The file's text with its packed objects unpacked (ISO 32000-1, 7.5.7: object streams). */
function objectsIn(bytes: Buffer): string {
  const text = bytes.toString('latin1');
  const unpacked = [text];
  for (const { index, 0: start } of text.matchAll(/stream\r?\n/g)) {
    const from = index + start.length;
    const to = text.indexOf('endstream', from);
    try {
      const inside = inflateSync(bytes.subarray(from, to)).toString('latin1');
      if (/\/(?:StructElem|StructTreeRoot|Figure)|pdfuaid/.test(inside)) unpacked.push(inside);
    } catch {
      // Not packed this way: a picture or a font.
    }
  }
  return unpacked.join('\n');
}

/** The alternative text of each structure element of the kind "Figure". */
function figuresIn(objects: string): readonly (string | undefined)[] {
  return objects
    .split(/\/S\s*\/Figure\b/)
    .slice(1)
    .map((after, index, all) => {
      // The keys of one dictionary may stand before or after its kind; a written dictionary ends with ">>".
      const before = (index === 0 ? objects.split(/\/S\s*\/Figure\b/)[0] : all[index - 1]) ?? '';
      const whole = before.slice(before.lastIndexOf('<<')) + (after.split('>>')[0] ?? '');
      const alt = /\/Alt\s*(\((?:\\.|[^\\)])*\)|<[0-9A-Fa-f]*>)/s.exec(whole)?.[1];
      return alt === undefined || alt === '()' || alt === '<>' ? undefined : alt;
    });
}
