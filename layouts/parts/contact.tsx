import type { JSX } from 'preact';

/** Whom to ask; a mail or web address becomes a link. */
export function Contact({ text }: { readonly text: string }): JSX.Element {
  if (/^[^\s@<>"]+@[^\s@<>"]+$/.test(text)) return <a href={`mailto:${text}`}>{text}</a>;
  if (/^https?:\/\/[^\s<>"]+$/.test(text))
    return (
      <a href={text} rel="noreferrer">
        {text}
      </a>
    );
  return <>{text}</>;
}
