import { finding, type Finding } from '../finding.ts';
import { placeOf, type Pack } from '../pack/pack.ts';

/** Names of files that hold a cover, in the languages that packs have here. */
const cover = /^(?:(?:front|book)[-_ ]?)?(?:cover|portada|cubierta|tapa)(?![a-z])/iu;

/**
 * Who allowed what. A picture in a pack about a book in copyright has a line on its rights or at least says whose it is;
 * a cover has the line itself. A claim that a book is free, or licensed, says why.
 * Common practice, no source: nothing of a book's pictures is published without a note on rights. General caution, no
 * legal advice.
 */
export function* rights(pack: Pack): Iterable<Finding> {
  const { rights: held, rightsNote } = pack.book;
  if ((held === 'public domain' || held === 'licensed') && rightsNote === undefined) yield finding('rights/book-note', 'warn', placeOf(pack, 'book', 'rights'), { rights: held });
  if (held === 'our own') return;
  for (const [index, picture] of (pack.pictures ?? []).entries()) {
    const isCover = cover.test(picture.file);
    if (picture.rights !== undefined || (held !== 'in copyright' && !isCover)) continue;
    if (picture.credit !== undefined && !isCover) continue;
    yield finding('rights/picture-note', held === 'in copyright' && isCover ? 'stop' : 'warn', placeOf(pack, 'pictures', index, 'file'), { picture: picture.file, cover: isCover });
  }
}
