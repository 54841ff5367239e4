import type { Desk } from './desk.ts';
import { watchWindows } from './other-windows.ts';

/** Until it is stopped: asks before a page is left that would take something with it, and listens for other windows. */
export function guardDesk(desk: Desk): () => void {
  const ask = (event: BeforeUnloadEvent): void => {
    if (desk.isAtRisk) event.preventDefault();
  };
  // A phone may end a page that is out of sight without another word.
  const write = (): void => {
    if (document.visibilityState === 'hidden') void desk.settled();
  };
  addEventListener('beforeunload', ask);
  document.addEventListener('visibilitychange', write);
  const stop = watchWindows(
    () => desk.id,
    desk.key,
    (elsewhere) => {
      if (elsewhere === desk.elsewhere) return;
      desk.elsewhere = elsewhere;
      desk.tell();
    },
  );
  return () => {
    removeEventListener('beforeunload', ask);
    document.removeEventListener('visibilitychange', write);
    stop();
  };
}
