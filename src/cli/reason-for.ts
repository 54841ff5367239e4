import { CannotPublish } from '../build/cannot-publish.ts';
import { WrongUse } from './wrong-use.ts';

/** Why a command could not do its work, in lines for whoever called it. */
export function reasonFor(error: unknown): readonly string[] {
  if (error instanceof WrongUse || error instanceof CannotPublish) return [error.message];
  return [`Something went wrong that is not your fault: ${whyOf(error)}`, 'Nothing was published; the site is as it was. Set BOOKFELLOW_TRACE=1 and run it again to see where it happened.'];
}

/** Disk errors in words that somebody can act on. */
function whyOf(error: unknown): string {
  const { code, path = '' } = ofDisk(error);
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
    case 'EEXIST':
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

/** What the disk said, also when the engine has put its own words around it. */
function ofDisk(error: unknown): NodeJS.ErrnoException {
  let inner = error as NodeJS.ErrnoException & { readonly originalError?: unknown };
  while (inner.code === undefined) {
    const next = inner.cause ?? inner.originalError;
    if (!(next instanceof Error) || next === inner) break;
    inner = next;
  }
  return inner;
}
