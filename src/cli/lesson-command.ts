import { readFile } from 'node:fs/promises';
import { dirname, join, relative, resolve } from 'node:path';
import { makeLocalSheet } from '../build/local-sheet.ts';
import { siteAround } from '../build/publish.ts';
import { onDisk } from '../build/read-content.ts';
import { readWholeLibrary } from '../build/read-library.ts';
import { readArguments } from './arguments.ts';
import { folderThatExists } from './folders.ts';
import { asText, wantsColour } from './report.ts';
import { WrongUse } from './wrong-use.ts';

/** `bookfellow lesson`: a substitute's sheet for one room, with what must not be published. */
export async function run(args: readonly string[]): Promise<number> {
  const { values, rest } = readArguments(args, ['content', 'local', 'out', 'language'], []);
  const [name, second] = rest;
  if (name === undefined || second !== undefined || values.local === undefined)
    throw new WrongUse('Name one pack and a text with the details of your room: bookfellow lesson seven-buttons --local my-room.txt');
  const content = await folderThatExists(values.content ?? 'content');
  const details = await readFile(values.local, 'utf8').catch(() => {
    throw new WrongUse(`There is no file "${values.local ?? ''}" that can be read here.`);
  });
  const { told, library, content: read } = await readWholeLibrary(content);
  const wanted = name.replaceAll('\\', '/').replace(/\/+$/, '');
  const versions = told.filter(({ source }) => [source.slug, source.file].includes(wanted) || wanted.endsWith(`packs/${source.slug}`) || wanted.endsWith(source.file));
  const one = versions.find(({ pack }) => pack?.language === (values.language ?? library.language)) ?? (values.language === undefined ? versions[0] : undefined);
  if (!one)
    throw new WrongUse(
      `There is no pack "${name}"${values.language === undefined ? '' : ` in "${values.language}"`}. The packs are: ${[...new Set(told.map(({ source }) => source.slug))].join(', ')}.`,
    );
  if (!one.pack) {
    console.error(asText(one.findings, 'en', wantsColour(process.stderr)));
    console.error('\nThis pack cannot be read yet, so there is no sheet.');
    return 1;
  }
  const out = resolve(values.out ?? join(dirname(onDisk(read.roots, one.source.file)), 'private', 'substitute.pdf'));
  await refusePublicPlace(out);
  const made = await makeLocalSheet(one.pack, library, details, out);
  if (!made.made) {
    console.error(`The sheet could not be made: ${made.fault}`);
    return 1;
  }
  if (made.lost.length > 0) console.log(`The fonts have no letter for: ${made.lost.join(' ')}. They were left out.`);
  console.log(`${relative('.', out)}: ${made.pages === 1 ? '1 page' : `${String(made.pages)} pages`}. It is private: print it, and do not post or share the file.`);
  return 0;
}

/** Details of a room do not belong where everything is published. */
async function refusePublicPlace(out: string): Promise<void> {
  const site = await siteAround(out);
  if (site !== undefined) throw new WrongUse(`"${out}" is inside a published site (${site}). Name another place with --out; by default it goes into the pack's folder private/.`);
  if (!out.toLowerCase().endsWith('.pdf')) throw new WrongUse(`--out names a PDF, such as my-room.pdf; "${out}" is none.`);
}
