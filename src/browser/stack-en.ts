import { enBooklet } from '../core/languages/en-booklet.ts';
import { picturesInEnglish } from '../core/languages/en-pictures.ts';
import { stackInEnglish } from '../core/languages/en-stack.ts';
import { startStack } from './stack.tsx';

/** The stack's script in English: a page carries the phrases of its own language and no others. */
startStack({ stack: stackInEnglish, booklet: enBooklet, pictures: picturesInEnglish });
