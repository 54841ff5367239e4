import type { ComponentChildren, JSX } from 'preact';
import type { Phrases } from '../../src/core/languages/en.ts';
import type { PackFields } from '../../src/core/pack/pack.ts';
import { FeelingWord } from './feeling-word.tsx';
import { languageName } from './language-name.ts';
import { Models } from './lesson-stop.tsx';

interface Props {
  readonly pack: PackFields;
  readonly say: Phrases;
}

/** A table in a box of its own: on a narrow screen the box scrolls and the page does not. */
function WideTable({ by, heads, children }: { readonly by: string; readonly heads: readonly string[]; readonly children: ComponentChildren }): JSX.Element {
  return (
    <section class="wide" aria-labelledby={by} tabIndex={0}>
      <table>
        <thead>
          <tr>
            {heads.map((head) => (
              <th scope="col">{head}</th>
            ))}
          </tr>
        </thead>
        <tbody>{children}</tbody>
      </table>
    </section>
  );
}

/** Questions to talk over when the book is closed. */
export function Questions({ pack, say }: Props): JSX.Element | null {
  const questions = pack.questions ?? [];
  if (questions.length === 0) return null;
  return (
    <section class="questions" aria-labelledby="questions">
      <h2 id="questions">{say.lesson.questions}</h2>
      <ol class="numbered">
        {questions.map((question) => (
          <li>
            <p class="say-words">{say.quoted(question.ask)}</p>
            <p class="kind-line">{say.depth(say.depths[question.depth - 1] ?? '')}</p>
            {question.models && question.models.length > 0 && <Models models={question.models} say={say} />}
          </li>
        ))}
      </ol>
    </section>
  );
}

/** What may be heard in an answer, and what to do where it is not there yet. */
export function Rubric({ pack, say }: Props): JSX.Element | null {
  const rubric = pack.rubric ?? [];
  if (rubric.length === 0) return null;
  const examples = rubric.some((row) => row.example !== undefined);
  return (
    <section>
      <h2 id="rubric">{say.lesson.rubric}</h2>
      <p class="note">{say.lesson.rubricNote}</p>
      <WideTable by="rubric" heads={[say.lesson.trait, say.lesson.meets, say.lesson.notYet, ...(examples ? [say.lesson.example] : [])]}>
        {rubric.map((row) => (
          <tr>
            <th scope="row">{row.trait}</th>
            <td>{row.meets}</td>
            <td>{row.notYet}</td>
            {examples && <td>{row.example}</td>}
          </tr>
        ))}
      </WideTable>
    </section>
  );
}

export function Words({ pack, say }: Props): JSX.Element | null {
  const words = pack.words ?? [];
  if (words.length === 0) return null;
  return (
    <section>
      <h2 id="words">{say.lesson.words}</h2>
      <WideTable by="words" heads={[say.lesson.word, say.lesson.meaning, say.lesson.situation, say.lesson.gesture]}>
        {words.map((word) => (
          <tr>
            <th scope="row">
              {word.word}
              {word.firstMet !== undefined && <span class="met">{say.opening(word.firstMet)}</span>}
              {Object.entries(word.inOtherLanguages ?? {}).map(([language, other]) => (
                <span class="met">
                  {say.inLanguage(languageName(language, pack.language))} <span lang={language}>{other}</span>
                </span>
              ))}
            </th>
            <td>{word.meaning}</td>
            <td>{word.situation}</td>
            <td>{word.gesture}</td>
          </tr>
        ))}
      </WideTable>
    </section>
  );
}

export function Feelings({ pack, say }: Props): JSX.Element | null {
  const feelings = pack.feelings ?? [];
  if (feelings.length === 0) return null;
  return (
    <section>
      <h2 id="feelings">{say.lesson.feelings}</h2>
      <WideTable by="feelings" heads={[say.lesson.feeling, say.lesson.family, say.lesson.strength, say.lesson.situation]}>
        {feelings.map((feeling) => (
          <tr>
            <th scope="row">
              <FeelingWord word={feeling.word} pack={pack} />
            </th>
            <td>{say.families[feeling.family]}</td>
            <td>{say.strengths[feeling.strength - 1]}</td>
            <td>{feeling.situation}</td>
          </tr>
        ))}
      </WideTable>
    </section>
  );
}

/** Whose the book is, and how little of it stands here. */
export function Rights({ pack, say }: Props): JSX.Element {
  const { book } = pack;
  const from = [book.publisher, book.year === undefined ? undefined : String(book.year), book.isbn === undefined ? undefined : say.book.isbn(book.isbn)].filter((part) => part !== undefined);
  return (
    <section class="rights" aria-labelledby="rights">
      <h2 id="rights">{say.lesson.rights}</h2>
      <p>
        <cite>{book.title}</cite>, {say.book.by(book.author, book.illustrator)}
        {from.length > 0 && `. ${from.join(say.comma)}`}. {say.lesson.bookRights(say.rightsOf[book.rights])} {book.rightsNote}
      </p>
      <p>{say.lesson.quote}</p>
    </section>
  );
}
