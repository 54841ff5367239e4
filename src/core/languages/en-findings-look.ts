import type { FactsOf } from '../finding.ts';

type LookCode = 'library/contrast' | 'library/logo' | 'library/logo-alt' | 'library/layout';

const logoProblems: Readonly<Record<FactsOf['library/logo']['problem'], string>> = {
  missing: 'does not lie beside library.yaml',
  format: 'is not a PNG, JPEG or WebP picture',
  unreadable: 'cannot be opened as a picture',
  'too large': 'is larger than a picture may be',
};

/** How a library looks: findings about `library.yaml` and the library's own layouts. */
export const lookFindingsInEnglish: { readonly [K in LookCode]: (facts: FactsOf[K]) => string } = {
  'library/contrast': (f) =>
    `The ${f.field} ${f.found} stands at ${String(f.ratio)} : 1 from the paper ${f.paper}; text needs ${String(f.least)} : 1 to be read by everybody (WCAG 2.2, AA). ${f.nearest === '' ? 'Choose a lighter or a darker paper.' : `The nearest that can be read is "${f.nearest}".`} Until then the usual colours are used.`,
  'library/logo': (f) => `The logo "${f.file}" ${logoProblems[f.problem]}. Until that is mended, pages have no logo.`,
  'library/logo-alt': (f) =>
    `The logo has no alt text in ${f.languages.join(', ')}. Say in each language what it shows, or write "decorative: true" if the name beside it says it all. Until then, pages have no logo.`,
  'library/layout': (f) => `${layoutProblem(f)} Until that is mended, the usual ${f.part} is used.`,
};

function layoutProblem({ part, problem, detail }: FactsOf['library/layout']): string {
  switch (problem) {
    case 'missing':
      return `"layouts" names ${part}, and there is no file layouts/${part}.tsx.`;
    case 'syntax':
      return `This cannot be read as TSX: ${detail}.`;
    case 'import':
      return `"${detail}" cannot be imported here. A layout may import "bookfellow/layouts" and nothing else.`;
    case 'no function':
      return `This file has no "export default function" from a page to what stands in it.`;
    case 'failed':
      return `The layout fails: ${detail}`;
    case 'refused':
      return `${detail} may not stand in a layout: a page has no scripts, styles or pictures but those of the site.`;
    case 'no heading':
      return `The beginning of the first page needs one <h1>, and this has ${detail}.`;
    case 'link':
      return `The link "${detail}" leads to no page of the site. Make it with linkFrom(page.url, …).`;
  }
}
