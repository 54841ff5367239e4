import type { Library } from '../../core/pack/library.ts';
import type { ShownPack } from '../views.ts';
import { bookletSheet } from './booklet-sheet.ts';
import { cardsSheet } from './cards.ts';
import { lessonSheet } from './lesson-on-paper.ts';
import { letterSheet } from './letter.ts';
import { sheetInput, type Sheet } from './sheet.ts';
import { substituteSheet } from './substitute.ts';

/** Every sheet of a pack, in the order in which they are offered. The visible list: a new one is a file, a line here and a template in `layouts/print/`. */
export function sheetsOf(shown: ShownPack, library: Library): readonly Sheet[] {
  const input = sheetInput(shown, library);
  return [lessonSheet, substituteSheet, bookletSheet, letterSheet, cardsSheet].map((make): Sheet | undefined => make(input)).filter((sheet) => sheet !== undefined);
}
