import type { JSX } from 'preact';
import { linkFrom } from '../../src/outputs/addresses.ts';
import type { Page } from '../../src/outputs/views.ts';

interface Props {
  readonly page: Page;
  readonly numbered: readonly string[];
  readonly name: string;
  /** "Page", said before each number to those who listen. */
  readonly each: string;
}

/** The pages of a list that is too long for one. */
export function Numbered({ page, numbered, name, each }: Props): JSX.Element {
  return (
    <nav class="numbered-pages" aria-label={name}>
      <ol>
        {numbered.map((url, index) => (
          <li>
            <a href={linkFrom(page.url, url)} aria-current={url === page.url ? 'page' : undefined}>
              <span class="unseen">{each} </span>
              {index + 1}
            </a>
          </li>
        ))}
      </ol>
    </nav>
  );
}
