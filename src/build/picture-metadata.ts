/**
 * What a picture's hidden data says about where and with what it was taken. Only whether it says so is read, never what.
 * EXIF 2.3 keeps the place behind tag 0x8825 and the camera in 0x010f and 0x0110 (CIPA DC-008; from memory); XMP names
 * both in words; IPTC keeps city and part of town in the records 2:90 and 2:92.
 */
export interface HiddenData {
  readonly exif?: Buffer | undefined;
  readonly xmp?: Buffer | undefined;
  readonly iptc?: Buffer | undefined;
}

/** `place` when the data names one, `camera` when it names only the camera. */
export function metadataOf({ exif, xmp, iptc }: HiddenData): 'place' | 'camera' | undefined {
  const tags = exif ? tagsOf(exif) : new Set<number>();
  const words = xmp?.toString('utf8') ?? '';
  if (tags.has(0x8825) || /GPSLatitude|GPSLongitude|photoshop:City|Iptc4xmpCore:Location/.test(words) || (iptc && namesTown(iptc))) return 'place';
  return tags.has(0x010f) || tags.has(0x0110) || /tiff:(?:Make|Model)/.test(words) ? 'camera' : undefined;
}

/** The tags of the first directory of EXIF data. Data that is cut short or odd has those that can be read. */
function tagsOf(exif: Buffer): ReadonlySet<number> {
  const tags = new Set<number>();
  const start = exif.subarray(0, 6).toString('latin1') === 'Exif\0\0' ? 6 : 0;
  const data = exif.subarray(start);
  const order = data.subarray(0, 2).toString('latin1');
  if (data.length < 8 || (order !== 'II' && order !== 'MM')) return tags;
  const two = (at: number): number => (order === 'II' ? data.readUInt16LE(at) : data.readUInt16BE(at));
  const directory = order === 'II' ? data.readUInt32LE(4) : data.readUInt32BE(4);
  if (directory + 2 > data.length) return tags;
  const count = two(directory);
  for (let index = 0; index < count; index++) {
    const at = directory + 2 + index * 12;
    if (at + 12 > data.length) break;
    tags.add(two(at));
  }
  return tags;
}

function namesTown(iptc: Buffer): boolean {
  return iptc.includes(Buffer.from([0x1c, 0x02, 90])) || iptc.includes(Buffer.from([0x1c, 0x02, 92]));
}
