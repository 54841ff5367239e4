/** Links of a piece of a page's HTML that lead to pages which the site does not have. Links to files and away from the site are not looked at. */
export function brokenLinksOf(html: string, url: string, pages: ReadonlySet<string>): readonly string[] {
  const root = 'http://site.invalid/';
  return [...html.matchAll(/ href="([^"]*)"/g)].flatMap(([, link = '']) => {
    if (/^(?:#|[a-z]+:)/i.test(link)) return [];
    const { pathname } = new URL(link.replaceAll('&amp;', '&'), root + url);
    const to = decodeURI(pathname.slice(1));
    return (to === '' || to.endsWith('/')) && !pages.has(to) ? [link] : [];
  });
}
