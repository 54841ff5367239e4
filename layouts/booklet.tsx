import type { JSX } from 'preact';
import { bestOf, bookmarkPatterns, wholeBook } from '../src/core/booklet/booklet.ts';
import type { Phrases } from '../src/core/languages/en.ts';
import { phrasesFor } from '../src/core/languages/pick-language.ts';
import type { PackFields, Stop, Way } from '../src/core/pack/pack.ts';
import { linkFrom } from '../src/outputs/addresses.ts';
import { bookletData, starWords, waysOf } from '../src/outputs/booklet-data.ts';
import { rulingOf, type Ruling } from '../src/outputs/sheets/ruling.ts';
import type { BuiltPicture, PackView, PageOf } from '../src/outputs/views.ts';
import { DataIsland, Document } from './parts/document.tsx';
import { FeelingWord } from './parts/feeling-word.tsx';
import { Frame } from './parts/frame.tsx';
import { AboutDrawing, BookmarkDrawing, Rule, Sprig, Star, WayDrawing } from './parts/ornaments.tsx';
import { faceOf } from './parts/pack-links.tsx';
import { PaperLinks } from './parts/paper-links.tsx';
import { Plate } from './parts/picture.tsx';
import { Ribbon } from './parts/ribbon.tsx';

/** The pages a child answers on. They ask and give room; an answer is never on them. */
export function Booklet(page: PageOf<PackView>): JSX.Element {
  const { shown } = page.view;
  const { pack } = shown;
  const say = phrasesFor(page.language);
  const title = `${pack.title}: ${say.booklet.of.toLocaleLowerCase(page.language)}`;
  return (
    <Document
      page={page}
      title={title}
      description={say.booklet.description(pack.title)}
      trail={[{ name: pack.title, url: shown.urls.family }]}
      script="booklet"
      beside={<Ribbon pack={pack} say={say} linkTo={(stop) => `#stop-${stop}`} />}
    >
      <Cover page={page} say={say} />
      <ol class="sheets">
        {pack.stops.map((stop, index) => (
          <Sheet pack={pack} stop={stop} number={index + 1} say={say} picture={shown.pictures.find((each) => each.stop === stop.id)} linkTo={(url) => linkFrom(page.url, url)} />
        ))}
      </ol>
      <Rating pack={pack} say={say} />
      <BestOf pack={pack} say={say} />
      <div class="paper-room">
        <p class="the-end">{say.booklet.end}</p>
        <Sprig />
      </div>
      <PaperLinks page={page} kinds={['booklet']} />
      <DataIsland id="booklet-data" data={bookletData(pack, say)} />
    </Document>
  );
}

function Cover({ page, say }: { readonly page: PageOf<PackView>; readonly say: Phrases }): JSX.Element {
  const { shown } = page.view;
  const { pack } = shown;
  const face = faceOf(shown);
  return (
    <div class="cover" data-pack={pack.slug}>
      <p class="kind">{say.booklet.kind}</p>
      <h1>{pack.title}</h1>
      <p class="by">{say.book.by(pack.book.author, pack.book.illustrator)}</p>
      {face && <Plate picture={face} linkTo={(url) => linkFrom(page.url, url)} credit={face.credit === undefined ? undefined : say.book.pictureBy(face.credit)} first />}
      <div class="paper-room">
        <p class="name-line">
          <span>{say.booklet.name}</span>
          <span class="name-rule" aria-hidden="true" />
        </p>
        <section class="bookmarks" aria-labelledby="bookmarks">
          <h2 id="bookmarks">{say.booklet.choose}</h2>
          <p class="note">{say.booklet.chooseNote}</p>
          <ul>
            {bookmarkPatterns.map((pattern) => (
              <li data-bookmark={pattern}>
                <BookmarkDrawing pattern={pattern} />
                <span>{say.booklet.bookmarks[pattern]}</span>
              </li>
            ))}
          </ul>
        </section>
      </div>
    </div>
  );
}

interface SheetProps {
  readonly pack: PackFields;
  readonly stop: Stop;
  readonly number: number;
  readonly say: Phrases;
  readonly picture: BuiltPicture | undefined;
  readonly linkTo: (url: string) => string;
}

/** One stop on one calm page: the question, the ways to answer, words to begin with, and room. */
function Sheet({ pack, stop, number, say, picture, linkTo }: SheetProps): JSX.Element {
  const ways = waysOf(stop);
  return (
    <li class={stop.about === undefined ? 'sheet' : `sheet about-${stop.about}`} id={`stop-${stop.id}`} data-stop={stop.id} data-ways={ways.join(' ')}>
      <p class="sheet-place">
        <span class="numeral">{number}</span> <span>{say.booklet.open(stop.at.opening)}</span>
        <span class="paper-only sheet-book">{pack.title}</span>
        <span class="paper-only sheet-name">{say.booklet.name}</span>
      </p>
      <p class="read-to">{say.booklet.readTo(stop.at.opening, stop.at.cue)}</p>
      <h2 class="ask" data-listen-to>
        {stop.ask}
      </h2>
      {stop.about !== undefined && (
        <p class="about">
          <AboutDrawing about={stop.about} />
          <span>{say.booklet.about[stop.about]}</span>
        </p>
      )}
      {picture && stop.at.picture === 'shown' && <Plate picture={picture} linkTo={linkTo} credit={picture.credit === undefined ? undefined : say.book.pictureBy(picture.credit)} />}
      {stop.seated !== undefined && (
        <p class="seated">
          <span class="label">{say.booklet.seated}</span> {stop.seated}
        </p>
      )}
      <div class="paper-room">
        <p class="answer-ways">
          {ways.map((way) => (
            <WayDrawing way={way} />
          ))}
          <span>{say.booklet.answer(say.booklet.or(ways.map((way) => say.ways[way])))}</span>
        </p>
        {stop.frames && stop.frames.length > 0 && (
          <div class="frames">
            <p class="label">{say.booklet.frames}</p>
            <ul>
              {stop.frames.map((frame) => (
                <li>
                  <Frame text={frame} blank={say.blank} />
                </li>
              ))}
            </ul>
          </div>
        )}
        {stop.words && stop.words.length > 0 && (
          <div class="bank">
            <p class="label">{say.booklet.bank}</p>
            <ul>
              {stop.words.map((word) => (
                <li>
                  <FeelingWord word={word} pack={pack} />
                </li>
              ))}
            </ul>
          </div>
        )}
        {ways.map((way) => (
          <Room way={way} ruling={rulingOf(pack)} say={say} />
        ))}
      </div>
    </li>
  );
}

/** Room on the paper, where a way needs it. */
function Room({ way, ruling, say }: { readonly way: Way; readonly ruling: Ruling; readonly say: Phrases }): JSX.Element | null {
  if (way === 'draw') return <div class="drawing-box" role="img" aria-label={say.booklet.box} />;
  if (way !== 'write') return null;
  return (
    <div class={`ruling ruled-${ruling.name}`} role="img" aria-label={say.booklet.lines}>
      {Array.from({ length: ruling.lines }, () => (
        <div class="ruled-line">
          <div class="ruled-half" />
        </div>
      ))}
    </div>
  );
}

function Rating({ pack, say }: { readonly pack: PackFields; readonly say: Phrases }): JSX.Element | null {
  const { rating } = pack;
  if (!rating) return null;
  return (
    <section class="rating" id="rating" data-stop={wholeBook} aria-labelledby="rating-title">
      <Rule />
      <h2 id="rating-title">{say.booklet.rating}</h2>
      <p class="ask">{rating.ask}</p>
      <div class="paper-room">
        <p class="note">{say.booklet.ratingNote}</p>
        <ol>
          {starWords(say.booklet.starWords, rating.outOf).map((words, index) => (
            <li data-stars={index + 1}>
              <span class="stars" aria-hidden="true">
                {Array.from({ length: index + 1 }, () => (
                  <Star />
                ))}
              </span>
              <span class="unseen">{say.booklet.stars(index + 1)}: </span>
              <span>{words}</span>
            </li>
          ))}
        </ol>
        <p class="because">
          <span>{say.booklet.because}</span>
          <span class="name-rule" aria-hidden="true" />
        </p>
        {rating.reasons && rating.reasons.length > 0 && (
          <div class="bank">
            <p class="label">{say.booklet.reasons}</p>
            <ul>
              {rating.reasons.map((reason) => (
                <li>{reason}</li>
              ))}
            </ul>
          </div>
        )}
      </div>
    </section>
  );
}

/** Which of a few books: a question of its own, since it is asked when a week of several books is over. */
function BestOf({ pack, say }: { readonly pack: PackFields; readonly say: Phrases }): JSX.Element | null {
  if (!pack.bestOf) return null;
  const { ask, books, last } = pack.bestOf;
  const list = (
    <ul class="few-books">
      {books.map((book) => (
        <li>{book}</li>
      ))}
    </ul>
  );
  return (
    <section class="rating" id="best-of" data-stop={bestOf} aria-labelledby="best-of-title">
      <Rule />
      <h2 id="best-of-title">{say.booklet.file.kinds.chosen}</h2>
      <p class="ask">{ask}</p>
      <div class="paper-room">
        <p class="note">{say.booklet.ratingNote}</p>
        {list}
        {last !== undefined && (
          <>
            <p class="ask">{last}</p>
            {list}
          </>
        )}
      </div>
    </section>
  );
}
