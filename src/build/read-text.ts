import { readdir, readFile, stat } from 'node:fs/promises';
import { join } from 'node:path';
import { readFrontMatter } from '../core/pack/front-matter.ts';
import { readBody } from '../core/pack/markdown.ts';

/** A text to count: its running prose, and what was left out because it is none. */
export interface TextToCount {
  readonly file: string;
  /** The language that the file's front matter names, if it has any. */
  readonly language: string | undefined;
  readonly prose: string | readonly { readonly text: string; readonly line: number }[];
  readonly leftOut: { readonly headings: number; readonly listItems: number };
}

/** The texts of a file, or of the `.md` and `.txt` files in a folder. */
export async function readTexts(path: string): Promise<readonly TextToCount[]> {
  if (!(await stat(path)).isDirectory()) return [await readText(path)];
  const names = (await readdir(path, { recursive: true })).filter((name) => /\.(?:md|txt)$/.test(name) && !/(?:^|[/\\])(?:node_modules|\.git)(?:[/\\]|$)/.test(name)).sort();
  const texts: TextToCount[] = [];
  for (const name of names) texts.push(await readText(join(path, name)));
  return texts;
}

async function readText(file: string): Promise<TextToCount> {
  const text = (await readFile(file, 'utf8')).replace(/^\ufeff/, '').replace(/\r\n?/g, '\n');
  const none = { headings: 0, listItems: 0 };
  if (!file.endsWith('.md')) return { file, language: languageInName(file), prose: text.replace(/^\[opening \d+\]$/gm, ''), leftOut: none };
  const front = text.startsWith('---') ? readFrontMatter(text, file).value : undefined;
  const language = front?.raw['language'];
  const { blocks } = readBody(front?.body ?? text, front?.bodyLine ?? 1, file, []).body;
  const prose = blocks.filter((block) => block.kind === 'paragraph' || block.kind === 'quote');
  const headings = blocks.filter((block) => block.kind === 'heading').length;
  return { file, language: typeof language === 'string' ? language : languageInName(file), prose, leftOut: { headings, listItems: blocks.length - prose.length - headings } };
}

/** `letter.es.md` is in Spanish. */
function languageInName(file: string): string | undefined {
  return /\.([a-z]{2,3})\.(?:md|txt)$/.exec(file)?.[1];
}
