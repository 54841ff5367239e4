import { finding, type Finding } from '../finding.ts';
import { placeOf, type Pack } from '../pack/pack.ts';
import type { RetiredPack } from '../pack/retired.ts';
import { blanks } from './blanks.ts';
import { privacyContact } from './privacy-contact.ts';
import { privacyRoom } from './privacy-room.ts';
import { privacyRoster } from './privacy-roster.ts';
import type { Surroundings } from './surroundings.ts';

/** What is still published of a retired pack, its title and the reason, is held to the same rules about persons as any other text. */
export function checkRetired({ slug, file, places, title, language, retired }: RetiredPack, around: Surroundings): readonly Finding[] {
  const bare = {
    slug,
    file,
    places,
    title,
    language,
    retired,
    book: { author: '' },
    by: { name: '' },
    body: { markdown: '', firstLine: 1, blocks: [], pictures: [], asides: [] },
    partial: false,
    pictureFiles: [],
    recordingFiles: [],
  } as unknown as Pack;
  return [blanks, privacyRoster, privacyContact, privacyRoom].flatMap((rule) => [...rule(bare, around)]);
}

/** A day of retirement that is still to come: until then the companion stays as it is. */
export function* retirementAhead(pack: Pack, { today }: Surroundings): Iterable<Finding> {
  const { retired } = pack;
  if (retired && today !== undefined && retired.on > today) yield finding('retired/ahead', 'note', placeOf(pack, 'retired', 'on'), { on: retired.on });
}
