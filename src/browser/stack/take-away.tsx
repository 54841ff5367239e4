import type { JSX } from 'preact';
import { csv } from '../../classroom/csv.ts';
import { isJudged } from '../../classroom/judging.ts';
import { stackTable } from '../../classroom/stack-table.ts';
import { answersTo } from '../../classroom/stack.ts';
import { writeWallFile } from '../../classroom/wall-file.ts';
import { wallPage } from '../../classroom/wall-page.ts';
import { saveFile } from '../booklet/hand-over.ts';
import { AnswerCard } from './answer.tsx';
import { ClassCounts } from './class-counts.tsx';
import type { Desk, Here } from './desk.ts';
import { Aloud, TraitsHad } from './tomorrow.tsx';
import { Wall } from './wall.tsx';

/** What leaves the desk: a table and a page for the teacher; a page for others with what the rules and the ticks allow. */
export function TakeAway({ desk }: { readonly desk: Desk }): JSX.Element | null {
  const say = desk.words.stack.take;
  const { here } = desk;
  if (!here) return null;
  const { stack, scoring, others, shared } = desk.state;
  const { pack } = here;
  const page = wallPage(stack, pack, shared);
  const saveTable = () => {
    const { colleague, ...heads } = say.table;
    const words = { heads, colleague, markOf: (one: Here['booklets'][number]) => desk.markOf(one), file: desk.words.booklet.file };
    const name = `${pack.slug}-${pack.language}-answers.csv`;
    saveFile(
      new File(
        [
          csv(
            stackTable(
              stack,
              pack,
              scoring.scores,
              others.filter(({ steps }) => steps === scoring.steps).map(({ scores }) => scores),
              words,
            ),
          ),
        ],
        name,
        { type: 'text/csv' },
      ),
    );
    desk.announce(desk.words.stack.judge.saved(name));
  };
  const savePage = () => {
    const name = `${pack.slug}-${pack.language}-our-class.html`;
    saveFile(new File([writeWallFile(page, say.wall, desk.words.booklet.file, desk.language)], name, { type: 'text/html' }));
    desk.announce(desk.words.stack.judge.saved(name));
  };
  return (
    <>
      <section class="counted for-you" aria-labelledby="for-you">
        <h3 id="for-you">{say.forYou}</h3>
        <p class="button-row">
          <button type="button" class="page-button" onClick={saveTable}>
            {say.csv}
          </button>
          <button type="button" class="page-button" onClick={() => desk.print('teacher')}>
            {say.print}
          </button>
        </p>
        <p class="note small">{say.forYouNote}</p>
      </section>
      <section class="counted" aria-labelledby="for-all">
        <h3 id="for-all">{say.forAll}</h3>
        <p>{say.forAllNote}</p>
        <Choose desk={desk} here={here} />
        <h4>{say.preview}</h4>
        <Wall desk={desk} page={page} />
        <p class="button-row">
          <button type="button" class="page-button" onClick={savePage}>
            {say.save}
          </button>
          <button type="button" class="page-button" onClick={() => desk.print('wall')}>
            {say.printIt}
          </button>
        </p>
      </section>
    </>
  );
}

/** Every answer about the story, folded by question, each with a tick. What a child said of itself is not offered. */
function Choose({ desk, here: { pack } }: { readonly desk: Desk; readonly here: Here }): JSX.Element {
  const say = desk.words.stack;
  const { stack, shared } = desk.state;
  const lang = desk.langOf(pack);
  return (
    <>
      <h4>{say.take.choose}</h4>
      {pack.stops.flatMap((stop, index) => {
        const answers = isJudged(stop) ? answersTo(stack, pack, stop.id) : [];
        if (answers.length === 0) return [];
        const ticked = answers.filter(({ key }) => shared.includes(key)).length;
        return [
          <details class="choose-answers">
            <summary lang={lang}>
              {say.look.stopOf(index + 1, stop.ask)} <span class="less">{say.tomorrow.ofN(ticked, answers.length)}</span>
            </summary>
            <ul class="side-by-side">
              {answers.map((answer) => {
                const { key } = answer;
                const chosen = shared.includes(key);
                return (
                  <li key={key}>
                    <AnswerCard desk={desk} answer={answer}>
                      <p class="tick">
                        <input id={`show-${key}`} type="checkbox" checked={chosen} onChange={() => desk.set({ shared: chosen ? shared.filter((each) => each !== key) : [...shared, key] })} />
                        <label for={`show-${key}`}>{say.take.tick(desk.markOf(answer.from))}</label>
                      </p>
                    </AnswerCard>
                  </li>
                );
              })}
            </ul>
          </details>,
        ];
      })}
    </>
  );
}

/** The teacher's own page, on paper only: the counts, what the answers had, and what to read aloud. */
export function TeacherPage({ desk }: { readonly desk: Desk }): JSX.Element | null {
  const { here } = desk;
  if (!here) return null;
  return (
    <div class="teacher-page">
      <h2>{desk.words.stack.take.teacherTitle(here.pack.title, here.booklets.length)}</h2>
      <TraitsHad desk={desk} here={here} />
      <Aloud desk={desk} here={here} />
      <ClassCounts desk={desk} here={here} />
    </div>
  );
}
