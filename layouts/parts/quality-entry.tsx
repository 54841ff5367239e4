import type { JSX } from 'preact';
import { groundInWords, groundsOf } from '../../src/core/check/grounds.ts';
import type { Finding } from '../../src/core/finding.ts';
import type { Phrases } from '../../src/core/languages/en.ts';
import { languageOfFindings, sayFinding } from '../../src/core/languages/say-finding.ts';
import { gradeEstimateOf } from '../../src/core/measure/measure-prose.ts';
import type { TextMeasure } from '../../src/core/measure/measures.ts';
import type { PassageMeasure } from '../../src/core/measure/passage-measures.ts';
import { linkFrom } from '../../src/outputs/addresses.ts';
import { isWithheld } from '../../src/outputs/quality-figures.ts';
import { picturesOf } from '../../src/outputs/quality.ts';
import type { PageOf, QualityRow, QualityView } from '../../src/outputs/views.ts';
import { FilePlace } from './file-place.tsx';
import { languageName } from './language-name.ts';
import { langIfOther } from './pack-links.tsx';
import { PackPictures } from './pack-pictures.tsx';

interface Props {
  readonly page: PageOf<QualityView>;
  readonly row: QualityRow;
  readonly say: Phrases;
}

/** One pack in the ledger: its name in the margin, then what was counted and what the checks say. */
export function QualityEntry({ page, row, say }: Props): JSX.Element {
  const { pack, urls } = row.shown;
  const { facets, id } = row;
  const other = langIfOther(pack.language, page.language);
  const pictures = picturesOf(row.shown);
  const parts = [
    { name: say.quality.parts.family, measure: pack.measures.family, aim: say.quality.aim[pack.language.split('-')[0] ?? ''] },
    { name: say.quality.parts.children, measure: pack.measures.children, aim: undefined },
  ];
  return (
    <article
      class="ledger-entry"
      id={id}
      aria-labelledby={`${id}-title`}
      data-language={facets.language}
      data-grades={facets.grades.join(' ')}
      data-levels={facets.levels.join(' ')}
      data-kinds={facets.kinds.join(' ')}
    >
      <header>
        <h3 id={`${id}-title`}>
          <a href={linkFrom(page.url, urls.family)} lang={other} hreflang={other}>
            {pack.title}
          </a>
        </h3>
        <p class="in-short">
          {say.inLanguage(languageName(pack.language, page.language))}
          {say.semicolon}
          {say.forGrades(pack.for.grades).toLocaleLowerCase(page.language)}
          {say.semicolon}
          {say.quality.stopsIn(pack.stops.length, pack.for.minutes)}
        </p>
      </header>
      <dl>
        {parts.map(({ name, measure, aim }) => (
          <div>
            <dt>{name}</dt>
            <dd>
              <Measure page={page} file={pack.file} language={other} measure={measure} aim={aim} say={say} />
            </dd>
          </div>
        ))}
        {pack.measures.passage && (
          <div>
            <dt>{say.quality.parts.passage}</dt>
            <dd>
              <Passage measure={pack.measures.passage} say={say} />
            </dd>
          </div>
        )}
        <div>
          <dt>{say.quality.pictures}</dt>
          <dd>{say.quality.ofPictures(pictures.described, pictures.all)}</dd>
        </div>
        <div>
          <dt>{say.pictures.inLedger}</dt>
          <dd>
            <Drawn page={page} row={row} say={say} />
          </dd>
        </div>
        <div>
          <dt>{say.quality.findings}</dt>
          <dd>
            <Findings page={page} findings={row.findings} say={say} />
          </dd>
        </div>
      </dl>
    </article>
  );
}

/** With more entries than this on a page, the pictures stay where they are and are linked: some 30 kB a pack would make the list too heavy for a phone. */
const mostDrawn = 12;

/** The pack's own pictures, folded away. */
function Drawn({ page, row, say }: Props): JSX.Element {
  const { pack, urls } = row.shown;
  if (page.view.rows.length > mostDrawn) return <a href={`${linkFrom(page.url, urls.lesson)}#drawn`}>{say.pictures.heading}</a>;
  return (
    <details class="ledger-drawn">
      <summary>{say.pictures.heading}</summary>
      <PackPictures pack={pack} page={page} say={say} headingLevel={4} />
    </details>
  );
}

interface MeasureProps {
  readonly page: PageOf<QualityView>;
  readonly file: string;
  /** Language of the text, where it is not the page's. */
  readonly language: string | undefined;
  readonly measure: TextMeasure;
  readonly aim: string | undefined;
  readonly say: Phrases;
}

/** As many long words are named. */
const mostWords = 10;

function Measure({ page, file, language, measure, aim, say }: MeasureProps): JSX.Element {
  const { words, sentences, wordsPerSentence, longest, longWords, estimate, costliest, leftOut } = measure;
  const graded = estimate.kind === 'grades' || estimate.kind === 'ease';
  const left = say.quality.leftOut(leftOut);
  if (words === 0)
    return (
      <p>
        {say.quality.nothing} {left}
      </p>
    );
  const rare = 'formula' in estimate && estimate.formula === 'Spache';
  const namedWords = longWords.slice(0, mostWords);
  return (
    <>
      <p>
        {say.quality.counted(words, sentences)}
        {say.semicolon}
        {say.quality.lengths(Math.round(wordsPerSentence), longest?.words ?? 0)}. {say.quality.estimate(estimate)}
        {graded && aim !== undefined && ` ${aim}`}
      </p>
      {(namedWords.length > 0 || left !== '') && (
        <p class="less">
          {namedWords.length > 0 && (
            <>
              {rare ? say.quality.longOrRareWords : say.quality.longWords} <span lang={language}>{namedWords.join(say.comma)}</span>
              {longWords.length > mostWords && say.quality.andMore(longWords.length - mostWords)}.{' '}
            </>
          )}
          {left}
        </p>
      )}
      {aim !== undefined && costliest.length > 0 && (
        <>
          <p class="less">{say.quality.costliest}:</p>
          <ul class="costly">
            {costliest.map((sentence) => (
              <li>
                <q lang={language}>{excerpt(sentence.text)}</q> <FilePlace library={page.library} file={file} line={sentence.line} withLine />
              </li>
            ))}
          </ul>
        </>
      )}
    </>
  );
}

/** The book's own text: counts and an estimate, and nothing that stands in it. */
function Passage({ measure, say }: { readonly measure: PassageMeasure; readonly say: Phrases }): JSX.Element {
  const { words, sentences, wordsPerSentence, longestSentence, estimate } = measure;
  return (
    <>
      <p>
        {say.quality.counted(words, sentences)}
        {say.semicolon}
        {say.quality.lengths(Math.round(wordsPerSentence), longestSentence)}. {say.quality.estimate(gradeEstimateOf(estimate))}
      </p>
      <p class="less">{say.quality.passageNote}</p>
    </>
  );
}

/** Letters of a sentence that are quoted: enough to find it again. */
const mostLetters = 90;

function excerpt(text: string): string {
  return text.length <= mostLetters ? text : `${text.slice(0, mostLetters).replace(/\s+\S*$/, '')}\u00a0…`;
}

function Findings({ page, findings, say }: { readonly page: PageOf<QualityView>; readonly findings: readonly Finding[]; readonly say: Phrases }): JSX.Element {
  if (findings.length === 0) return <p>{say.quality.noFindings}</p>;
  return (
    <ul class="remarks">
      {findings.map((finding) => (
        <li>
          <span class="level">{say.quality.levels[finding.level]}.</span>{' '}
          {isWithheld(finding.code) ? say.quality.withheld : <span lang={langIfOther(languageOfFindings(page.language), page.language)}>{sayFinding(finding, page.language)}</span>}{' '}
          <FilePlace library={page.library} file={finding.place.file} line={finding.place.line} withLine />
          <Stands finding={finding} language={page.language} />
        </li>
      ))}
    </ul>
  );
}

/** What the rule behind a finding stands on, where there is something to name. */
function Stands({ finding, language }: { readonly finding: Finding; readonly language: string }): JSX.Element | null {
  const ground = groundsOf[finding.code];
  return ground ? (
    <span class="ground" lang={langIfOther(languageOfFindings(language), language)}>
      {groundInWords(ground, language)}.
    </span>
  ) : null;
}
