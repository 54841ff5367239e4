import type { Finding, Outcome } from '../finding.ts';
import type { Pack } from '../pack/pack.ts';
import { altText } from './alt-text.ts';
import { balance } from './balance.ts';
import { bestOf } from './best-of.ts';
import { blanks } from './blanks.ts';
import { retirementAhead } from './check-retired.ts';
import { frames } from './frames.ts';
import { home } from './home.ts';
import { pictureFiles } from './picture-files.ts';
import { privacyContact } from './privacy-contact.ts';
import { privacyPictures } from './privacy-pictures.ts';
import { privacyRoom } from './privacy-room.ts';
import { privacyRoster } from './privacy-roster.ts';
import { recording } from './recording.ts';
import { reviewDate } from './review-date.ts';
import { rights } from './rights.ts';
import { stopIds } from './stop-ids.ts';
import { nothingAround, type Surroundings } from './surroundings.ts';
import { translation } from './translation.ts';

declare const checked: unique symbol;
/** A pack that the checks have looked at; only `checkPack` makes one. */
export type CheckedPack = Pack & { readonly [checked]: true };

/** A check: looks at a pack, and at what lies around it where that matters, and says what it found. */
export type Rule = (pack: Pack, around: Surroundings) => Iterable<Finding>;

/** Every check, in the order in which they look. A new one is a file, a line here, a sentence per language and a pack in `test/packs/one-mistake/`. */
export const rules: Readonly<Record<string, Rule>> = {
  'alt-text': altText,
  'picture-files': pictureFiles,
  'stop-ids': stopIds,
  blanks,
  frames,
  home,
  'best-of': bestOf,
  recording,
  'privacy-roster': privacyRoster,
  'privacy-contact': privacyContact,
  'privacy-room': privacyRoom,
  'privacy-pictures': privacyPictures,
  rights,
  translation,
  'review-date': reviewDate,
  'retirement-ahead': retirementAhead,
  ...balance,
};

/** Second stage: all checks over one pack. The pack goes on whatever they find, so that later stages can tell theirs. */
export function checkPack(pack: Pack, around: Surroundings = nothingAround): Outcome<CheckedPack> & { readonly value: CheckedPack } {
  const findings = Object.values(rules).flatMap((rule) => [...rule(pack, around)]);
  return { value: pack as CheckedPack, findings };
}
