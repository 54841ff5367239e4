/** What a file of a site holds, also where it is packed: the bytes as they are, and those inside gz, zip and PDF. */
import { gunzipSync, inflateRawSync, inflateSync } from 'node:zlib';

/** Everything that can be read in a file, as text of one byte a letter; accents are therefore two. */
export function insideOf(name: string, bytes: Buffer): readonly string[] {
  const found = [bytes.toString('latin1')];
  if (bytes[0] === 0x1f && bytes[1] === 0x8b) found.push(...insideOf(name.replace(/\.gz$/, ''), gunzipSync(bytes)));
  if (bytes.subarray(0, 2).toString('latin1') === 'PK') for (const [entry, content] of zipEntries(bytes)) found.push(entry, ...insideOf(entry, content));
  if (bytes.subarray(0, 5).toString('latin1') === '%PDF-') found.push(...pdfStreams(bytes));
  return found;
}

/** The files of a zip, by its directory at the end. Source: PKWARE, .ZIP File Format Specification, 4.3; from memory. */
export function zipEntries(zip: Buffer): readonly (readonly [name: string, content: Buffer])[] {
  const end = zip.lastIndexOf(Buffer.from([0x50, 0x4b, 0x05, 0x06]));
  if (end < 0) return [];
  const entries: [string, Buffer][] = [];
  let at = zip.readUInt32LE(end + 16);
  for (let count = zip.readUInt16LE(end + 10); count > 0; count--) {
    const [method, packed, nameLength, extra, comment, header] = [
      zip.readUInt16LE(at + 10),
      zip.readUInt32LE(at + 20),
      zip.readUInt16LE(at + 28),
      zip.readUInt16LE(at + 30),
      zip.readUInt16LE(at + 32),
      zip.readUInt32LE(at + 42),
    ];
    const start = header + 30 + zip.readUInt16LE(header + 26) + zip.readUInt16LE(header + 28);
    const content = zip.subarray(start, start + packed);
    entries.push([zip.subarray(at + 46, at + 46 + nameLength).toString('utf8'), method === 8 ? inflateRawSync(content) : content]);
    at += 46 + nameLength + extra + comment;
  }
  return entries;
}

/** The streams of a PDF, unpacked where they are packed. Letters drawn with an embedded font are numbers there, and stay unread. */
function pdfStreams(pdf: Buffer): readonly string[] {
  const streams: string[] = [];
  for (let at = pdf.indexOf('stream'); at !== -1; at = pdf.indexOf('stream', at + 6)) {
    const start = at + (pdf[at + 6] === 0x0d ? 8 : 7);
    const end = pdf.indexOf('endstream', start);
    if (end === -1) break;
    try {
      streams.push(inflateSync(pdf.subarray(start, end)).toString('latin1'));
    } catch {
      // Not packed, or packed in another way: the raw bytes are looked through in any case.
    }
    at = end + 3;
  }
  return streams;
}
