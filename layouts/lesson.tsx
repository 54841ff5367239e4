import type { JSX } from 'preact';
import type { Phrases } from '../src/core/languages/en.ts';
import { phrasesFor } from '../src/core/languages/pick-language.ts';
import type { PackFields } from '../src/core/pack/pack.ts';
import { usualChoices } from '../src/outputs/lesson-choices.ts';
import { lessonDataOf } from '../src/outputs/lesson-data.ts';
import { linkFrom, rootOf } from '../src/outputs/addresses.ts';
import { sheetOf } from '../src/outputs/lesson-sheet.ts';
import { stackFileUrl } from '../src/outputs/stack-data.ts';
import type { PackView, PageOf } from '../src/outputs/views.ts';
import { DataIsland, Document } from './parts/document.tsx';
import { Fit, Remedies } from './parts/lesson-fit.tsx';
import { Minutes } from './parts/lesson-minutes.tsx';
import { Rest, Run, type Card } from './parts/lesson-run.tsx';
import { StopAsk, StopHelp } from './parts/lesson-stop.tsx';
import { Feelings, Questions, Rights, Rubric, Words } from './parts/lesson-tables.tsx';
import { Week } from './parts/lesson-week.tsx';
import { Maker } from './parts/pack-links.tsx';
import { PaperLinks } from './parts/paper-links.tsx';
import { PackPictures } from './parts/pack-pictures.tsx';
import { Ribbon } from './parts/ribbon.tsx';

/** The run sheet: for a teacher, or for whoever stands in and has never seen the book. */
export function Lesson(page: PageOf<PackView>): JSX.Element {
  const { pack, urls } = page.view.shown;
  const say = phrasesFor(page.language);
  const data = lessonDataOf(pack);
  const sheet = sheetOf(data, usualChoices(data), pack.plan);
  const substitute = page.view.shown.papers.find((paper) => paper.kind === 'substitute');
  const parts = { data, sheet, say: say.sheet, card: cardsOf(page) };
  return (
    <Document
      page={page}
      title={`${pack.title}: ${say.lesson.of.toLocaleLowerCase(page.language)}`}
      description={say.lesson.description(pack.title)}
      trail={[{ name: pack.title, url: urls.family }]}
      script={`lesson-${page.language.split('-')[0] ?? ''}`}
      beside={<Ribbon pack={pack} say={say} linkTo={(stop) => `#stop-${stop}`} />}
    >
      <header class="book-head">
        <p class="kind">{say.lesson.kind}</p>
        <h1>{pack.title}</h1>
        <p class="by">{say.book.by(pack.book.author, pack.book.illustrator)}</p>
        <p class="lead">{say.lesson.lead}</p>
        <p class="jumps">
          <a href="#minutes">{say.lesson.toMinutes}</a>
          {substitute && (
            <a href={linkFrom(page.url, substitute.url)} type="application/pdf">
              {say.paper.kinds.substitute} ({say.paper.file(substitute.pages, Math.max(1, Math.round(substitute.bytes / 1000)))})
            </a>
          )}
        </p>
      </header>
      <Glance pack={pack} say={say} />
      <Before pack={pack} say={say} />
      <section class="minutes" aria-labelledby="minutes">
        <Minutes {...parts}>
          <Fit {...parts} />
          <Remedies {...parts} />
        </Minutes>
      </section>
      <section class="run" aria-labelledby="run-sheet">
        <Run {...parts} />
      </section>
      {sheet.rest.length > 0 && (
        <section class="rest" aria-labelledby="rest">
          <Rest {...parts} />
        </section>
      )}
      <section class="drawn" aria-labelledby="drawn">
        <h2 id="drawn">{say.pictures.heading}</h2>
        <PackPictures pack={pack} page={page} say={say} headingLevel={3} />
      </section>
      <Week data={data} say={say.sheet} quoted={say.quoted} />
      <Questions pack={pack} say={say} />
      <Rubric pack={pack} say={say} />
      <Words pack={pack} say={say} />
      <Feelings pack={pack} say={say} />
      <PaperLinks page={page} kinds={['lesson', 'substitute', 'booklet', 'cards', 'letter']} />
      <section class="to-stack" aria-labelledby="to-stack">
        <h2 id="to-stack">{say.stack.kind}</h2>
        <p>
          <a class="onward" href={linkFrom(page.url, `${rootOf(page.language, page.library.language)}stack/`)}>
            {say.stack.fromLesson}
          </a>{' '}
          <span class="note">{say.stack.fromLessonNote}</span>
        </p>
        <p>
          <a class="onward" href={linkFrom(page.url, stackFileUrl(page.view.shown))} download={`${pack.slug}-${pack.language}.stack.json`}>
            {say.stack.packFile}
          </a>
        </p>
      </section>
      <Rights pack={pack} say={say} />
      <Maker page={page} />
      <DataIsland id="lesson-data" data={data} />
    </Document>
  );
}

/** The words on each stop's card. */
function cardsOf(page: PageOf<PackView>): Card {
  const { pack } = page.view.shown;
  const say = phrasesFor(page.language);
  return ({ id }) => {
    const stop = pack.stops.find((each) => each.id === id);
    if (!stop) throw new Error(`no stop ${id}`);
    return { ask: <StopAsk page={page} stop={stop} say={say} />, help: <StopHelp page={page} stop={stop} say={say} /> };
  };
}

interface PartProps {
  readonly pack: PackFields;
  readonly say: Phrases;
}

function Glance({ pack, say }: PartProps): JSX.Element {
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
          <dd>{[...(pack.book.kinds ?? []).map((kind) => say.find.kindsOfBook[kind]), say.openings(pack.book.openings), say.words(pack.book.words)].join(say.comma)}</dd>
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
