import type { JSX } from 'preact';
import type { Phrases } from '../../src/core/languages/en.ts';
import type { PlannedPack } from '../../src/core/plan/plan.ts';
import { apart, stopMap, type MappedStop, type StopMap as Map } from '../../src/outputs/stop-map.ts';
import { Across, At, Figure, percent, tidy } from './figure.tsx';
import { WayDrawing, WayStrokes } from './ornaments.tsx';

interface Props {
  readonly id: string;
  readonly pack: PlannedPack;
  readonly say: Phrases;
  readonly headingLevel: number;
}

/** The book runs between these places across, in percent; left of it stand the names of the depths. */
const book = { from: 21, to: 97 };
/** Room for a head, in percent of the whole width: its drawing at 300 pixels. */
const headRoom = 8.6;
const ground = 186;
const step = 34;
const height = 248;
const heightOf = (depth: number): number => ground - 8 - step * depth;
/** With more stops than this the drawings of the ways are left to the table. */
const mostDrawn = 10;

/** The stops of a pack as plants along their book: where they stand, how deep they ask, how they are answered, which have to stay. */
export function StopMap({ id, pack, say, headingLevel }: Props): JSX.Element {
  const words = say.pictures.stopMap;
  const map = stopMap(pack);
  const must = map.stops.filter((stop) => stop.must).length;
  const ways = [...new Set(map.stops.map((stop) => stop.ways[0] ?? 'say'))];
  const wayWords = (stop: MappedStop) => say.booklet.or(stop.ways.map((way) => say.ways[way]));
  return (
    <Figure
      id={id}
      title={words.title}
      headingLevel={headingLevel}
      height={height}
      drawing={<Plants map={map} say={say} />}
      text={`${words.text(map.stops.length, map.openings, map.words, must)} ${map.counted ? words.counted : words.shared}`}
      table={{
        summary: say.pictures.table,
        heads: [words.stop, words.opening, words.read, words.answer, words.depth, words.keep],
        rows: map.stops.map((stop) => [stop.number, stop.opening, stop.words, wayWords(stop), say.depths[stop.depth - 1], stop.must ? words.must : words.may]),
      }}
    >
      <ul class="figure-key">
        {ways.map((way) => (
          <li key={way}>
            <WayDrawing way={way} /> {say.ways[way]}
          </li>
        ))}
        <li>
          <Stem must /> {words.mustKey}
        </li>
        <li>
          <Stem must={false} /> {words.mayKey}
        </li>
        <li>{words.depthKey}</li>
      </ul>
    </Figure>
  );
}

/** Where along the drawing a number of words has been read, in percent. */
const along = (words: number, map: Map): number => book.from + ((book.to - book.from) * words) / Math.max(1, map.words);

function Plants({ map, say }: { readonly map: Map; readonly say: Phrases }): JSX.Element {
  const width = book.to - book.from;
  const feet = map.stops.map((stop) => along(stop.words, map));
  const heads = apart(
    feet.map((foot) => (foot - book.from) / width),
    headRoom / width,
  ).map((share) => book.from + share * width);
  return (
    <>
      {say.depths.map((depth, index) => (
        <>
          <text x={percent(book.from - 2)} y={heightOf(index + 1) + 4} text-anchor="end" class="soft">
            {depth}
          </text>
          <line class="hair" x1={percent(book.from)} x2={percent(book.to)} y1={heightOf(index + 1)} y2={heightOf(index + 1)} />
        </>
      ))}
      <Ground map={map} say={say} />
      <Across height={height}>
        {map.stops.map((stop, index) => (
          <path class={stop.must ? 'stem' : 'stem broken'} d={stemOf(feet[index] ?? 0, heads[index] ?? 0, heightOf(stop.depth))} vector-effect="non-scaling-stroke" />
        ))}
      </Across>
      {map.stops.map((stop, index) => (
        <Plant stop={stop} foot={feet[index] ?? 0} head={heads[index] ?? 0} drawn={map.stops.length <= mostDrawn} />
      ))}
    </>
  );
}

/** Upright from its place on the ground, then over to where there is room for its head. It climbs evenly, so that `stemAt` is exact. */
function stemOf(foot: number, head: number, top: number): string {
  const climb = (ground - top) / 3;
  return `M${String(tidy(foot))} ${String(ground)}C${String(tidy(foot))} ${String(tidy(ground - climb))} ${String(tidy(head))} ${String(tidy(top + climb))} ${String(tidy(head))} ${String(top)}`;
}

/** Where across a stem is at a height: the curve of `stemOf`. */
function stemAt(foot: number, head: number, top: number, y: number): number {
  const t = (ground - y) / (ground - top);
  return foot + (head - foot) * (3 * t ** 2 - 2 * t ** 3);
}

interface PlantProps {
  readonly stop: MappedStop;
  readonly foot: number;
  readonly head: number;
  readonly drawn: boolean;
}

function Plant({ stop, foot, head, drawn }: PlantProps): JSX.Element {
  const top = heightOf(stop.depth);
  const leaves = Array.from({ length: stop.depth }, (_, index) => ground - 16 - index * step);
  return (
    <>
      {leaves.map((y, index) => (
        <At x={stemAt(foot, head, top, y)} y={y}>
          <path class="leaf-stroke" d={index % 2 === 0 ? 'M0 0c1.5-5 5-7.5 10.5-7.5-.2 5-4.2 8-10.5 7.5Z' : 'M0 0c-1.5-5-5-7.5-10.5-7.5.2 5 4.2 8 10.5 7.5Z'} />
        </At>
      ))}
      <At x={foot} y={ground}>
        <path class={stop.must ? 'seed full' : 'seed'} d="M0-5.5 5 0 0 5.5-5 0Z" />
      </At>
      <At x={head} y={top}>
        {drawn && (
          <svg x={-14} y={-23} width={28} height={21.3} viewBox="0 0 42 32" class="way-head">
            <WayStrokes way={stop.ways[0] ?? 'say'} />
          </svg>
        )}
        <text y={drawn ? -27 : -6} text-anchor="middle" class="numeral-text">
          {stop.number}
        </text>
      </At>
    </>
  );
}

/** The edge of the book: a line with a tick for each opening, and below it openings and words. */
function Ground({ map, say }: { readonly map: Map; readonly say: Phrases }): JSX.Element {
  const words = say.pictures.stopMap;
  const middle = Math.ceil(map.openings / 2);
  const marked = map.openings > 3 ? [1, middle, map.openings] : [1, map.openings];
  const half = (opening: number): number => (along(map.readBy[opening - 2] ?? 0, map) + along(map.readBy[opening - 1] ?? 0, map)) / 2;
  return (
    <>
      <line class="edge" x1={percent(book.from - 1)} x2={percent(book.to + 1)} y1={ground} y2={ground} />
      <Across height={height}>
        <path vector-effect="non-scaling-stroke" d={[0, ...map.readBy].map((read) => `M${String(tidy(along(read, map)))} ${String(ground)}v9`).join('')} />
      </Across>
      <AxisName y={ground + 24} name={words.openings} />
      {marked.map((opening) => (
        <text x={percent(half(opening))} y={ground + 24} text-anchor="middle">
          {opening}
        </text>
      ))}
      <AxisName y={ground + 50} name={words.words} />
      {[0, map.readBy[middle - 1] ?? 0, map.words].map((read) => (
        <text x={percent(along(read, map))} y={ground + 50} text-anchor="middle">
          {read}
        </text>
      ))}
    </>
  );
}

/** A name left of its row; of two words each has a line, since there is little room on a phone. */
function AxisName({ y, name }: { readonly y: number; readonly name: string }): JSX.Element {
  const lines = name.split(' ');
  return (
    <>
      {lines.map((word, index) => (
        <text x={percent(book.from - 2)} y={y + 14 * (index - (lines.length - 1) / 2)} text-anchor="end" class="soft">
          {word}
        </text>
      ))}
    </>
  );
}

/** A stem for the key. */
function Stem({ must }: { readonly must: boolean }): JSX.Element {
  return (
    <svg class="key-stem" width="14" height="26" viewBox="0 0 14 26" aria-hidden="true" focusable="false" fill="none" stroke="currentColor">
      <path class={must ? 'stem' : 'stem broken'} d="M7 19V1" />
      <path class={must ? 'seed full' : 'seed'} d="M7 14.5l5 5.5-5 5.5-5-5.5Z" />
    </svg>
  );
}
