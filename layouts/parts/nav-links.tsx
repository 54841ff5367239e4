import type { JSX } from 'preact';
import { linkFrom } from '../../src/outputs/addresses.ts';

interface Props {
  /** Address of the page that the links stand on. */
  readonly from: string;
  readonly name: string;
  readonly links: readonly { readonly name: string; readonly url: string; /** Where the name is not in the page's language. */ readonly lang?: string | undefined }[];
}

/** A named list of links to other pages; the one to the page itself says so. */
export function NavLinks({ from, name, links }: Props): JSX.Element {
  return (
    <nav aria-label={name}>
      <ul>
        {links.map((link) => (
          <li>
            <a href={linkFrom(from, link.url)} lang={link.lang} hreflang={link.lang} aria-current={link.url === from ? 'page' : undefined}>
              {link.name}
            </a>
          </li>
        ))}
      </ul>
    </nav>
  );
}
