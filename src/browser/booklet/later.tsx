/** What is fetched when a child draws, chooses a feeling word, takes a photo, records, gives stars or chooses one of a few books, and a grown-up decides something: one file, so that one fetch brings all of it. */
export { Draw } from './draw.tsx';
export { Feeling } from './feeling.tsx';
export { GrownUpChoices } from './grown-up-choices.tsx';
export { Photo } from './photo.tsx';
export { Record } from './record.tsx';
export { Whole } from './whole.tsx';
