import type { ComponentChildren, JSX } from 'preact';

export interface Choice<T extends string> {
  readonly value: T;
  readonly name: ComponentChildren;
}

interface Props<T extends string> {
  readonly legend: string;
  /** Name of the group of radio buttons; one of its own on the page. */
  readonly group: string;
  readonly chosen: T | undefined;
  readonly choices: readonly Choice<T>[];
  readonly onChoose: (value: T) => void;
  readonly kind?: string;
}

/** One of several, as real radio buttons with words, each as large as a finger. */
export function Choices<T extends string>({ legend, group, chosen, choices, onChoose, kind = '' }: Props<T>): JSX.Element {
  return (
    <fieldset class={`choices ${kind}`}>
      <legend>{legend}</legend>
      <div class="choice-list">
        {choices.map(({ value, name }) => (
          <label class="choice">
            <input type="radio" name={group} value={value} checked={value === chosen} onChange={() => onChoose(value)} />
            <span class="choice-name">{name}</span>
          </label>
        ))}
      </div>
    </fieldset>
  );
}
