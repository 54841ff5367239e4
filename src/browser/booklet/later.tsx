/** What is fetched when a child draws, takes a photo or records: one file, so that one fetch brings all of it. */
export { Draw } from './draw.tsx';
export { Photo } from './photo.tsx';
export { Record } from './record.tsx';
