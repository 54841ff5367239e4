import type { JSX } from 'preact';
import { useState } from 'preact/hooks';
import type { Step } from '../../core/pack/pack.ts';
import type { FormNode } from '../../outputs/maker-form.ts';
import type { Desk } from './desk.ts';
import type { Opening } from './opening.ts';
import { newId } from './keeper.ts';
import { openFile } from './open-file.ts';
import { partnersOf } from './partners.ts';
import { isTranslated, translationEdits, untranslated } from './translating.ts';
import { counted, textAt } from './words.ts';

/** What the other language has in a field, and whether it is still to be translated. */
export function BesideText({ desk, node, steps }: { readonly desk: Desk; readonly node: FormNode; readonly steps: readonly Step[] }): JSX.Element | null {
  const fields = desk.beside?.fields;
  const there = fields && partnersOf(desk.fields?.raw, fields.raw).there(steps);
  if (!fields || !there || !isTranslated(steps)) return null;
  const isBody = node.kind === 'body';
  const theirs = isBody ? fields.body.trim() : textAt(fields.raw, there);
  const own = isBody ? (desk.fields?.body ?? '').trim() : textAt(desk.fields?.raw, steps);
  if (theirs === '') return null;
  const { beside } = desk.data.say;
  return (
    <p class="beside">
      <span class="beside-name">{beside.from}:</span> <span lang={textAt(fields.raw, ['language'])}>{theirs}</span>
      {(own === '' || own === theirs) && <span class="untranslated">{beside.untranslated}</span>}
    </p>
  );
}

/** Begins a translation, or puts another language beside this one; says how much is left. */
export function Translate({ desk, open, pair }: { readonly desk: Desk; readonly open: (opening: Opening) => void; readonly pair: () => void }): JSX.Element {
  const { data } = desk;
  const { beside: say } = data.say;
  const own = textAt(desk.fields?.raw, ['language']);
  const others = data.languages.filter(([tag]) => tag !== own);
  const [into, setInto] = useState(others[0]?.[0] ?? '');
  const begin = async (): Promise<void> => {
    const made = await desk.edited(translationEdits(desk.fields?.raw, into));
    if (made !== undefined) open({ id: newId(), text: made, fileName: `pack.${into}.md`, pictures: desk.pictures, beside: desk.text });
  };
  const left = desk.beside && desk.fields ? untranslated(desk.fields, desk.beside.fields).length : undefined;
  return (
    <details class="more" open={desk.beside !== undefined}>
      <summary>{say.heading}</summary>
      <p class="hint">{say.note}</p>
      {left !== undefined && <p role="status">{left === 0 ? say.done : counted(say.left, left)}</p>}
      {desk.beside ? (
        <p>
          <button type="button" class="page-button" onClick={pair}>
            {say.page}
          </button>{' '}
          <button type="button" class="page-button" onClick={() => void desk.setBeside(undefined)}>
            {say.close}
          </button>
        </p>
      ) : (
        <>
          <div class="slot">
            <label for="beside-file">{say.choose}</label>
            <input
              id="beside-file"
              type="file"
              accept=".md,.zip"
              onChange={(event) => {
                const file = event.currentTarget.files?.[0];
                if (file) void openFile(file).then((opened) => (opened.kind === 'pack' ? desk.setBeside(opened.text).then(pair) : undefined));
              }}
            />
          </div>
          {others.length > 0 && (
            <div class="slot">
              <label for="beside-into">{say.into}</label>
              <select id="beside-into" value={into} onChange={(event) => setInto(event.currentTarget.value)}>
                {others.map(([tag, name]) => (
                  <option value={tag}>{name}</option>
                ))}
              </select>
              <p>
                <button type="button" class="page-button" onClick={() => void begin()}>
                  {say.start}
                </button>
              </p>
            </div>
          )}
        </>
      )}
    </details>
  );
}
