/** Faults put into a process's own calls to the disk: it dies at one of them, or from one on the disk is full. The calls are counted, so a fault comes at the same place each time. */
import { createRequire, syncBuiltinESMExports } from 'node:module';

export interface Fault {
  /** Calls count that name a path below this folder. */
  readonly within: string;
  /** Dies at this call, the first being 1. */
  readonly kill?: { readonly at: number; readonly signal: 'SIGKILL' | 'SIGTERM' };
  /** From this writing call on, each fails with this code; a file is half written then. */
  readonly fail?: { readonly at: number; readonly code: 'ENOSPC' | 'EIO' | 'EROFS' };
  /** At this call two folders exchange their names: what is read changes under the reader. */
  readonly turn?: { readonly at: number; readonly one: string; readonly other: string };
  /** The clock goes wrong by so many days. */
  readonly days?: number;
}

const reading = ['readFile', 'readdir', 'stat', 'lstat'];
const writing = ['writeFile', 'mkdir', 'mkdtemp', 'copyFile', 'link', 'open', 'rename'];
const others = ['rm', 'utimes', 'chmod', 'unlink', 'rmdir'];

/** What was called, for the report: `mkdir`, `rename site`, … */
export interface Counted {
  calls: number;
  writes: number;
}

type Call = (...args: unknown[]) => unknown;

/** Puts the fault in. It stays for the life of the process. */
export function putIn({ within, kill, fail, turn, days }: Fault): Counted {
  const counted: Counted = { calls: 0, writes: 0 };
  const require = createRequire(import.meta.url);
  const fs = require('node:fs') as Record<string, Call> & { promises: Record<string, Call> };
  const children = require('node:child_process') as Record<string, Call>;
  const rename = fs['renameSync'] as Call;
  const moment = (): void => {
    counted.calls += 1;
    if (turn && counted.calls === turn.at) {
      rename(turn.one, `${turn.one}.moved`);
      rename(turn.other, turn.one);
    }
    if (kill && counted.calls >= kill.at) {
      process.kill(process.pid, kill.signal);
      // A signal that can be heard comes a moment later; nothing more is to be done till then.
      Atomics.wait(new Int32Array(new SharedArrayBuffer(4)), 0, 0, 5000);
    }
  };
  const failure = (name: string, args: readonly unknown[]): NodeJS.ErrnoException | undefined => {
    if (!fail || !writing.includes(name) || (name === 'open' && !(typeof args[1] === 'string' && /[wax]/.test(args[1])))) return undefined;
    counted.writes += 1;
    return counted.writes < fail.at ? undefined : Object.assign(new Error(`${fail.code}: put in, ${name} '${String(args[0])}'`), { code: fail.code, syscall: name, path: String(args[0]) });
  };
  const counts = (args: readonly unknown[]): boolean => args.slice(0, 2).some((each) => typeof each === 'string' && each.startsWith(within));
  const half = (name: string, args: readonly unknown[]): void => {
    if (name === 'writeFile' && typeof args[1] === 'string') plainWrite(args[0], args[1].slice(0, args[1].length / 2));
  };
  const plainWrite = fs['writeFileSync'] as Call;
  for (const name of [...reading, ...writing, ...others]) {
    const { promises } = fs;
    const asked = promises[name] as Call;
    promises[name] = (...args) => {
      if (!counts(args)) return asked(...args);
      moment();
      const failed = failure(name, args);
      if (!failed) return asked(...args);
      half(name, args);
      return Promise.reject(failed);
    };
    const called = fs[name];
    if (called) {
      fs[name] = (...args) => {
        if (!counts(args)) return called(...args);
        moment();
        const failed = failure(name, args);
        return failed ? process.nextTick(args.at(-1) as Call, failed) : called(...args);
      };
    }
    const atOnce = fs[`${name}Sync`] as Call;
    fs[`${name}Sync`] = (...args) => {
      if (!counts(args)) return atOnce(...args);
      moment();
      const failed = failure(name, args);
      if (failed) throw failed;
      return atOnce(...args);
    };
  }
  const run = children['execFile'] as Call;
  children['execFile'] = (...args) => {
    moment();
    return run(...args);
  };
  if (days !== undefined) {
    const now = Date.now;
    const Plain = Date;
    Plain.now = () => now() + days * 86_400_000;
    globalThis.Date = new Proxy(Plain, { construct: (of, args: readonly unknown[]) => new of(...((args.length === 0 ? [Plain.now()] : args) as [number])) });
  }
  syncBuiltinESMExports();
  return counted;
}
