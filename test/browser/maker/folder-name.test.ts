/** The name of the folder that the form proposes for a pack, made of its title. */
import { expect, test } from 'vitest';
import { slugOf as addressOf } from '../../../src/build/slug.ts';
import { slugOf } from '../../../src/browser/maker/folder-name.ts';

// The Arabic ones after the romanization tables of the Library of Congress (al-qārib al-waraqī), without vowels that are not written; from memory.
test.each([
  ['The Paper Boat', 'the-paper-boat'],
  ['El ñandú pequeño', 'el-nandu-pequeno'],
  ['القارب الورقي', 'alqarb-alwrqy'],
  ['القارِبُ الوَرَقِيّ', 'alqarb-alwrqy'],
  ['أين ذهبت القبّعة؟', 'ayn-dhhbt-alqbah'],
  ['القـــارب 2', 'alqarb-2'],
  ['紙の船', 'my-companion'],
])('%s lies in %s', (title, folder) => {
  expect(slugOf(title)).toBe(folder);
  // What the preview's server takes as a folder's name.
  expect(addressOf(folder)).toBe(folder);
});
