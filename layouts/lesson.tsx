import type { JSX } from 'preact';
import type { Phrases } from '../src/core/languages/en.ts';
import { phrasesFor } from '../src/core/languages/pick-language.ts';
import { stopsOf, type PackFields, type Stop } from '../src/core/pack/pack.ts';
import type { PackView, PageOf } from '../src/outputs/views.ts';
import { Document } from './parts/document.tsx';
import { LessonStop } from './parts/lesson-stop.tsx';
import { Feelings, Questions, Rights, Rubric, Words } from './parts/lesson-tables.tsx';
import { runSheet, type RunSheetRow } from '../src/core/plan/run-sheet.ts';
import { clock } from './parts/minutes.ts';
import { Minutes } from './parts/minutes-plan.tsx';
import { Rule } from './parts/ornaments.tsx';
import { Maker } from './parts/pack-links.tsx';
import { Ribbon } from './parts/ribbon.tsx';

/** The reading that the run sheet goes through minute by minute: the one that the plan was worked out for. */
const firstReadingOf = (pack: PackFields) => pack.readings[0]?.reading ?? 1;

/** The run sheet: for a teacher, or for whoever stands in and has never seen the book. */
export function Lesson(page: PageOf<PackView>): JSX.Element {
  const { pack, urls } = page.view.shown;
  const say = phrasesFor(page.language);
  const first = stopsOf(pack, firstReadingOf(pack));
  const rows = runSheet(pack.book, first, pack.plan.lesson, 0);
  return (
    <Document
      page={page}
      title={`${pack.title}: ${say.lesson.of.toLocaleLowerCase(page.language)}`}
      description={say.lesson.description(pack.title)}
      trail={[{ name: pack.title, url: urls.family }]}
      script="lesson"
      beside={<Ribbon pack={pack} say={say} linkTo={(stop) => `#stop-${stop}`} />}
    >
      <header class="book-head">
        <p class="kind">{say.lesson.kind}</p>
        <h1>{pack.title}</h1>
        <p class="by">{say.book.by(pack.book.author, pack.book.illustrator)}</p>
        <p class="lead">{say.lesson.lead}</p>
      </header>
      <Glance pack={pack} stops={first} say={say} />
      <Before pack={pack} say={say} />
      <Minutes pack={pack} rows={rows} say={say} />
      <Run page={page} stops={first} rows={rows} say={say} />
      <Week page={page} say={say} />
      <Questions pack={pack} say={say} />
      <Rubric pack={pack} say={say} />
      <Words pack={pack} say={say} />
      <Feelings pack={pack} say={say} />
      <Rights pack={pack} say={say} />
      <Maker pack={pack} language={page.language} />
    </Document>
  );
}

interface PartProps {
  readonly pack: PackFields;
  readonly say: Phrases;
}

function Glance({ pack, stops, say }: PartProps & { readonly stops: readonly Stop[] }): JSX.Element {
  const materials = [pack.recording === undefined ? say.lesson.theBook : say.lesson.theBookOrRecording, ...new Set(stops.flatMap((stop) => stop.materials ?? []))];
  return (
    <section class="glance" aria-labelledby="glance">
      <h2 id="glance">{say.lesson.glance}</h2>
      <dl class="figures">
        <div>
          <dt>{say.lesson.who}</dt>
          <dd>{say.grades(pack.for.grades)}</dd>
        </div>
        <div>
          <dt>{say.lesson.time}</dt>
          <dd>{say.minutes(pack.for.minutes)}</dd>
        </div>
        <div>
          <dt>{say.lesson.book}</dt>
          <dd>
            {say.openings(pack.book.openings)}, {say.words(pack.book.words)}
          </dd>
        </div>
        <div>
          <dt>{say.lesson.have}</dt>
          <dd>{say.listed(materials)}</dd>
        </div>
      </dl>
    </section>
  );
}

/** What the reading is for, and what to know before it begins. */
function Before({ pack, say }: PartProps): JSX.Element {
  return (
    <>
      {pack.aims && pack.aims.length > 0 && (
        <section class="aims" aria-labelledby="aims">
          <h2 id="aims">{say.lesson.aims}</h2>
          <ul>
            {pack.aims.map(({ skill, standard }) => (
              <li>
                {skill}
                {standard && (
                  <span class="standard">
                    {' '}
                    {standard.paraphrase} (
                    {standard.uri === undefined ? (
                      standard.framework
                    ) : (
                      <a href={standard.uri} rel="noreferrer">
                        {standard.framework}
                      </a>
                    )}
                    {standard.code !== undefined && `, ${standard.code}`})
                  </span>
                )}
              </li>
            ))}
          </ul>
        </section>
      )}
      {pack.care && pack.care.length > 0 && (
        <section class="care" aria-labelledby="care">
          <h2 id="care">{say.lesson.before}</h2>
          {pack.care.map((note) => (
            <p>{note}</p>
          ))}
        </section>
      )}
    </>
  );
}

interface RunProps {
  readonly page: PageOf<PackView>;
  readonly stops: readonly Stop[];
  readonly rows: readonly RunSheetRow[];
  readonly say: Phrases;
}

/** The first reading, with a clock beside each step. */
function Run({ page, stops, rows, say }: RunProps): JSX.Element {
  const { shown } = page.view;
  const begins = (id: string) => rows.find((each) => each.kind === 'stop' && each.stop.id === id)?.begins ?? 0;
  const closing = rows.find((each) => each.kind === 'closing');
  const purpose = shown.pack.readings.find((each) => each.reading === firstReadingOf(shown.pack))?.purpose;
  return (
    <section class="run" aria-labelledby="run-sheet">
      <h2 id="run-sheet">{say.lesson.runSheet}</h2>
      {purpose !== undefined && <p class="purpose">{say.lesson.planFor(purpose)}</p>}
      <p class="note">{say.lesson.runNote}</p>
      <ol class="run-steps">
        <li class="run-step">
          <p class="clock">{clock(0)}</p>
          <div>
            <h3>{say.lesson.openingPart}</h3>
            <p>{say.lesson.begin}</p>
          </div>
        </li>
        {stops.map((stop) => (
          <LessonStop page={page} stop={stop} say={say} at={clock(begins(stop.id))} />
        ))}
        <li class="run-step">
          <p class="clock">{clock(closing?.begins ?? 0)}</p>
          <div>
            <h3>{say.lesson.closingPart}</h3>
            <p>{say.lesson.close}</p>
          </div>
        </li>
      </ol>
    </section>
  );
}

/** The readings after the first: what each is for, what must be asked, and the stops that only they have. */
function Week({ page, say }: { readonly page: PageOf<PackView>; readonly say: Phrases }): JSX.Element | null {
  const { pack } = page.view.shown;
  const later = pack.readings.filter((each) => each.reading !== firstReadingOf(pack));
  if (later.length === 0) return null;
  const shownBefore = new Set(stopsOf(pack, firstReadingOf(pack)).map((stop) => stop.id));
  const numberOf = (id: string) => pack.stops.findIndex((stop) => stop.id === id) + 1;
  return (
    <section class="week" aria-labelledby="week">
      <h2 id="week">{say.lesson.week}</h2>
      {later.map((reading) => {
        const stops = stopsOf(pack, reading.reading);
        const own = stops.filter((stop) => !shownBefore.has(stop.id));
        for (const stop of own) shownBefore.add(stop.id);
        const must = pack.stops.find((stop) => stop.id === reading.mustAsk);
        return (
          <div class="reading">
            <h3>{say.lesson.readingN(reading.reading)}</h3>
            <p class="purpose">{reading.purpose}</p>
            {must && (
              <p>
                <em>{say.lesson.mustAsk}:</em> <a href={`#stop-${must.id}`}>{say.quoted(must.ask)}</a>
              </p>
            )}
            <p>
              <em>{say.lesson.stopsOfReading}:</em>{' '}
              {stops.map((stop, index) => (
                <>
                  {index > 0 && ', '}
                  <a href={`#stop-${stop.id}`}>{say.stop(numberOf(stop.id))}</a>
                </>
              ))}
            </p>
            {own.length > 0 && (
              <ol class="run-steps">
                {own.map((stop) => (
                  <LessonStop page={page} stop={stop} say={say} heading="h4" />
                ))}
              </ol>
            )}
          </div>
        );
      })}
      <Rule />
    </section>
  );
}
