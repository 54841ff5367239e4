import type { JSX } from 'preact';
import type { Phrases } from '../../src/core/languages/en.ts';
import { feelingPath, type FeelingStep } from '../../src/core/measure/feeling-path.ts';
import type { PackFeeling } from '../../src/core/measure/feeling-words.ts';
import type { PackFields } from '../../src/core/pack/pack.ts';
import { curve, type Point } from '../../src/outputs/pen.ts';
import { FaceStrokes } from './face.tsx';
import { Across, At, Figure, percent, tidy } from './figure.tsx';

interface Props {
  readonly id: string;
  readonly pack: Pick<PackFields, 'stops' | 'feelings' | 'language'>;
  readonly say: Pick<Phrases, 'pictures' | 'strengths'>;
  readonly headingLevel: number;
  /** Language of the feeling words where it is not the page's. */
  readonly lang: string | undefined;
}

/** Where the worst and the best feeling stand across, in percent. */
const bank = { from: 9, to: 91 };
const top = 34;
const nameRoom = 30;
const faceRoom = 54;
/** Between two stops, and so much more where the stream has far to go. */
const gap = { least: 10, more: 0.7 };
/** Half the breadth of the stream where there is one feeling only, in percent. */
const thin = 1.6;

/** How a character's feelings run through the book, from stop to stop downwards: a stream between hard and good, with faces. */
export function FeelingPath({ id, pack, say, headingLevel, lang }: Props): JSX.Element {
  const words = say.pictures.path;
  const steps = feelingPath(pack);
  const Heading = `h${String(headingLevel)}` as 'h3';
  if (steps.length === 0) {
    return (
      <div class="figure">
        <Heading>{words.title}</Heading>
        <p>{words.none}</p>
      </div>
    );
  }
  const laid = layOut(steps);
  const height = (laid.at(-1)?.to ?? 0) + 8;
  return (
    <Figure
      id={id}
      title={words.title}
      headingLevel={headingLevel}
      height={height}
      drawing={<Stream laid={laid} height={height} say={say} lang={lang} />}
      text={<InWords steps={steps} say={say} lang={lang} />}
      table={{
        summary: say.pictures.table,
        heads: [words.at, words.opening, words.feeling, words.strength, words.valence],
        rows: steps.flatMap((step) =>
          step.feelings.map((feeling) => [
            step.number,
            step.opening,
            <span lang={lang}>{feeling.word}</span>,
            say.strengths[feeling.strength - 1],
            String(Math.round(feeling.valence * 100)).replace('-', '−'),
          ]),
        ),
      }}
    >
      <p class="figure-key">{words.strokes}</p>
    </Figure>
  );
}

/** Stands around each word of the pack, so that it can be given its own language. No text of a pack holds it. */
const mark = '\u0000';

/** The path in a sentence. */
function InWords({ steps, say, lang }: Pick<Props, 'say' | 'lang'> & { readonly steps: readonly FeelingStep[] }): JSX.Element {
  const { text, note } = say.pictures.path;
  const sentence = text(steps.map((step) => [step.number, step.feelings.map(({ word }) => mark + word + mark)] as const));
  return (
    <>
      {sentence.split(mark).map((part, index) => (index % 2 === 1 && lang !== undefined ? <span lang={lang}>{part}</span> : part))} {note}
    </>
  );
}

interface Laid {
  readonly step: FeelingStep;
  /** Pixels from the top: its name, its faces, its end. */
  readonly from: number;
  readonly faces: number;
  readonly to: number;
  /** The banks of the stream there, in percent. */
  readonly left: number;
  readonly right: number;
}

const across = (valence: number): number => (bank.from + bank.to) / 2 + (valence * (bank.to - bank.from)) / 2;

function layOut(steps: readonly FeelingStep[]): readonly Laid[] {
  let from = top;
  return steps.map((step, index) => {
    const places = step.feelings.map((feeling) => across(feeling.valence));
    const faces = from + nameRoom;
    const laid = { step, from, faces, to: faces + faceRoom * step.feelings.length, left: Math.min(...places) - thin, right: Math.max(...places) + thin };
    const next = steps[index + 1]?.feelings.map((feeling) => across(feeling.valence)) ?? places;
    const bend = Math.max(Math.abs(Math.min(...next) - Math.min(...places)), Math.abs(Math.max(...next) - Math.max(...places)));
    from = laid.to + Math.round(gap.least + gap.more * bend);
    return laid;
  });
}

interface StreamProps {
  readonly laid: readonly Laid[];
  readonly height: number;
  readonly say: Props['say'];
  readonly lang: string | undefined;
}

function Stream({ laid, height, say, lang }: StreamProps): JSX.Element {
  const words = say.pictures.path;
  return (
    <>
      <text x="0" y="14" class="soft">
        {words.unpleasant}
      </text>
      <text x="100%" y="14" text-anchor="end" class="soft">
        {words.pleasant}
      </text>
      <line class="hair" x1="50%" x2="50%" y1={top - 8} y2={height} />
      <Across height={height}>
        <path class="bank" d={bankOf(laid, 'left')} vector-effect="non-scaling-stroke" />
        <path class="bank" d={bankOf(laid, 'right')} vector-effect="non-scaling-stroke" />
        <path class="water" d={ripples(laid)} vector-effect="non-scaling-stroke" />
      </Across>
      {laid.map(({ step, from, faces, left, right }) => (
        <>
          <text x={nameToRight(laid, from + 12) ? '100%' : '0'} y={from + 16} text-anchor={nameToRight(laid, from + 12) ? 'end' : 'start'} class="halo italic">
            {words.stop(step.number, step.opening)}
          </text>
          {[...step.feelings]
            .sort((a, b) => a.valence - b.valence)
            .map((feeling, index) => (
              <Named feeling={feeling} y={faces + faceRoom * (index + 0.5)} left={left} right={right} lang={lang} />
            ))}
        </>
      ))}
    </>
  );
}

/** Where a bank of the stream is at a height, in percent: straight beside a stop, an even bend between two. */
function bankAt(laid: readonly Laid[], y: number, side: 'left' | 'right'): number {
  const after = laid.findIndex((each) => y < each.to);
  const here = laid[after === -1 ? laid.length - 1 : after];
  const before = laid[after - 1];
  if (!here) return 50;
  if (!before || y >= here.faces) return here[side];
  const t = Math.max(0, (y - before.to) / (here.faces - before.to));
  return before[side] + (here[side] - before[side]) * (3 * t ** 2 - 2 * t ** 3);
}

/** A bank as a river has it: nowhere quite straight. */
function bankOf(laid: readonly Laid[], side: 'left' | 'right'): string {
  const [from, to] = [laid[0]?.faces ?? 0, laid.at(-1)?.to ?? 0];
  const points = Array.from({ length: Math.ceil((to - from) / 11) + 1 }, (_, index): Point => {
    const y = Math.min(to, from + index * 11);
    const wobble = (side === 'left' ? 1 : -1) * 0.45 * Math.sin(y / 11 + (side === 'left' ? 0 : 2));
    return [bankAt(laid, y, side) + wobble, y];
  });
  return curve(...points);
}

/** Broken lines of water between the banks, as in an old map: no two alike, and always the same. */
function ripples(laid: readonly Laid[]): string {
  const [from, to] = [laid[0]?.faces ?? 0, laid.at(-1)?.to ?? 0];
  const lines: string[] = [];
  for (let row = 0; from + row * 7 < to; row++) {
    const y = from + row * 7;
    const left = bankAt(laid, y, 'left');
    const wide = bankAt(laid, y, 'right') - left;
    const pieces = Math.max(1, Math.round(wide / 13));
    // The golden section never comes back to where it was.
    const shift = (row * 0.618) % 1;
    for (let piece = 0; piece < pieces; piece++) {
      const begins = Math.max(0.08, (piece + shift * 0.5) / pieces);
      const ends = Math.min(0.92, begins + (0.35 + 0.2 * shift) / pieces);
      lines.push(`M${String(tidy(left + wide * begins))} ${String(y)}H${String(tidy(left + wide * ends))}`);
    }
  }
  return lines.join('');
}

/** The name of a stop stands on the side where the stream leaves more room. */
const nameToRight = (laid: readonly Laid[], y: number): boolean => bankAt(laid, y, 'left') < 100 - bankAt(laid, y, 'right');

/** In percent. */
const farFromBank = 18;
const sizes = [40, 46, 52];
const strokesOf = (strength: number): string => Array.from({ length: strength }, (_, index) => `M${String(index * 5)} 0l2-9`).join('');

interface NamedProps {
  readonly feeling: PackFeeling;
  readonly y: number;
  readonly left: number;
  readonly right: number;
  readonly lang: string | undefined;
}

/** A face at its place, and its word on the side where there is room, with a line that leads to it. */
function Named({ feeling, y, left, right, lang }: NamedProps): JSX.Element {
  const x = across(feeling.valence);
  const size = sizes[feeling.strength - 1] ?? 46;
  // Always towards the middle, where there is room for a word on the narrowest page.
  const toRight = x < 50;
  const bank = toRight ? right : left;
  // Beyond the bank when that is near; over the water when it is far.
  const shore = Math.abs(bank - x) <= farFromBank && Math.abs(bank - 50) <= Math.abs(x - 50) ? bank : x;
  const beyond = (toRight ? 1 : -1) * (size / 2 + 4);
  const strokesFrom = toRight ? beyond : beyond - 5 * (feeling.strength - 1) - 2;
  return (
    <>
      <line class="leader-line" x1={percent(x)} x2={percent(shore)} y1={y} y2={y} />
      <At x={x} y={y}>
        <svg class="face-in-figure" x={-size / 2} y={-size / 2} width={size} height={size} viewBox="0 0 100 100">
          <FaceStrokes feeling={feeling} />
        </svg>
      </At>
      <At x={shore} y={y}>
        <text class="halo word" x={beyond} y={3} text-anchor={toRight ? 'start' : 'end'} lang={lang}>
          {feeling.word}
        </text>
        <path class="strokes" transform={`translate(${String(strokesFrom)} 19)`} d={strokesOf(feeling.strength)} />
      </At>
    </>
  );
}
