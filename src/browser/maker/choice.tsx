import type { JSX } from 'preact';
import { useRef, useState } from 'preact/hooks';
import type { FormNode } from '../../outputs/maker-form.ts';
import type { Desk } from './desk.ts';
import { fill, listAt, textAt } from './words.ts';

interface ChoiceProps {
  readonly id: string;
  readonly 'aria-describedby': string | undefined;
  readonly 'aria-invalid': boolean;
  readonly value: string;
  readonly choices: readonly (readonly [value: string, label: string])[];
  readonly none: string;
  readonly changed: (value: string) => Promise<void>;
}

/** One of several. What the file has and nobody knows is offered as it is, so that it is not lost. */
export function Choice({ value: written, choices, none, changed, ...common }: ChoiceProps): JSX.Element {
  // Somebody who goes through the choices with a key is faster than the file.
  const [chosen, setChosen] = useState<string>();
  const latest = useRef<string>(undefined);
  const value = chosen ?? written;
  const known = choices.some(([each]) => each === value);
  const choose = (next: string): void => {
    latest.current = next;
    setChosen(next);
    void changed(next).then(() => latest.current === next && setChosen(undefined));
  };
  return (
    <select {...common} value={value} onChange={(event) => choose(event.currentTarget.value)}>
      <option value="">{none}</option>
      {!known && value !== '' && <option value={value}>{value}</option>}
      {choices.map(([each, label]) => (
        <option value={each} selected={each === value}>
          {label}
        </option>
      ))}
    </select>
  );
}

/** Stops or pictures of this pack, by name. */
export function namesFor(desk: Desk, node: FormNode): readonly (readonly [string, string])[] {
  const raw = desk.fields?.raw;
  if (node.refersTo === 'picture')
    return listAt(raw, ['pictures'])
      .flatMap((_, index) => textAt(raw, ['pictures', index, 'file']) || [])
      .map((file) => [file, file]);
  return listAt(raw, ['stops']).map((_, index) => [
    textAt(raw, ['stops', index, 'id']),
    fill(desk.data.say.stopName, { n: index + 1, opening: textAt(raw, ['stops', index, 'at', 'opening']) || '?' }),
  ]);
}
