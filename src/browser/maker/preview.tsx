import type { JSX } from 'preact';
import { useEffect, useMemo, useRef, useState } from 'preact/hooks';
import { ownMarkup } from '../trusted.ts';
import type { Desk } from './desk.ts';
import { usePictureUrls } from './picture-urls.ts';
import type { PreviewKind, ShownPage } from './show-page.ts';
import { today } from './words.ts';

/** Milliseconds of quiet before the page is made anew. */
const quiet = 500;
const kinds = ['family', 'booklet', 'lesson'] as const;

/** Width of a sheet of A4 in CSS pixels, and of the edge that a printer leaves. Source: ISO 216; CSS Values 4, an inch is 96 pixels. */
const paperWidth = 794;
const paperEdge = '12mm';

/** Lays a page out as wide as a sheet, and makes it smaller where there is less room. */
function asWideAsPaper(page: Document, room: number): void {
  page.body.style.padding = paperEdge;
  page.documentElement.style.zoom = String(Math.min(1, room / paperWidth));
}

/**
 * The page as the library would publish it, made by the library's own layouts from the text as it is now. It stands in a
 * frame in which no script runs; what is printed is that page and nothing around it.
 */
export function Preview({ desk, close }: { readonly desk: Desk; readonly close: () => void }): JSX.Element {
  const [kind, setKind] = useState<PreviewKind>('family');
  const [onPaper, setOnPaper] = useState(false);
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
        desk.page({ to: desk.toLook(), kind, onPaper, library, language, today: today(), url, assets, pictures: urls }).then(
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
  }, [desk.text, kind, onPaper, urls]);

  const loaded = (): void => {
    const page = frame.current?.contentDocument;
    if (!page) return;
    if (onPaper) asWideAsPaper(page, frame.current?.clientWidth ?? paperWidth);
    frame.current?.contentWindow?.scrollTo(0, scrolled.current);
  };
  // A new object would make the frame load again.
  const html = typeof shown === 'object' ? shown.html : '';
  const markup = useMemo(() => ownMarkup(html), [html]);
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
        <label class="tick">
          <input type="checkbox" checked={onPaper} onChange={(event) => setOnPaper(event.currentTarget.checked)} />
          <span>{say.preview.onPaper}</span>
        </label>
        <button type="button" class="word-button" onClick={() => frame.current?.contentWindow?.print()}>
          {say.preview.print}
        </button>
        <button type="button" class="word-button" onClick={close}>
          {say.preview.close}
        </button>
      </div>
      <p class="note" role="status">
        {shown === undefined ? say.preview.waiting : shown === 'none' ? say.preview.notYet : shown.whole ? '' : say.preview.blanks} {onPaper && kind !== 'family' && say.preview.sheets}
      </p>
      {shown !== undefined && shown !== 'none' && (
        <iframe ref={frame} class={onPaper ? 'preview-page on-paper' : 'preview-page'} title={say.preview.frame} sandbox="allow-same-origin allow-modals" srcdoc={markup} onLoad={loaded} />
      )}
    </section>
  );
}
