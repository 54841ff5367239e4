import { execFile } from 'node:child_process';
import { stat } from 'node:fs/promises';

/**
 * Two folders exchange their names in one step, so that at no instant one of them is missing. Node has no call for it
 * (Linux: renameat2 with RENAME_EXCHANGE, see rename(2)); programs that a Linux system has do.
 */

/** Numbers of the call renameat2 by processor. Source: the kernel's syscall_64.tbl and asm-generic/unistd.h. */
const renameat2: Readonly<Partial<Record<NodeJS.Architecture, number>>> = { x64: 316, arm64: 276 };

interface Program {
  readonly program: string;
  readonly argumentsFor: (one: string, other: string) => readonly string[];
}

/** Ways to ask for it, the plain one first: GNU coreutils since 9.5, and Perl, which every Debian has. -100 is AT_FDCWD, 2 is RENAME_EXCHANGE. */
function programs(): readonly Program[] {
  const call = renameat2[process.arch];
  return [
    { program: 'mv', argumentsFor: (one, other) => ['--exchange', '--no-copy', '--no-target-directory', one, other] },
    ...(call === undefined
      ? []
      : [{ program: 'perl', argumentsFor: (one: string, other: string) => ['-e', `exit(syscall(${String(call)}, -100, $ARGV[0], -100, $ARGV[1], 2) == 0 ? 0 : 1)`, one, other] }]),
  ];
}

/**
 * Exchanges two folders that both are there, by their absolute paths.
 *
 * @returns False where this system or this disk cannot; nothing has changed then.
 */
export async function exchange(one: string, other: string): Promise<boolean> {
  if (process.platform !== 'linux') return false;
  const { ino, dev } = await stat(one);
  for (const { program, argumentsFor } of programs()) {
    await run(program, argumentsFor(one, other));
    // What counts is what came of it, whatever the program said.
    const now = await stat(other);
    if (now.ino === ino && now.dev === dev) return true;
  }
  return false;
}

function run(program: string, args: readonly string[]): Promise<void> {
  return new Promise((done) => {
    execFile(program, args, { timeout: 20_000 }, () => {
      done();
    });
  });
}
