import { readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';

/** Bookfellow's own version. */
export const { version } = JSON.parse(readFileSync(fileURLToPath(new URL('../../package.json', import.meta.url)), 'utf8')) as { readonly version: string };
