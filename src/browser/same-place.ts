/** Keeps the place when somebody changes to another language: the same part of the page, the same stop of a booklet. Without a script the page begins at its top. */

/** Links to this page in other languages, and to the same book's. */
const links = '.languages a, .versions a';

// The links are given the place where the reader is, just before one of them is followed.
for (const event of ['pointerdown', 'focusin', 'click'] as const) {
  document.addEventListener(event, ({ target }) => {
    const link = target instanceof Element ? target.closest<HTMLAnchorElement>(links) : null;
    // A library without this page in that language is opened at its beginning.
    if (link?.hreflang && document.querySelector(`link[rel="alternate"][hreflang="${link.hreflang}"]`)) link.hash = placeHere();
  });
}

/** What the address names, or the last part whose beginning is in the upper half of the window. Parts have the same names in every language. */
function placeHere(): string {
  // A booklet and the form say in the address what is open.
  if (document.querySelector('main.on-screen, .on-maker')) return location.hash;
  const parts = [...document.querySelectorAll('main h2[id], main [id^="stop-"]')];
  return parts.filter((each) => each.getBoundingClientRect().top < innerHeight / 2).at(-1)?.id ?? '';
}

export {};
