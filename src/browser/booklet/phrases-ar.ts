import { arBooklet } from '../../core/languages/ar-booklet.ts';
import { enBooklet } from '../../core/languages/en-booklet.ts';
import { filledUp } from '../../core/languages/unfinished.ts';

/** The booklet's phrases in Arabic, and in English where one is missing. */
export const phrases = filledUp(enBooklet, arBooklet);
