import { secondsOfClock, type Caption } from '../core/pack/captions.ts';
import type { PackFields, Stop } from '../core/pack/pack.ts';

/** A stop that has a time in the recording, with the number that it has in the pack, from 1. */
export interface TimedStop {
  readonly stop: Stop;
  readonly number: number;
}

/** The stops that the film waits at, in the order of the film. */
export function stopsWithTimes(pack: PackFields): readonly TimedStop[] {
  const timed = pack.stops.flatMap((stop, index) => (stop.at.recording === undefined ? [] : [{ stop, number: index + 1 }]));
  const seconds = ({ stop }: TimedStop) => secondsOfClock(stop.at.recording ?? '0:00');
  return timed.sort((a, b) => seconds(a) - seconds(b));
}

export type TranscriptPart = { readonly kind: 'text'; readonly text: string } | ({ readonly kind: 'stop' } & TimedStop);

/** Silence between captions, in seconds, from which a new paragraph begins: a page is turned. Common practice, no source. */
const pageTurn = 1;

/** The text of the captions in paragraphs, with each stop at its place. */
export function transcriptOf(captions: readonly Caption[], stops: readonly TimedStop[]): readonly TranscriptPart[] {
  const parts: TranscriptPart[] = [];
  const waiting = [...stops];
  let paragraph: string[] = [];
  let last = 0;
  const endParagraph = () => {
    if (paragraph.length > 0) parts.push({ kind: 'text', text: paragraph.join(' ') });
    paragraph = [];
  };
  const stopsBefore = (seconds: number) => {
    while (waiting[0] && secondsOfClock(waiting[0].stop.at.recording ?? '0:00') <= seconds) {
      endParagraph();
      const [next] = waiting.splice(0, 1);
      if (next) parts.push({ kind: 'stop', ...next });
    }
  };
  for (const caption of captions) {
    stopsBefore(caption.begins);
    if (caption.begins - last >= pageTurn) endParagraph();
    paragraph.push(caption.lines.join(' '));
    last = caption.ends;
  }
  stopsBefore(Infinity);
  endParagraph();
  return parts;
}
