import { rosterInPage } from '../core/check/privacy-roster.ts';
import { finding, stops, type Finding } from '../core/finding.ts';
import { phrasesFor } from '../core/languages/pick-language.ts';
import type { Library } from '../core/pack/library.ts';
import { bodyHtml } from '../core/pack/markdown.ts';
import { readProsePage } from '../core/pack/read-prose-page.ts';
import { ownPageUrl, takenNames, type PageText } from '../outputs/pages.ts';
import type { Content, Page } from './read-content.ts';

/** The library's own pages (about, privacy and so on), read and turned into HTML. A page with a name of the private list is left out, and so is one whose address is taken. */
export function readProse(pages: readonly Page[], library: Library, roster: Content['roster']): { pages: readonly PageText[]; findings: readonly Finding[] } {
  const findings: Finding[] = [];
  const read: PageText[] = [];
  /** Addresses, and the file that has each. */
  const asked = new Map<string, string>();
  for (const page of pages) {
    const outcome = readProsePage(page.text, page.file);
    findings.push(...outcome.findings);
    if (!outcome.value) continue;
    const names = [...rosterInPage(outcome.value, page.file, roster)];
    findings.push(...names);
    if (stops(names)) continue;
    const { title, description, body } = outcome.value;
    const language = page.languageOfFile ?? library.language;
    if (library.languages.includes(language)) {
      const address = ownPageUrl(library, { name: page.name, language });
      const by = asked.get(address);
      if (by !== undefined || isTaken(page.name, library)) {
        findings.push(finding('page/address-taken', 'stop', { file: page.file, line: 1, column: 1 }, { address, ...(by !== undefined && { by }) }));
        continue;
      }
      asked.set(address, page.file);
    }
    const html = bodyHtml(body, { topHeading: 2, showPicture: () => '', tableName: phrasesFor(language).wideTable });
    read.push({ name: page.name, language, title, description, html });
  }
  return { pages: read, findings };
}

/** A page called `es` would lie where the Spanish pages begin. */
function isTaken(name: string, library: Library): boolean {
  return takenNames.has(name) || library.languages.includes(name);
}
