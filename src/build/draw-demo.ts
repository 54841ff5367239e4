import { readdir, readFile, writeFile } from 'node:fs/promises';
import { dirname, join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { drawPng } from './pictures.ts';

/**
 * Makes the demo library's PNG pictures from their SVG sources: `node --import tsx src/build/draw-demo.ts`.
 * Run it after changing a drawing. The build itself never opens an SVG file.
 */
const packs = join(dirname(fileURLToPath(import.meta.url)), '../../content/packs');
for (const slug of await readdir(packs)) {
  const drawings = await readdir(join(packs, slug, 'drawings')).catch(() => []);
  for (const name of drawings.filter((each) => each.endsWith('.svg'))) {
    const png = await drawPng(await readFile(join(packs, slug, 'drawings', name)), 1600);
    await writeFile(join(packs, slug, 'pictures', name.replace(/\.svg$/, '.png')), png);
  }
}
