import type { Code, FactsOf } from '../finding.ts';

/** What is wrong with a source's folder, and what helps. */
const sourceFolder = {
  missing: 'is not there. Check its path, or whether the share is connected',
  'not a folder': 'is no folder. Name the folder that holds the packs',
  link: 'is a link to another place. Name that place itself; links are not followed',
  unreadable: 'cannot be opened. Check that you may read it',
  twice: 'is already part of the library. Name each folder once',
};

/** English sentences for what shows when a whole library is seen together. */
export const libraryFindingsInEnglish = {
  'source/folder': (f) => `The folder of ${f.owner}, "${f.folder}", ${sourceFolder[f.why]}.${f.why === 'twice' ? '' : ' Until then none of its companions are on the site.'}`,
  'source/clash': (f) => `This folder and ${f.others.join(', ')} both ask for the address "${f.slug}". None of them is published. Give a source another "prefix" in library.yaml, or rename a folder.`,
  'page/address-taken': (f) =>
    f.by === undefined
      ? `The site has a page of its own at the address "${f.address}". Give this file another name. Until then this page is not published.`
      : `This page and ${f.by} both ask for the address "${f.address}". Keep one of the two. Until then only that one is published.`,
  'by/parent-missing': (f) =>
    `"based on" names "${f.named}", and no companion here has that address.${f.suggestion === undefined ? '' : ` Did you mean "${f.suggestion}"?`} Name the folder of the companion it was made from, or say it in words.`,
  'retired/instead': (f) =>
    f.why === 'itself'
      ? 'This retired companion leads to itself. Name another in "instead", or delete the line.'
      : f.why === 'retired'
        ? `"${f.named}" is retired too. Name in "instead" what takes its place now.`
        : `"instead" names "${f.named}", which is not here.${f.suggestion === undefined ? '' : ` Did you mean "${f.suggestion}"?`} Name a folder of this library, or a whole web address.`,
  'retired/ahead': (f) => `This companion stays until ${f.on}. A site that is built on that day or later shows it as retired.`,
} satisfies { readonly [C in Code]?: (facts: FactsOf[C]) => string };
