import { CannotPublish } from '../build/cannot-publish.ts';
import { nearest } from '../core/pack/nearest.ts';
import { help } from './help.ts';
import { WrongUse } from './wrong-use.ts';

/** A command: its arguments in, its exit code out: 0 fine, 1 findings that stop, 2 wrong use. */
export type Command = (args: readonly string[]) => Promise<number>;

/** Every command. Each is loaded only when it is called, so that `--help` answers at once. */
const commands: Readonly<Record<string, () => Promise<{ readonly run: Command }>>> = {
  build: () => import('./build-command.ts'),
  check: () => import('./check-command.ts'),
  measure: () => import('./measure-command.ts'),
  plan: () => import('./plan-command.ts'),
  lesson: () => import('./lesson-command.ts'),
  new: () => import('./new-command.ts'),
  stack: () => import('./stack-command.ts'),
  preview: () => import('./preview-command.ts'),
};

/** Runs the command that the arguments name. Whatever goes wrong is told in a sentence. */
export async function main(args: readonly string[]): Promise<number> {
  const [name, ...rest] = args;
  if (name === undefined || name === '--help' || name === '-h' || name === 'help') {
    console.log(help(rest[0] ?? ''));
    return name === undefined ? 2 : 0;
  }
  const load = Object.hasOwn(commands, name) ? commands[name] : undefined;
  if (!load) {
    const meant = nearest(name, Object.keys(commands));
    console.error(`There is no command "${name}".${meant === undefined ? '' : ` Did you mean "${meant}"?`} The commands are: ${Object.keys(commands).join(', ')}. See bookfellow --help.`);
    return 2;
  }
  if (rest.includes('--help') || rest.includes('-h')) {
    console.log(help(name));
    return 0;
  }
  try {
    return await (await load()).run(rest);
  } catch (error) {
    if (error instanceof WrongUse || error instanceof CannotPublish) {
      console.error(error.message);
      return 2;
    }
    console.error(`Something went wrong that is not your fault: ${whyOf(error)}`);
    console.error('Nothing was published; the site is as it was. Set BOOKFELLOW_TRACE=1 and run it again to see where it happened.');
    if (process.env['BOOKFELLOW_TRACE'] !== undefined) console.error(error);
    return 2;
  }
}

/** Disk errors in words that somebody can act on. */
function whyOf(error: unknown): string {
  const { code, path = '' } = error as NodeJS.ErrnoException;
  switch (code) {
    case 'ENOSPC':
    case 'EDQUOT':
      return 'the disk is full. Make some room and try again.';
    case 'EFBIG':
      return 'this disk, or a limit of this machine, allows no file of that size.';
    case 'EACCES':
    case 'EPERM':
    case 'EROFS':
      return `this place may not be written to (${path}).`;
    case 'ENOTDIR':
      return `a file stands where a folder is needed (on the way to ${path}).`;
    case 'EIO':
      return 'the disk could not be read or written. Look whether it is sound, and try again.';
    case 'EMFILE':
    case 'ENFILE':
      return 'too many files are open on this machine. Close other programs and try again.';
    case 'ENOENT':
      return `something went away while it was needed (${path}). Run it again.`;
    case 'EADDRINUSE':
      return 'the port is already in use. Choose another with --port or PORT.';
    default:
      return error instanceof Error ? error.message : String(error);
  }
}
