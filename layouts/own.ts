/**
 * What a library's own layout may use: `import { … } from 'bookfellow/layouts'`. Everything here is pure, and nothing else can be imported there.
 * A layout is `export default function (page: Page)`, which returns what stands in that part of the page.
 */
export { phrasesFor } from '../src/core/languages/pick-language.ts';
export { linkFrom, rootOf } from '../src/outputs/addresses.ts';
export type { Page } from '../src/outputs/views.ts';
export { FooterInside } from './parts/footer.tsx';
export { nameOf } from './parts/library-name.ts';
export { Logo } from './parts/logo.tsx';
export { MastheadInside, OtherLanguages } from './parts/masthead.tsx';
export { NavLinks } from './parts/nav-links.tsx';
export { LampAndBook, Rule, Sprig } from './parts/ornaments.tsx';
