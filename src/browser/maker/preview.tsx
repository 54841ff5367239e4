import type { JSX } from 'preact';
import { useEffect, useRef, useState } from 'preact/hooks';
import type { Desk } from './desk.ts';
import { usePictureUrls } from './picture-urls.ts';
import type { PreviewKind, ShownPage } from './show-page.ts';
import { today } from './words.ts';

/** Milliseconds of quiet before the page is made anew. */
const quiet = 500;
const kinds = ['family', 'booklet', 'lesson'] as const;

/**
 * The page as the library would publish it, made by the library's own layouts from the text as it is now. It stands in a
 * frame in which no script runs; what is printed is that page and nothing around it.
 */
export function Preview({ desk, close }: { readonly desk: Desk; readonly close: () => void }): JSX.Element {
  const [kind, setKind] = useState<PreviewKind>('family');
  const [shown, setShown] = useState<ShownPage | 'none'>();
  const frame = useRef<HTMLIFrameElement>(null);
  const scrolled = useRef(0);
  const urls = usePictureUrls(desk);
  const { data } = desk;
  const { say } = data;

  useEffect(() => {
    let gone = false;
    const make = setTimeout(
      () => {
        const { library, language, url, assets } = data;
        desk.page({ to: desk.toLook(), kind, library, language, today: today(), url, assets, pictures: urls }).then(
          (page) => {
            if (gone) return;
            scrolled.current = frame.current?.contentWindow?.scrollY ?? 0;
            setShown(page ?? 'none');
          },
          () => !gone && setShown('none'),
        );
      },
      shown === undefined ? 0 : quiet,
    );
    return () => {
      gone = true;
      clearTimeout(make);
    };
  }, [desk.text, kind, urls]);

  const loaded = (): void => {
    const page = frame.current?.contentDocument;
    if (!page) return;
    frame.current?.contentWindow?.scrollTo(0, scrolled.current);
    // A link of the page leads to another of its pages here, or nowhere: this is no place to browse.
    page.addEventListener('click', (event) => {
      const link = event.target instanceof Node ? (event.target.parentElement ?? undefined)?.closest('a') : undefined;
      const href = link?.getAttribute('href') ?? '';
      if (!link || href.startsWith('#')) return;
      event.preventDefault();
      const next = kinds.find((each) => (each === 'family' ? href.endsWith(`packs/${desk.slug}/`) : href.includes(`/${each}/`)));
      if (next) {
        scrolled.current = 0;
        setKind(next);
      }
    });
  };
  return (
    <section class="preview" aria-labelledby="preview">
      <h2 id="preview" tabIndex={-1}>
        {say.preview.heading}
      </h2>
      <div class="preview-line">
        <div class="slot">
          <label for="preview-which">{say.preview.which}</label>
          <select
            id="preview-which"
            value={kind}
            onChange={(event) => {
              scrolled.current = 0;
              setKind(event.currentTarget.value as PreviewKind);
            }}
          >
            {kinds.map((each) => (
              <option value={each}>{say.preview.pages[each]}</option>
            ))}
          </select>
        </div>
        <button type="button" class="word-button" onClick={() => frame.current?.contentWindow?.print()}>
          {say.preview.print}
        </button>
        <button type="button" class="word-button" onClick={close}>
          {say.preview.close}
        </button>
      </div>
      <p class="note" role="status">
        {shown === undefined ? say.preview.waiting : shown === 'none' ? say.preview.notYet : shown.whole ? '' : say.preview.blanks}
      </p>
      {shown !== undefined && shown !== 'none' && <iframe ref={frame} class="preview-page" title={say.preview.frame} sandbox="allow-same-origin allow-modals" srcdoc={shown.html} onLoad={loaded} />}
    </section>
  );
}
