import type { JSX } from 'preact';
import { localeOf } from './parts/language-name.ts';
import type { Phrases } from '../src/core/languages/en.ts';
import { phrasesFor } from '../src/core/languages/pick-language.ts';
import { secondsOfClock } from '../src/core/pack/captions.ts';
import type { Stop } from '../src/core/pack/pack.ts';
import { linkFrom } from '../src/outputs/addresses.ts';
import { stopsUrl } from '../src/outputs/stops-vtt.ts';
import { stopsWithTimes, transcriptOf, type TimedStop } from '../src/outputs/transcript.ts';
import type { PageOf, RecordingView } from '../src/outputs/views.ts';
import { Document } from './parts/document.tsx';
import { Frame } from './parts/frame.tsx';
import { clock } from './parts/minutes.ts';
import { WayDrawing } from './parts/ornaments.tsx';
import { faceOf } from './parts/pack-links.tsx';
import { numbersIn } from '../src/core/languages/formats.ts';

interface Props {
  readonly page: PageOf<RecordingView>;
  readonly say: Phrases;
  readonly stops: readonly TimedStop[];
}

/** The book read aloud on film. A script makes it wait at each stop; without one the times are there to do so by hand. */
export function Recording(page: PageOf<RecordingView>): JSX.Element {
  const { shown, recording } = page.view;
  const { pack } = shown;
  const say = phrasesFor(page.language);
  const props: Props = { page, say, stops: stopsWithTimes(pack) };
  return (
    <Document
      page={page}
      title={`${pack.title}: ${say.recording.of.toLocaleLowerCase(page.language)}`}
      description={say.recording.description(pack.title)}
      trail={[{ name: pack.title, url: shown.urls.family }]}
      script="recording"
    >
      <header class="book-head">
        <p class="kind">{say.recording.kind}</p>
        <h1>{pack.title}</h1>
        <p class="by">{say.book.by(pack.book.author, pack.book.illustrator)}</p>
        <p class="lead">{say.recording.lead}</p>
      </header>
      {recording.film && <Film {...props} />}
      {recording.link !== undefined && <Elsewhere link={recording.link} say={say} />}
      <StopList {...props} />
      {recording.captions.length > 0 && <Transcript {...props} />}
      <p class="maker">
        <em>{say.recording.permission}:</em> {recording.permission}
      </p>
    </Document>
  );
}

function Film({ page, say, stops }: Props): JSX.Element | null {
  const { shown, recording } = page.view;
  const { film, captions } = recording;
  if (!film) return null;
  const poster = faceOf(shown)?.jpeg.find((each) => each.width >= 900);
  const length = captions.at(-1)?.ends ?? 0;
  const megabytes = numbersIn(localeOf(page.language), { maximumFractionDigits: 1 }).format(film.bytes / 1024 / 1024);
  return (
    <section class="film" aria-label={say.recording.of} data-waiting={say.recording.waiting(0)} data-goes-on={say.recording.goesOn}>
      <div class="film-frame">
        <video controls playsinline preload="metadata" width="640" height="480" aria-label={shown.pack.title} {...(poster && { poster: linkFrom(page.url, poster.url) })}>
          <source src={linkFrom(page.url, film.url)} type={film.type} />
          <track kind="captions" src={linkFrom(page.url, film.captionsUrl)} srclang={page.language} label={say.recording.captionsName} default />
          {stops.length > 0 && <track kind="chapters" src={linkFrom(page.url, stopsUrl(shown))} srclang={page.language} label={say.recording.chaptersName} />}
          <p>{say.recording.noFilm}</p>
        </video>
      </div>
      <p class="note">{say.recording.film(megabytes, say.span(length))}</p>
      <p class="film-switch" hidden>
        <label>
          <input type="checkbox" checked /> {say.recording.waits}
        </label>
      </p>
      <p class="film-status" role="status" />
      {stops.map(({ stop, number }) => (
        <section class="film-stop" hidden data-at={secondsOfClock(stop.at.recording ?? '0:00')} data-told={say.recording.waiting(number)} aria-labelledby={`film-${stop.id}`}>
          <h2 id={`film-${stop.id}`} tabIndex={-1}>
            {say.recording.heading(number)}
          </h2>
          <Prompt stop={stop} say={say} />
          <p class="film-buttons">
            <button type="button" data-act="go-on">
              {say.recording.goOn}
            </button>
            <button type="button" data-act="again" class="quiet">
              {say.recording.again}
            </button>
          </p>
        </section>
      ))}
    </section>
  );
}

function Prompt({ stop, say }: { readonly stop: Stop; readonly say: Phrases }): JSX.Element {
  const ways = [say.ways[stop.answer], ...(stop.or !== undefined && stop.or !== stop.answer ? [say.ways[stop.or]] : [])];
  return (
    <>
      <p class="film-ask" data-listen-to>
        {say.quoted(stop.ask)}
      </p>
      {stop.about !== undefined && <p class="note">{say.recording.feels[stop.about]}</p>}
      <p class="film-way">
        <WayDrawing way={stop.answer} /> {say.recording.youCan(say.booklet.or(ways))}
      </p>
      {stop.frames && stop.frames.length > 0 && (
        <ul class="film-frames">
          {stop.frames.map((frame) => (
            <li>
              <Frame text={frame} blank={say.blank} />
            </li>
          ))}
        </ul>
      )}
    </>
  );
}

/** A film that the site does not hold: a plain link, never another site's player within the page. */
function Elsewhere({ link, say }: { readonly link: string; readonly say: Phrases }): JSX.Element {
  return (
    <section class="elsewhere" aria-labelledby="elsewhere">
      <h2 id="elsewhere">{say.recording.elsewhere}</h2>
      <p>{say.recording.elsewhereNote}</p>
      <p>
        <a href={link} rel="noreferrer">
          {say.recording.toFilm}
        </a>
      </p>
    </section>
  );
}

function StopList({ say, stops }: Props): JSX.Element | null {
  if (stops.length === 0) return null;
  return (
    <section class="film-times" aria-labelledby="film-times">
      <h2 id="film-times">{say.recording.stops}</h2>
      <p class="note">{say.recording.stopsNote}</p>
      <ol>
        {stops.map(({ stop, number }) => (
          <li id={`stop-${stop.id}`}>
            <span class="film-time">{clock(secondsOfClock(stop.at.recording ?? '0:00'))}</span>
            <span>
              <strong>{say.stop(number)}.</strong> {stop.ask}
            </span>
          </li>
        ))}
      </ol>
    </section>
  );
}

function Transcript({ page, say, stops }: Props): JSX.Element {
  return (
    <section class="transcript" aria-labelledby="transcript">
      <h2 id="transcript">{say.recording.transcript}</h2>
      {transcriptOf(page.view.recording.captions, stops).map((part) =>
        part.kind === 'text' ? (
          <p>{part.text}</p>
        ) : (
          <p class="transcript-stop">
            <a href={`#stop-${part.stop.id}`}>{say.stop(part.number)}</a>
            {': '}
            {say.quoted(part.stop.ask)}
          </p>
        ),
      )}
    </section>
  );
}
