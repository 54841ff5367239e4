import type { JSX } from 'preact';
import { chosenLines, feelingLine, starLines } from '../../classroom/wall-file.ts';
import type { WallPage } from '../../classroom/wall-page.ts';
import { Values } from './answer.tsx';
import type { Desk } from './desk.ts';

/** The page for families or the wall, as it will be on paper and in the file. */
export function Wall({ desk, page }: { readonly desk: Desk; readonly page: WallPage }): JSX.Element {
  const say = desk.words.stack.take;
  const lang = desk.langOf(page.pack);
  const stars = starLines(page.stars, page.starWords, say.wall);
  const chosen = chosenLines(page.chosen, say.wall);
  if (page.answers.length + page.feelings.length + stars.length + chosen.length === 0) return <p class="note">{say.emptyPage}</p>;
  return (
    <div class="wall-page" role="group" aria-label={say.preview}>
      <p class="wall-title">{say.wall.title(page.pack.title)}</p>
      <p class="note">{say.wall.lead}</p>
      {page.answers.length > 0 && (
        <ul class="wall-answers">
          {page.answers.map(({ stop, entries }) => (
            <li>
              <p class="place" lang={lang}>
                {stop.ask}
              </p>
              <Values desk={desk} values={entries.map(({ value }) => value)} lang={lang} />
            </li>
          ))}
        </ul>
      )}
      {page.feelings.length > 0 && (
        <>
          <p class="wall-part">{say.wall.feelings}</p>
          {page.feelings.map((each) => (
            <p>
              <span class="place" lang={lang}>
                {each.ask}
              </span>
              <br />
              {feelingLine(each, say.wall)}
            </p>
          ))}
        </>
      )}
      <Lines title={say.wall.stars} lines={stars} />
      <Lines title={say.wall.chosen} lines={chosen} />
    </div>
  );
}

function Lines({ title, lines }: { readonly title: string; readonly lines: readonly string[] }): JSX.Element | null {
  if (lines.length === 0) return null;
  return (
    <>
      <p class="wall-part">{title}</p>
      {lines.map((line) => (
        <p class="wall-line">{line}</p>
      ))}
    </>
  );
}
