import { linkFrom } from './addresses.ts';
import { packTree } from './pack-file.ts';
import type { Output, OutputInput } from './views.ts';

/** Each pack's front matter as JSON, for other programs: the fields of the schema under the author's names, and the schema's address. */
export function packJsonFiles({ shown }: Pick<OutputInput, 'shown'>): readonly Output[] {
  return shown.map((of) => {
    const url = `${of.urls.family}pack.json`;
    return {
      url,
      of,
      get text() {
        return `${JSON.stringify({ $schema: linkFrom(url, 'schema/pack.json'), ...packTree(of.pack) }, null, 2)}\n`;
      },
    };
  });
}
