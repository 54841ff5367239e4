import type { JSX } from 'preact';
import { Contact } from './contact.tsx';
import { localeOf } from './language-name.ts';
import { phrasesFor } from '../../src/core/languages/pick-language.ts';
import type { Owner } from '../../src/core/pack/library-sources.ts';
import { linkFrom } from '../../src/outputs/addresses.ts';
import type { Page, PageOf, PackView, Related, ShownPack } from '../../src/outputs/views.ts';
import { daysIn } from '../../src/core/languages/formats.ts';

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
export function Maker({ page }: { readonly page: PageOf<PackView> }): JSX.Element {
  const { language } = page;
  const { pack, lineage } = page.view.shown;
  const say = phrasesFor(language).book;
  const { by, translation } = pack;
  const lines = [say.companionBy(by.name, by.school), say.licence(by.licence)];
  if (translation) lines.push([say.translated(translation.by), ...(translation.checkedBy === undefined ? [] : [say.checked(translation.checkedBy)])].join(phrasesFor(language).comma));
  if (by.basedOn !== undefined && !lineage?.parent) lines.push(say.basedOn(by.basedOn));
  if (by.reviewed !== undefined) lines.push(say.reviewed(dateIn(by.reviewed, language)));
  return (
    <div class="maker">
      <p>
        {lines.map((line) => `${line}.`).join(' ')}
        {lineage?.parent && <Parent page={page} parent={lineage.parent} />}
        {pack.owner && <From owner={pack.owner} language={language} />}
      </p>
      {lineage && <Forks page={page} forks={lineage.forks} />}
    </div>
  );
}

/** The companion that this one was made from, where it is in this library. */
function Parent({ page, parent }: { readonly page: PageOf<PackView>; readonly parent: Related }): JSX.Element {
  const [before = '', after = ''] = phrasesFor(page.language).book.basedOn('\u0000').split('\u0000');
  return (
    <>
      {' '}
      {before}
      <RelatedLink page={page} to={parent} />
      {after}.
    </>
  );
}

/** So many companions made from one are named; the rest are counted. */
const mostForks = 12;

/** What others made of this companion. */
function Forks({ page, forks }: { readonly page: PageOf<PackView>; readonly forks: readonly Related[] }): JSX.Element | null {
  if (forks.length === 0) return null;
  const say = phrasesFor(page.language);
  return (
    <>
      <p id="forks">{say.book.forks}</p>
      <ul class="forks" aria-labelledby="forks">
        {forks.slice(0, mostForks).map((fork) => (
          <li>
            <RelatedLink page={page} to={fork} />
            {fork.from !== undefined && (
              <>
                {say.comma}
                <bdi>{fork.from}</bdi>
              </>
            )}
          </li>
        ))}
        {forks.length > mostForks && <li>{say.book.moreForks(forks.length - mostForks)}</li>}
      </ul>
    </>
  );
}

function RelatedLink({ page, to }: { readonly page: Page; readonly to: Related }): JSX.Element {
  return (
    <a href={linkFrom(page.url, to.url)} lang={langIfOther(to.language, page.language)} hreflang={to.language}>
      {to.title}
    </a>
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
export function dateIn(day: string, language: string): string {
  return daysIn(localeOf(language), { dateStyle: 'long', timeZone: 'UTC' }).format(new Date(`${day}T00:00:00Z`));
}

/** The picture that stands for a pack: its first that is no decoration. */
export function faceOf(shown: ShownPack): ShownPack['pictures'][number] | undefined {
  return shown.pictures.find((picture) => !picture.decorative) ?? shown.pictures[0];
}

/** `lang` for text of a pack that stands on a page of another language. */
export function langIfOther(language: string, pageLanguage: string): string | undefined {
  return language === pageLanguage ? undefined : language;
}
