import { work } from './maker/work.ts';

/** Runs the heavy part of the form on a thread of its own, so that typing never waits for it. */

interface Order {
  readonly id: number;
  readonly name: keyof typeof work;
  readonly given: readonly unknown[];
}

addEventListener('message', (event: MessageEvent<Order>) => {
  const { id, name, given } = event.data;
  const { [name]: run } = work as unknown as Readonly<Record<string, (...given: readonly unknown[]) => unknown>>;
  Promise.resolve()
    .then(() => run?.(...given))
    .then(
      (result) => postMessage({ id, result }),
      (fault: unknown) => postMessage({ id, fault: fault instanceof Error ? fault.message : String(fault) }),
    );
});
