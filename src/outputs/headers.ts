import type { Output } from './views.ts';

/**
 * Response headers that the site is made for, by pattern of address. They add to the policy that each page carries itself;
 * a server without them serves a site that works. README tells each of them for servers that are set up in another way.
 */
export const headers: readonly (readonly [pattern: string, headers: Readonly<Record<string, string>>])[] = [
  [
    '/*',
    {
      'X-Content-Type-Options': 'nosniff',
      'Referrer-Policy': 'no-referrer',
      // A page cannot say this of itself: it may stand in no other site's frame.
      'Content-Security-Policy': "frame-ancestors 'self'",
      'Cross-Origin-Opener-Policy': 'same-origin',
      // A booklet records a voice when a family allows it; the screen stays awake while a lesson is followed.
      'Permissions-Policy': 'microphone=(self), screen-wake-lock=(self), fullscreen=(self), camera=(), geolocation=(), payment=(), usb=()',
    },
  ],
  // Their names change with their content, except those of letters, which change with a new version of a typeface.
  ['/assets/*', { 'Cache-Control': 'public, max-age=2592000' }],
];

/** The file `_headers`, which several hosts of static sites read. A site below a folder of its host needs its patterns written there by hand. */
export function headersFile(): Output {
  const blocks = headers.map(([pattern, lines]) => [pattern, ...Object.entries(lines).map(([name, value]) => `  ${name}: ${value}`)].join('\n'));
  return { url: '_headers', text: `${blocks.join('\n')}\n` };
}
