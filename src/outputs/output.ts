import { packJsonSchema } from '../core/pack/json-schema.ts';
import { newPack } from '../core/pack/new-pack.ts';
import { packFiles } from './pack-file.ts';
import { packJsonFiles } from './pack-json.ts';
import { feeds } from './feeds.ts';
import { headersFile } from './headers.ts';
import { openSearch } from './open-search.ts';
import { packsJson } from './packs-json.ts';
import { stopsVtt } from './stops-vtt.ts';
import { qualityJson } from './quality-json.ts';
import { retiredJson } from './retired.ts';
import { robots, sitemap } from './sitemap.ts';
import { stackFiles } from './stack-data.ts';
import type { Output, OutputInput } from './views.ts';

/** Every text file of the site that is no page. The visible list: a new one is a file and a line here. */
export function textOutputs(input: OutputInput): readonly Output[] {
  return [
    { url: 'schema/pack.json', text: packJsonSchema() },
    { url: 'packs.json', text: packsJson(input) },
    ...packFiles(input),
    ...packJsonFiles(input),
    ...retiredJson(input.retired ?? []),
    { url: 'make/pack.md', text: newPack('my-companion') },
    ...stopsVtt(input),
    ...stackFiles(input),
    { url: 'quality.json', text: qualityJson(input) },
    ...sitemap(input),
    robots(input),
    ...feeds(input),
    ...openSearch(input),
    headersFile(),
  ];
}
