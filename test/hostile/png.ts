import { crc32, deflateSync } from 'node:zlib';

/** A part of a PNG with its check sum. */
export const chunk = (type: string, data: Buffer): Buffer => {
  const head = Buffer.alloc(4);
  head.writeUInt32BE(data.length);
  const tail = Buffer.alloc(4);
  tail.writeUInt32BE(crc32(Buffer.concat([Buffer.from(type, 'latin1'), data])));
  return Buffer.concat([head, Buffer.from(type, 'latin1'), data, tail]);
};
/** A PNG of one bit a pixel, all black, with more chunks where somebody wants them. Source: W3C, Portable Network Graphics. */
export function blackPng(width: number, height: number, more: readonly Buffer[] = [], rows = height): Buffer {
  const header = Buffer.alloc(13);
  header.writeUInt32BE(width, 0);
  header.writeUInt32BE(height, 4);
  header[8] = 1;
  const pixels = deflateSync(Buffer.alloc(rows * (Math.ceil(width / 8) + 1)));
  return Buffer.concat([Buffer.from([0x89, 0x50, 0x4e, 0x47, 0x0d, 0x0a, 0x1a, 0x0a]), chunk('IHDR', header), ...more, chunk('IDAT', pixels), chunk('IEND', Buffer.alloc(0))]);
}
