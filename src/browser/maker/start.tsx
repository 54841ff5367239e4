import type { JSX } from 'preact';
import { useEffect, useState } from 'preact/hooks';
import { localeOf } from '../../core/languages/about-language.ts';
import type { Copy, MakerData } from '../../outputs/maker-data.ts';
import type { Opening } from './opening.ts';
import { creditedCopy } from './copy.ts';
import { newId } from './keeper.ts';
import { openFile, type OpenedFile } from './open-file.ts';
import { erasePack, keptPacks, keptPictures, type KeptPack } from './storage.ts';
import { fill, languageName } from './words.ts';

interface Props {
  readonly data: MakerData;
  readonly open: (opening: Opening) => void;
}

/** A pack's text with nothing in it but its language. */
export function emptyPack(language: string): string {
  return `---\nlanguage: ${language}\n---\n`;
}

/** Where a pack begins: with empty pages, with a copy, with a file, or with what was kept here. */
export function Start({ data, open }: Props): JSX.Element {
  const { say } = data;
  const [told, setTold] = useState('');
  const [kept, setKept] = useState<readonly KeptPack[]>([]);
  const [chosen, setChosen] = useState(data.copies[0]?.file ?? '');
  const readKept = (): void => void keptPacks().then(setKept);
  useEffect(readKept, []);
  const copy = (of: Copy): void => {
    setTold('');
    creditedCopy(of, data).then(
      ({ text, pictures }) => open({ id: newId(), text, pictures }),
      () => setTold(say.start.copyFailed),
    );
  };
  const take = (opened: OpenedFile): void => {
    if (opened.kind === 'pack') open({ id: newId(), text: opened.text, fileName: opened.name, pictures: opened.pictures });
    else setTold(opened.kind === 'too big' ? say.start.fileTooBig : say.start.fileWrong);
  };
  useDrop((file) => void openFile(file).then(take));
  return (
    <section class="ways-to-begin" aria-labelledby="begin">
      <h2 id="begin">{say.start.heading}</h2>
      <ol>
        {kept.length > 0 && (
          <li class="kept-packs">
            <h3>{say.start.kept}</h3>
            <ul>
              {kept.map((pack) => (
                <Kept key={pack.id} pack={pack} data={data} open={open} erased={readKept} />
              ))}
            </ul>
          </li>
        )}
        <li>
          <h3>{say.start.empty}</h3>
          <p>{say.start.emptyNote}</p>
          <p>
            <button type="button" class="page-button" onClick={() => open({ id: newId(), text: emptyPack(data.language) })}>
              {say.start.emptyTake}
            </button>
          </p>
        </li>
        {data.copies.length > 0 && (
          <li>
            <h3>{say.start.copy}</h3>
            <p>{say.start.copyNote}</p>
            <div class="slot">
              <label for="copy-of">{say.start.copyChoose}</label>
              <select id="copy-of" value={chosen} onChange={(event) => setChosen(event.currentTarget.value)}>
                {data.copies.map((each) => (
                  <option value={each.file}>{`${each.title} (${languageName(data, each.language)}${data.semicolon}${each.licence})`}</option>
                ))}
              </select>
            </div>
            <p>
              <button
                type="button"
                class="page-button"
                onClick={() => {
                  const of = data.copies.find((each) => each.file === chosen);
                  if (of) copy(of);
                }}
              >
                {say.start.copyTake}
              </button>
            </p>
          </li>
        )}
        <li>
          <h3>{say.start.file}</h3>
          <p id="file-note">{say.start.fileNote}</p>
          <div class="slot file-entry">
            <label for="open-file">{say.start.fileChoose}</label>
            <input
              id="open-file"
              type="file"
              accept=".md,.zip,text/markdown,application/zip"
              aria-describedby="file-note"
              onChange={(event) => {
                const file = event.currentTarget.files?.[0];
                if (file) void openFile(file).then(take);
              }}
            />
          </div>
        </li>
      </ol>
      <p role="status" class="told-status">
        {told}
      </p>
    </section>
  );
}

/** Takes a file that is dropped anywhere on the page. */
export function useDrop(dropped: (file: File) => void): void {
  useEffect(() => {
    const over = (event: DragEvent): void => {
      if (event.dataTransfer?.types.includes('Files') === true) event.preventDefault();
    };
    const drop = (event: DragEvent): void => {
      const file = event.dataTransfer?.files[0];
      if (!file || event.defaultPrevented) return;
      event.preventDefault();
      dropped(file);
    };
    addEventListener('dragover', over);
    addEventListener('drop', drop);
    return () => {
      removeEventListener('dragover', over);
      removeEventListener('drop', drop);
    };
  });
}

function Kept({ pack, data, open, erased }: { readonly pack: KeptPack; readonly erased: () => void } & Props): JSX.Element {
  const [asking, setAsking] = useState(false);
  const { say } = data;
  const title = pack.title || say.start.untitled;
  const when = new Intl.DateTimeFormat(localeOf(data.language), { dateStyle: 'medium', timeStyle: 'short' }).format(pack.changed);
  const goOn = async (): Promise<void> =>
    open({
      id: pack.id,
      text: pack.text,
      ...(pack.beside !== undefined && { beside: pack.beside }),
      earlier: pack.earlier,
      ...(pack.fileName !== undefined && { fileName: pack.fileName }),
      pictures: await keptPictures(pack.id),
      revision: pack.revision ?? 0,
      ...(pack.passage !== undefined && { passage: pack.passage }),
    });
  return (
    <li>
      <button type="button" class="page-button" onClick={() => void goOn()}>
        {fill(say.start.keptOpen, { title })}
      </button>{' '}
      <span class="note">{fill(say.start.keptWhen, { when })}</span>{' '}
      {asking ? (
        <span class="sure" role="group" aria-label={say.start.eraseSure}>
          {say.start.eraseSure}{' '}
          <button type="button" class="word-button" onClick={() => void erasePack(pack.id).then(erased)}>
            {say.start.eraseYes}
          </button>{' '}
          <button type="button" class="word-button" onClick={() => setAsking(false)}>
            {say.start.eraseNo}
          </button>
        </span>
      ) : (
        <button type="button" class="word-button" onClick={() => setAsking(true)}>
          {fill(say.start.erase, { title })}
        </button>
      )}
    </li>
  );
}
