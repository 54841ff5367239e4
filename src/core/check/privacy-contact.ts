import { finding, type Finding } from '../finding.ts';
import type { Pack } from '../pack/pack.ts';
import { publishedTexts, type PublishedText } from '../pack/published-texts.ts';
import { digitsOf, emailsIn, phonesIn } from './contacts-in-text.ts';
import type { Surroundings } from './surroundings.ts';

/** Makers may sign as they like, the codes of a standard are no numbers of persons, and alt texts have a rule of their own that says the same (`alt-text/personal-data`). */
export function isPassedOver(steps: PublishedText['steps']): boolean {
  return steps[0] === 'by' || steps[0] === 'book' || steps.includes('standard') || steps.at(-1) === 'alt';
}

/**
 * No address or number of a person in what a pack publishes. What the library names as its contact is meant to be public.
 * Source: numbers of staff are for a local sheet that is never published; common practice, no source.
 */
export function* privacyContact(pack: Pack, { contact }: Surroundings): Iterable<Finding> {
  const known = contact.toLowerCase();
  const knownDigits = digitsOf(contact);
  for (const published of publishedTexts(pack)) {
    const { steps, text } = published;
    if (isPassedOver(steps)) continue;
    for (const found of emailsIn(text)) if (!known.includes(found.toLowerCase())) yield finding('privacy/email', 'stop', published.place, { found });
    for (const found of phonesIn(text)) if (knownDigits === '' || !knownDigits.includes(digitsOf(found))) yield finding('privacy/phone', 'stop', published.place, { found });
  }
}
