import type { JSX } from 'preact';
import { useState } from 'preact/hooks';
import { useKeeper, type WholeDesk } from './desk.ts';
import { base64 } from './base64.ts';
import { Lines } from './lines.tsx';
import { TakeAway } from './text-answer.tsx';
import { useOwnId } from './own-id.ts';

/** Pixels of the longer side that a photo is shrunk to, and how strongly it is pressed. source: common practice, no source. */
const longest = 1280;
const quality = 0.82;

interface Props {
  readonly desk: WholeDesk;
  readonly to: string;
  readonly of: 'paper' | 'acting';
}

/** Photos of paper or of what was acted: made anew by the browser, so that nothing of what a camera hides in them is kept. */
export function Photo({ desk, to, of }: Props): JSX.Element {
  useKeeper(desk);
  const { keeper, words } = desk;
  const say = words.screen.photo;
  const id = useOwnId();
  const [broken, setBroken] = useState(false);
  const add = async (field: HTMLInputElement) => {
    const file = field.files?.[0];
    field.value = '';
    if (!file) return;
    try {
      const photo = await remade(file);
      setBroken(false);
      keeper.put(to, { kind: 'photo', about: '', type: 'image/jpeg', ...photo });
    } catch {
      setBroken(true);
    }
  };
  return (
    <div class="photos">
      {keeper.placed(to, 'photo').map(({ place, entry }) => (
        <div class="one-answer" key={place}>
          <img src={`data:${entry.value.type};base64,${entry.value.data}`} width={entry.value.width} height={entry.value.height} alt={entry.value.about || words.file.untitledPhoto} />
          <Lines label={say.about} text={entry.value.about} rows={2} onText={(about) => keeper.put(to, { ...entry.value, about }, place)} />
          <TakeAway label={say.takeAway} onTake={() => keeper.remove(entry)} />
        </div>
      ))}
      <p class="file-field">
        <label for={id}>{say.add[of]}</label>
        <input id={id} type="file" accept="image/jpeg,image/png,image/webp,image/*" onChange={(event) => void add(event.currentTarget)} aria-describedby={`${id}-note`} />
      </p>
      <p id={`${id}-note`} class="note small" role="status">
        {broken ? say.broken : say.note}
      </p>
    </div>
  );
}

/** A picture drawn upright onto a new canvas and written as a new JPEG. */
async function remade(file: Blob): Promise<{ readonly width: number; readonly height: number; readonly data: string }> {
  const picture = await createImageBitmap(file, { imageOrientation: 'from-image' });
  const scale = Math.min(1, longest / Math.max(picture.width, picture.height));
  const [width, height] = [Math.max(1, Math.round(picture.width * scale)), Math.max(1, Math.round(picture.height * scale))];
  const canvas = document.createElement('canvas');
  canvas.width = width;
  canvas.height = height;
  const context = canvas.getContext('2d');
  if (!context) throw new Error('no canvas');
  context.fillStyle = '#ffffff';
  context.fillRect(0, 0, width, height);
  context.imageSmoothingQuality = 'high';
  context.drawImage(picture, 0, 0, width, height);
  picture.close();
  const blob = await new Promise<Blob>((resolve, reject) => canvas.toBlob((made) => (made ? resolve(made) : reject(new Error('no picture'))), 'image/jpeg', quality));
  return { width, height, data: await base64(blob) };
}
