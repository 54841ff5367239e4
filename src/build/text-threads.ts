import { availableParallelism } from 'node:os';
import type { Worker } from 'node:worker_threads';
import type { Library } from '../core/pack/library.ts';
import type { Source } from '../core/pack/pack.ts';
import type { Page } from '../outputs/views.ts';
import type { Bundler } from './bundle.ts';
import { root } from './code-mark.ts';
import { work, type TextAnswer, type TextTask } from './text-work.ts';
import { answerOf, beginThread } from './threads.ts';

/**
 * Packs are read and their pages are made on all processors. A thread needs a second until it is of use, so a few are done here.
 * What a thread does could be done here as well: so whatever a thread cannot do, for whatever reason, is done here, and the site is
 * the same.
 */
export interface TextThreads {
  /** Reads packs; `told` gets of each what `deserialize` gives back as `Kept`. */
  look<W extends { readonly source: Source }>(library: Library, packs: readonly W[], told: (pack: W, content: Uint8Array) => Promise<void>): Promise<void>;
  /** Makes pages; `told` gets the HTML of each. */
  make<W extends { readonly page: Page }>(pages: readonly W[], told: (page: W, html: string) => void): Promise<void>;
  /** Ends the threads that were begun. */
  close(): Promise<void>;
}

export interface TextThreadsOptions {
  /** How many packs or pages are worth a thread. */
  readonly worth?: number;
  /** How many threads there may be. */
  readonly most?: number;
  /** The script of a thread; a test puts another in its place. */
  readonly script?: string;
}

/** Megabytes that a thread may hold. It would gather more before it clears up, and needs a third of this; one that has too little ends, and its task is done here. */
const heap = 96;

/** Packs or pages that a thread gets at once: some hundred milliseconds of work. */
const atOnce = 20;

/** @param bundle What makes the script of a thread, and may keep it. */
export function textThreads(bundle: () => Promise<Bundler>, { worth = 150, most = availableParallelism(), script }: TextThreadsOptions = {}): TextThreads {
  const idle: Worker[] = [];
  const all: Worker[] = [];
  let cannotStart = false;
  let closed = false;
  let program: Promise<string> | undefined;

  const begin = async (): Promise<Worker | undefined> => {
    if (cannotStart) return undefined;
    try {
      const thread = idle.pop() ?? (await beginThread(script ?? (await (program ??= bundle().then(threadScript))), { resourceLimits: { maxOldGenerationSizeMb: heap } }));
      if (!all.includes(thread)) all.push(thread);
      return thread;
    } catch {
      cannotStart = true;
      return undefined;
    }
  };

  /** One after the other by one thread, as long as there are tasks and it lives. */
  const lane = async <T extends { readonly task: TextTask }>(queue: T[], told: (task: T, answer: TextAnswer) => Promise<void> | void): Promise<void> => {
    const thread = await begin();
    for (let next = queue.shift(); next; next = queue.shift()) {
      const said = thread && thread.threadId !== -1 ? await answerOf<{ readonly answer: TextAnswer } | { readonly error: unknown }>(thread, next.task).catch(() => undefined) : undefined;
      if (said && 'error' in said) throw said.error;
      if (closed) return;
      await told(next, said ? said.answer : await work(next.task));
    }
    if (thread && thread.threadId !== -1) idle.push(thread);
  };

  const run = async <T extends { readonly task: TextTask; readonly size: number }>(tasks: readonly T[], told: (task: T, answer: TextAnswer) => Promise<void> | void, here = false): Promise<void> => {
    const size = tasks.reduce((sum, each) => sum + each.size, 0);
    const number = here ? 0 : Math.min(most, Math.floor(size / worth));
    if (number < 2) for (const each of tasks) await told(each, await work(each.task));
    else {
      const queue = [...tasks];
      await Promise.all(Array.from({ length: number }, () => lane(queue, told))).finally(() => {
        // The others are not to go on with what nobody waits for any more.
        queue.length = 0;
      });
    }
  };

  return {
    look: (library, packs, told) =>
      run(
        inGroups(packs).map((group) => ({ group, size: group.length, task: { what: 'packs' as const, library, sources: group.map(({ source }) => source) } })),
        async ({ group }, answer) => {
          for (const [index, each] of group.entries()) await told(each, answer[index] as Uint8Array);
        },
      ),
    make: (pages, told) =>
      run(
        inGroups(pages).map((group) => ({ group, size: group.length, task: { what: 'pages' as const, pages: group.map(({ page }) => page) } })),
        ({ group }, answer) => {
          for (const [index, each] of group.entries()) told(each, answer[index] as string);
        },
        // A library's own layouts are functions, and those stay where they are.
        pages.some(({ page: { own = {} } }) => Object.keys(own).length > 0),
      ),
    close: async () => {
      closed = true;
      await Promise.all(all.splice(0).map((thread) => thread.terminate()));
    },
  };
}

/** The script of a thread, in one piece. */
export async function threadScript(bundle: Bundler): Promise<string> {
  const { files } = await bundle({
    absWorkingDir: root,
    entryPoints: ['src/build/text-worker.ts'],
    bundle: true,
    platform: 'node',
    target: 'node20',
    format: 'cjs',
    jsx: 'automatic',
    jsxImportSource: 'preact',
    legalComments: 'none',
    write: false,
  });
  return files[0]?.text ?? '';
}

function inGroups<T>(all: readonly T[]): readonly (readonly T[])[] {
  return Array.from({ length: Math.ceil(all.length / atOnce) }, (_, index) => all.slice(index * atOnce, (index + 1) * atOnce));
}
