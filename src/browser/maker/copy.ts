import type { Copy, MakerData } from '../../outputs/maker-data.ts';
import { fieldEdits } from './edits.ts';
import type { KeptPicture } from './storage.ts';
import { listAt, textAt, valueAt } from './words.ts';
import { workerAt } from './worker-door.ts';
import type { Edit } from '../../core/pack/write-pack.ts';

/**
 * A copy of a pack of the library: its text as published, with its maker named as the one it comes from and the place for
 * the new maker's name left empty. Pictures come along as the library publishes them.
 */
export async function creditedCopy(of: Copy, data: MakerData): Promise<{ readonly text: string; readonly pictures: readonly KeptPicture[] }> {
  const answer = await fetch(of.file);
  if (!answer.ok) throw new Error(String(answer.status));
  const text = await answer.text();
  const worker = workerAt(data.worker ?? '');
  const { raw } = await worker.fields(text);
  const pictures: KeptPicture[] = [];
  const renamed = new Map<string, string>();
  for (const { file, url } of of.pictures) {
    const blob = await (await fetch(url)).blob();
    const bitmap = await createImageBitmap(blob);
    // Without a network a picture comes from the book's copy on the device, in another format.
    const name = `${file.replace(/\.[a-z]+$/i, '')}.${blob.type === 'image/webp' ? 'webp' : 'jpg'}`;
    renamed.set(file, name);
    pictures.push({ name, blob, width: bitmap.width, height: bitmap.height });
    bitmap.close();
  }
  const edits: Edit[] = [
    { kind: 'set', steps: ['by', 'based on'], value: `${of.title}, ${of.by}, ${of.licence}`.slice(0, 200) },
    { kind: 'set', steps: ['by', 'name'], value: '' },
    // A recording is permitted to the one who made it.
    ...(valueAt(raw, ['recording']) === undefined ? [] : [{ kind: 'remove', steps: ['recording'] } as const]),
    ...(['school', 'reviewed', 'version'] as const).flatMap((field) => fieldEdits(raw, ['by', field], '')),
    ...listAt(raw, ['pictures']).flatMap((_, index) => rename(raw, ['pictures', index, 'file'], renamed)),
    ...listAt(raw, ['words']).flatMap((_, index) => rename(raw, ['words', index, 'picture'], renamed)),
  ];
  const made = await worker.edit(text, edits, data.order);
  if (!made) throw new Error('the copy could not be made');
  const body = [...renamed].reduce((markdown, [file, name]) => markdown.replaceAll(`(${file})`, `(${name})`).replaceAll(`(pictures/${file})`, `(pictures/${name})`), made.fields.body);
  const whole = await worker.edit(made.text, [{ kind: 'body', markdown: body }], data.order);
  return { text: whole?.text ?? made.text, pictures };
}

function rename(raw: Parameters<typeof textAt>[0], steps: readonly (string | number)[], renamed: ReadonlyMap<string, string>): readonly Edit[] {
  const name = renamed.get(textAt(raw, steps));
  return name === undefined ? [] : [{ kind: 'set', steps, value: name }];
}
