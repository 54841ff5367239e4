import { readFileSync } from 'node:fs';

/**
 * Which characters a TrueType font has letters for: its table `cmap` (OpenType 1.9, "cmap"; formats 4 and 12, which between them every font has).
 * The file is our own package's, so a damaged one is a fault and may throw.
 */
export function charactersIn(path: string): ReadonlySet<number> {
  const bytes = readFileSync(path);
  const table = tableOf(bytes, 'cmap');
  const characters = new Set<number>();
  for (let index = 0; index < bytes.readUInt16BE(table + 2); index++) {
    const at = table + bytes.readUInt32BE(table + 4 + index * 8 + 4);
    const format = bytes.readUInt16BE(at);
    if (format === 4) addFormat4(bytes, at, characters);
    else if (format === 12) addFormat12(bytes, at, characters);
  }
  return characters;
}

function tableOf(bytes: Buffer, tag: string): number {
  for (let index = 0; index < bytes.readUInt16BE(4); index++) {
    const record = 12 + index * 16;
    if (bytes.toString('latin1', record, record + 4) === tag) return bytes.readUInt32BE(record + 8);
  }
  throw new Error(`a font without a table "${tag}"`);
}

/** Segments of the basic plane. A segment that leads to glyph 0 has no letter; that is looked up only where the format asks for it. */
function addFormat4(bytes: Buffer, at: number, characters: Set<number>): void {
  const twice = bytes.readUInt16BE(at + 6);
  const [ends, starts] = [at + 14, at + 16 + twice];
  for (let offset = 0; offset < twice; offset += 2) {
    const [start, end] = [bytes.readUInt16BE(starts + offset), bytes.readUInt16BE(ends + offset)];
    const delta = bytes.readUInt16BE(starts + twice + offset);
    const rangeAt = starts + 2 * twice + offset;
    const range = bytes.readUInt16BE(rangeAt);
    for (let character = start; character <= end && character !== 0xffff; character++) {
      const raw = range === 0 ? character : bytes.readUInt16BE(rangeAt + range + 2 * (character - start));
      if (raw !== 0 && ((raw + delta) & 0xffff) !== 0) characters.add(character);
    }
  }
}

function addFormat12(bytes: Buffer, at: number, characters: Set<number>): void {
  for (let group = 0; group < bytes.readUInt32BE(at + 12); group++) {
    const record = at + 16 + group * 12;
    for (let character = bytes.readUInt32BE(record); character <= bytes.readUInt32BE(record + 4); character++) characters.add(character);
  }
}
