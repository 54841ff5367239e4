import type { JSX } from 'preact';
import { FaceStrokes } from '../../../layouts/parts/face.tsx';
import { At, Figure, percent } from '../../../layouts/parts/figure.tsx';
import type { FeelingCount, StopFeelings } from '../../classroom/counts.ts';
import type { StackPack } from '../../core/pack/stack-pack.ts';
import type { Desk } from './desk.ts';

interface Props {
  readonly id: string;
  readonly desk: Desk;
  readonly pack: StackPack;
  readonly stops: readonly StopFeelings[];
}

const faceRoom = 50;
const nameRoom = 34;
/** The faces stand between these, in percent: hard to feel on the left. */
const bank = { from: 8, to: 92 };

/** What feelings the class named, stop by stop downwards: a face where its word lies between hard and good, and a seed for each child. */
export function FeelingsFigure({ id, desk, pack, stops }: Props): JSX.Element {
  const say = desk.words.stack.counts;
  const path = desk.words.pictures.path;
  const lang = desk.langOf(pack);
  if (stops.length === 0) {
    return (
      <div class="figure">
        <h3>{say.feelings}</h3>
        <p>{desk.words.stack.look.noFeelings}</p>
      </div>
    );
  }
  let top = 26;
  const laid = stops.map((stop) => {
    const y = top;
    top += nameRoom + faceRoom * stop.words.length + 10;
    return { stop, y };
  });
  return (
    <Figure
      id={id}
      title={say.feelings}
      headingLevel={3}
      height={top}
      drawing={
        <>
          <text x="0" y="14" class="soft">
            {path.unpleasant}
          </text>
          <text x="100%" y="14" text-anchor="end" class="soft">
            {path.pleasant}
          </text>
          <line class="hair" x1="50%" x2="50%" y1="22" y2={top} />
          {laid.map(({ stop, y }) => (
            <>
              <text x="0" y={y + 20} class="halo italic">
                {path.stop(stop.number, stop.stop.at.opening)}
              </text>
              {stop.words.map((word, index) => (
                <Named word={word} y={y + nameRoom + faceRoom * (index + 0.5)} lang={lang} />
              ))}
            </>
          ))}
        </>
      }
      text={
        <>
          {say.feelingsText(stops.map(({ number, words, answered }) => [number, words.map(({ word, children }) => [word, children] as const), answered] as const))}{' '}
          {stops.reduce((sum, { cannotTell }) => sum + cannotTell, 0) > 0 && desk.words.stack.look.cannotTell(stops.reduce((sum, { cannotTell }) => sum + cannotTell, 0))} {path.note}
        </>
      }
      table={{
        summary: say.table,
        heads: say.feelingHeads,
        rows: stops.flatMap(({ number, words, answered }) => words.map(({ word, children, chose }) => [number, <span lang={lang}>{word}</span>, children, chose, answered])),
      }}
    >
      <p class="figure-key">{say.feelingsKey}</p>
    </Figure>
  );
}

/** A face, its word with the number of children, and their seeds below it. A word without a place stands in the middle, without a face. */
function Named({ word: { word, feeling, children }, y, lang }: { readonly word: FeelingCount; readonly y: number; readonly lang: string | undefined }): JSX.Element {
  const x = feeling ? (bank.from + bank.to) / 2 + (feeling.valence * (bank.to - bank.from)) / 2 : 50;
  const toRight = x < 50 || !feeling;
  const side = toRight ? 1 : -1;
  const shown = Math.min(children, 30);
  return (
    <>
      {feeling && (
        <At x={x} y={y}>
          <svg class="face-in-figure" x={-20} y={-20} width={40} height={40} viewBox="0 0 100 100">
            <FaceStrokes feeling={feeling} />
          </svg>
        </At>
      )}
      <svg x={percent(x)} y={y} overflow="visible">
        <text class="halo word" x={26 * side} y={0} text-anchor={toRight ? 'start' : 'end'}>
          <tspan lang={lang}>{word}</tspan> <tspan class="numeral-text">{children}</tspan>
        </text>
        {Array.from({ length: shown }, (_, seed) => (
          <path
            class="full"
            stroke="none"
            transform={`translate(${String((29 + (seed % 15) * 7) * side)} ${String(11 + 7 * Math.floor(seed / 15))})`}
            d="M2.4 0C2.2 2.6.4 3.4-.4 3.1S-2.5 1.2-2.2-.4-.3-3.3.6-3 2.5-1.5 2.4 0Z"
          />
        ))}
      </svg>
    </>
  );
}
