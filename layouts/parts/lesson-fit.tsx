import type { JSX } from 'preact';
import type { LessonPhrases } from '../../src/core/languages/en-lesson.ts';
import type { Remedy } from '../../src/core/plan/short-lesson.ts';
import type { LessonData } from '../../src/outputs/lesson-data.ts';
import { numberOf, type Sheet } from '../../src/outputs/lesson-sheet.ts';

interface Props {
  readonly data: LessonData;
  readonly sheet: Sheet;
  readonly say: LessonPhrases;
}

/** Whether the lesson fits its minutes, and what is left for another day. Said politely when it changes. */
export function Fit({ data, sheet, say }: Props): JSX.Element {
  return (
    <p class="fit" role="status">
      {fitInWords(data, sheet, say).join(' ')}
    </p>
  );
}

/** The same in sentences. Minutes are rounded up, so that nobody is promised too much. */
export function fitInWords(data: LessonData, { fit, stops, left, lesson, choices }: Sheet, say: LessonPhrases): readonly string[] {
  const total = Math.ceil(lesson.total / 60);
  const numbers = (list: typeof stops) => list.map((stop) => numberOf(data, stop.id));
  if (!fit.fits) return fit.choice.why === 'must out of reach' ? [say.fit.outOfReach] : [say.fit.cannot(choices.minutes, say.span(fit.choice.shortBy), total)];
  const unmet = fit.choice.unmet.map((wish) => say.fit.unmet[wish]);
  if (left.length > 0)
    return [stops.length === 0 ? say.fit.onlyReading(numbers(left), choices.minutes) : say.fit.some(numbers(stops), numbers(left), choices.minutes), ...(stops.length === 0 ? [] : unmet)];
  return [stops.length === 0 ? say.fit.noStops(total, choices.minutes) : say.fit.all(stops.length, total, choices.minutes)];
}

/** What would make room, in a few words. */
export function remedyInWords(remedy: Remedy, say: LessonPhrases): string {
  switch (remedy.kind) {
    case 'shorter opening and closing':
      return say.fit.remedies.ends;
    case 'read a part':
      return say.fit.remedies.part(remedy.to);
    case 'two days':
      return say.fit.remedies.days(remedy.firstDayTo);
  }
}

/** What would help where it does not fit: a list to read, or, with `choose`, one to choose from. */
export function Remedies({ sheet, say, choose }: Omit<Props, 'data'> & { readonly choose?: (remedy: Remedy) => void }): JSX.Element | null {
  if (sheet.fit.fits || sheet.fit.choice.why === 'must out of reach') return null;
  const { remedies } = sheet.fit;
  if (remedies.length === 0) return <p>{say.fit.nothingHelps}</p>;
  return (
    <div class="remedies">
      <p>{say.fit.wouldHelp}</p>
      <ul>
        {remedies.map((remedy) => (
          <li>
            {choose ? (
              <button type="button" class="word-button" onClick={() => choose(remedy)}>
                {remedyInWords(remedy, say)}
              </button>
            ) : (
              remedyInWords(remedy, say)
            )}
          </li>
        ))}
      </ul>
    </div>
  );
}
