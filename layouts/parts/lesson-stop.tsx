import type { JSX } from 'preact';
import type { Phrases } from '../../src/core/languages/en.ts';
import { readingsOf, type Model, type Stop } from '../../src/core/pack/pack.ts';
import { linkFrom } from '../../src/outputs/addresses.ts';
import type { PackView, PageOf } from '../../src/outputs/views.ts';
import { Frame } from './frame.tsx';
import { WayDrawing } from './ornaments.tsx';
import { Plate } from './picture.tsx';

interface Props {
  readonly page: PageOf<PackView>;
  readonly stop: Stop;
  readonly say: Phrases;
}

/** What is found, shown and said at a stop. The script finds it by `data-card`. */
export function StopAsk({ page, stop, say }: Props): JSX.Element {
  const picture = page.view.shown.pictures.find((each) => each.stop === stop.id);
  return (
    <div data-card="ask">
      <p class="kind-line">{[say.kinds[stop.kind], say.depth(say.depths[stop.depth - 1] ?? ''), ...(stop.about === undefined ? [] : [say.about[stop.about]])].join(say.comma)}</p>
      <p class="cue">
        {say.lesson.readUntil} {say.lesson.onOpening(stop.at.opening)} {say.lesson.cue} <q>{stop.at.cue}</q>. {say.lesson.picture[stop.at.picture]}
        {stop.at.recording !== undefined && ` ${say.lesson.atRecording(stop.at.recording)}.`}
      </p>
      {picture && <Plate picture={picture} linkTo={(url) => linkFrom(page.url, url)} credit={picture.credit === undefined ? undefined : say.book.pictureBy(picture.credit)} />}
      <p class="say">
        <span class="label">{say.lesson.say}</span> <span class="say-words">{say.quoted(stop.ask)}</span>
      </p>
    </div>
  );
}

/** What helps at a stop: how they answer, frames, what to listen for, what to do when it stays quiet. */
export function StopHelp({ page, stop, say }: Props): JSX.Element {
  const { pack } = page.view.shown;
  const notes = [
    stop.must === true ? say.lesson.must : '',
    stop.after === undefined ? '' : say.lesson.after(pack.stops.findIndex((each) => each.id === stop.after) + 1),
    pack.readings.length < 2 ? '' : say.sheet.inReadings(readingsOf(pack, stop)),
  ].filter((note) => note !== '');
  return (
    <div data-card="help">
      <Details stop={stop} say={say} before={(pack.whatFellFlat ?? []).filter((each) => each.stop === stop.id).map(({ note }) => note)} />
      {notes.length > 0 && <p class="note">{notes.join(' ')}</p>}
      {stop.models && stop.models.length > 0 && <Models models={stop.models} say={say} />}
    </div>
  );
}

function Details({ stop, say, before }: { readonly stop: Stop; readonly say: Phrases; readonly before: readonly string[] }): JSX.Element {
  const lines: readonly (readonly [string, string | undefined])[] = [
    [say.lesson.seated, stop.seated],
    [say.lesson.materials, stop.materials && say.listed(stop.materials)],
    [say.lesson.bank, stop.words && say.listed(stop.words)],
    [say.lesson.listenFor, stop.listenFor],
    [say.lesson.ifQuiet, stop.ifQuiet],
    [say.lesson.expand, stop.expand],
    [say.stack.fellFlat, before.length === 0 ? undefined : before.join(' ')],
  ];
  return (
    <dl class="details">
      <div class="how">
        <dt>{say.lesson.how}</dt>
        <dd>
          <WayDrawing way={stop.answer} /> {say.ways[stop.answer]}
          {stop.or !== undefined && stop.or !== stop.answer && `${say.comma}${say.lesson.orWay(say.ways[stop.or])}`}
        </dd>
      </div>
      {stop.frames && stop.frames.length > 0 && (
        <div>
          <dt>{say.lesson.frames}</dt>
          {stop.frames.map((frame) => (
            <dd>
              <Frame text={frame} blank={say.blank} />
            </dd>
          ))}
        </div>
      )}
      {lines.map(([name, text]) =>
        text === undefined ? null : (
          <div>
            <dt>{name}</dt>
            <dd>{text}</dd>
          </div>
        ),
      )}
    </dl>
  );
}

/** Answers to expect, folded away: they are for the ear of the teacher, and some people like to be surprised. */
export function Models({ models, say }: { readonly models: readonly Model[]; readonly say: Phrases }): JSX.Element {
  return (
    <details class="models">
      <summary>{say.lesson.models}</summary>
      <ul>
        {models.map((model) => (
          <li>
            <q>{model.text}</q>
            {model.shows && model.shows.length > 0 && <span class="shows"> {say.lesson.shows(say.listed(model.shows))}</span>}
          </li>
        ))}
      </ul>
    </details>
  );
}
