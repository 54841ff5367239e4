import { finding, type Finding } from '../finding.ts';
import { nearest } from '../pack/nearest.ts';
import { placeOf, type Pack } from '../pack/pack.ts';
import { longestPictureSide, mostPicturePixels } from '../pack/picture-limits.ts';

/** Pictures that a pack names exist, can be opened, and are of a kind that is published; others are told as lying about. */
export function* pictureFiles(pack: Pack): Iterable<Finding> {
  const files = new Map(pack.pictureFiles.map((file) => [file.name, file]));
  const named = new Set<string>();
  const meant = new Set<string>();
  for (const [index, picture] of (pack.pictures ?? []).entries()) {
    named.add(picture.file);
    yield* onePicture(pack, picture.file, ['pictures', index, 'file'], files, meant);
  }
  for (const [index, word] of (pack.words ?? []).entries()) {
    if (word.picture === undefined) continue;
    if (!named.has(word.picture)) yield* onePicture(pack, word.picture, ['words', index, 'picture'], files, meant);
    named.add(word.picture);
  }
  // A pack that lost its list of pictures would call all of them unnamed.
  if (pack.partial) return;
  for (const { name } of pack.pictureFiles) {
    if (!named.has(name) && !meant.has(name)) yield finding('picture/not-named', 'note', placeOf(pack, 'pictures'), { picture: name });
  }
}

function* onePicture(pack: Pack, name: string, steps: readonly (string | number)[], files: ReadonlyMap<string, Pack['pictureFiles'][number]>, meant: Set<string>): Iterable<Finding> {
  const at = placeOf(pack, ...steps);
  const file = files.get(name);
  if (!file) {
    const suggestion = nearest(name, [...files.keys()]);
    // A file that is suggested is most likely the one that was meant, so it does not lie about unnamed.
    if (suggestion !== undefined) meant.add(suggestion);
    yield finding('picture/missing-file', 'stop', at, { picture: name, ...(suggestion === undefined ? {} : { suggestion }) });
  } else if (file.format === 'other') yield finding('picture/format', 'stop', at, { picture: name });
  else if (file.format === 'bad') yield finding('picture/unreadable', 'stop', at, { picture: name });
  else if (Math.max(file.width, file.height) > longestPictureSide || file.width * file.height > mostPicturePixels) {
    yield finding('picture/too-large', 'stop', at, { picture: name, width: file.width, height: file.height, most: longestPictureSide });
  }
}
