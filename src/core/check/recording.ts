import { finding, type Finding } from '../finding.ts';
import { readCaptions, secondsOfClock, type Caption } from '../pack/captions.ts';
import { nearest } from '../pack/nearest.ts';
import { placeOf, stopsOf, type Pack } from '../pack/pack.ts';

/** Most words a minute of captions for young readers, and the least seconds that one stands. Source: Captioning Key (DCMP and NAD), lower-level media. */
export const fastestCaptions = 130;
export const shortestCaption = 2;
/** Most megabytes of a film that is published: about ten minutes of a still picture with a voice. Common practice, no source. */
export const mostFilmMegabytes = 60;

/** A recording is there to be played, has captions that can be read in time, and its stops come in order. */
export function* recording(pack: Pack): Iterable<Finding> {
  const { recording: told } = pack;
  if (!told) {
    const index = pack.stops.findIndex((stop) => stop.at.recording !== undefined);
    if (index >= 0 && !pack.partial) yield finding('recording/none', 'warn', placeOf(pack, 'stops', index, 'at', 'recording'), {});
    return;
  }
  if (told.file === undefined && told.link === undefined) yield finding('recording/nothing-to-play', 'stop', placeOf(pack, 'recording'), {});
  if (told.file !== undefined) yield* film(pack, told.file);
  if (told.captions !== undefined) yield* captions(pack, told.captions);
  // A film without captions shuts deaf children out. Source: WCAG 2.2, success criterion 1.2.2 Captions (A).
  else if (told.file !== undefined) yield finding('recording/no-captions', 'stop', placeOf(pack, 'recording', 'file'), { file: told.file });
  yield* times(pack);
}

function* film(pack: Pack, name: string): Iterable<Finding> {
  const at = placeOf(pack, 'recording', 'file');
  const file = pack.recordingFiles.find((each) => each.name === name);
  if (!file) yield missing(pack, name, at);
  else if (file.format !== 'webm' && file.format !== 'mp4') yield finding('recording/format', 'stop', at, { file: name });
  else if (file.bytes > mostFilmMegabytes * 1024 * 1024) yield finding('recording/too-large', 'stop', at, { file: name, megabytes: Math.ceil(file.bytes / 1024 / 1024), most: mostFilmMegabytes });
}

function* captions(pack: Pack, name: string): Iterable<Finding> {
  const at = placeOf(pack, 'recording', 'captions');
  const file = pack.recordingFiles.find((each) => each.name === name);
  if (!file) {
    yield missing(pack, name, at);
    return;
  }
  const read = readCaptions(file.text ?? '');
  if (read.fault) yield finding('recording/captions-unreadable', 'stop', at, { file: name, line: read.fault.line, why: read.fault.why });
  const fast = read.captions.filter(isTooFast);
  const [first] = fast;
  if (first) yield finding('recording/captions-too-fast', 'warn', at, { file: name, line: first.line, count: fast.length, most: fastestCaptions });
}

function isTooFast({ begins, ends, lines }: Caption): boolean {
  const words = lines
    .join(' ')
    .split(/\s+/)
    .filter((word) => /[\p{L}\p{N}]/u.test(word)).length;
  // A thousandth of a second of rounding is no fault.
  return ends - begins + 0.001 < shortestCaption || (words * 60) / (ends - begins + 0.001) > fastestCaptions;
}

function missing(pack: Pack, name: string, at: Finding['place']): Finding {
  const suggestion = nearest(
    name,
    pack.recordingFiles.map((file) => file.name),
  );
  return finding('recording/missing-file', 'stop', at, { file: name, ...(suggestion === undefined ? {} : { suggestion }) });
}

/** Within a reading, stops come in the order of the film. */
function* times(pack: Pack): Iterable<Finding> {
  if (pack.partial) return;
  for (const { reading } of pack.readings) {
    let last = -1;
    for (const stop of stopsOf(pack, reading)) {
      if (stop.at.recording === undefined) continue;
      const seconds = secondsOfClock(stop.at.recording);
      if (seconds <= last) {
        yield finding('recording/out-of-order', 'warn', placeOf(pack, 'stops', pack.stops.indexOf(stop), 'at', 'recording'), { stop: stop.id, time: stop.at.recording });
        return;
      }
      last = seconds;
    }
  }
}
