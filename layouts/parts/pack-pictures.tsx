import type { JSX } from 'preact';
import type { Phrases } from '../../src/core/languages/en.ts';
import { runSheet } from '../../src/core/plan/run-sheet.ts';
import type { PlannedPack } from '../../src/core/plan/plan.ts';
import type { PageContext } from '../../src/outputs/views.ts';
import { FeelingPath } from './feeling-path.tsx';
import { MinutesPicture } from './minutes-picture.tsx';
import { langIfOther } from './pack-links.tsx';
import { StopMap } from './stop-map.tsx';

interface Props {
  readonly pack: PlannedPack;
  readonly page: PageContext;
  /** Phrases of the page's language. */
  readonly say: Phrases;
  /** Level of each picture's heading, 2 to 5. */
  readonly headingLevel: number;
}

/** The pictures of a pack, each with its text equivalent and its table. Ids begin with the pack's name and language: many may stand on a page. */
export function PackPictures({ pack, page, say, headingLevel }: Props): JSX.Element {
  const id = `${pack.slug}-${pack.language.toLowerCase()}`;
  const { lesson, stops } = pack.plan;
  return (
    <div class="pack-pictures">
      <StopMap id={`${id}-stop-map`} pack={pack} say={say} headingLevel={headingLevel} />
      <FeelingPath id={`${id}-feeling-path`} pack={pack} say={say} headingLevel={headingLevel} lang={langIfOther(pack.language, page.language)} />
      <MinutesPicture
        id={`${id}-minutes`}
        lesson={lesson}
        rows={runSheet(pack.book, stops, lesson, 0)}
        numberOf={(stop) => pack.stops.findIndex((each) => each.id === stop) + 1}
        say={say.pictures.spent}
        headingLevel={headingLevel}
      />
    </div>
  );
}
