import { parentPort } from 'node:worker_threads';
import { work, type TextTask } from './text-work.ts';

/** The program of a thread that reads packs and makes pages. It is bundled to one plain script, which begins in a fifth of a second. */
parentPort?.on('message', (task: TextTask) => {
  void work(task).then(
    (answer) => parentPort?.postMessage({ answer }),
    (error: unknown) => parentPort?.postMessage({ error }),
  );
});
parentPort?.postMessage('ready');
