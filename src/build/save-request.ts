import { randomBytes, timingSafeEqual } from 'node:crypto';
import type { IncomingMessage, ServerResponse } from 'node:http';
import { packZipLimits, readPackZip } from '../outputs/pack-zip.ts';
import { savePack, type Refusal, type Saved } from './save-pack.ts';

/**
 * The one thing that the preview takes: a pack from the form on its own page. The form is known by a token that only a page
 * of this server can read; who asks from another address, under another name, or without the token is refused before a byte is read.
 */

/** Where the form sends a pack, and the name of the mark that brings it the token. */
export const saveUrl = '/-/save';
export const tokenName = 'bookfellow-save';
const tokenHeader = 'x-bookfellow-save';

/** As large as a pack may be on its way here, in bytes. */
const largestBody = packZipLimits.all + 5_000_000;

const status: Readonly<Record<Refusal, number>> = {
  method: 405,
  host: 403,
  origin: 403,
  token: 403,
  type: 415,
  'too big': 413,
  'not a pack': 422,
  'folder name': 422,
  'file name': 422,
  link: 409,
  disk: 500,
};

/** The same for whoever looks at the answer with other tools. */
const sentences: Readonly<Record<Refusal, string>> = {
  method: 'A pack is sent with POST.',
  host: 'This preview only answers under localhost.',
  origin: 'Only the form on this preview’s own page may save.',
  token: 'Only the form on this preview’s own page may save. Load the page again and try once more.',
  type: 'A pack is sent as a zip.',
  'too big': 'This is larger than a pack may be.',
  'not a pack': 'There is no pack in this zip.',
  'folder name': 'The folder’s name may hold small letters, digits and dashes.',
  'file name': 'A file in it has a name that a pack cannot have.',
  link: 'Something in the pack’s folder is a link or no plain file. Nothing was written.',
  disk: 'The disk did not take it. What was there is as it was.',
};

export function newToken(): string {
  return randomBytes(24).toString('hex');
}

/** Takes a pack, or refuses it with a sentence. */
export async function answerSave(request: IncomingMessage, response: ServerResponse, content: string, token: string): Promise<void> {
  const saved = await save(request, content, token);
  const body = 'saved' in saved ? saved : { ...saved, why: sentences[saved.refused] };
  // What was not read to its end is not waited for.
  const isUnread = 'refused' in saved && !request.complete;
  response.writeHead('saved' in saved ? 200 : status[saved.refused], {
    'content-type': 'application/json; charset=utf-8',
    'cache-control': 'no-store',
    'x-content-type-options': 'nosniff',
    ...(isUnread && { connection: 'close' }),
  });
  response.end(JSON.stringify(body));
  if (isUnread) response.once('finish', () => request.destroy());
}

async function save(request: IncomingMessage, content: string, token: string): Promise<Saved> {
  const refused = whyRefused(request, token);
  if (refused) return { refused };
  const bytes = await bodyOf(request);
  if (!bytes) return { refused: 'too big' };
  const pack = readPackZip(bytes);
  return pack ? savePack(content, pack) : { refused: 'not a pack' };
}

/** What speaks against a request, told by its head alone. */
export function whyRefused({ method, headers, socket }: Pick<IncomingMessage, 'method' | 'headers' | 'socket'>, token: string): Refusal | undefined {
  if (method !== 'POST') return 'method';
  const port = String(socket.localPort);
  const own = ['localhost', '127.0.0.1'].map((name) => `${name}:${port}`);
  if (!own.includes(headers.host ?? '') || !/^(?:::ffff:)?127\./.test(socket.remoteAddress ?? '')) return 'host';
  // A page elsewhere, and a name elsewhere that leads to this machine, give another origin than the name asked for.
  if (headers.origin !== `http://${headers.host ?? ''}`) return 'origin';
  if (headers['sec-fetch-site'] !== undefined && headers['sec-fetch-site'] !== 'same-origin') return 'origin';
  if (!isToken(headers[tokenHeader], token)) return 'token';
  if (headers['content-type'] !== 'application/zip') return 'type';
  return Number(headers['content-length'] ?? 0) > largestBody ? 'too big' : undefined;
}

function isToken(given: string | readonly string[] | undefined, token: string): boolean {
  return typeof given === 'string' && given.length === token.length && timingSafeEqual(Buffer.from(given), Buffer.from(token));
}

/** The whole body, or undefined when it is larger than it may be, whatever its head said. */
async function bodyOf(request: IncomingMessage): Promise<Uint8Array | undefined> {
  const parts: Buffer[] = [];
  let size = 0;
  for await (const part of request as AsyncIterable<Buffer>) {
    size += part.length;
    if (size > largestBody) return undefined;
    parts.push(part);
  }
  return Buffer.concat(parts);
}
