import type { JSX } from 'preact';
import type { Phrases } from '../src/core/languages/en.ts';
import { phrasesFor } from '../src/core/languages/pick-language.ts';
import type { PackFields } from '../src/core/pack/pack.ts';
import { linkFrom } from '../src/outputs/addresses.ts';
import type { PackView, PageOf } from '../src/outputs/views.ts';
import { Document } from './parts/document.tsx';
import { languageName } from './parts/language-name.ts';
import { learningResource } from './parts/learning-resource.ts';
import { Leaf, Rule } from './parts/ornaments.tsx';
import { faceOf, Maker, Versions } from './parts/pack-links.tsx';
import { PaperLinks } from './parts/paper-links.tsx';
import { Plate } from './parts/picture.tsx';
import { Ribbon } from './parts/ribbon.tsx';
import { TakeAlong } from './parts/take-along.tsx';

/** The page for a family at home: what to do in ten minutes, without the book. */
export function Family(page: PageOf<PackView>): JSX.Element {
  const { shown } = page.view;
  const { pack, urls } = shown;
  const say = phrasesFor(page.language);
  const booklet = linkFrom(page.url, urls.booklet);
  const face = faceOf(shown);
  return (
    <Document
      page={page}
      title={pack.title}
      description={`${say.family.description(pack.title)} ${pack.summary}`}
      data={learningResource(page)}
      beside={<Ribbon pack={pack} say={say} linkTo={(stop) => `${booklet}#stop-${stop}`} />}
    >
      <div class="opening-spread">
        <header class="book-head">
          <p class="kind">{say.family.kind}</p>
          <h1>{pack.title}</h1>
          <p class="by">{say.book.by(pack.book.author, pack.book.illustrator)}</p>
          <Versions page={page} />
          <p class="first-words">{pack.summary}</p>
        </header>
        {face && <Plate picture={face} linkTo={(url) => linkFrom(page.url, url)} credit={face.credit === undefined ? undefined : say.book.pictureBy(face.credit)} first />}
      </div>
      <Steps say={say} />
      <Talk pack={pack} say={say} />
      <Words pack={pack} say={say} />
      <Aims pack={pack} say={say} />
      <section class="more" aria-labelledby="more">
        <h2 id="more">{say.family.more}</h2>
        <div class="prose" dangerouslySetInnerHTML={{ __html: shown.bodyHtml }} />
      </section>
      <PaperLinks page={page} kinds={['letter', 'booklet']} />
      <TakeAlong page={page} />
      <Onward page={page} say={say} />
      <Maker page={page} />
    </Document>
  );
}

function Steps({ say }: { readonly say: Phrases }): JSX.Element {
  return (
    <section class="steps" aria-labelledby="ten-minutes">
      <h2 id="ten-minutes">{say.family.steps}</h2>
      <p class="note">{say.family.stepsNote}</p>
      <ol>
        {say.family.step.map(([head, text]) => (
          <li>
            <p>
              <strong>{head}</strong> {text}
            </p>
          </li>
        ))}
      </ol>
      <p class="aside">{say.family.anyLanguage}</p>
    </section>
  );
}

/** What to be careful with, the questions, and how a talk may sound, set like a little play. */
function Talk({ pack, say }: { readonly pack: PackFields; readonly say: Phrases }): JSX.Element {
  const { home, care } = pack;
  return (
    <>
      {care && care.length > 0 && (
        <section class="care" aria-labelledby="care">
          <h2 id="care">{say.family.care}</h2>
          {care.map((note) => (
            <p>{note}</p>
          ))}
        </section>
      )}
      {home && (
        <section class="prompts" aria-labelledby="prompts">
          <h2 id="prompts">{say.family.prompts}</h2>
          <ul>
            {home.prompts.slice(0, 3).map((prompt) => (
              <li>
                <Leaf />
                <div>
                  <p data-listen-to>{prompt}</p>
                </div>
              </li>
            ))}
          </ul>
          {home.note !== undefined && <p class="aside">{home.note}</p>}
        </section>
      )}
      {home?.example && home.example.length > 0 && (
        <section class="play" aria-labelledby="play">
          <h2 id="play">{say.family.example}</h2>
          <ol>
            {home.example.map((line) => (
              <li>
                <span class="speaker">{say.family.speakers[line.who]}</span>
                <span class="unseen">: </span>
                <span class="line">{line.says}</span>
              </li>
            ))}
          </ol>
        </section>
      )}
    </>
  );
}

function Words({ pack, say }: { readonly pack: PackFields; readonly say: Phrases }): JSX.Element | null {
  const words = pack.words ?? [];
  if (words.length === 0) return null;
  return (
    <section class="words" aria-labelledby="words">
      <h2 id="words">{say.family.words}</h2>
      <p class="note">{say.family.wordsNote}</p>
      <dl>
        {words.map((word) => (
          <div>
            <dt>{word.word}</dt>
            <dd>
              <p data-listen-to>{word.meaning}</p>
              {word.gesture !== undefined && (
                <p class="gesture">
                  <em>{say.family.gesture}</em> {word.gesture}
                </p>
              )}
              {Object.entries(word.inOtherLanguages ?? {}).map(([language, other]) => (
                <p class="other-language">
                  <em>{say.inLanguage(languageName(language, pack.language))}</em> <strong lang={language}>{other}</strong>
                </p>
              ))}
            </dd>
          </div>
        ))}
      </dl>
    </section>
  );
}

function Aims({ pack, say }: { readonly pack: PackFields; readonly say: Phrases }): JSX.Element | null {
  const aims = pack.aims ?? [];
  if (aims.length === 0) return null;
  return (
    <section class="aims" aria-labelledby="aims">
      <h2 id="aims">{say.family.aims}</h2>
      <ul>
        {aims.map((aim) => (
          <li>{aim.skill}</li>
        ))}
      </ul>
    </section>
  );
}

/** The other two pages of this book. */
function Onward({ page, say }: { readonly page: PageOf<PackView>; readonly say: Phrases }): JSX.Element {
  const { urls } = page.view.shown;
  const links = [
    { url: urls.booklet, name: say.family.toBooklet, note: say.family.toBookletNote },
    ...(page.view.shown.recording === undefined ? [] : [{ url: urls.recording, name: say.recording.link, note: say.recording.linkNote }]),
    { url: urls.lesson, name: say.family.toLesson, note: say.family.toLessonNote },
  ];
  return (
    <nav class="onward-list" aria-label={say.family.toc}>
      <Rule />
      <ul>
        {links.map((link) => (
          <li>
            <a href={linkFrom(page.url, link.url)}>{link.name}</a>
            <span class="leader" aria-hidden="true" />
            <span class="note">{link.note}</span>
          </li>
        ))}
      </ul>
    </nav>
  );
}
