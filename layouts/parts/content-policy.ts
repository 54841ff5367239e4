import type { View } from '../../src/outputs/views.ts';

/** What a kind of page does beside being read. What is not named here, its pages may not do. */
interface Needs {
  /** Runs scripts of ours. */
  readonly scripts?: true;
  /** Shows pictures that were made on the device. */
  readonly ownPictures?: true;
  /** Plays a film of the site, or sound that was recorded on the device. */
  readonly film?: true;
  readonly ownSound?: true;
  /** Asks the site for data while it is open. */
  readonly data?: true;
  /** Has work done beside the page: the copy for times without a network, checks while somebody writes. */
  readonly worker?: true;
}

const needs: Readonly<Record<View['kind'], Needs>> = {
  library: {},
  prose: {},
  programs: {},
  missing: {},
  unsaved: {},
  browse: {},
  'browse-list': {},
  'same-book': {},
  family: { scripts: true, worker: true },
  lesson: { scripts: true, worker: true },
  booklet: { scripts: true, worker: true, ownPictures: true, ownSound: true },
  recording: { scripts: true, worker: true, film: true },
  quality: { scripts: true, data: true },
  find: { scripts: true, data: true, worker: true },
  stack: { scripts: true, ownPictures: true, ownSound: true },
  maker: { scripts: true, ownPictures: true, data: true, worker: true },
  'hand-over': { scripts: true },
  retired: { scripts: true },
  librarian: { scripts: true },
};

/**
 * The content policy of a kind of page: nothing from elsewhere, no script in the page, no forms, no frames, and of the rest only what the kind needs.
 * Sources: W3C, Content Security Policy Level 3; W3C, Trusted Types. `frame-ancestors` and `report-uri` mean nothing in a page, so they are not here.
 */
export function contentPolicy(kind: View['kind']): string {
  const { scripts, ownPictures, film, ownSound, data, worker } = needs[kind];
  const media = [film && "'self'", ownSound && 'blob:'].filter((each) => each !== undefined);
  return [
    "default-src 'none'",
    // The mark in the browser's tab is a picture inside the page.
    ownPictures ? "img-src 'self' data: blob:" : "img-src 'self' data:",
    "style-src 'self'",
    "font-src 'self'",
    scripts && "script-src 'self'",
    data && "connect-src 'self'",
    media.length > 0 && `media-src ${media.join(' ')}`,
    worker && "worker-src 'self'",
    // Text becomes a script or markup through one door of ours (src/browser/trusted.ts) and through no other.
    "require-trusted-types-for 'script'",
    scripts ? 'trusted-types bookfellow' : "trusted-types 'none'",
    "base-uri 'none'",
    "form-action 'none'",
  ]
    .filter((each) => typeof each === 'string')
    .join('; ');
}
