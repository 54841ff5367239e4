import { watch, type FSWatcher } from 'chokidar';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { build, type BuildOptions, type Built } from './build.ts';
import { serve } from './serve.ts';

export interface PreviewOptions extends Omit<BuildOptions, 'strict' | 'readProgress' | 'progress' | 'paperProgress'> {
  readonly port: number;
  /** Told after each build, or with the reason why one failed. */
  readonly tell: (built: Built | Error, milliseconds: number) => void;
}

/** Milliseconds of quiet after a change before the page of its pack is made, and before the whole site is: an editor often saves a file in two steps, and whoever looks should get the page first. */
const quiet = { page: 15, site: 150 };

/**
 * Builds the library, serves it on this machine, and builds again whenever something in the content or the layouts' styles changes.
 * When one pack's text changes its pages are shown at once, before the whole site is made.
 */
export async function preview(options: PreviewOptions): Promise<{ readonly address: string; close(): Promise<void> }> {
  const watching: { watcher?: FSWatcher } = {};
  let last: Pick<Built, 'folders' | 'again'> | undefined;
  const rebuild = async (): Promise<void> => {
    const started = performance.now();
    const built = await build({ ...options, strict: false }).catch((error: unknown) => (error instanceof Error ? error : new Error(String(error))));
    options.tell(built, performance.now() - started);
    if (built instanceof Error) return;
    last = built;
    // What library.yaml names as a source is watched from the build on that read it.
    watching.watcher?.add([...built.folders]);
  };
  await rebuild();
  const server = await serve(options.site, options.port, options.content);
  const styles = join(fileURLToPath(import.meta.url), '../../../layouts/styles');
  const watcher = watch([options.content, styles, ...(last?.folders ?? [])], { ignoreInitial: true, followSymlinks: false });
  watching.watcher = watcher;
  // What changes while it looks round for the first time would be missed.
  await new Promise<void>((done) => watcher.once('ready', done));
  const stop = onChange(watcher, {
    page: async (path) => {
      // A fault in it is told by the build that follows.
      const again = await last?.again(path).catch(() => undefined);
      if (!again) return;
      server.showInstead((file) => again.pages.get(file) ?? again.list(file));
      server.reload();
    },
    site: async () => {
      await rebuild();
      server.showInstead(() => undefined);
      server.reload();
    },
  });
  return {
    address: server.address,
    close: async () => {
      await stop();
      await server.close();
    },
  };
}

interface Work {
  /** One file has changed, and nothing else of late. */
  page(path: string): Promise<void>;
  site(): Promise<void>;
}

/** Runs the work after each burst of changes, one at a time; changes during the work run it once more. */
function onChange(watcher: FSWatcher, work: Work): () => Promise<void> {
  const timers: NodeJS.Timeout[] = [];
  const changed = new Set<string>();
  let running = Promise.resolve();
  const after = (milliseconds: number, run: () => Promise<void>) => {
    timers.push(
      setTimeout(() => {
        running = running.then(run);
      }, milliseconds),
    );
  };
  watcher.on('all', (_, path) => {
    for (const timer of timers.splice(0)) clearTimeout(timer);
    // What the form keeps of earlier versions, and files on their way to a name, are no change of their own.
    if (!/[/\\](?:private[/\\]earlier|\.[^/\\]+)(?:[/\\]|$)/.test(path)) changed.add(path);
    const [only] = changed.size === 1 ? changed : [];
    if (only !== undefined) after(quiet.page, () => work.page(only));
    after(quiet.site, () => {
      changed.clear();
      return work.site();
    });
  });
  return async () => {
    for (const timer of timers.splice(0)) clearTimeout(timer);
    await watcher.close();
    await running;
  };
}
