import type { Desk } from './desk.ts';
import { zipOf } from './taken-away.ts';
import { download } from './download.ts';

/** Gives the pack's text as a file, with what was typed a moment ago in it. */
export async function takeFile(desk: Desk): Promise<void> {
  await desk.settled();
  download(desk.fileName, new Blob([desk.text], { type: 'text/markdown' }));
  desk.taken = desk.text;
}

/** Gives the pack with its pictures as a zip. */
export async function takeZip(desk: Desk): Promise<void> {
  await desk.settled();
  const { text } = desk;
  download(`${desk.slug}.zip`, await zipOf(desk));
  desk.taken = text;
}
