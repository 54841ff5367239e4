import type { JSX } from 'preact';
import type { Phrases } from '../src/core/languages/en.ts';
import { phrasesFor } from '../src/core/languages/pick-language.ts';
import { sayFinding } from '../src/core/languages/say-finding.ts';
import type { GradeEstimate } from '../src/core/measure/measures.ts';
import { linkFrom } from '../src/outputs/addresses.ts';
import type { PageOf, QualityView } from '../src/outputs/views.ts';
import { Document } from './parts/document.tsx';
import { languageName } from './parts/language-name.ts';
import { Rule } from './parts/ornaments.tsx';
import { langIfOther } from './parts/pack-links.tsx';

/** How the library's packs measure up, in honest words, with what each figure does not mean. */
export function Quality(page: PageOf<QualityView>): JSX.Element {
  const say = phrasesFor(page.language);
  return (
    <Document page={page} title={say.quality.title} description={say.quality.description}>
      <h1>{say.quality.title}</h1>
      <Rule />
      <p class="lead">{say.quality.lead}</p>
      {page.view.rows.map((row) => (
        <Row page={page} row={row} say={say} />
      ))}
      <section aria-labelledby="meaning">
        <h2 id="meaning">{say.quality.meaning}</h2>
        <dl class="meanings">
          {say.quality.meanings.map(([figure, meaning]) => (
            <div>
              <dt>{figure}</dt>
              <dd>{meaning}</dd>
            </div>
          ))}
        </dl>
      </section>
    </Document>
  );
}

interface RowProps {
  readonly page: PageOf<QualityView>;
  readonly row: QualityView['rows'][number];
  readonly say: Phrases;
}

function Row({ page, row, say }: RowProps): JSX.Element {
  const { pack, urls } = row.shown;
  const id = `pack-${pack.slug}-${pack.language}`;
  const other = langIfOther(pack.language, page.language);
  return (
    <section class="measured" aria-labelledby={id}>
      <h2 id={id}>
        <a href={linkFrom(page.url, urls.family)} lang={other} hreflang={other}>
          {pack.title}
        </a>{' '}
        <span class="in-language">{say.inLanguage(languageName(pack.language, page.language))}</span>
      </h2>
      <Figures page={page} row={row} say={say} />
      <h3>{say.quality.findings}</h3>
      {row.findings.length === 0 ? (
        <p>{say.quality.noFindings}</p>
      ) : (
        <ul class="findings">
          {row.findings.map((finding) => (
            <li>
              <span class="level">{say.quality.levels[finding.level]}</span>, {say.quality.line(finding.place.line)}: {sayFinding(finding, page.language)}
            </li>
          ))}
        </ul>
      )}
    </section>
  );
}

function Figures({ page, row, say }: RowProps): JSX.Element {
  const { pack, pictures } = row.shown;
  const { family } = pack.measures;
  const mean = new Intl.NumberFormat(page.language, { maximumFractionDigits: 1 }).format(family.wordsPerSentence);
  const carrying = pictures.filter((picture) => !picture.decorative);
  const figures: readonly (readonly [string, string])[] = [
    [say.quality.wordCount, String(family.words)],
    [say.quality.sentences, String(family.sentences)],
    [say.quality.mean, mean],
    [say.quality.longest, family.longest ? say.words(family.longest.words) : '–'],
    [say.quality.estimate, estimateInWords(family.estimate, say)],
    [say.quality.pictures, say.quality.ofPictures(carrying.filter((picture) => picture.alt !== '').length, carrying.length)],
    [say.quality.stops, String(pack.stops.length)],
  ];
  return (
    <dl class="figures">
      {figures.map(([name, figure]) => (
        <div>
          <dt>{name}</dt>
          <dd>{figure}</dd>
        </div>
      ))}
    </dl>
  );
}

/** What may honestly be said of how hard a text is. */
export function estimateInWords(estimate: GradeEstimate, say: Phrases): string {
  switch (estimate.kind) {
    case 'too short':
      return say.quality.tooShort;
    case 'no formula':
      return say.quality.noFormula;
    case 'grades':
      return gradesInWords(estimate, say);
    case 'ease':
      return [say.quality.ease(say.quality.bands[estimate.band], estimate.formula), ...(estimate.shortSample ? [say.quality.shortSample] : [])].join(', ');
  }
}

function gradesInWords({ low, high, belowFloor, aboveCeiling, formula }: Extract<GradeEstimate, { kind: 'grades' }>, say: Phrases): string {
  if (belowFloor) return say.quality.belowFloor(high, formula);
  return aboveCeiling ? say.quality.aboveCeiling(low, formula) : say.quality.gradesBand(low, high, formula);
}
