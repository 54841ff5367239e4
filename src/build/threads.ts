import { Worker, type WorkerOptions } from 'node:worker_threads';

/** Threads that are given one task at a time and answer each. */

/** The program of a thread does not run here. */
export class CannotStart extends Error {}

/**
 * A thread that has said that it is ready.
 *
 * @param program Where its script lies, or the script itself.
 */
export async function beginThread(program: URL | string, options: Pick<WorkerOptions, 'workerData' | 'resourceLimits'>): Promise<Worker> {
  const thread = new Worker(program, { ...options, execArgv: [], eval: typeof program === 'string' });
  try {
    await answerOf<'ready'>(thread);
    return thread;
  } catch (error) {
    throw new CannotStart(error instanceof Error ? error.message : String(error), { cause: error });
  }
}

/** The next thing a thread says, after a task was given to it; fails when the thread ends instead. */
export function answerOf<A>(thread: Worker, task?: unknown): Promise<A> {
  return new Promise((answer, failed) => {
    const ended = (code: number) => {
      stop();
      failed(new Error(`the thread ended with ${String(code)}`));
    };
    const stop = () => thread.off('message', heard).off('error', broke).off('exit', ended);
    const heard = (message: A) => {
      stop();
      answer(message);
    };
    const broke = (error: Error) => {
      stop();
      failed(error);
    };
    thread.on('message', heard).on('error', broke).on('exit', ended);
    if (task !== undefined) thread.postMessage(task);
  });
}
