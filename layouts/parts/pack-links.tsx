import type { JSX } from 'preact';
import { Contact } from './contact.tsx';
import { localeOf } from './language-name.ts';
import { phrasesFor } from '../../src/core/languages/pick-language.ts';
import type { Pack } from '../../src/core/pack/pack.ts';
import type { Owner } from '../../src/core/pack/library-sources.ts';
import { linkFrom } from '../../src/outputs/addresses.ts';
import type { PageOf, PackView, ShownPack } from '../../src/outputs/views.ts';

/** The same page of this book in its other languages, each named in its own. */
export function Versions({ page }: { readonly page: PageOf<PackView> }): JSX.Element | null {
  const { shown, kind } = page.view;
  const others = shown.versions.filter((each) => each.language !== shown.pack.language);
  if (others.length === 0) return null;
  return (
    <ul class="versions">
      {others.map((each) => (
        <li>
          <a href={linkFrom(page.url, each.urls[kind])} lang={each.language} hreflang={each.language}>
            {phrasesFor(each.language).family.readIn}
          </a>
        </li>
      ))}
    </ul>
  );
}

/** Who made the companion, under which licence, from what, and when it was last looked over. */
export function Maker({ pack, language }: { readonly pack: Pack; readonly language: string }): JSX.Element {
  const say = phrasesFor(language).book;
  const { by, translation } = pack;
  const lines = [say.companionBy(by.name, by.school), say.licence(by.licence)];
  if (translation) lines.push([say.translated(translation.by), ...(translation.checkedBy === undefined ? [] : [say.checked(translation.checkedBy)])].join(phrasesFor(language).comma));
  if (by.basedOn !== undefined) lines.push(say.basedOn(by.basedOn));
  if (by.reviewed !== undefined) lines.push(say.reviewed(dateIn(by.reviewed, language)));
  return (
    <p class="maker">
      {lines.map((line) => `${line}.`).join(' ')}
      {pack.owner && <From owner={pack.owner} language={language} />}
    </p>
  );
}

/** Whose folder of the library a companion came from, and how to reach them. */
function From({ owner, language }: { readonly owner: Owner; readonly language: string }): JSX.Element {
  const say = phrasesFor(language).book;
  return (
    <>
      {' '}
      {say.from(owner.name)}
      {owner.contact !== undefined && (
        <>
          {' ('}
          <Contact text={owner.contact} />)
        </>
      )}
      .
    </>
  );
}

/** A day as people write it in a language. */
function dateIn(day: string, language: string): string {
  return new Intl.DateTimeFormat(localeOf(language), { dateStyle: 'long', timeZone: 'UTC' }).format(new Date(`${day}T00:00:00Z`));
}

/** The picture that stands for a pack: its first that is no decoration. */
export function faceOf(shown: ShownPack): ShownPack['pictures'][number] | undefined {
  return shown.pictures.find((picture) => !picture.decorative) ?? shown.pictures[0];
}

/** `lang` for text of a pack that stands on a page of another language. */
export function langIfOther(language: string, pageLanguage: string): string | undefined {
  return language === pageLanguage ? undefined : language;
}
