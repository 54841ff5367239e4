import { enBookletFile } from '../core/languages/en-booklet-file.ts';
import { enBookletScreen } from '../core/languages/en-booklet-screen.ts';
import { picturesInEnglish } from '../core/languages/en-pictures.ts';
import { stackInEnglish } from '../core/languages/en-stack.ts';
import { startStack } from './stack.tsx';

/** The stack's script in English: a page carries the phrases of its own language and no others. */
startStack({ stack: stackInEnglish, booklet: { ...enBookletScreen, ...enBookletFile }, pictures: picturesInEnglish });
