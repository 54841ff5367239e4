import type { JSX } from 'preact';
import { useEffect, useLayoutEffect, useReducer, useRef } from 'preact/hooks';
import type { FormNode } from '../../outputs/maker-form.ts';
import type { Desk } from './desk.ts';
import { textAt } from './words.ts';

interface Props {
  readonly desk: Desk;
  readonly node: FormNode;
  readonly common: { readonly id: string; readonly 'aria-describedby': string | undefined; readonly 'aria-invalid': boolean };
  /** Told when somebody begins to type, and when they have stopped for a while. */
  readonly typing: (on: boolean) => void;
  readonly begun?: (() => void) | undefined;
  /** What the file has. */
  readonly value: string;
  readonly rows: number;
  /** True where an end of a line means something. */
  readonly lines?: boolean;
  readonly write: (text: string) => Promise<void>;
}

/**
 * Milliseconds without a key before what was typed goes into the file, and before advice comes; who types on and on is not
 * waited for longer than `most`, so that a browser that dies takes no more than that with it.
 */
const pause = { write: 600, most: 2000, advise: 1500 } as const;

/** Fields that hold a name of a file, an address or a code and no sentence. They run from left to right in every language, and so do numbers. */
const fromLeft: ReadonlySet<string> = new Set([
  ...['book.isbn', 'by.version', 'retired.instead', 'aims.*.standard.code', 'aims.*.standard.uri', 'aims.*.standard.uuid'],
  ...['stops.*.id', 'stops.*.at.recording', 'pictures.*.file', 'recording.file', 'recording.captions', 'recording.link'],
]);

interface State {
  /** What was typed and is the field's own until it is left. */
  draft?: string | undefined;
  since?: number | undefined;
  writing?: ReturnType<typeof setTimeout>;
  advising?: ReturnType<typeof setTimeout>;
}

/** A place to type. A key changes nothing but the browser's own field: nothing is drawn anew for it, so it costs what a bare field costs. */
export function Typed({ desk, node, common, typing, begun, value, rows, lines = false, write }: Props): JSX.Element {
  const element = useRef<HTMLInputElement & HTMLTextAreaElement>(null);
  const [, again] = useReducer<number, undefined>((count) => count + 1, 0);
  const state = useRef<State>({});
  const latest = useRef({ value, write });
  latest.current = { value, write };
  useLayoutEffect(() => {
    const field = element.current;
    if (field && state.current.draft === undefined && field.value !== value) field.value = value;
  });
  const commit = async (): Promise<void> => {
    clearTimeout(state.current.writing);
    state.current.since = undefined;
    desk.drafts.delete(commitOf.current);
    const { draft: typed } = state.current;
    if (typed === undefined || typed === latest.current.value) return;
    await latest.current.write(lines ? typed : typed.trim());
  };
  // The same function every time, so that the desk can be told of it once.
  const commitOf = useRef(commit);
  const input = (text: string): void => {
    const { current } = state;
    const now = performance.now();
    current.draft = lines ? text : text.replace(/\s*\n\s*/g, ' ');
    current.since ??= now;
    desk.drafts.add(commitOf.current);
    typing(true);
    begun?.();
    clearTimeout(current.writing);
    clearTimeout(current.advising);
    current.writing = setTimeout(() => void commitOf.current(), Math.min(pause.write, Math.max(0, current.since + pause.most - now)));
    current.advising = setTimeout(() => typing(false), pause.advise);
  };
  const leave = (): void => {
    clearTimeout(state.current.advising);
    void commitOf.current().then(() => {
      state.current.draft = undefined;
      again(undefined);
      typing(false);
    });
  };
  useEffect(
    () => () => {
      clearTimeout(state.current.advising);
      void commitOf.current();
    },
    [],
  );
  const isNumber = node.kind === 'whole number' || node.kind === 'number';
  const shared = {
    ...common,
    ref: element,
    // What is written is in the pack's language, whatever the page's is: a reader's voice and the spelling go by it.
    lang: textAt(desk.fields?.raw, ['language']) || undefined,
    dir: isNumber || fromLeft.has(node.path) ? ('ltr' as const) : undefined,
    autocomplete: 'off' as const,
    onInput: (event: { readonly currentTarget: { readonly value: string } }) => input(event.currentTarget.value),
    onBlur: leave,
  };
  if (rows > 1) return <textarea {...shared} rows={rows} />;
  if (node.kind === 'date') return <input {...shared} type="date" />;
  return <input {...shared} type="text" inputMode={isNumber ? 'numeric' : undefined} class={isNumber ? 'number' : undefined} />;
}
