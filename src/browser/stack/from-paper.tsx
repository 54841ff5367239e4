import type { JSX } from 'preact';
import { useEffect, useRef, useState } from 'preact/hooks';
import { bestOf, bookmarkColours, bookmarkPatterns, newBooklet, put, wholeBook, type Value } from '../../core/booklet/booklet.ts';
import { chosenOf } from '../../core/booklet/chosen.ts';
import { packOf, packsAnswered, putBooklet } from '../../classroom/stack.ts';
import type { StackPack } from '../../core/pack/stack-pack.ts';
import { useOwnId } from '../booklet/own-id.ts';
import { randomId, type Desk } from './desk.ts';

/** Answers that came back on paper, typed in by hand: they become a booklet like any other. */
export function FromPaper({ desk, onDone }: { readonly desk: Desk; readonly onDone: () => void }): JSX.Element {
  const { stack } = desk.state;
  const say = desk.words.stack.paper;
  const { screen, bookmarks } = desk.words.booklet;
  const answered = packsAnswered(stack).flatMap((name) => packOf(stack, name) ?? []);
  const packs = [...answered, ...stack.packs.filter((each) => !answered.includes(each))];
  const [place, setPlace] = useState(0);
  const [told, setTold] = useState('');
  const form = useRef<HTMLFormElement>(null);
  const heading = useRef<HTMLHeadingElement>(null);
  useEffect(() => heading.current?.focus(), []);
  const pack = packs[place];
  if (!pack) return <p class="note">{desk.words.stack.unknownPack}</p>;
  const add = () => {
    const values = new FormData(form.current ?? undefined);
    const read = (name: string) => {
      const value = values.get(name);
      return typeof value === 'string' ? value.trim() : '';
    };
    const bookmark = { pattern: read('pattern'), colour: read('colour') };
    const writer = randomId();
    const prompts = pack.stops.map(({ id, at, ask, about }, index) => ({ of: id, number: index + 1, opening: at.opening, ask, ...(about === undefined ? {} : { about }) }));
    const empty = newBooklet(randomId(), { slug: pack.slug, language: pack.language, title: pack.title }, bookmark, prompts);
    const booklet = valuesTyped(pack, read, desk).reduce((sofar, [to, value]) => put(sofar, writer, to, value), empty);
    if (booklet.entries.length === 0) {
      setTold(say.nothing);
      return;
    }
    desk.set({ stack: putBooklet(stack, booklet, undefined).stack });
    desk.announce(say.added);
    onDone();
  };
  return (
    <form
      ref={form}
      class="from-paper"
      aria-labelledby="from-paper"
      onSubmit={(event) => {
        event.preventDefault();
        add();
      }}
    >
      <h3 id="from-paper" ref={heading} tabIndex={-1}>
        {say.heading}
      </h3>
      <p class="note">{say.note}</p>
      <div class="line-of-fields">
        <Select label={say.book} name="book" choices={packs.map((each, index) => [String(index), each.title])} onChoose={(chosen) => setPlace(Number(chosen))} />
        <Select label={say.pattern} name="pattern" choices={bookmarkPatterns.map((each) => [each, bookmarks[each]])} />
        <Select label={say.colour} name="colour" choices={bookmarkColours.map((each) => [each, screen.colours[each]])} />
      </div>
      <ol class="paper-stops" lang={desk.langOf(pack)} key={`${pack.slug} ${pack.language}`}>
        {pack.stops.map((stop, index) => (
          <li>
            <h4>{desk.words.stack.look.stopOf(index + 1, stop.ask)}</h4>
            <Field label={say.written} name={`written ${stop.id}`} language={desk.language} />
            <Field label={say.said} name={`said ${stop.id}`} language={desk.language} />
            {(stop.answer === 'draw' || stop.or === 'draw') && <Field label={say.drawn} name={`drawn ${stop.id}`} language={desk.language} />}
            {stop.kind === 'feeling' && (
              <Select label={say.feeling} name={`feeling ${stop.id}`} choices={[['', say.none], ...feelingWords(pack, stop.words ?? []).map((word) => [word, word] as const)]} />
            )}
          </li>
        ))}
        {pack.rating && (
          <li>
            <h4>{pack.rating.ask}</h4>
            <Select
              label={say.stars}
              name="stars"
              choices={[['', say.noStars], ...Array.from({ length: pack.rating.outOf }, (_, index) => [String(index + 1), desk.words.booklet.stars(index + 1)] as const)]}
            />
            <Field label={say.because} name="because" language={desk.language} />
          </li>
        )}
        {pack.bestOf && (
          <li>
            <h4>{pack.bestOf.ask}</h4>
            {(pack.bestOf.last === undefined ? (['best'] as const) : (['best', 'last'] as const)).map((end) => (
              <Select label={say[end]} name={end} choices={[['', say.none], ...(pack.bestOf?.books ?? []).map((book) => [book, book] as const)]} />
            ))}
          </li>
        )}
      </ol>
      <p role="status">{told}</p>
      <p class="button-row">
        <button type="submit" class="page-button main-button">
          {say.add}
        </button>
        <button type="button" class="page-button" onClick={onDone}>
          {say.cancel}
        </button>
      </p>
    </form>
  );
}

/** What was typed, as the booklet would have kept it. A drawing that stays on paper is told in words. */
function valuesTyped(pack: StackPack, read: (name: string) => string, desk: Desk): readonly (readonly [to: string, value: Value])[] {
  type Typed = readonly [to: string, value: Value];
  const stops = pack.stops.flatMap(({ id }): readonly Typed[] => {
    const [written, said, drawn, word] = [read(`written ${id}`), read(`said ${id}`), read(`drawn ${id}`), read(`feeling ${id}`)];
    const known = pack.feelings?.find((each) => each.word === word);
    const typed: Typed[] = [];
    if (written !== '') typed.push([id, { kind: 'written', text: written, frames: [] }]);
    if (said !== '') typed.push([id, { kind: 'said', text: said }]);
    if (drawn !== '') typed.push([id, { kind: 'drawing', about: drawn, marks: [] }]);
    if (word !== '') typed.push([id, { kind: 'feeling', word, ...(known ? { family: known.family, strength: known.strength } : {}) }]);
    return typed;
  });
  const [stars, because] = [Number(read('stars')), read('because')];
  const of = pack.rating?.outOf ?? 5;
  const words = desk.words.booklet.starWords;
  const chosen = chosenOf(pack.bestOf?.books ?? [], read('best') || undefined, read('last') || undefined);
  return [
    ...stops,
    ...(stars > 0 ? [[wholeBook, { kind: 'stars', stars, of, words: words[Math.round(((stars - 1) * (words.length - 1)) / (of - 1))] ?? '' }] as const] : []),
    ...(because === '' ? [] : [[wholeBook, { kind: 'because', text: because }] as const]),
    ...(chosen ? [[bestOf, chosen] as const] : []),
  ];
}

function feelingWords(pack: StackPack, bank: readonly string[]): readonly string[] {
  return [...new Set([...bank, ...(pack.feelings ?? []).map(({ word }) => word)])];
}

function Field({ label, name, language }: { readonly label: string; readonly name: string; readonly language: string }): JSX.Element {
  const id = useOwnId();
  return (
    <p class="typed-field">
      <label for={id} lang={language}>
        {label}
      </label>
      <textarea id={id} name={name} rows={1} autocomplete="off" spellcheck={false} dir="auto" />
    </p>
  );
}

interface SelectProps {
  readonly label: string;
  readonly name: string;
  readonly choices: readonly (readonly [value: string, name: string])[];
  readonly chosen?: string;
  readonly onChoose?: (value: string) => void;
}

export function Select({ label, name, choices, chosen, onChoose }: SelectProps): JSX.Element {
  const id = useOwnId();
  return (
    <p class="select-field">
      <label for={id}>{label}</label>
      <select id={id} name={name} value={chosen} onChange={(event) => onChoose?.(event.currentTarget.value)}>
        {choices.map(([value, words]) => (
          <option value={value}>{words}</option>
        ))}
      </select>
    </p>
  );
}
