import { watch, type FSWatcher } from 'chokidar';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { build, type BuildOptions, type Built } from './build.ts';
import { serve } from './serve.ts';

export interface PreviewOptions extends Omit<BuildOptions, 'strict' | 'progress' | 'paperProgress'> {
  readonly port: number;
  /** Told after each build, or with the reason why one failed. */
  readonly tell: (built: Built | Error, milliseconds: number) => void;
}

/** Milliseconds of quiet after a change before building: an editor often saves a file in two steps. */
const quiet = 60;

/** Builds the library, serves it on this machine, and builds again whenever something in the content or the layouts' styles changes. */
export async function preview(options: PreviewOptions): Promise<{ readonly address: string; close(): Promise<void> }> {
  const watching: { watcher?: FSWatcher } = {};
  let folders: readonly string[] = [];
  const rebuild = async (): Promise<void> => {
    const started = performance.now();
    const built = await build({ ...options, strict: false }).catch((error: unknown) => (error instanceof Error ? error : new Error(String(error))));
    options.tell(built, performance.now() - started);
    // What library.yaml names as a source is watched from the build on that read it.
    if (!(built instanceof Error)) folders = built.folders;
    watching.watcher?.add([...folders]);
  };
  await rebuild();
  const server = await serve(options.site, options.port, options.content);
  const styles = join(fileURLToPath(import.meta.url), '../../../layouts/styles');
  const watcher = watch([options.content, styles, ...folders], { ignoreInitial: true, followSymlinks: false });
  watching.watcher = watcher;
  const stop = onChange(watcher, async () => {
    await rebuild();
    server.reload();
  });
  return {
    address: server.address,
    close: async () => {
      await stop();
      await server.close();
    },
  };
}

/** Runs the work after each burst of changes, one at a time; changes during the work run it once more. */
function onChange(watcher: FSWatcher, work: () => Promise<void>): () => Promise<void> {
  let timer: NodeJS.Timeout | undefined;
  let running = Promise.resolve();
  watcher.on('all', () => {
    clearTimeout(timer);
    timer = setTimeout(() => {
      running = running.then(work);
    }, quiet);
  });
  return async () => {
    clearTimeout(timer);
    await watcher.close();
    await running;
  };
}
