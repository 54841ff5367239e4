import type { Step } from '../../core/pack/pack.ts';
import type { MakerData } from '../../outputs/maker-data.ts';
import type { FormChapter, FormNode } from '../../outputs/maker-form.ts';
import { anyPath, fill } from './words.ts';

/** The chapter that a field of the file stands in. */
export function chapterOf(chapters: readonly FormChapter[], path: string): FormChapter | undefined {
  const within = (node: FormNode): boolean => path === node.path || path.startsWith(`${node.path}.`);
  const group = path.split('.')[0] ?? '';
  return chapters.find((chapter) => chapter.fields.some(within)) ?? chapters.find((chapter) => chapter.fields.some((node) => node.path.split('.')[0] === group));
}

/** A field as its form names it: "Stop 2, What you say". */
export function nameOf({ chapters, say, comma }: Pick<MakerData, 'chapters' | 'say' | 'comma'>, path: string): string {
  const steps = path.split('.');
  const names: string[] = [];
  let nodes: readonly FormNode[] = chapters.flatMap((chapter) => chapter.fields);
  let at = '';
  for (const step of steps) {
    at = at === '' ? step : `${at}.${/^\d+$/.test(step) ? '*' : step}`;
    const node = nodes.find((each) => each.path === at);
    if (/^\d+$/.test(step)) {
      const list = at.replace(/\.\*$/, '');
      const item = say.items[list]?.[0];
      names[names.length - 1] = item === undefined ? `${names.at(-1) ?? ''} ${String(Number(step) + 1)}` : fill(item, { n: Number(step) + 1 });
    } else if (node) names.push(node.label);
    if (node) nodes = [...(node.fields ?? []), ...(node.item ? [node.item] : [])];
    // The item of a list is a step of its own.
    if (node?.kind === 'list' && node.item) nodes = [node.item];
  }
  // A group that the form spreads over a chapter is called as the chapter.
  return names.join(comma) || chapterOf(chapters, path)?.title || path;
}

/** The field of the form for some steps: `stops`, 2, `ask`. */
export function nodeAt(chapters: readonly FormChapter[], steps: readonly Step[]): FormNode | undefined {
  const path = anyPath(steps);
  const within = (node: FormNode): FormNode | undefined => {
    if (node.path === path) return node;
    return path.startsWith(`${node.path}.`) ? [...(node.fields ?? []), ...(node.item ? [node.item] : [])].map(within).find((each) => each !== undefined) : undefined;
  };
  return chapters.flatMap((chapter) => chapter.fields.map(within)).find((each) => each !== undefined);
}
