/** Serves a site compressed, as every host does, and beside each of its pages an empty one of the same weight. */
import { randomBytes } from 'node:crypto';
import { readFileSync } from 'node:fs';
import { readFile, stat } from 'node:fs/promises';
import { createServer } from 'node:http';
import { extname, join } from 'node:path';
import { gzipSync } from 'node:zlib';

const types: Readonly<Record<string, string>> = {
  '.html': 'text/html; charset=utf-8',
  '.css': 'text/css',
  '.js': 'text/javascript',
  '.json': 'application/json',
  '.webp': 'image/webp',
  '.woff2': 'font/woff2',
};

const packed = (bytes: Buffer | string) => gzipSync(bytes, { level: 9 });

export interface Server {
  readonly address: string;
  /** The path of the empty page that weighs as much as a page of the site with its style and scripts. */
  floorOf(path: string): string;
  close(): Promise<void>;
}

export async function serveCompressed(site: string): Promise<Server> {
  const floors = new Map<string, Buffer>();
  const server = createServer((request, response) => {
    void (async () => {
      const path = decodeURIComponent((request.url ?? '/').split(/[?#]/, 1)[0] ?? '/').slice(1);
      const file = join(site, path, path.endsWith('/') || path === '' ? 'index.html' : '');
      const empty = floors.get(path);
      if (!empty && (path.includes('..') || !(await stat(file).catch(() => undefined))?.isFile())) return response.writeHead(404).end();
      const type = types[extname(empty ? path : file)] ?? 'application/octet-stream';
      const bytes = empty ?? (await readFile(file));
      return /text|json/.test(type) ? response.writeHead(200, { 'content-type': type, 'content-encoding': 'gzip' }).end(packed(bytes)) : response.writeHead(200, { 'content-type': type }).end(bytes);
    })();
  });
  await new Promise<void>((done) => server.listen(0, '127.0.0.1', done));
  const bound = server.address();
  return {
    address: `http://127.0.0.1:${String(typeof bound === 'object' && bound ? bound.port : 0)}/`,
    floorOf(path) {
      const name = `floor-${path.replaceAll('/', '-')}`;
      const page = readFileSync(join(site, path, 'index.html'), 'utf8');
      const link = (tag: RegExp) => [...page.matchAll(tag)].map(([, url = '']) => readFileSync(join(site, path, url)));
      const weight = (files: readonly Buffer[]) => files.reduce((all, each) => all + packed(each).length, 0);
      const style = weight(link(/<link rel="stylesheet" href="([^"]+)" media="screen"/g));
      const script = weight(link(/<(?:script type="module" src|link rel="modulepreload" href)="([^"]+)"/g));
      floors.set(`${name}.css`, Buffer.from(`/*${filling(style)}*/p{color:#222}`));
      floors.set(`${name}.js`, Buffer.from(`/*${filling(script)}*/`));
      const head = `<!DOCTYPE html><html lang="en"><head><meta charset="utf-8"><meta name="viewport" content="width=device-width"><title>Empty</title><link rel="stylesheet" href="${name}.css"><script type="module" src="${name}.js"></script></head><body><p>Empty.</p>`;
      floors.set(`${name}.html`, Buffer.from(`${head}<!--${filling(packed(page).length - head.length / 2)}--></body></html>`));
      return `${name}.html`;
    },
    async close() {
      server.closeAllConnections();
      await new Promise<void>((done) => server.close(() => done()));
    },
  };
}

/** Letters that weigh so many bytes when they are compressed: random ones, four of which carry three bytes. */
const filling = (bytes: number) =>
  randomBytes(Math.max(0, Math.round(bytes)))
    .toString('base64url')
    .slice(0, Math.round((bytes * 4) / 3));
