import type { ComponentChildren, JSX } from 'preact';
import type { bookmarkPatterns } from '../../src/core/booklet/booklet.ts';

/** Small drawings of our own, in lines that take the colour of the ink around them. All are decoration: words stand beside them. */

interface DrawingProps {
  readonly name: string;
  readonly box: string;
  readonly children: ComponentChildren;
}

function Drawing({ name, box, children }: DrawingProps): JSX.Element {
  return (
    <svg class={`drawing ${name}`} viewBox={box} aria-hidden="true" focusable="false" fill="none" stroke="currentColor" stroke-width="1.6" stroke-linecap="round" stroke-linejoin="round">
      {children}
    </svg>
  );
}

/** A rule as a pen draws it: a little thicker here, a little thinner there. */
export function Rule({ double = false }: { readonly double?: boolean }): JSX.Element {
  return (
    <svg class={double ? 'rule double' : 'rule'} viewBox="0 0 600 8" preserveAspectRatio="none" aria-hidden="true" focusable="false" fill="currentColor">
      <path d="M1 3.1C60 2.2 121 3.3 199 2.7S340 3.2 412 2.4 552 2.9 599 2.6L598.6 3.7C540 4.3 476 3.6 405 4.2S262 3.9 188 4.4 60 3.9 1.4 4.2Z" />
      {double && <path d="M2 6.4C90 6.1 170 6.7 260 6.2S470 6.6 598 6.2L597.6 6.8C470 7.1 350 6.7 262 7S88 6.8 2.4 7Z" />}
    </svg>
  );
}

/** A sprig between two hair lines, at the end of a part. */
export function Sprig(): JSX.Element {
  return (
    <Drawing name="sprig" box="0 0 160 26">
      <path d="M4 14.2c18-1.6 35 .9 52-.6M104 13.4c17 1.4 36-.8 52 .7" stroke-width="1" />
      <path d="M62 17.5c12-1.2 24-2.6 37-8.6" />
      <path d="M72 16.2c-1.5-5.4 1.2-8.6 6.2-10.4 1.6 4.6-.3 8.5-6.2 10.4Z" />
      <path d="M81.5 14.7c3.3 5 7.3 5.8 12.3 3.6-2.4-4.4-6.3-5.7-12.3-3.6Z" />
      <path d="M88.5 12.6c-.6-4.9 2-7.7 6.6-8.9 1 4.3-1.2 7.5-6.6 8.9Z" />
    </Drawing>
  );
}

/** The library's frontispiece: a lamp over an open book. */
export function LampAndBook(): JSX.Element {
  return (
    <Drawing name="frontispiece" box="0 0 240 190">
      <path d="M119.5 4.5c.4 9-.3 17 .3 25.5" />
      <path d="M113 30.2c4.5-1.4 9.2-1.3 13.6.1l2.2 7.4c9.8 4.6 16.8 13 20 25.2-19 3.4-39.5 3.3-58.2-.1 3.2-12 10.2-20.3 20-25z" />
      <path d="M108.6 66.3c1.8 6.9 5.9 10.5 11.4 10.5 5.7 0 9.8-3.7 11.3-10.4" />
      <g class="accent">
        <path d="M82 76.5 70.5 88M98.5 84.5l-5.7 15M120.2 88.5v16M141.5 84.3l6 14.7M158.3 76.2l12 11.3M72.5 62.5l-16 4.6M167.5 62l16.5 4.4" />
      </g>
      <path d="M119.8 131.5c-22-15-50.5-18.6-92.3-12.2.9 16.6.6 33.2-.2 50.1 41-5.4 70.5-2 92.6 12.1 22-14 51.7-17.3 92.9-11.9-1-16.7-1.1-33.5.1-50.2-42-6.5-71.1-2.9-93.1 12.1Z" />
      <path d="M119.9 131.8c.5 16.4-.4 33 0 49.4" />
      <path d="M27.4 124.3c-4.9.5-8.5 1.2-12.1 2.3.3 17.2.2 33.6-.4 50.5 40.4-7.9 73-7.1 96.3 4.7 3 3.3 14.3 3.4 17.7 0 23.5-11.7 56.2-12.5 96.3-4.4-.9-17-.9-33.7 0-50.7-3.7-1.1-7.6-1.9-12.4-2.4" />
      <g stroke-width="1.1">
        <path d="M43 132.6c23.3-2.3 42.6-.3 60.3 6.8M43.3 142.5c23.2-2.3 42.3-.4 60 6.7M43 152.6c23.3-2.3 42.6-.3 60.3 6.8M137.5 139.5c16.3-6.6 34.5-8.9 58.5-7.1M137.3 149.4c10.2-4.1 20.7-6.5 33.2-7.2" />
        <path d="M150 168.5c5-9.5 12-14.3 22.3-14.7 5.3 3.3 9.4 4 14.5 1.8-.9 6.3-4.8 9.8-11.5 10.6M163.5 153.7c.6-3.4 3-5.3 6.6-5.6" />
      </g>
    </Drawing>
  );
}

/** A closed book with a ribbon, for a pack without a picture. */
export function ClosedBook(): JSX.Element {
  return (
    <Drawing name="closed-book" box="0 0 120 100">
      <path d="M20 18.5c24-3.3 50-3.7 80.5-2.2.8 21.3.7 43.3-.3 64.5-27.6-1.2-53-.6-80 2.4-4-3-6-7-5.7-12.2.4-18 .3-33 .3-44.3 0-5 1.7-7.6 5.2-8.2Z" />
      <path d="M20.3 83.2c-3.5-5-3.2-10 .9-12.5 26-2.7 52-3.3 78.8-2M24 77.3c24-2.4 48-3 73-2" />
      <path class="accent" d="M74 16.3c.4 15 .3 28.5-.1 43.2 2.7-2.7 5-4.6 7.7-6.7 2.3 2.1 4.4 4 6.7 6.8-.5-15-.4-28.7-.1-43.2" />
    </Drawing>
  );
}

/** A leaf, at the head of a small part. */
export function Leaf(): JSX.Element {
  return (
    <Drawing name="leaf" box="0 0 24 24">
      <path d="M4 20.5C8 13 13 8.5 20 4.5c.7 8.3-3.6 13.7-12.4 12.6" />
      <path d="M7.6 17.1C6.3 10.3 10.5 5.7 20 4.5M10.8 13.2l-.7-3M13.5 10.7l3.2.3" />
    </Drawing>
  );
}

const wayDrawings: Readonly<Record<string, JSX.Element>> = {
  say: (
    <>
      <path d="M5 20c4.7-3.6 8-3.7 11 0 3-3.7 6.5-3.6 11.2 0-3.6 7.3-18.2 7.5-22.2 0Z" />
      <path d="M5 20c7.5 1.7 15 1.7 22.2 0M30 12c2.7-.7 4.7-2 6.4-4M31.5 18.5c2.9.4 5.2.2 7.5-.7M27 7.2c1.3-1.7 2-3.2 2.3-5.2" />
    </>
  ),
  write: (
    <>
      <path d="M10 24.5 12.2 17 30 3.3c2.8.6 4.5 2.5 4.9 5.2L17.3 22.3ZM12.2 17c2.9.3 4.6 2 5.1 5.3M26.3 6.2c2.8.6 4.4 2.4 4.8 5.2" />
      <path d="M4 28.5c4.5-1.3 7.5.8 11.3-.2s6.5-.6 9.7.3" />
    </>
  ),
  draw: (
    <>
      <path d="M5 27c-1-9.5 3-15 8.5-14.3 5.2.7 5.3 8.3 1 8.8-4.7.5-4-7.5 2-10 5.8-2.4 11.3.4 11.4 5.7.1 5-6 7.3-7.7 3.7-1.6-3.5 3.2-8.5 9-7.7" />
      <path d="M29 13.5 32.4 4c2.6-.4 4.6.4 5.9 2.3l-5.7 8.3c-1.4 0-2.5-.3-3.6-1.1Z" />
    </>
  ),
  act: (
    <>
      <path d="M20.3 9.3c-2.7-.2-4-3.7-2-5.7 2.2-2 5.6-.5 5.5 2.3-.1 2-1.6 3.5-3.5 3.4Z" />
      <path d="M20.3 9.5c-.7 3.7-1 6.5-.6 9.7M19.7 13.5c-4.5.2-8-1.8-11-6.5M20 13.3c4.6-.8 7.8-3.6 9.8-8.3M19.7 19.2c-3 2.6-5.5 5.3-7.5 9.3M19.7 19.2c4.2.8 6.5 3.3 7.3 9.3" />
    </>
  ),
  partner: (
    <>
      <path d="M4.5 28.5c.3-3.5 2-5.7 5-6.5-3.8-1.5-5-5-4-9.5C6.7 8 10.5 6 14.5 7.5c3 1.2 3.8 4.2 3.4 7.2l1.7 2.6-1.9.9c.2 3.2-.7 4.5-3.7 4.2l.6 6" />
      <path d="M37.5 28.5c-.3-3.5-2-5.7-5-6.5 3.8-1.5 5-5 4-9.5-1.2-4.5-5-6.5-9-5-3 1.2-3.8 4.2-3.4 7.2l-1.7 2.6 1.9.9c-.2 3.2.7 4.5 3.7 4.2l-.6 6" />
    </>
  ),
};

/** A way to answer, drawn: lips, a pencil, a crayon at work, a dancer, two heads. */
export function WayDrawing({ way }: { readonly way: string }): JSX.Element {
  return (
    <Drawing name="way" box="0 0 42 32">
      {wayDrawings[way]}
    </Drawing>
  );
}

/** The strokes alone, for a picture that holds them: 42 wide, 32 high. */
export function WayStrokes({ way }: { readonly way: string }): JSX.Element | null {
  return wayDrawings[way] ?? null;
}

/** A five-pointed star in one stroke. */
export function Star(): JSX.Element {
  return (
    <Drawing name="star" box="0 0 32 32">
      <path d="M16.2 3.5c1.2 3.3 2.3 6 3.6 8.7 3 .2 6 .5 9.2 1.1-2.4 2.1-4.6 4-6.9 6.2.8 3 1.3 5.8 1.9 9-2.8-1.6-5.2-3-7.9-4.4-2.7 1.5-5.1 3-7.9 4.6.6-3.2 1.1-6 1.9-9.1-2.3-2.1-4.5-4-6.8-6.2 3.1-.7 6-1 9-1.2 1.4-2.8 2.6-5.5 3.9-8.7Z" />
    </Drawing>
  );
}

type Pattern = (typeof bookmarkPatterns)[number];

const patterns: Readonly<Record<Pattern, string>> = {
  waves: 'M9 24c5-6 9-6 14 0s9 6 14 0M9 42c5-6 9-6 14 0s9 6 14 0M9 60c5-6 9-6 14 0s9 6 14 0M9 78c5-6 9-6 14 0s9 6 14 0M9 96c5-6 9-6 14 0s9 6 14 0',
  leaves:
    'M23 14c-.6 30 .7 60 0 92M23 34c-8 0-12-4-13-11 8 0 12 4 13 11ZM23 48c8 0 12-4 13-11-8 0-12 4-13 11ZM23 64c-8 0-12-4-13-11 8 0 12 4 13 11ZM23 80c8 0 12-4 13-11-8 0-12 4-13 11ZM23 96c-8 0-12-4-13-11 8 0 12 4 13 11Z',
  stitches: 'M12 20l6 6M18 20l-6 6M28 20l6 6M34 20l-6 6M20 36l6 6M26 36l-6 6M12 52l6 6M18 52l-6 6M28 52l6 6M34 52l-6 6M20 68l6 6M26 68l-6 6M12 84l6 6M18 84l-6 6M28 84l6 6M34 84l-6 6',
  roofs: 'M9 34l7-12 7 12 7-12 7 12M9 34v6M37 34v6M9 58l7-12 7 12 7-12 7 12M9 82l7-12 7 12 7-12 7 12M9 104l7-12 7 12 7-12 7 12M21 40h4v4h-4ZM13 62h4v4h-4ZM29 86h4v4h-4Z',
  rain: 'M13 16l-2 9M24 20l-2 9M35 16l-2 9M18 36l-2 9M30 38l-2 9M12 54l-2 9M24 56l-2 9M36 54l-2 9M18 74l-2 9M30 76l-2 9M13 92l-2 9M24 94l-2 9M35 92l-2 9',
};

/** Whom a question is about: a figure between the covers of a book, or a hand mirror. */
export function AboutDrawing({ about }: { readonly about: 'character' | 'me' }): JSX.Element {
  return (
    <Drawing name="about-whom" box="0 0 42 32">
      {about === 'character' ? (
        <>
          <path d="M21 28.5c-4-3-9.5-4-17-3.2.3-7 .2-13-.1-20C11.5 4.5 17 5.8 21 8.8c4-3 9.6-4.2 17.2-3.5-.3 7-.3 13.2 0 20.2-7.6-.8-13.2.1-17.2 3ZM21 8.8c.3 6.6.2 13 0 19.7" />
          <path d="M29.5 11.8c1.8 0 3 1.3 2.9 3-.1 1.6-1.3 2.8-2.9 2.7-1.7 0-2.9-1.2-2.8-2.9 0-1.6 1.2-2.8 2.8-2.8ZM25.5 23.3c.5-3 1.8-4.5 4-4.5s3.6 1.5 4.1 4.5" />
        </>
      ) : (
        <>
          <path d="M21 2.5c5.5-.2 9.2 3.8 9.2 9.3S26.5 21 21 21s-9.3-3.8-9.2-9.3S15.5 2.6 21 2.5ZM21 21c.2 3 .2 5.5 0 8.5M18.5 29.7c1.7.4 3.4.4 5.1 0" />
          <path d="M16.3 9.5c.9-2.2 2.4-3.4 4.5-3.7M24.5 15.5c-.6 1-1.5 1.7-2.6 2" />
        </>
      )}
    </Drawing>
  );
}

/** A bookmark with one of five patterns. */
export function BookmarkDrawing({ pattern }: { readonly pattern: Pattern }): JSX.Element {
  return (
    <Drawing name="bookmark" box="0 0 46 132">
      <path d="M5 5c12-.8 24-.7 36 .1.6 40 .5 81-.2 121.5-6-5-11.5-9.6-17.6-14.3-6.2 4.7-11.9 9.4-18 14.3C5.7 86 5.5 45 5 5Z" />
      <path d={patterns[pattern]} stroke-width="1.3" />
    </Drawing>
  );
}
