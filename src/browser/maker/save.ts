import type { Desk } from './desk.ts';
import { zipOf } from './taken-away.ts';
import { fill } from './words.ts';

/** Saving straight into the library's folder: only where the preview on the own machine has put its mark into the page. */

function token(): string | undefined {
  return document.querySelector<HTMLMetaElement>('meta[name="bookfellow-save"]')?.content;
}

export function canSave(): boolean {
  return token() !== undefined;
}

/** Sends the pack to the preview, and says how it went. */
export async function saveIntoLibrary(desk: Desk): Promise<string> {
  const { save } = desk.data.say;
  try {
    await desk.settled();
    const answer = await fetch('/-/save', { method: 'POST', headers: { 'content-type': 'application/zip', 'x-bookfellow-save': token() ?? '' }, body: await zipOf(desk) });
    const said = (await answer.json()) as { readonly saved?: string; readonly refused?: string };
    return said.saved === undefined ? fill(save.failed, { why: save.why[said.refused ?? ''] ?? String(answer.status) }) : fill(save.done, { file: said.saved });
  } catch {
    return fill(save.failed, { why: save.gone });
  }
}
