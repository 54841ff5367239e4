import type { Finding } from '../core/finding.ts';
import { phrasesFor } from '../core/languages/pick-language.ts';
import type { Library } from '../core/pack/library.ts';
import { bodyHtml } from '../core/pack/markdown.ts';
import { readProsePage } from '../core/pack/read-prose-page.ts';
import type { PageText } from '../outputs/pages.ts';
import type { Page } from './read-content.ts';

/** The library's own pages (about, privacy and so on), read and turned into HTML. */
export function readProse(pages: readonly Page[], library: Library): { pages: readonly PageText[]; findings: readonly Finding[] } {
  const findings: Finding[] = [];
  const read: PageText[] = [];
  for (const page of pages) {
    const outcome = readProsePage(page.text, page.file);
    findings.push(...outcome.findings);
    if (!outcome.value) continue;
    const { title, description, body } = outcome.value;
    const language = page.languageOfFile ?? library.language;
    const html = bodyHtml(body, { topHeading: 2, showPicture: () => '', tableName: phrasesFor(language).wideTable });
    read.push({ name: page.name, language, title, description, html });
  }
  return { pages: read, findings };
}
