/**
 * Keeps the screen awake where the browser allows it, until it is told to stop. Where it does not, nothing happens and nothing is said:
 * the lesson can be followed all the same. Source: W3C, Screen Wake Lock API; a lock is lost when the page is hidden, so it is asked for again.
 */
export function keepAwake(): () => void {
  let lock: WakeLockSentinel | undefined;
  let over = false;
  const ask = (): void => {
    if (over || document.visibilityState !== 'visible' || !('wakeLock' in navigator)) return;
    navigator.wakeLock.request('screen').then(
      (given) => {
        if (over) void given.release();
        else lock = given;
      },
      () => undefined,
    );
  };
  ask();
  document.addEventListener('visibilitychange', ask);
  return () => {
    over = true;
    document.removeEventListener('visibilitychange', ask);
    void lock?.release();
  };
}
