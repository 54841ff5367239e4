/** Captions of a recording, read from WebVTT. Source: W3C, WebVTT: The Web Video Text Tracks Format; only what captions of a reading need. */

/** One caption. Times in seconds from the beginning of the film; lines as they are shown. */
export interface Caption {
  readonly begins: number;
  readonly ends: number;
  readonly lines: readonly string[];
  /** Line of the file, from 1, on which its times stand. */
  readonly line: number;
}

/** What a captions file holds, and the first line that cannot be read. */
export interface Captions {
  readonly captions: readonly Caption[];
  readonly fault: { readonly line: number; readonly why: 'no header' | 'times' | 'order' | 'empty' } | undefined;
}

const stamp = /^(?:(\d{2,4}):)?([0-5]\d):([0-5]\d)\.(\d{3})$/;

/** The captions of a file. Remarks, styles and regions are passed over; marks within a caption, such as `<i>`, are taken out. */
export function readCaptions(text: string): Captions {
  const lines = text
    .replace(/^\ufeff/, '')
    .replace(/\r\n?/g, '\n')
    .split('\n');
  if (!/^WEBVTT(?:[ \t].*)?$/.test(lines[0] ?? '')) return { captions: [], fault: { line: 1, why: 'no header' } };
  const captions: Caption[] = [];
  let last = 0;
  for (let index = 1; index < lines.length; index++) {
    const line = lines[index] ?? '';
    if (/^(?:NOTE|STYLE|REGION)(?:\s|$)/.test(line)) while (index + 1 < lines.length && lines[index + 1] !== '') index++;
    if (!line.includes('-->')) continue;
    const times = line.split('-->').map((part) => secondsOf(part.trim().split(/\s/, 1)[0] ?? ''));
    const [begins, ends] = times;
    if (times.length !== 2 || begins === undefined || ends === undefined || ends <= begins) return { captions, fault: { line: index + 1, why: 'times' } };
    if (begins < last) return { captions, fault: { line: index + 1, why: 'order' } };
    const at = index + 1;
    const shown: string[] = [];
    while (index + 1 < lines.length && (lines[index + 1] ?? '').trim() !== '') shown.push(plain(lines[++index] ?? ''));
    if (shown.join('').trim() === '') return { captions, fault: { line: at, why: 'empty' } };
    captions.push({ begins, ends, lines: shown, line: at });
    last = begins;
  }
  return captions.length === 0 ? { captions, fault: { line: 1, why: 'empty' } } : { captions, fault: undefined };
}

/** The same captions as a WebVTT file of ours: nothing but times and text. */
export function captionsText(captions: readonly Caption[]): string {
  return `WEBVTT\n\n${captions.map(({ begins, ends, lines }) => `${stampOf(begins)} --> ${stampOf(ends)}\n${lines.map(escaped).join('\n')}\n`).join('\n')}`;
}

/** "2:40" or "1:02:40" in seconds. */
export function secondsOfClock(clock: string): number {
  return clock.split(':').reduce((sum, part) => sum * 60 + Number(part), 0);
}

function secondsOf(text: string): number | undefined {
  const match = stamp.exec(text);
  if (!match) return undefined;
  const [, hours = '0', minutes, seconds, thousandths] = match;
  return Number(hours) * 3600 + Number(minutes) * 60 + Number(seconds) + Number(thousandths) / 1000;
}

function stampOf(seconds: number): string {
  const all = Math.round(seconds * 1000);
  const two = (value: number) => String(Math.floor(value)).padStart(2, '0');
  return `${two(all / 3_600_000)}:${two((all / 60_000) % 60)}:${two((all / 1000) % 60)}.${String(all % 1000).padStart(3, '0')}`;
}

function plain(line: string): string {
  const marks: Readonly<Record<string, string>> = { amp: '&', lt: '<', gt: '>', nbsp: '\u00a0', lrm: '', rlm: '' };
  return line.replace(/<[^>]*>/g, '').replace(/&(\w+);/g, (all, name: string) => marks[name] ?? all);
}

function escaped(line: string): string {
  return line.replaceAll('&', '&amp;').replaceAll('<', '&lt;').replaceAll('>', '&gt;');
}
