import { parseArgs } from 'node:util';
import { WrongUse } from './wrong-use.ts';

/** Reads a command's words. A word that it does not know is told with the ones it does. */
export function readArguments<Name extends string, Flag extends string>(
  args: readonly string[],
  names: readonly Name[],
  flags: readonly Flag[],
): { values: Partial<Record<Name, string>>; flags: ReadonlySet<Flag>; rest: readonly string[] } {
  try {
    const options: Record<string, { type: 'string' | 'boolean' }> = {};
    for (const name of names) options[name] = { type: 'string' };
    for (const flag of flags) options[flag] = { type: 'boolean' };
    const parsed: { readonly values: unknown; readonly positionals: readonly string[] } = parseArgs({
      args: [...args],
      allowPositionals: true,
      strict: true,
      options,
    });
    const values = parsed.values as Readonly<Record<string, string | boolean | undefined>>;
    const texts: Partial<Record<Name, string>> = {};
    for (const name of names) {
      const value = values[name];
      if (typeof value === 'string') texts[name] = value;
    }
    return { values: texts, flags: new Set(flags.filter((flag) => values[flag] === true)), rest: parsed.positionals };
  } catch (error) {
    const known = [...names.map((name) => `--${name} …`), ...flags.map((flag) => `--${flag}`)].join(', ');
    const unknown = /'(-[^' ]*)/.exec(error instanceof Error ? error.message : '')?.[1];
    throw new WrongUse(`${unknown === undefined ? 'These words were not understood.' : `"${unknown}" was not understood here.`} This command knows: ${known}.`, { cause: error });
  }
}

/** A whole number between two limits, from a word. */
export function wholeNumber(word: string | undefined, name: string, least: number, most: number): number | undefined {
  if (word === undefined) return undefined;
  const number = Number(word);
  if (!/^\d+$/.test(word) || number < least || number > most) throw new WrongUse(`--${name} takes a whole number from ${String(least)} to ${String(most)}; "${word}" is none.`);
  return number;
}
