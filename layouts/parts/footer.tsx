import type { JSX } from 'preact';
import { isInEnglish, isPartlyEnglish, phrasesFor } from '../../src/core/languages/pick-language.ts';
import { rootOf } from '../../src/outputs/addresses.ts';
import type { Page } from '../../src/outputs/views.ts';
import { toHtml } from '../to-html.ts';
import { Contact } from './contact.tsx';
import { NavLinks } from './nav-links.tsx';
import { Sprig } from './ornaments.tsx';
import { isOfABook, sharedByBooks } from './shared-by-books.ts';

/** The foot of every page. */
export function Footer({ page }: { readonly page: Page }): JSX.Element {
  return <footer class="foot" dangerouslySetInnerHTML={{ __html: (page.own?.footer ?? usual)(page) }} />;
}

const usual = sharedByBooks((page) => toHtml(<FooterInside page={page} />));

/** In the same order everywhere: more pages, whom to ask, rights, and who decides. */
export function FooterInside({ page }: { readonly page: Page }): JSX.Element {
  const { library, language, url } = page;
  const say = phrasesFor(language).site;
  const root = rootOf(language, library.language);
  const links = [
    { name: say.about, url: `${root}about/` },
    { name: say.privacy, url: `${root}privacy/` },
    { name: say.accessibility, url: `${root}accessibility/` },
    { name: say.quality, url: `${root}quality/` },
    { name: phrasesFor(language).stack.footer, url: `${root}stack/` },
    { name: phrasesFor(language).maker.title, url: `${root}make/`, lang: isInEnglish(language, 'maker') ? 'en' : undefined },
    // Nothing for a family, a child or a lesson: the pages of a book are spared the link.
    ...(isOfABook(page) ? [] : [{ name: phrasesFor(language).programs.title, url: `${root}programs/`, lang: isInEnglish(language, 'programs') ? 'en' : undefined }]),
  ];
  return (
    <>
      <Sprig />
      <NavLinks from={url} name={say.footerNav} links={links} />
      <dl class="colophon">
        <div>
          <dt>{say.contact}</dt>
          <dd>
            <Contact text={library.contact} />
          </dd>
        </div>
        <div>
          <dt>{say.rights}</dt>
          <dd>{library.rights}</dd>
        </div>
      </dl>
      {library.footNote?.[language] !== undefined && <p class="foot-note">{library.footNote[language]}</p>}
      {say.awaiting !== '' && <p class="awaiting">{isPartlyEnglish(language) ? `${say.awaiting} ${say.partlyEnglish}` : say.awaiting}</p>}
      <p class="rules">{say.rules}</p>
    </>
  );
}
