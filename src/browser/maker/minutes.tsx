import type { JSX } from 'preact';
import type { MakerData } from '../../outputs/maker-data.ts';
import type { Desk } from './desk.ts';
import { counted, fill } from './words.ts';

/** "2 min 5 s": to the second, as the plan has it. */
export function spanOf(seconds: number, say: MakerData['say']): string {
  const whole = Math.round(seconds);
  const [long = '', short = ''] = say.minutes.span;
  return whole < 60 ? fill(short, { s: whole }) : fill(long, { m: Math.floor(whole / 60), s: whole % 60 });
}

/** The minutes of the first reading as they are now, and what the short lesson keeps. */
export function MinutesBox({ desk }: { readonly desk: Desk }): JSX.Element {
  const { say, language } = desk.data;
  const minutes = desk.look?.minutes;
  if (!minutes)
    return (
      <div class="minutes-box">
        <h3>{say.minutes.heading}</h3>
        <p>{desk.look ? say.minutes.noWords : say.minutes.waiting}</p>
      </div>
    );
  const { parts } = minutes;
  const chosen = minutes.stops.flatMap((stop, index) => (stop.chosen ? [String(index + 1)] : []));
  const list = new Intl.ListFormat(language).format(chosen);
  return (
    <div class="minutes-box">
      <h3>{say.minutes.heading}</h3>
      <p data-seconds={minutes.all}>{fill(say.minutes.all, { planned: spanOf(minutes.all, say), minutes: minutes.minutes })}</p>
      <p data-seconds={minutes.chosen}>
        {minutes.fits
          ? fill(say.minutes.chosen, {
              minutes: minutes.minutes,
              planned: spanOf(minutes.chosen, say),
              stops: chosen.length === 0 ? say.minutes.noStops : fill(counted(say.minutes.stops, chosen.length), { list }),
            })
          : fill(say.minutes.nothingFits, { minutes: minutes.minutes })}
      </p>
      <p class="parts">
        {fill(say.minutes.parts, {
          opening: spanOf(parts.opening, say),
          reading: spanOf(parts.reading, say),
          turns: spanOf(parts.pageTurns, say),
          stops: spanOf(parts.stops, say),
          closing: spanOf(parts.closing, say),
        })}
      </p>
    </div>
  );
}
