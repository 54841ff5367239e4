import type { JSX } from 'preact';
import type { Phrases } from '../../src/core/languages/en.ts';
import type { PackFields } from '../../src/core/pack/pack.ts';

interface Props {
  readonly pack: PackFields;
  readonly say: Phrases;
  /** Address of a stop. */
  readonly linkTo: (stop: string) => string;
}

/** Steps in which the way along the ribbon is measured; the styles know as many. */
const steps = 20;

/**
 * The bookmark ribbon down the edge of a page: the book from its first opening to its last, a mark where the reading
 * stops. Marks keep the height of a finger, so stops that lie close together push each other along.
 */
export function Ribbon({ pack, say, linkTo }: Props): JSX.Element {
  const { openings } = pack.book;
  let before = 0;
  const marks = pack.stops.map((stop, index) => {
    const gap = Math.max(0, Math.round(((stop.at.opening - before) / openings) * steps));
    before = Math.max(before, stop.at.opening);
    return { stop, number: index + 1, gap };
  });
  const rest = Math.max(0, Math.round(((openings - before) / openings) * steps));
  return (
    <nav class="ribbon" aria-label={say.ribbon.name}>
      <p class="ribbon-end" aria-hidden="true">
        {say.ribbon.first}
      </p>
      <ol class={`rest-${String(rest)}`}>
        {marks.map(({ stop, number, gap }) => (
          <li class={`gap-${String(gap)}`}>
            <a href={linkTo(stop.id)}>
              <span class="unseen">{say.ribbon.mark(number, stop.at.opening, say.kinds[stop.kind])}</span>
              <span class="mark" aria-hidden="true">
                {number}
              </span>
              <span class="mark-words" aria-hidden="true">
                {say.ribbon.short(stop.at.opening)}
                <br />
                {say.kinds[stop.kind]}
              </span>
            </a>
          </li>
        ))}
      </ol>
      <p class="ribbon-end" aria-hidden="true">
        {say.ribbon.last}
      </p>
      <svg class="ribbon-tail" viewBox="0 0 20 26" aria-hidden="true" focusable="false" fill="currentColor">
        <path d="M0 0H20V26L10 16.5 0 26Z" />
      </svg>
    </nav>
  );
}
