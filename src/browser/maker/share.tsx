import type { JSX } from 'preact';
import { useEffect, useState } from 'preact/hooks';
import type { Desk } from './desk.ts';
import { canSave, saveIntoLibrary } from './save.ts';
import { takeFile, takeZip } from './take.ts';
import { counted, fill } from './words.ts';

interface Props {
  readonly desk: Desk;
  readonly everything: boolean;
  readonly setEverything: (on: boolean) => void;
  readonly goTo: (path: string) => void;
  readonly nameOf: (path: string) => string;
}

/** What the check says of the whole, in plain words, and the ways to take the pack away. */
export function Share({ desk, everything, setEverything, goTo, nameOf }: Props): JSX.Element {
  const { say } = desk.data;
  const [told, setTold] = useState('');
  const advice = desk.look?.advice ?? [];
  const needed = advice.filter((each) => each.level === 'stop');
  const others = advice.filter((each) => each.level !== 'stop');
  return (
    <>
      <section aria-labelledby="says">
        <h3 id="says">{say.share.list}</h3>
        {desk.look && advice.length === 0 && <p class="ready">{say.share.ready}</p>}
        {needed.length > 0 && <p>{counted(say.share.needed, needed.length)}</p>}
        <AdviceLines desk={desk} advice={needed} goTo={goTo} nameOf={nameOf} />
        {others.length > 0 && <p>{counted(say.share.advice, others.length)}</p>}
        <AdviceLines desk={desk} advice={others} goTo={goTo} nameOf={nameOf} />
        <p class="tick">
          <input type="checkbox" id="everything" checked={everything} onChange={(event) => setEverything(event.currentTarget.checked)} />
          <label for="everything">{say.share.all}</label>
        </p>
      </section>
      <section aria-labelledby="take">
        <h3 id="take">{say.share.take}</h3>
        <p class="take-buttons">
          <button
            type="button"
            class="page-button main-button"
            onClick={() => {
              void takeFile(desk).then(() => setTold(say.share.saved));
            }}
          >
            {fill(say.share.downloadPack, { file: desk.fileName })}
          </button>
          <button
            type="button"
            class="page-button"
            onClick={() =>
              void takeZip(desk).then(
                () => setTold(say.share.saved),
                () => setTold(say.share.zipFailed),
              )
            }
          >
            {fill(say.share.downloadZip, { name: desk.slug })}
          </button>
          {canSave() && (
            <button type="button" class="page-button" aria-describedby="save-note" onClick={() => void saveIntoLibrary(desk).then(setTold)}>
              {say.save.button}
            </button>
          )}
        </p>
        {canSave() && (
          <p class="note" id="save-note">
            {say.save.note}
          </p>
        )}
        <p role="status">{told}</p>
        <p>
          <a class="onward" href={desk.data.handOver}>
            {say.share.how}
          </a>
        </p>
      </section>
      <AsText desk={desk} />
    </>
  );
}

type AdviceItem = NonNullable<Desk['look']>['advice'][number];

function AdviceLines({ desk, advice, goTo, nameOf }: Pick<Props, 'desk' | 'goTo' | 'nameOf'> & { readonly advice: readonly AdviceItem[] }): JSX.Element | null {
  const { say } = desk.data;
  if (advice.length === 0) return null;
  return (
    <ul class="before-you-share">
      {advice.map((each) => (
        <li class={`is-${each.level}`}>
          <span class="level">{say.levels[each.level]}:</span>{' '}
          {each.code === 'pack/missing-field' && each.path !== '' ? (
            // Who uses the form adds no line to a file: what is missing is named as the form names it.
            <button type="button" class="word-button" onClick={() => goTo(each.path)}>
              <span class="where">{nameOf(each.path)}</span>
            </button>
          ) : (
            <>
              {each.say}{' '}
              {each.path !== '' && (
                <button type="button" class="word-button" onClick={() => goTo(each.path)}>
                  {say.share.go}: <span class="where">{nameOf(each.path)}</span>
                </button>
              )}
            </>
          )}
        </li>
      ))}
    </ul>
  );
}

/** The very text of the file, to look at and to change. */
export function AsText({ desk }: { readonly desk: Desk }): JSX.Element {
  const { say } = desk.data;
  const [draft, setDraft] = useState<string>();
  useEffect(() => setDraft(undefined), [desk.text]);
  return (
    <details class="more">
      <summary>{say.share.asText}</summary>
      <div class="slot">
        <label for="as-text">{say.broken.label}</label>
        <p class="hint">{say.share.asTextNote}</p>
        <textarea id="as-text" class="file-text" dir="ltr" rows={24} spellcheck={false} value={draft ?? desk.text} onInput={(event) => setDraft(event.currentTarget.value)} />
      </div>
      <p>
        <button type="button" class="page-button" disabled={draft === undefined} onClick={() => draft !== undefined && void desk.replace(draft)}>
          {say.share.useText}
        </button>
      </p>
    </details>
  );
}

/** A file that cannot be read yet: its text and what is wrong with it. */
export function Broken({ desk }: { readonly desk: Desk }): JSX.Element {
  const { say } = desk.data;
  const [draft, setDraft] = useState(desk.text);
  return (
    <section class="chapter" aria-labelledby="broken">
      <h2 id="broken">{say.broken.heading}</h2>
      <p>{say.broken.text}</p>
      <ul class="before-you-share">
        {(desk.look?.advice ?? []).map((each) => (
          <li>
            <span class="level">{fill(say.broken.line, { n: each.line })}:</span> {each.say}
          </li>
        ))}
      </ul>
      <div class="slot">
        <label for="broken-text">{say.broken.label}</label>
        <textarea id="broken-text" class="file-text" dir="ltr" rows={24} spellcheck={false} value={draft} onInput={(event) => setDraft(event.currentTarget.value)} />
      </div>
      <p>
        <button type="button" class="page-button" onClick={() => void desk.replace(draft)}>
          {say.share.useText}
        </button>
      </p>
    </section>
  );
}
