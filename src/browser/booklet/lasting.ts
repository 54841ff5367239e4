/** Whether the browser may clear away by itself what it keeps for this site, for want of room or because nobody came for a while. */

let asked = false;

/** Asks the browser to leave what it keeps alone: once, and not before somebody has kept something. Some browsers decide by themselves, some ask the person. */
export function askToStay(): void {
  if (asked || !('storage' in navigator) || !('persist' in navigator.storage)) return;
  asked = true;
  // A browser that says no keeps things all the same; the page of answers tells what to do about it.
  navigator.storage.persist().catch(() => undefined);
}

/** What the browser has promised. False where it says nothing. */
export async function isLasting(): Promise<boolean> {
  try {
    return await navigator.storage.persisted();
  } catch {
    return false;
  }
}
