import { finding, type Finding } from '../finding.ts';
import { placeOf, type Pack } from '../pack/pack.ts';

/**
 * Every picture has an alt text, or says that it is only an ornament. An empty alt is never taken as a decision.
 * Source: WCAG 2.2, success criterion 1.1.1 Non-text Content (A).
 */
export function* altText(pack: Pack): Iterable<Finding> {
  for (const [index, picture] of (pack.pictures ?? []).entries()) {
    const at = placeOf(pack, 'pictures', index);
    const alt = picture.alt?.trim() ?? '';
    if (picture.decorative !== true && alt === '') yield finding('alt-text/missing', 'stop', at, { picture: picture.file });
    if (picture.decorative === true && alt !== '') {
      yield finding('alt-text/decorative-with-alt', 'stop', placeOf(pack, 'pictures', index, 'alt'), { picture: picture.file });
    }
  }
}
