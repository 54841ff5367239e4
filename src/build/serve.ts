import { createReadStream } from 'node:fs';
import { readFile, stat } from 'node:fs/promises';
import { createServer, type IncomingMessage, type Server, type ServerResponse } from 'node:http';
import { extname, join, normalize, relative, sep } from 'node:path';
import { answerSave, newToken, saveUrl, tokenName } from './save-request.ts';

/** A small server for looking at a built site: this machine only, nothing cached. It only reads, but for the packs that the form may save where a content folder is given. */
export interface Serving {
  readonly address: string;
  /** Asks every open page to load itself again. */
  reload(): void;
  /** Serves what this gives for a file of the folder in the file's place, until it is called again. */
  showInstead(pageOf: PageOf): void;
  close(): Promise<void>;
}

/** The HTML of a file by its path below the folder; undefined where the file itself is to be served. */
export type PageOf = (file: string) => string | undefined;

const types: Readonly<Record<string, string>> = {
  '.html': 'text/html; charset=utf-8',
  '.css': 'text/css; charset=utf-8',
  '.js': 'text/javascript; charset=utf-8',
  '.json': 'application/json; charset=utf-8',
  '.xml': 'application/xml; charset=utf-8',
  '.txt': 'text/plain; charset=utf-8',
  '.jpg': 'image/jpeg',
  '.webp': 'image/webp',
  '.png': 'image/png',
  '.svg': 'image/svg+xml',
  '.woff2': 'font/woff2',
  '.pdf': 'application/pdf',
  '.vtt': 'text/vtt; charset=utf-8',
  '.webm': 'video/webm',
  '.mp4': 'video/mp4',
  '.zip': 'application/zip',
};

const reloadUrl = '/-/reload';
/** Added to pages while they are looked at, never to the site on the disk. */
const reloadScript = `new EventSource('${reloadUrl}').addEventListener('changed', () => location.reload());\n`;

/** Serves a folder on the loopback address. Port 0 means any that is free. */
export async function serve(folder: string, port: number, content?: string): Promise<Serving> {
  const listeners = new Set<ServerResponse>();
  const shelf: Shelf = { folder, instead: () => undefined };
  const saving = content === undefined ? undefined : { content, token: newToken() };
  const server: Server = createServer((request, response) => {
    answer(shelf, request, response, listeners, saving).catch(() => {
      if (!response.headersSent) response.writeHead(500);
      response.end();
    });
  });
  await new Promise<void>((done, failed) => {
    server.once('error', failed);
    server.listen(port, '127.0.0.1', done);
  });
  const bound = server.address();
  return {
    address: `http://localhost:${String(typeof bound === 'object' && bound ? bound.port : port)}`,
    reload: () => {
      for (const listener of listeners) listener.write('event: changed\ndata: 1\n\n');
    },
    showInstead: (pageOf) => {
      shelf.instead = pageOf;
    },
    close: async () => {
      for (const listener of listeners) listener.end();
      server.closeAllConnections();
      await new Promise((done) => server.close(done));
    },
  };
}

/** Where packs from the form go, and the token by which the form is known. */
interface Saving {
  readonly content: string;
  readonly token: string;
}

/** The folder that is served, and pages that are shown in place of its files. */
interface Shelf {
  readonly folder: string;
  instead: PageOf;
}

async function answer(shelf: Shelf, request: IncomingMessage, response: ServerResponse, listeners: Set<ServerResponse>, saving: Saving | undefined): Promise<void> {
  if (saving && request.url === saveUrl) {
    await answerSave(request, response, saving.content, saving.token);
    return;
  }
  if (request.method !== 'GET' && request.method !== 'HEAD') {
    response.writeHead(405, { allow: 'GET, HEAD' }).end();
    return;
  }
  // Pages that are looked at while somebody writes must never come from a copy.
  const asked = (request.url ?? '').split('?', 1)[0];
  if (asked?.endsWith('/offline-worker.js') === true) {
    response.writeHead(404).end();
    return;
  }
  const path = decoded((request.url ?? '/').split(/[?#]/, 1)[0] ?? '/');
  if (path === reloadUrl) {
    response.writeHead(200, { 'content-type': 'text/event-stream', 'cache-control': 'no-store' });
    response.write(':\n\n');
    listeners.add(response);
    request.on('close', () => listeners.delete(response));
    return;
  }
  if (path === `${reloadUrl}.js`) {
    response.writeHead(200, { 'content-type': types['.js'], 'cache-control': 'no-store' }).end(reloadScript);
    return;
  }
  await answerFile(shelf, path, response, saving, request.headers.range);
}

async function answerFile(shelf: Shelf, path: string | undefined, response: ServerResponse, saving: Saving | undefined, range?: string): Promise<void> {
  const { folder } = shelf;
  const file = path === undefined ? undefined : join(folder, normalize(path));
  const inside = file !== undefined && (file === folder || file.startsWith(folder + sep)) && !file.split(sep).some((part) => part.startsWith('.git'));
  const status = inside ? await stat(file).catch(() => undefined) : undefined;
  if (status?.isDirectory() === true && path !== undefined && file !== undefined) {
    if (!path.endsWith('/')) {
      response.writeHead(301, { location: `${encodeURI(path)}/` }).end();
      return;
    }
    await answerPage(join(file, 'index.html'), shelf, response, saving);
  } else if (status?.isFile() === true && file !== undefined && extname(file) !== '.html') {
    const headers = { 'content-type': types[extname(file)] ?? 'application/octet-stream', 'cache-control': 'no-store', 'x-content-type-options': 'nosniff', 'accept-ranges': 'bytes' };
    const part = partOf(range, status.size);
    if (part) {
      response.writeHead(206, { ...headers, 'content-range': `bytes ${String(part.start)}-${String(part.end)}/${String(status.size)}`, 'content-length': part.end - part.start + 1 });
      createReadStream(file, part).pipe(response);
    } else {
      response.writeHead(200, { ...headers, 'content-length': status.size });
      createReadStream(file).pipe(response);
    }
  } else await answerPage(file ?? '', shelf, response, saving);
}

/** The part of a file that is asked for; films are moved about in by asking for parts. Source: RFC 9110, section 14. One range only, anything else gets the whole file. */
function partOf(range: string | undefined, size: number): { start: number; end: number } | undefined {
  const [, first = '', last = ''] = /^bytes=(\d*)-(\d*)$/.exec(range ?? '') ?? [];
  if (first === '' && last === '') return undefined;
  const start = first === '' ? Math.max(0, size - Number(last)) : Number(first);
  const end = first === '' || last === '' ? size - 1 : Math.min(Number(last), size - 1);
  return start <= end && start < size ? { start, end } : undefined;
}

async function answerPage(file: string, { folder, instead }: Shelf, response: ServerResponse, saving: Saving | undefined): Promise<void> {
  const found = instead(relative(folder, file)) ?? (await readFile(file, 'utf8').catch(() => undefined));
  const html = found ?? (await readFile(join(folder, '404.html'), 'utf8').catch(() => 'There is no such page.'));
  response.writeHead(found === undefined ? 404 : 200, { 'content-type': types['.html'], 'cache-control': 'no-store', 'x-content-type-options': 'nosniff' });
  // Only a page of this server can read the mark, and only the form's page has it.
  const isForm = saving !== undefined && /[/\\]make[/\\]index\.html$/.test(file);
  // The form is not loaded again by its own saving: somebody is writing in it.
  response.end(
    isForm ? html.replace('</head>', `<meta name="${tokenName}" content="${saving.token}"></head>`) : mayReload(html).replace('</head>', `<script src="${reloadUrl}.js" defer></script></head>`),
  );
}

/** The page with a policy that lets it hear of changes: as published, a page that is only read may run nothing and ask nobody. */
function mayReload(html: string): string {
  return html.replace(/(http-equiv="Content-Security-Policy" content=")([^"]*)/, (_, head: string, policy: string) =>
    ["script-src 'self'", "connect-src 'self'"].reduce((all, part) => (all.includes(part) ? all : `${all}; ${part}`), `${head}${policy}`),
  );
}

function decoded(path: string): string | undefined {
  try {
    const text = decodeURIComponent(path);
    return text.includes('\0') ? undefined : text;
  } catch {
    return undefined;
  }
}
