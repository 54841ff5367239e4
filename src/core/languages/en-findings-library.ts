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
} satisfies { readonly [C in Code]?: (facts: FactsOf[C]) => string };
