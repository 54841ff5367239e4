import { esBookletFile } from '../core/languages/es-booklet-file.ts';
import { esBookletScreen } from '../core/languages/es-booklet-screen.ts';
import { picturesInSpanish } from '../core/languages/es-pictures.ts';
import { stackInSpanish } from '../core/languages/es-stack.ts';
import { startStack } from './stack.tsx';

/** The stack's script in Spanish: a page carries the phrases of its own language and no others. */
startStack({ stack: stackInSpanish, booklet: { ...esBookletScreen, ...esBookletFile }, pictures: picturesInSpanish });
