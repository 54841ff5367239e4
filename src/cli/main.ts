import { nearest } from '../core/pack/nearest.ts';
import { help } from './help.ts';
import { reasonFor } from './reason-for.ts';

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
    for (const line of reasonFor(error)) console.error(line);
    if (process.env['BOOKFELLOW_TRACE'] !== undefined) console.error(error);
    return 2;
  }
}
