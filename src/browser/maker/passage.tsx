import type { JSX } from 'preact';
import { useRef, useState } from 'preact/hooks';
import { localeOf } from '../../core/languages/about-language.ts';
import { numbersIn } from '../../core/languages/formats.ts';
import type { Desk } from './desk.ts';
import { addEdits } from './edits.ts';
import { fill, idOf, listAt } from './words.ts';

/** Milliseconds without a key before the text is counted. */
const quiet = 500;

/** The book's own text, for counting: never in the file, and on the device only where somebody asks for it. */
export function Passage({ desk }: { readonly desk: Desk }): JSX.Element {
  const { say } = desk.data;
  const locale = localeOf(desk.data.language);
  const [typed, setTyped] = useState(desk.passage);
  const timer = useRef<ReturnType<typeof setTimeout>>(undefined);
  const figures = desk.look?.passage;
  const number = numbersIn(locale);
  const type = (text: string): void => {
    setTyped(text);
    clearTimeout(timer.current);
    timer.current = setTimeout(() => desk.setPassage(text), quiet);
  };
  return (
    <details class="more passage" open={desk.passage !== ''}>
      <summary>{say.passage.heading}</summary>
      <p class="hint">{say.passage.note}</p>
      <div class="slot">
        <label for="passage">{say.passage.label}</label>
        <p class="hint" id="passage-hint">
          {say.passage.openings}
        </p>
        <textarea
          id="passage"
          class="passage-text"
          dir="auto"
          rows={8}
          aria-describedby="passage-hint"
          autocomplete="off"
          value={typed}
          onInput={(event) => type(event.currentTarget.value)}
          onDrop={(event) => {
            const file = event.dataTransfer?.files[0];
            if (!file) return;
            event.preventDefault();
            void file.text().then(type);
          }}
        />
      </div>
      <p role="status">
        {figures && (
          <>
            {fill(say.passage.counted, { words: number.format(figures.words), sentences: number.format(figures.sentences) })}{' '}
            {fill(say.passage.copied, { percent: numbersIn(locale, { style: 'percent', maximumFractionDigits: 1 }).format(figures.copiedPercent / 100) })}
          </>
        )}
      </p>
      {figures && (
        <p>
          <button type="button" class="page-button" onClick={() => void desk.change([{ kind: 'set', steps: ['book', 'words'], value: figures.words }], '')}>
            {fill(say.passage.use, { words: number.format(figures.words) })}
          </button>
        </p>
      )}
      <p>
        <label class="tick">
          <input type="checkbox" checked={desk.keepPassage} onChange={(event) => desk.setPassage(typed, event.currentTarget.checked)} />
          <span>{say.passage.keep}</span>
        </label>
      </p>
    </details>
  );
}

/** Words of the book's text that could be worth teaching, each a press away from the list. */
export function Candidates({ desk }: { readonly desk: Desk }): JSX.Element | null {
  const { say } = desk.data;
  const words = desk.look?.passage?.candidates ?? [];
  if (words.length === 0) return null;
  const teach = (word: string): void => {
    void desk.change((raw) => {
      desk.focusNext = idOf(['words', listAt(raw, ['words']).length, 'meaning']);
      return addEdits(raw, ['words'], { word });
    }, '');
  };
  return (
    <section aria-labelledby="candidates">
      <h3 id="candidates">{say.passage.candidates}</h3>
      <ul class="candidates">
        {words.map((word) => (
          <li>
            <button type="button" class="word-button" onClick={() => teach(word)}>
              {fill(say.passage.teach, { word })}
            </button>
          </li>
        ))}
      </ul>
    </section>
  );
}
