import type { JSX } from 'preact';
import { useState } from 'preact/hooks';
import { adviceFor } from './advice.ts';
import { tickEdits } from './edits.ts';
import { AdviceList, Field, Hint, type FieldProps } from './fields.tsx';
import { fill, idOf, listAt, pathOf, valueAt } from './words.ts';

/** Several of a few: a box to tick for each. */
export function Ticks({ desk, node, steps, everything }: FieldProps): JSX.Element {
  const choices = node.item?.choices ?? [];
  const ticked = listAt(desk.fields?.raw, steps);
  const id = idOf(steps);
  const names = choices.map(([each]) => each);
  const tick = (value: string, on: boolean): void => void desk.change((raw) => tickEdits(raw, steps, names, value, on), pathOf(steps));
  const advice = [pathOf(steps), ...ticked.map((_, index) => pathOf([...steps, index]))].flatMap((path) => adviceFor(desk.look, path, everything));
  return (
    <fieldset class="slot ticks" id={id} tabIndex={-1} aria-describedby={`${id}-hint`}>
      <legend>{node.label}</legend>
      <Hint desk={desk} node={node} id={id} />
      <div class="tick-row">
        {choices.map(([value, label]) => (
          <label class="tick">
            <input type="checkbox" checked={ticked.includes(value)} onChange={(event) => tick(value, event.currentTarget.checked)} />
            <span>{label}</span>
          </label>
        ))}
      </div>
      <AdviceList desk={desk} advice={advice} id={id} />
    </fieldset>
  );
}

/** A list of short texts: a line for each, and one more to write on. */
export function TextList({ desk, node, steps, everything }: FieldProps): JSX.Element | null {
  const { item } = node;
  if (!item) return null;
  const list = listAt(desk.fields?.raw, steps);
  // The next line is there as soon as somebody writes on the last one, so that nothing moves when they go on.
  const [begun, setBegun] = useState(0);
  const lines = Math.max(list.length, begun) + 1;
  const id = idOf(steps);
  const { say } = desk.data;
  const label = (index: number): string => (index === lines - 1 && index > 0 ? fill(say.oneMore, { label: node.label }) : fill(say.numbered, { label: node.label, n: index + 1 }));
  return (
    <fieldset class="slot text-list" id={id} tabIndex={-1} aria-describedby={`${id}-hint`}>
      <legend>{node.label}</legend>
      <Hint desk={desk} node={node} id={id} />
      <AdviceList desk={desk} advice={adviceFor(desk.look, pathOf(steps), everything)} id={id} />
      {Array.from({ length: lines }, (_, index) => (
        <Field key={index} desk={desk} node={item} steps={[...steps, index]} everything={everything} label={label(index)} bare begun={() => setBegun((before) => Math.max(before, index + 1))} />
      ))}
    </fieldset>
  );
}

/** A group whose names are languages: a line for each, and one more with its language to choose. */
export function ByLanguage({ desk, node, steps, everything }: FieldProps): JSX.Element | null {
  const [tag, setTag] = useState('');
  const { item } = node;
  if (!item) return null;
  const { say } = desk.data;
  const id = idOf(steps);
  const there = valueAt(desk.fields?.raw, steps);
  const tags = typeof there === 'object' && !Array.isArray(there) ? Object.keys(there) : [];
  const names = new Intl.DisplayNames([desk.data.language], { type: 'language' });
  const nameOf = (each: string): string => {
    try {
      return names.of(each) ?? each;
    } catch {
      return each;
    }
  };
  const good = /^[a-z]{2,3}(?:-[A-Z]{2})?$/.test(tag) && !tags.includes(tag);
  return (
    <fieldset class="slot text-list" id={id} tabIndex={-1} aria-describedby={`${id}-hint`}>
      <legend>{node.label}</legend>
      <Hint desk={desk} node={node} id={id} />
      {tags.map((each) => (
        <Field key={each} desk={desk} node={item} steps={[...steps, each]} everything={everything} label={nameOf(each)} bare />
      ))}
      <div class="by-language">
        <div class="slot">
          <label for={`${id}-tag`}>{say.languageTag}</label>
          <input id={`${id}-tag`} type="text" class="number" list="language-tags" autocomplete="off" value={tag} onInput={(event) => setTag(event.currentTarget.value.trim())} />
        </div>
        {good && (
          <Field
            key={`new-${tag}`}
            desk={desk}
            node={item}
            steps={[...steps, tag]}
            everything={everything}
            label={fill('{word} ({language})', { word: say.languageWord, language: nameOf(tag) })}
            bare
          />
        )}
      </div>
    </fieldset>
  );
}
