/** The demo library as built for the whole-site tests, and how to look at it. */
import { createReadStream } from 'node:fs';
import { mkdtemp, readdir, stat } from 'node:fs/promises';
import { createServer } from 'node:http';
import { tmpdir } from 'node:os';
import { extname, join, sep } from 'node:path';
import { fileURLToPath } from 'node:url';

const root = fileURLToPath(new URL('../..', import.meta.url));

/** Folder of the built demo site: the one that `test/run.ts` made for the whole run, or else one made now. */
export async function builtSite(): Promise<string> {
  const made = process.env['BOOKFELLOW_TEST_SITE'];
  return made === undefined || made === '' ? buildDemo(await mkdtemp(join(tmpdir(), 'bookfellow-demo-'))) : made;
}

/** Builds the demo library into `folder`/site, strictly: a finding that stops a pack of ours is a fault. */
export async function buildDemo(folder: string): Promise<string> {
  const site = join(folder, 'site');
  // Fetched only here: most tests find the site made, and the whole builder is a lot to read for each of them.
  const { build } = await import('../../src/build/build.ts');
  const built = await build({ content: join(root, 'content'), site, cache: join(root, '.cache'), strict: true, paper: true, folders: true });
  const stopped = built.findings.filter((found) => found.level === 'stop');
  if (stopped.length > 0) throw new Error(`The demo library does not build: ${JSON.stringify(stopped, null, 2)}`);
  return site;
}

/** Addresses of all pages of a site, relative to its root: `packs/hen/`, `404.html`. */
export async function pagesIn(site: string): Promise<readonly string[]> {
  const entries = await readdir(site, { recursive: true });
  return entries
    .map((entry) => entry.split(sep).join('/'))
    .filter((entry) => entry.endsWith('.html'))
    .map((entry) => (entry === 'index.html' ? '' : entry.replace(/\/index\.html$/, '/')))
    .sort();
}

const types: Readonly<Record<string, string>> = {
  '.html': 'text/html; charset=utf-8',
  '.css': 'text/css; charset=utf-8',
  '.js': 'text/javascript; charset=utf-8',
  '.json': 'application/json',
  '.webmanifest': 'application/manifest+json',
  '.xml': 'application/xml',
  '.vtt': 'text/vtt; charset=utf-8',
  '.webm': 'video/webm',
  '.jpg': 'image/jpeg',
  '.png': 'image/png',
  '.webp': 'image/webp',
  '.svg': 'image/svg+xml',
  '.woff2': 'font/woff2',
  '.pdf': 'application/pdf',
  '.txt': 'text/plain; charset=utf-8',
};

/** Serves a site as a plain web host would, in a folder below its root, so that an address that begins with a slash shows as broken. */
export async function serveBelowRoot(site: string): Promise<{ readonly address: string; close(): Promise<void> }> {
  const server = createServer((request, response) => {
    const path = decodeURIComponent((request.url ?? '/').split(/[?#]/, 1)[0] ?? '/');
    const file = path.startsWith('/library/') && !path.includes('..') ? join(site, path.slice('/library/'.length), path.endsWith('/') ? 'index.html' : '') : undefined;
    const missing = () => response.writeHead(404, { 'content-type': 'text/plain' }).end('not there');
    if (file === undefined) {
      missing();
      return;
    }
    stat(file).then((status) => {
      if (!status.isFile()) missing();
      else {
        const type = { 'content-type': types[extname(file)] ?? 'application/octet-stream' };
        // A film is moved about in by asking for a part of it.
        const start = Number(/^bytes=(\d+)-$/.exec(request.headers.range ?? '')?.[1] ?? -1);
        if (start < 0) createReadStream(file).pipe(response.writeHead(200, type));
        else createReadStream(file, { start }).pipe(response.writeHead(206, { ...type, 'content-range': `bytes ${start}-${status.size - 1}/${status.size}` }));
      }
    }, missing);
  });
  await new Promise<void>((done) => {
    server.listen(0, '127.0.0.1', done);
  });
  const bound = server.address();
  const port = typeof bound === 'object' && bound ? bound.port : 0;
  return {
    address: `http://127.0.0.1:${String(port)}/library/`,
    close: async () => {
      server.closeAllConnections();
      await new Promise<void>((done) => {
        server.close(() => {
          done();
        });
      });
    },
  };
}
