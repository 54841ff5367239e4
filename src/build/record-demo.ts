import { execFileSync } from 'node:child_process';
import { mkdirSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { dirname, join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { drawPng } from './pictures.ts';

/**
 * Makes the demo library's one recording and its captions from a passage, drawings of ours and a synthetic voice:
 * `node --import tsx src/build/record-demo.ts`. It needs the programs espeak-ng and ffmpeg; what it makes is committed,
 * so nothing else does. It prints when each stop comes, for `recording:` in the pack.
 */

const pack = join(dirname(fileURLToPath(import.meta.url)), '../../content/packs/the-crow-and-the-tall-jar');
const title = 'The Crow and the Tall Jar.';
const maker = 'An old fable, told anew.';
/** Which drawing is seen from which opening on. */
const drawings: readonly (readonly [opening: number, name: string])[] = [
  [0, 'eye-to-the-jar'],
  [4, 'on-tiptoe'],
  [6, 'eye-to-the-jar'],
  [9, 'one-more-pebble'],
  [11, 'eye-to-the-jar'],
  [12, 'one-more-pebble'],
];
/** Words after which the reading stops. */
const stops = ['something winked', 'no more stretch in her', 'she kicked a pebble', 'she picked one up', 'see about the noise', 'she went for another', 'until it trembled'];

/** Samples a second of the voice. */
const rate = 22_050;
/** Fastest captions, words a minute, and the shortest time that one stands, seconds. Source: Captioning Key (DCMP/NAD) for lower-level media: 130 and 2. */
const pace = 126;
const shortest = 2.05;
/** Seconds of silence behind a sentence, before a page is turned, and at a stop. Common practice, no source. */
const gaps = { sentence: 0.45, page: 1.4, stop: 3 } as const;
/** Captions have at most two lines of so many characters. From memory: common caption practice. */
const lineLength = 42;

interface Cue {
  readonly opening: number;
  readonly text: string;
}

const scratch = mkdtempSync(join(tmpdir(), 'record-'));
const cues = [{ opening: 0, text: title }, { opening: 0, text: maker }, ...cuesOf(readFileSync(join(pack, 'private/passage.txt'), 'utf8'))];

const sound: Buffer[] = [];
const captions: string[] = ['WEBVTT', ''];
const scenes: { name: string; begins: number }[] = [];
let clock = 0;
for (const [index, cue] of cues.entries()) {
  const voice = speak(cue.text);
  const words = cue.text.split(/\s+/).length;
  const stands = Math.max(voice.length / 2 / rate, (words * 60) / pace, shortest);
  const next = cues[index + 1];
  const stop = stops.find((each) => cue.text.toLowerCase().includes(each));
  const gap = stop === undefined ? (next?.opening === cue.opening ? gaps.sentence : gaps.page) : gaps.stop;
  const scene = drawings.findLast(([from]) => from <= cue.opening)?.[1] ?? '';
  if (scenes.at(-1)?.name !== scene) scenes.push({ name: scene, begins: clock });
  captions.push(`${stamp(clock)} --> ${stamp(clock + stands)}`, ...inLines(cue.text), '');
  // The stop comes at the first whole second of the silence.
  if (stop !== undefined) process.stdout.write(`opening ${String(cue.opening)}, "${stop}": ${clockTime(Math.ceil(clock + stands))}\n`);
  sound.push(voice, Buffer.alloc(Math.round((stands + gap - voice.length / 2 / rate) * rate) * 2));
  clock += stands + gap;
}

const frames: string[] = [];
for (const [index, scene] of scenes.entries()) {
  const file = join(scratch, `${String(index)}.png`);
  writeFileSync(file, await drawPng(readFileSync(join(pack, 'drawings', `${scene.name}.svg`)), 640));
  frames.push(`file '${file}'`, `duration ${((scenes[index + 1]?.begins ?? clock) - scene.begins).toFixed(3)}`);
}
writeFileSync(join(scratch, 'sound.raw'), Buffer.concat(sound));
writeFileSync(join(scratch, 'frames.txt'), `${frames.join('\n')}\n${frames.at(-2) ?? ''}\n`);
mkdirSync(join(pack, 'recording'), { recursive: true });
writeFileSync(
  join(pack, 'recording/the-crow.vtt'),
  captions
    .join('\n')
    .replace(/(^|[\s(])"/gm, '$1“')
    .replaceAll('"', '”')
    .replaceAll("'", '’'),
);
// One picture a second, each sixteenth whole: whoever moves about in the film lands near a whole one, and nothing is read from its beginning for that.
execFileSync('ffmpeg', [
  ...['-y', '-v', 'error', '-f', 'concat', '-safe', '0', '-i', join(scratch, 'frames.txt'), '-f', 's16le', '-ar', String(rate), '-ac', '1', '-i', join(scratch, 'sound.raw')],
  ...['-c:v', 'libvpx-vp9', '-crf', '44', '-b:v', '0', '-vf', 'fps=1', '-g', '16', '-pix_fmt', 'yuv420p', '-row-mt', '0', '-threads', '1'],
  ...['-c:a', 'libopus', '-b:a', '20k', '-ac', '1', '-shortest', '-fflags', '+bitexact', '-flags:v', '+bitexact', '-flags:a', '+bitexact', '-map_metadata', '-1'],
  join(pack, 'recording/the-crow.webm'),
]);
rmSync(scratch, { recursive: true });
process.stdout.write(`${clockTime(clock)} long\n`);

/** The sentences of a passage, short ones together, long ones parted at a comma, with the opening each stands on. */
function cuesOf(passage: string): readonly Cue[] {
  const cues: Cue[] = [];
  let opening = 0;
  for (const paragraph of passage.split('\n')) {
    const mark = /^\[opening (\d+)\]$/.exec(paragraph.trim());
    if (mark) opening = Number(mark[1]);
    else for (const text of pieces(paragraph.trim())) cues.push({ opening, text });
  }
  return cues;
}

function pieces(paragraph: string): readonly string[] {
  const sentences = paragraph.match(/[^.!?]+[.!?]+[”"]?(?:\s+(?:said|asked) [^.]+\.)?/g) ?? [];
  const made: string[] = [];
  for (const sentence of sentences.map((each) => each.trim())) {
    const last = made.at(-1);
    if (last !== undefined && inLines(`${last} ${sentence}`).length <= 2 && sentence.length < 30 && !stops.some((stop) => last.includes(stop))) made[made.length - 1] = `${last} ${sentence}`;
    else if (inLines(sentence).length <= 2) made.push(sentence);
    else {
      const middle = sentence.length / 2;
      const commas = [...sentence.matchAll(/, /g)].map((match) => match.index + 1);
      const at = commas.sort((a, b) => Math.abs(a - middle) - Math.abs(b - middle))[0] ?? sentence.indexOf(' ', middle);
      made.push(sentence.slice(0, at).trim(), sentence.slice(at).trim());
    }
  }
  return made;
}

function inLines(text: string): readonly string[] {
  const lines: string[] = [];
  for (const word of text.split(/\s+/)) {
    const line = lines.at(-1);
    if (line !== undefined && line.length + 1 + word.length <= lineLength) lines[lines.length - 1] = `${line} ${word}`;
    else lines.push(word);
  }
  return lines;
}

/** The voice's samples, 16 bits each, without the silence around them. */
function speak(text: string): Buffer {
  const file = join(scratch, 'voice.wav');
  execFileSync('espeak-ng', ['-v', 'en-us+f4', '-s', '130', '-p', '42', '-a', '120', '-w', file, text]);
  const samples = readFileSync(file).subarray(44);
  const loud = (at: number) => Math.abs(samples.readInt16LE(at)) > 300;
  let begin = 0;
  let end = samples.length - (samples.length % 2);
  while (begin < end && !loud(begin)) begin += 2;
  while (end > begin && !loud(end - 2)) end -= 2;
  return samples.subarray(begin, end);
}

function stamp(seconds: number): string {
  return new Date(Math.round(seconds * 1000)).toISOString().slice(11, 23);
}

function clockTime(seconds: number): string {
  return `${String(Math.floor(seconds / 60))}:${String(Math.floor(seconds % 60)).padStart(2, '0')}`;
}
