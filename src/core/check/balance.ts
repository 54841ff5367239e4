import { aboutWhom } from './about-whom.ts';
import { aimsHavePrompts } from './aims-have-prompts.ts';
import { anotherWay } from './another-way.ts';
import { careNote } from './care-note.ts';
import { depths } from './depths.ts';
import { familyTrouble } from './family-trouble.ts';
import { feelingWords } from './feeling-words.ts';
import { frameShape } from './frame-shape.ts';
import { homeExample, homeWithoutBook } from './home-without-book.ts';
import { kindsOfPrompts } from './kinds-of-prompts.ts';
import { modelsFit } from './models-fit.ts';
import { modelsShow } from './models-show.ts';
import { spacing } from './spacing.ts';
import { stopsOfReadings } from './stops-of-readings.ts';
import { waitTime } from './wait-time.ts';
import { waysToAnswer } from './ways-to-answer.ts';
import { whyAndHow, whyInEachReading } from './why-and-how.ts';
import { wordMeanings } from './word-meanings.ts';
import { wordPrompts } from './word-prompts.ts';

/** The checks of balance and fit: advice on how a pack's parts go together, as a careful colleague would give it. */
export const balance = {
  kinds: kindsOfPrompts,
  depths,
  'why and how': whyAndHow,
  'why in each reading': whyInEachReading,
  'ways to answer': waysToAnswer,
  'another way': anotherWay,
  'about whom': aboutWhom,
  spacing,
  'stops of readings': stopsOfReadings,
  'wait time': waitTime,
  'word prompts': wordPrompts,
  'family trouble': familyTrouble,
  'frame shape': frameShape,
  'models fit': modelsFit,
  'models show': modelsShow,
  'home without book': homeWithoutBook,
  'home example': homeExample,
  'aims have prompts': aimsHavePrompts,
  'feeling words': feelingWords,
  'word meanings': wordMeanings,
  'care note': careNote,
};
