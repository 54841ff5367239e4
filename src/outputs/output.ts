import type { Library } from '../core/pack/library.ts';
import { packJsonSchema } from '../core/pack/json-schema.ts';
import { packsJson } from './packs-json.ts';
import { sitemap } from './sitemap.ts';
import type { Page, ShownPack } from './views.ts';

/** A text file of the site. */
export interface Output {
  readonly url: string;
  readonly text: string;
}

export interface OutputInput {
  readonly library: Library;
  readonly shown: readonly ShownPack[];
  readonly pages: readonly Page[];
}

/** Every text file of the site that is no page. The visible list: a new one is a file and a line here. */
export function textOutputs(input: OutputInput): readonly Output[] {
  return [{ url: 'schema/pack.json', text: packJsonSchema() }, { url: 'packs.json', text: packsJson(input) }, ...sitemap(input), { url: 'robots.txt', text: 'User-agent: *\nAllow: /\n' }];
}
