import type { JSX } from 'preact';
import type { Phrases } from '../../src/core/languages/en.ts';
import { letterTo, mailTo } from '../../src/outputs/letter-to-owner.ts';
import type { OwnerRow, Page } from '../../src/outputs/views.ts';
import { nameOf } from './library-name.ts';

interface Props {
  readonly page: Page;
  readonly row: OwnerRow;
  readonly id: string;
  /** The language of the letter. */
  readonly wording: string;
  readonly say: Phrases;
}

/** What there is to tell one owner, and the text to send. */
export function OwnerLetter({ page, row, id, wording, say }: Props): JSX.Element {
  const { librarian } = say;
  const { owner, packs, keptOff, byLevel } = row;
  const facts = [
    librarian.ownerPacks(packs),
    ...(keptOff > 0 ? [librarian.ownerOff(keptOff)] : []),
    ...(byLevel.warn > 0 ? [librarian.ownerLook(byLevel.warn)] : []),
    ...(byLevel.note > 0 ? [librarian.ownerNotes(byLevel.note)] : []),
  ];
  const text = letterTo(row, nameOf(page), page.library, say, wording);
  const mail = mailTo(row.contact, librarian.subject(nameOf(page)), text);
  return (
    <article class="owner" aria-labelledby={id}>
      <h3 id={id}>{owner === '' ? librarian.own : owner}</h3>
      <p class="in-short">{facts.join(say.semicolon)}</p>
      <details>
        <summary>{librarian.text}</summary>
        <pre class="letter" id={`${id}-text`} dir="auto">
          {text}
        </pre>
      </details>
      <p class="ways">
        <button type="button" hidden data-copy={`${id}-text`} data-copied={librarian.copied} data-failed={librarian.notCopied}>
          {librarian.copy}
        </button>
        {mail !== undefined && <a href={mail}>{librarian.mail}</a>}
        <span role="status" />
      </p>
    </article>
  );
}
