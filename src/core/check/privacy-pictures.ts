import { finding, type Finding } from '../finding.ts';
import { placeOf, type Pack } from '../pack/pack.ts';

/**
 * Pictures in the folder that say where, or with what, they were taken. What is published is made anew without it; the
 * folder that is shared with colleagues is not.
 * Source: sharp leaves all metadata out unless it is asked to keep it (its documentation); that one looks is common practice.
 */
export function* privacyPictures(pack: Pack): Iterable<Finding> {
  for (const { name, metadata } of pack.pictureFiles) {
    if (metadata === undefined) continue;
    const listed = (pack.pictures ?? []).findIndex((picture) => picture.file === name);
    yield finding('privacy/picture-place', 'note', listed === -1 ? placeOf(pack, 'pictures') : placeOf(pack, 'pictures', listed, 'file'), { picture: name, holds: metadata });
  }
}
