import { join } from 'node:path';
import { finding, type Finding } from '../core/finding.ts';
import { phrasesFor } from '../core/languages/pick-language.ts';
import type { Library } from '../core/pack/library.ts';
import { captionsText, readCaptions } from '../core/pack/captions.ts';
import { bodyHtml } from '../core/pack/markdown.ts';
import { placeOf, type Picture } from '../core/pack/pack.ts';
import type { PlannedPack } from '../core/plan/plan.ts';
import { linkFrom, packUrls } from '../outputs/addresses.ts';
import type { BuiltPicture, BuiltRecording, ShownPack } from '../outputs/views.ts';
import { pictureHtml } from '../../layouts/parts/picture.tsx';
import { makePicture } from './pictures.ts';
import type { SiteFile } from './write-files.ts';

export interface Shown {
  readonly shown: ShownPack;
  readonly files: readonly SiteFile[];
  readonly findings: readonly Finding[];
}

/** A planned pack made ready to be shown: its pictures made, its body turned into HTML. `allVersions` are the pack in all its languages. */
export async function showPack(pack: PlannedPack, allVersions: readonly PlannedPack[], library: Library, folder: string, cache: string): Promise<Shown> {
  const findings: Finding[] = [];
  const files: SiteFile[] = [];
  const pictures: BuiltPicture[] = [];
  for (const [index, picture] of picturesOf(pack).entries()) {
    const made = await makePicture(join(folder, picture.file), picture.file, `packs/${pack.slug}/pictures/`, cache);
    if (!made) {
      findings.push(finding('picture/unreadable', 'stop', placeOf(pack, 'pictures', index), { picture: picture.file }));
      continue;
    }
    files.push(...made.files);
    const { width, height, webp, jpeg } = made;
    pictures.push({ file: picture.file, alt: picture.alt ?? '', decorative: picture.decorative === true, credit: picture.credit, stop: picture.stop, width, height, webp, jpeg });
  }
  const urls = packUrls(pack.slug, pack.language, library.language);
  const recording = recordingOf(pack, urls.recording, join(folder, '../recording'), files);
  const versions = allVersions.map((each) => ({ language: each.language, urls: packUrls(each.slug, each.language, library.language) }));
  const showPicture = (fileName: string, alt: string): string => {
    const picture = pictures.find((each) => each.file === fileName);
    return picture ? pictureHtml({ ...picture, alt: alt === '' ? picture.alt : alt }, (url) => linkFrom(urls.family, url)) : '';
  };
  return {
    shown: { pack, pictures, recording, bodyHtml: bodyHtml(pack.body, { topHeading: 3, showPicture, tableName: phrasesFor(pack.language).wideTable }), urls, papers: [], versions },
    files,
    findings,
  };
}

/** The recording of a pack as published, and its files: the film as it is, the captions written anew from what was read. */
function recordingOf(pack: PlannedPack, url: string, folder: string, files: SiteFile[]): BuiltRecording | undefined {
  const { recording } = pack;
  if (!recording) return undefined;
  const named = (name: string | undefined) => pack.recordingFiles.find((each) => each.name === name);
  const film = named(recording.file);
  const { captions } = readCaptions(named(recording.captions)?.text ?? 'WEBVTT');
  const common = { link: recording.link, captions, permission: recording.permission };
  if (!film || (film.format !== 'webm' && film.format !== 'mp4')) return { ...common, film: undefined };
  // The file's own name could hold anything; the address is made of what we know.
  const built = { url: `${url}reading.${film.format}`, type: `video/${film.format}`, bytes: film.bytes, captionsUrl: `${url}captions.vtt` } as const;
  files.push({ url: built.url, from: join(folder, film.name) }, { url: built.captionsUrl, text: captionsText(captions) });
  return { ...common, film: built };
}

/** The pictures listed, and those that a taught word names without their being listed. */
function picturesOf(pack: PlannedPack): readonly Picture[] {
  const listed = pack.pictures ?? [];
  const names = new Set(listed.map((each) => each.file));
  return [...listed, ...(pack.words ?? []).flatMap((word) => (word.picture !== undefined && !names.has(word.picture) ? [{ file: word.picture, alt: word.word }] : []))];
}
