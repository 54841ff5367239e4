import { esBooklet } from '../core/languages/es-booklet.ts';
import { picturesInSpanish } from '../core/languages/es-pictures.ts';
import { stackInSpanish } from '../core/languages/es-stack.ts';
import { startStack } from './stack.tsx';

/** The stack's script in Spanish: a page carries the phrases of its own language and no others. */
startStack({ stack: stackInSpanish, booklet: esBooklet, pictures: picturesInSpanish });
