import { copyFileSync, existsSync } from 'node:fs';
import { CannotPublish } from './cannot-publish.ts';
import { hashOf } from './code-mark.ts';
import type { KeptSite } from './kept-site.ts';

/**
 * What a site is made of beside its pages: text written as it is, or a file copied. The mark says what it was made of:
 * where it is the same as in the old site, the text is not asked for.
 */
export type SiteFile = ({ readonly url: string; readonly text: string } | { readonly url: string; readonly from: string }) & { readonly mark?: string };

/** Writes files into a staged site. Two for one address, or one that leads outside, is a fault of ours and stops the build. */
export function writeFiles(site: KeptSite, files: Iterable<SiteFile>): void {
  const taken = new Set<string>();
  for (const file of files) {
    const { url } = file;
    // A text that is there anyway is its own mark: to take a file costs less than to write one.
    const mark = file.mark ?? ('text' in file ? hashOf(file.text) : undefined);
    if (taken.has(url)) throw new Error(`two files for one address: ${url}`);
    taken.add(url);
    if (mark !== undefined && site.take(url, mark)) continue;
    if ('from' in file) {
      copyWhole(file.from, site.makeRoom(url));
      if (mark !== undefined) site.noteFile(url, mark);
    } else site.write(url, file.text, mark);
  }
}

function copyWhole(from: string, path: string): void {
  try {
    copyFileSync(from, path);
  } catch (error) {
    if (existsSync(from)) throw error;
    throw new CannotPublish(`"${from}" went away while the site was made. The site is as it was; run it again.`, { cause: error });
  }
}
