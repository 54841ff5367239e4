/** What of a site reaches a browser, by size. */
import { readdirSync, readFileSync, statSync } from 'node:fs';
import { join, posix } from 'node:path';
import { gzipSync } from 'node:zlib';

interface Weight {
  readonly name: string;
  readonly bytes: number;
  /** As a server sends it. */
  readonly compressed: number;
}

function weigh(name: string, path: string): Weight {
  const content = readFileSync(path);
  return { name, bytes: content.length, compressed: /\.woff2$/.test(path) ? content.length : gzipSync(content, { level: 9 }).length };
}

/** The files that all pages share, the heaviest first. */
export function assetsBySize(site: string): readonly Weight[] {
  const names = readdirSync(join(site, 'assets'), { recursive: true, encoding: 'utf8' }).filter((name) => statSync(join(site, 'assets', name)).isFile());
  return names.map((name) => weigh(`assets/${name}`, join(site, 'assets', name))).sort((a, b) => b.compressed - a.compressed);
}

/** A page with the styles and scripts that it names itself; letters and what comes later are not in it. */
export function pageWeights(site: string, pages: readonly string[]): readonly Weight[] {
  return pages.map((page) => {
    const html = readFileSync(join(site, page, 'index.html'), 'utf8');
    const linked = [...html.matchAll(/<(?:link[^>]*? rel="(?:stylesheet|modulepreload)"[^>]*? href|link[^>]*? href|script[^>]*? src)="([^"]+\.(?:css|js))"/g)].map(([, url = '']) =>
      posix.join(page, url),
    );
    const parts = [weigh(page, join(site, page, 'index.html')), ...[...new Set(linked)].map((url) => weigh(url, join(site, url)))];
    const sum = (of: 'bytes' | 'compressed') => parts.reduce((all, each) => all + each[of], 0);
    return { name: `${page === '' ? 'the first page' : page} with ${parts.length - 1} files`, bytes: sum('bytes'), compressed: sum('compressed') };
  });
}

/** As lines of a table in plain text. */
export function weightTable(weights: readonly Weight[]): string {
  const kB = (bytes: number) => (bytes / 1000).toFixed(1).padStart(9);
  return ['       kB  compressed', ...weights.map(({ name, bytes, compressed }) => `${kB(bytes)}   ${kB(compressed)}  ${name}`)].join('\n');
}
