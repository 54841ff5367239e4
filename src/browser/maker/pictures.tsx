import type { JSX } from 'preact';
import { useState } from 'preact/hooks';
import type { Desk } from './desk.ts';
import { addEdits } from './edits.ts';
import { makePicture } from './make-picture.ts';
import { usePictureUrls } from './picture-urls.ts';
import { useDrop } from './start.tsx';
import { fill, idOf, listAt, textAt } from './words.ts';

/** Takes pictures in: each is made anew, listed in the pack, and asked for its words at once. */
export function AddPictures({ desk }: { readonly desk: Desk }): JSX.Element {
  const { say } = desk.data;
  const [told, setTold] = useState('');
  const add = async (files: readonly File[]): Promise<void> => {
    const refused: string[] = [];
    for (const file of files) {
      await desk.settled();
      const picture = await makePicture(file, new Set(desk.pictures.map((each) => each.name)));
      if (!picture) {
        refused.push(file.name);
        continue;
      }
      desk.addPicture(picture);
      await desk.change((raw) => {
        desk.focusNext = idOf(['pictures', listAt(raw, ['pictures']).length, 'alt']);
        return addEdits(raw, ['pictures'], { file: picture.name, alt: '' });
      }, '');
    }
    setTold(refused.length > 0 ? refused.map((name) => fill(say.picture.unreadable, { name })).join(' ') : files.length > 0 ? say.picture.alt : '');
  };
  useDrop((file) => void add([file]));
  return (
    <div class="slot add-pictures">
      <label for="add-pictures">{say.picture.add}</label>
      <p class="hint" id="add-pictures-hint">
        {say.picture.addNote}
      </p>
      <input
        id="add-pictures"
        type="file"
        multiple
        accept="image/png,image/jpeg,image/webp"
        aria-describedby="add-pictures-hint"
        onChange={(event) => {
          const input = event.currentTarget;
          void add([...(input.files ?? [])]).then(() => (input.value = ''));
        }}
      />
      <p role="status">{told}</p>
    </div>
  );
}

/** The picture of a list's item, as it is kept here. */
export function Thumbnail({ desk, index }: { readonly desk: Desk; readonly index: number }): JSX.Element | null {
  const urls = usePictureUrls(desk);
  const { say } = desk.data;
  const name = textAt(desk.fields?.raw, ['pictures', index, 'file']);
  const kept = desk.pictures.find((each) => each.name === name);
  const shown = urls[name];
  if (name === '') return null;
  if (!kept || !shown) return <p class="note">{kept ? '' : say.picture.missing}</p>;
  return (
    <p class="thumbnail">
      <img src={shown.url} width={shown.width} height={shown.height} alt="" />
      <span class="note">{fill(say.picture.size, { width: kept.width, height: kept.height, kb: Math.max(1, Math.round(kept.blob.size / 1000)) })}</span>
    </p>
  );
}
