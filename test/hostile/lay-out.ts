/** Lays the cases of the hostile library out as packs of a content folder, and says what was told about each. */
import { appendFileSync, cpSync, mkdirSync, writeFileSync } from 'node:fs';
import { dirname, join } from 'node:path';
import type { Finding } from '../../src/core/finding.ts';
import { smallLibrary, soundPack, type SmallLibrary } from '../build/small-library.ts';
import { sound, withBody, type Hostile, type HostileClass } from './hostile-case.ts';

/** A case and the folder it lies in. */
export interface Laid {
  readonly class: string;
  readonly hostile: Hostile;
  readonly folder: string | Buffer;
}

/** The packs beside the hostile ones, with which nothing is wrong. */
export const goodPacks = ['a-good-pack', 'every-field'] as const;

/** Everything that Markdown can bring into a page. */
const everyMark = `
### A smaller heading

A paragraph with *stress*, **more stress**, \`code\`, ~~a slip~~, a break\\
and a [link](https://books.example "With a title"), a [near one](../).

- a list
  1. in a list

3. a list from three

> a quote

| left | right |
| :--- | ---: |
| a | b |

\`\`\`text
a fence
\`\`\`

---
`;

/** A library of two good packs, and of every case of the classes; the bodies of each class once more in one pack, for a browser that opens few. */
export async function layOut(classes: readonly HostileClass[]): Promise<{ readonly library: SmallLibrary; readonly laid: readonly Laid[] }> {
  const library = await smallLibrary({
    'library.yaml': 'name: The hostile shelf\nlanguage: en\nlanguages: [en, es]\ncontact: Ask at the desk.\nrights: None.\naddress: https://shelf.example/\n',
    'packs/a-good-pack/pack.md': await soundPack(),
  });
  cpSync(new URL('../packs/sound/every-field', import.meta.url), join(library.content, 'packs/every-field'), { recursive: true });
  appendFileSync(join(library.content, 'packs/every-field/pack.md'), everyMark);
  const outside = join(library.folder, 'outside');
  mkdirSync(outside);
  writeFileSync(join(outside, 'pack.md'), sound.replace('title: The Wheelbarrow Goes Home', 'title: canary-outside'));
  const laid = classes.flatMap((of) => {
    const stem = of.class.toLowerCase().replace(/[^a-z]+/g, '-');
    const bodies = of.cases.flatMap((each) => (each.published && each.body !== undefined && each.body.length < 1000 ? [each.body] : []));
    const all: readonly Hostile[] =
      bodies.length === 0 ? [] : [{ name: 'all of them in one body', folder: `all-of-${stem}`, files: { 'pack.md': withBody(bodies.join('\n\n')) }, told: ['*'], published: true }];
    return [...of.cases, ...all].map((hostile, index): Laid => ({ class: of.class, hostile, folder: hostile.folder ?? `hostile-${stem}-${index}` }));
  });
  for (const { hostile, folder } of laid) {
    const path = Buffer.concat([Buffer.from(`${library.content}/packs/`), Buffer.from(folder)]);
    mkdirSync(path, { recursive: true });
    for (const [name, content] of Object.entries(hostile.files ?? {})) {
      const file = Buffer.concat([path, Buffer.from(`/${name}`)]);
      mkdirSync(typeof folder === 'string' ? dirname(file.toString()) : path, { recursive: true });
      writeFileSync(file, content);
    }
    hostile.make?.(path.toString(), outside);
  }
  return { library, laid };
}

/** Everything that stops or warns about a case, as cases say it: `line code`, `file:line code`, `folder code`. */
export function toldAbout({ folder }: Laid, findings: readonly Finding[]): readonly string[] {
  const path = `packs/${String(folder)}`;
  const isBytes = typeof folder !== 'string';
  return findings
    .filter(
      ({ level, place, facts }) =>
        level !== 'note' && (isBytes ? place.file === 'packs' && 'folder' in facts && facts.folder === String(folder) : place.file === path || place.file.startsWith(`${path}/`)),
    )
    .map(({ place, code }) => {
      const file = place.file.slice(path.length + 1);
      return isBytes || file === '' ? `folder ${code}` : `${file === 'pack.md' ? '' : `${file}:`}${place.line} ${code}`;
    });
}
