import { arBookletFile } from '../core/languages/ar-booklet-file.ts';
import { arBookletScreen } from '../core/languages/ar-booklet-screen.ts';
import { picturesInArabic } from '../core/languages/ar-pictures.ts';
import { stackInArabic } from '../core/languages/ar-stack.ts';
import { startStack } from './stack.tsx';

/** The stack's script in Arabic: a page carries the phrases of its own language and no others. */
startStack({ stack: stackInArabic, booklet: { ...arBookletScreen, ...arBookletFile }, pictures: picturesInArabic });
