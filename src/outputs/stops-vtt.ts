import { phrasesFor } from '../core/languages/pick-language.ts';
import { captionsText, secondsOfClock, type Caption } from '../core/pack/captions.ts';
import { stopsWithTimes } from './transcript.ts';
import type { Output, OutputInput, ShownPack } from './views.ts';

/** The stops of each recording as WebVTT chapters. Source: W3C, WebVTT, chapter cues: each begins where the last ends, in order. */
export function stopsVtt({ shown }: OutputInput): readonly Output[] {
  return shown.flatMap((each) => {
    const chapters = chaptersOf(each);
    return chapters.length === 0 ? [] : [{ url: stopsUrl(each), text: captionsText(chapters) }];
  });
}

export function stopsUrl(shown: ShownPack): string {
  return `${shown.urls.family}stops.vtt`;
}

/** A chapter from each stop to the next. Of a film whose length is not known from captions the last chapter is a minute long. */
function chaptersOf({ pack, recording }: ShownPack): readonly Caption[] {
  if (!recording) return [];
  const say = phrasesFor(pack.language);
  const stops = stopsWithTimes(pack).map(({ stop, number }) => ({ begins: secondsOfClock(stop.at.recording ?? '0:00'), title: `${say.recording.heading(number)}: ${say.kinds[stop.kind]}` }));
  const distinct = stops.filter((stop, index) => stop.begins !== stops[index + 1]?.begins);
  const length = recording.captions.at(-1)?.ends ?? 0;
  return distinct.map(({ begins, title }, index) => {
    const last = Math.max(length, begins + 60);
    return { begins, ends: distinct[index + 1]?.begins ?? (length > begins ? length : last), lines: [title], line: 0 };
  });
}
