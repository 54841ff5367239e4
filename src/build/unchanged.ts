import { createHash } from 'node:crypto';
import { lstatSync, mkdirSync, readdirSync, readFileSync, realpathSync, renameSync, writeFileSync, type BigIntStats } from 'node:fs';
import { dirname, join, resolve } from 'node:path';
import { fileURLToPath } from 'node:url';

/**
 * Tells that a build would make the very site that is there: no file of the content, of the site and of the code was touched since.
 * It asks the disk for names, sizes, times and numbers of files and reads none of them, so it needs nothing of what builds.
 */

/** What came of the build before; whoever asked for it says what is in it. */
export interface Unchanged {
  readonly told: unknown;
}

/** What one build was asked for. */
export interface Asked {
  /** The content folder. */
  readonly content: string;
  /** Where the site goes. */
  readonly site: string;
  /** For what may be thrown away and made again. */
  readonly cache: string;
  /** The day, since findings are told of dates. */
  readonly today: string;
  /** All other wishes. */
  readonly how: unknown;
}

interface Record_ {
  readonly asked: string;
  /** The folders of others that the settings name, whether they are there or not. */
  readonly others: readonly string[];
  readonly content: string;
  readonly site: string;
  readonly told: unknown;
}

const project = join(dirname(fileURLToPath(import.meta.url)), '../..');
/** npm notes in the last one what it installed. */
const code = ['src', 'layouts', 'package.json', 'package-lock.json', 'node_modules/.package-lock.json'];

/**
 * A file's time of change is as fine as the disk's clock: whoever writes twice within one tick leaves no trace of the second time.
 * So a file that was touched so shortly before a build is no witness. Some disks count whole seconds, or every second one (FAT).
 */
const tick = { fine: 50_000_000n, coarse: 2_000_000_000n } as const;

/** What came of the last build of the same, if nothing was touched since then; undefined where anything was, or where nobody knows. */
export function unchangedSince(asked: Asked): Unchanged | undefined {
  const record = readRecord(asked);
  if (record?.asked !== saidOf(asked)) return undefined;
  try {
    const content = stampOf([asked.content, ...record.others]);
    if (content.text !== record.content || stampOf([asked.site]).text !== record.site) return undefined;
    return { told: record.told };
  } catch {
    return undefined;
  }
}

/** Begins to watch over a build. What it gives is called when the build has published, with the folders of others that the settings name and what came of it. */
export function watchOver(asked: Asked): (others: readonly string[], told: unknown) => void {
  const began = BigInt(Date.now()) * 1_000_000n;
  const before = tryStamp([asked.content]);
  const said = saidOf(asked);
  return (others, told) => {
    const content = tryStamp([asked.content, ...others]);
    const site = tryStamp([asked.site]);
    // What was touched while it was read, or just before, may be read as it was or as it is; and so may what a clock says will be touched.
    if (!before || !content || !site || before.text !== tryStamp([asked.content])?.text || !isBefore(content.latest, began)) return;
    write(asked, { asked: said, others, content: content.text, site: site.text, told });
  };
}

function isBefore(time: bigint, began: bigint): boolean {
  return began - time > (time % 1_000_000_000n === 0n ? tick.coarse : tick.fine);
}

function saidOf({ content, site, today, how }: Asked): string {
  const { node, icu, unicode, cldr } = process.versions;
  return JSON.stringify([resolve(content), resolve(site), today, how, node, icu, unicode, cldr, tryStamp(code.map((each) => join(project, each)))?.text]);
}

interface Stamp {
  /** A hash of everything below some folders but what it says. */
  readonly text: string;
  /** The latest time of change, in nanoseconds. */
  readonly latest: bigint;
}

function tryStamp(places: readonly string[]): Stamp | undefined {
  try {
    return stampOf(places);
  } catch {
    return undefined;
  }
}

/** Names that begin with a dot are passed over, as the builder does. A link is a link, wherever it leads; but a folder that was named may lie behind one. */
function stampOf(places: readonly string[]): Stamp {
  const hash = createHash('sha256');
  let latest = 0n;
  const note = (path: string): BigIntStats => {
    const status = lstatSync(path, { bigint: true });
    if (status.ctimeNs > latest) latest = status.ctimeNs;
    hash.update(`${path}\0${String(status.mode)} ${String(status.dev)} ${String(status.ino)} ${String(status.size)} ${String(status.mtimeNs)} ${String(status.ctimeNs)}\n`);
    return status;
  };
  const walk = (folder: string): void => {
    // Of a name that is no text the status cannot be asked, and then nobody knows.
    for (const name of readdirSync(folder).sort()) {
      if (name.startsWith('.')) continue;
      const path = `${folder}/${name}`;
      if (note(path).isDirectory()) walk(path);
    }
  };
  for (const place of places) {
    const status = lstatSync(place, { throwIfNoEntry: false });
    if (!status) hash.update(`${place} is not there\n`);
    else {
      const real = realpathSync(place);
      hash.update(`${place} ${status.isSymbolicLink() ? 'leads to' : 'is'}\n`);
      if (note(real).isDirectory()) walk(real);
    }
  }
  return { text: hash.digest('hex'), latest };
}

function placeOf({ cache, site }: Asked): string {
  return join(cache, 'unchanged', `${createHash('sha256').update(resolve(site)).digest('hex').slice(0, 32)}.json`);
}

function readRecord(asked: Asked): Record_ | undefined {
  try {
    const [sum = '', text = ''] = readFileSync(placeOf(asked), 'utf8').split('\n', 2);
    return sum === sumOf(text) ? (JSON.parse(text) as Record_) : undefined;
  } catch {
    return undefined;
  }
}

/** Without a record the next build looks at everything; that is slower and no fault. */
function write(asked: Asked, record: Record_): void {
  const place = placeOf(asked);
  const text = JSON.stringify(record);
  try {
    mkdirSync(dirname(place), { recursive: true });
    writeFileSync(`${place}.${String(process.pid)}.part`, `${sumOf(text)}\n${text}`);
    renameSync(`${place}.${String(process.pid)}.part`, place);
  } catch {
    return;
  }
}

function sumOf(text: string): string {
  return createHash('sha256').update(text).digest('hex').slice(0, 24);
}
