import { ownProgram } from '../trusted.ts';
import type { Work } from './work.ts';

type Asked = { readonly [K in keyof Work]: (...given: Parameters<Work[K]>) => Promise<Awaited<ReturnType<Work[K]>>> };

interface Answer {
  readonly id: number;
  readonly result?: unknown;
  readonly fault?: string;
}

/** The part that reads and checks, on its thread. It is fetched with the first question. */
export function workerAt(url: string): Asked {
  let worker: Worker | undefined;
  let count = 0;
  const waiting = new Map<number, { readonly done: (result: unknown) => void; readonly failed: (fault: Error) => void }>();
  const failAll = (): void => {
    for (const each of waiting.values()) each.failed(new Error('the reader stopped'));
    waiting.clear();
    worker?.terminate();
    worker = undefined;
  };
  const start = (): Worker => {
    const begun = new Worker(ownProgram(url), { type: 'module' });
    begun.addEventListener('message', (event: MessageEvent<Answer>) => {
      const { id, result, fault } = event.data;
      const asked = waiting.get(id);
      waiting.delete(id);
      if (fault === undefined) asked?.done(result);
      else asked?.failed(new Error(fault));
    });
    begun.addEventListener('error', failAll);
    return begun;
  };
  const ask = (name: keyof Work, given: readonly unknown[]): Promise<unknown> =>
    new Promise((done, failed) => {
      worker ??= start();
      const id = ++count;
      waiting.set(id, { done, failed });
      worker.postMessage({ id, name, given });
    });
  return {
    fields: (...given) => ask('fields', given) as ReturnType<Asked['fields']>,
    edit: (...given) => ask('edit', given) as ReturnType<Asked['edit']>,
    look: (...given) => ask('look', given) as ReturnType<Asked['look']>,
    page: (...given) => ask('page', given) as ReturnType<Asked['page']>,
  };
}
