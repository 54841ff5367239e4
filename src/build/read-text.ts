import { readdir, readFile, stat } from 'node:fs/promises';
import { basename, dirname, join } from 'node:path';
import { blocksOf, type PlacedProse } from '../core/measure/blocks.ts';
import type { LeftOut } from '../core/measure/measures.ts';
import { readFrontMatter } from '../core/pack/front-matter.ts';
import { readBody } from '../core/pack/markdown.ts';
import type { Pack } from '../core/pack/pack.ts';
import { readPack } from '../core/pack/read-pack.ts';

/** A text to count: its running prose, and what was left out because it is none. */
export interface TextToCount {
  readonly file: string;
  /** The language that the file's front matter or name gives, if any. */
  readonly language: string | undefined;
  readonly prose: readonly PlacedProse[];
  readonly leftOut: LeftOut;
  /** The whole pack, where the file is one that can be read. */
  readonly pack: Pack | undefined;
  /** True for the text of a book, kept only for counting. */
  readonly isPassage: boolean;
}

const packName = /^pack(?:\.([a-z]{2,3}))?\.md$/;

/** The texts of a file, or of the `.md` and `.txt` files in a folder. */
export async function readTexts(path: string): Promise<readonly TextToCount[]> {
  if (!(await stat(path)).isDirectory()) return [await readText(path)];
  const names = (await readdir(path, { recursive: true })).filter((name) => /\.(?:md|txt)$/.test(name) && !/(?:^|[/\\])(?:node_modules|\.git)(?:[/\\]|$)/.test(name)).sort();
  const texts: TextToCount[] = [];
  for (const name of names) texts.push(await readText(join(path, name)));
  return texts;
}

/** The private passage that lies beside a pack's file, if there is one. */
export async function passageBeside(packFile: string): Promise<TextToCount | undefined> {
  const language = packName.exec(basename(packFile))?.[1];
  const file = join(dirname(packFile), 'private', `passage${language === undefined ? '' : `.${language}`}.txt`);
  return (await stat(file).catch(() => undefined))?.isFile() === true ? readText(file) : undefined;
}

async function readText(file: string): Promise<TextToCount> {
  const text = (await readFile(file, 'utf8')).replace(/^\ufeff/, '').replace(/\r\n?/g, '\n');
  if (!file.endsWith('.md')) {
    const prose = blocksOf(text.replace(/^\[opening \d+\]$/gm, ''));
    return { file, language: languageInName(file), prose, leftOut: {}, pack: undefined, isPassage: /(?:^|[/\\])private[/\\]passage(?:\.[a-z]{2,3})?\.txt$/.test(file) };
  }
  const front = text.startsWith('---') ? readFrontMatter(text, file).value : undefined;
  const language = front?.raw['language'];
  const { blocks } = readBody(front?.body ?? text, front?.bodyLine ?? 1, file, []).body;
  const prose = blocks.filter((block) => block.kind === 'paragraph' || block.kind === 'quote').map((block) => ({ text: block.text, line: block.line, keepsLines: true }));
  const headings = blocks.filter((block) => block.kind === 'heading').length;
  return {
    file,
    language: typeof language === 'string' ? language : languageInName(file),
    prose,
    leftOut: { headings, listItems: blocks.length - prose.length - headings },
    pack: packName.test(basename(file)) ? readPack({ slug: '', file, text, languageOfFile: undefined, pictureFiles: [], passage: undefined }).value : undefined,
    isPassage: false,
  };
}

/** `letter.es.md` is in Spanish. */
function languageInName(file: string): string | undefined {
  return /\.([a-z]{2,3})\.(?:md|txt)$/.exec(file)?.[1];
}
