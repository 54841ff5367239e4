import { SourceMap } from 'node:module';
import { createContext, Script } from 'node:vm';
import * as forLayouts from '../../layouts/own.ts';
import { fencedJsx, Refused } from '../../layouts/own-fence.ts';
import { toHtml } from '../../layouts/to-html.ts';
import { finding, type FactsOf, type Finding, type Place } from '../core/finding.ts';
import type { Library } from '../core/pack/library.ts';
import type { OwnPart } from '../core/pack/own-parts.ts';
import { rootOf } from '../outputs/addresses.ts';
import type { OwnLayouts, Page } from '../outputs/views.ts';
import { brokenLinksOf } from '../outputs/links-in.ts';
import { compileTsx, isTsxFault } from './bundle.ts';

/**
 * A library's own layouts: TSX that `library.yaml` names, made into functions from a page to HTML. They come from the library's own folder and are
 * trusted as its settings are; packs and sources bring none. They are run without `process`, files or network, so that a layout stays a
 * function of its page; that is a fence against slips, and none against malice.
 */

type Problem = FactsOf['library/layout']['problem'];

/** A mistake in a layout, with its line where that is known. */
class LayoutFault extends Error {
  constructor(
    readonly problem: Problem,
    readonly detail: string,
    readonly at: { readonly line: number; readonly column: number } = { line: 1, column: 1 },
  ) {
    super(detail);
  }
}

/** A function for each layout that can be used, and a finding for each that cannot. */
export async function readOwnLayouts(texts: ReadonlyMap<OwnPart, string>, library: Pick<Library, 'layouts'>): Promise<{ readonly own: OwnLayouts; readonly findings: readonly Finding[] }> {
  const own: Partial<Record<OwnPart, (page: Page) => string>> = {};
  const findings: Finding[] = [];
  for (const part of library.layouts ?? []) {
    try {
      const text = texts.get(part);
      if (text === undefined) throw new LayoutFault('missing', '');
      own[part] = await layoutFrom(part, text);
    } catch (error) {
      findings.push(told(part, error));
    }
  }
  return { own, findings };
}

/** The layouts that hold on every page of the site. One that fails on a single page is used on none, so that all pages look alike. */
export function soundLayouts(own: OwnLayouts, pages: readonly Page[]): { readonly own: OwnLayouts; readonly findings: readonly Finding[] } {
  const urls = new Set(pages.flatMap(({ url, language, library }) => [url, ...linkedAnyway.map((name) => `${rootOf(language, library.language)}${name}/`)]));
  const findings = (Object.keys(own) as OwnPart[]).flatMap((part) => {
    try {
      for (const page of pages) {
        if (part === 'welcome' && page.view.kind !== 'library') continue;
        const html = own[part]?.(page) ?? '';
        const headings = html.split('<h1').length - 1;
        if (part === 'welcome' ? headings !== 1 : headings > 0) throw new LayoutFault(part === 'welcome' ? 'no heading' : 'refused', part === 'welcome' ? String(headings) : '<h1>');
        const [broken] = brokenLinksOf(html, page.url, urls);
        if (broken !== undefined) throw new LayoutFault('link', broken);
      }
      return [];
    } catch (error) {
      return [told(part, error)];
    }
  });
  const faulty = new Set(findings.map(({ place }) => place.file));
  return { own: Object.fromEntries(Object.entries(own).filter(([part]) => !faulty.has(fileOf(part)))), findings };
}

/** Pages of a library's own text that the usual head and foot link to, whether it has written them or not. */
const linkedAnyway = ['about', 'privacy', 'accessibility', 'home-reading'];

const fileOf = (part: string) => `layouts/${part}.tsx`;

function told(part: OwnPart, error: unknown): Finding {
  if (!(error instanceof LayoutFault)) throw error;
  const place: Place = error.problem === 'missing' ? { file: 'library.yaml', line: 1, column: 1 } : { file: fileOf(part), ...error.at };
  return finding('library/layout', 'stop', place, { part, problem: error.problem, detail: error.detail });
}

async function layoutFrom(part: OwnPart, text: string): Promise<(page: Page) => string> {
  const file = fileOf(part);
  const made = await compileTsx(text, file);
  if (isTsxFault(made)) throw new LayoutFault('syntax', made.text, made);
  const lines = new SourceMap(JSON.parse(made.map) as ConstructorParameters<typeof SourceMap>[0]);
  const module: { exports: { default?: unknown } } = { exports: {} };
  const require = (name: string): unknown => {
    if (name === 'bookfellow/layouts') return forLayouts;
    if (name === 'preact/jsx-runtime') return fencedJsx;
    throw new LayoutFault('import', name, lineOfImport(text, name));
  };
  const guarded = <T>(work: () => T): T => {
    try {
      return work();
    } catch (error) {
      if (error instanceof LayoutFault) throw error;
      throw new LayoutFault(error instanceof Refused ? 'refused' : 'failed', messageOf(error), placeIn(error, file, lines));
    }
  };
  guarded(() => {
    new Script(made.code, { filename: file }).runInContext(createContext({ module, exports: module.exports, require }), { timeout: 2000 });
  });
  const layout = module.exports.default;
  if (typeof layout !== 'function') throw new LayoutFault('no function', '');
  return (page) => guarded(() => toHtml(fencedJsx.jsx(layout as never, { ...page }) as never));
}

/** The last word on what went wrong: an error of the other context is no `Error` of ours. */
function messageOf(error: unknown): string {
  const message = typeof error === 'object' && error !== null && 'message' in error ? error.message : error;
  return String(message).split('\n', 1)[0] ?? '';
}

function placeIn(error: unknown, file: string, lines: SourceMap): { line: number; column: number } | undefined {
  const stack = typeof error === 'object' && error !== null && 'stack' in error ? String(error.stack) : '';
  const [, line, column] = new RegExp(`${file.replace(/[.]/g, '\\.')}:(\\d+)(?::(\\d+))?`).exec(stack) ?? [];
  if (line === undefined) return undefined;
  const entry = lines.findEntry(Number(line) - 1, Number(column ?? 1) - 1);
  return 'originalLine' in entry ? { line: entry.originalLine + 1, column: entry.originalColumn + 1 } : undefined;
}

function lineOfImport(text: string, name: string): { line: number; column: number } {
  const at = Math.max(0, text.indexOf(name));
  const before = text.slice(0, at).split('\n');
  return { line: before.length, column: (before.at(-1)?.length ?? 0) + 1 };
}
