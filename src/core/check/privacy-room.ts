import { finding, type Finding } from '../finding.ts';
import type { Pack } from '../pack/pack.ts';
import { publishedTexts } from '../pack/published-texts.ts';
import { isPassedOver } from './privacy-contact.ts';
import { roomsIn } from './rooms-in-text.ts';

/**
 * No room and no class in what a pack publishes: with a day beside it, it says where children are. Common practice, no
 * source. A pattern cannot tell a school from a story, so this asks for a second look and stops nothing.
 */
export function* privacyRoom(pack: Pack): Iterable<Finding> {
  for (const published of publishedTexts(pack)) {
    const { steps, text } = published;
    if (isPassedOver(steps)) continue;
    for (const found of roomsIn(text, pack.allowWords)) yield finding('privacy/room', 'warn', published.place, { found });
  }
}
