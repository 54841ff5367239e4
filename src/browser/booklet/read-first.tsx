import type { JSX } from 'preact';
import type { Desk } from './desk.ts';

/** The page before the questions, for those who first read or watch to the end. */
export function ReadFirst({ desk }: { readonly desk: Desk }): JSX.Element {
  const say = desk.words.screen;
  return (
    <>
      <h2 id="read-first-title" tabIndex={-1}>
        {say.readFirst}
      </h2>
      <p>{say.readFirstNote}</p>
    </>
  );
}
