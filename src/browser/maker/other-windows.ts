/** Windows of this browser tell each other which pack they have open, and nothing more. */

interface Said {
  readonly id: string;
  readonly window: string;
  readonly says: 'open' | 'here too' | 'closed';
}

/** Tells `changed` whether the pack is open in another window as well. Gives back how to stop. */
export function watchWindows(idNow: () => string, window: string, changed: (elsewhere: boolean) => void): () => void {
  if (typeof BroadcastChannel === 'undefined') return () => undefined;
  const channel = new BroadcastChannel('bookfellow-packs');
  const others = new Set<string>();
  const say = (says: Said['says']): void => channel.postMessage({ id: idNow(), window, says } satisfies Said);
  channel.addEventListener('message', (event: MessageEvent<Said>) => {
    const { id, window: other, says } = event.data;
    if (says === 'closed') others.delete(other);
    else if (id === idNow()) {
      others.add(other);
      if (says === 'open') say('here too');
    }
    changed(others.size > 0);
  });
  const leave = (): void => say('closed');
  addEventListener('pagehide', leave);
  say('open');
  return () => {
    removeEventListener('pagehide', leave);
    leave();
    channel.close();
  };
}
