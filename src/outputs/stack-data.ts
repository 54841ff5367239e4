import { stackFile, stackPackOf, type StackPack } from '../core/pack/stack-pack.ts';
import type { Output, OutputInput, ShownPack } from './views.ts';

/**
 * The page of the stack carries the packs of a library whose questions and rubrics are no longer than this, in characters: some forty packs,
 * which are 60 kB on the way. It asks for nothing once it is loaded, so a larger library's packs come as files that a teacher puts on the desk.
 */
export const mostCarried = 250_000;

/** The packs that the page carries; undefined when the library is too large for that. */
export function packsCarried(shown: readonly ShownPack[]): readonly StackPack[] | undefined {
  const packs: StackPack[] = [];
  let length = 1;
  for (const { pack } of shown) {
    const each = stackPackOf(pack);
    // With the comma or bracket behind it.
    length += JSON.stringify(each).length + 1;
    if (length > mostCarried) return undefined;
    packs.push(each);
  }
  return packs;
}

/** Address of a pack's own file for the stack. */
export const stackFileUrl = ({ urls }: Pick<ShownPack, 'urls'>): string => `${urls.family}stack.json`;

/** Each pack's questions, models and rubric as a file for the stack. */
export function stackFiles({ shown }: Pick<OutputInput, 'shown'>): readonly Output[] {
  return shown.map((of) => ({
    url: stackFileUrl(of),
    of,
    get text() {
      return stackFile(stackPackOf(of.pack));
    },
  }));
}
