/** Pictures that are none, pretend, or grow when they are opened. After OWASP's sheet on uploads; made here, so that no bomb lies in the repository. What is published of a picture is drawn anew, with nothing hidden in it. */
import { deflateSync } from 'node:zlib';
import sharp from 'sharp';
import { blackPng, chunk } from './png.ts';
import { whole, withPart, type Hostile, type HostileClass } from './hostile-case.ts';

export const png = blackPng(60, 40);

const drawn = () => sharp({ create: { width: 60, height: 40, channels: 3, background: '#8aa' } });
const jpeg = await drawn().jpeg().toBuffer();
const hidden = 'canary-hidden';
const svg = `<svg xmlns="http://www.w3.org/2000/svg" onload="canary()"><script>canary()</script><image href="file:///etc/hostname"/></svg>`;
const many = (index: number): string => `<g id="g${index + 1}">${`<use href="#g${index}"/>`.repeat(10)}</g>`;
const svgBomb = `<svg xmlns="http://www.w3.org/2000/svg"><defs><rect id="g0" width="1" height="1"/>${Array.from({ length: 9 }, (_, index) => many(index)).join('')}</defs><use href="#g9"/></svg>`;
const entities = `<!DOCTYPE svg [<!ENTITY a "aaaaaaaaaa">${'bcdefghi'
  .split('')
  .map((name, index) => `<!ENTITY ${name} "${`&${'abcdefgh'.charAt(index)};`.repeat(10)}">`)
  .join('')}]><svg xmlns="http://www.w3.org/2000/svg"><text>&i;</text></svg>`;

const picture = (name: string, bytes: Buffer | string, told: readonly string[], published = told.length === 0, file = 'hill.png'): Hostile => ({
  name,
  files: { 'pack.md': withPart('home:\n', `pictures:\n  - file: ${file}\n    alt: A hill with a path.\nhome:\n`), [`pictures/${file}`]: bytes },
  told,
  published,
});

export const pictures: HostileClass = {
  class: 'pictures',
  cases: [
    picture('an SVG with a script', svg, ['54 picture/format']),
    picture('an SVG called .svg', svg, ['54 picture/format'], false, 'hill.svg'),
    picture('an SVG that uses itself a billion times', svgBomb, ['54 picture/format']),
    picture('an SVG whose entities multiply', entities, ['54 picture/format']),
    picture('a page called .png', '<!DOCTYPE html><script>canary()</script>', ['54 picture/format']),
    picture('a GIF', Buffer.from('R0lGODlhAQABAIAAAAAAAP///yH5BAEAAAAALAAAAAABAAEAAAIBRAA7', 'base64'), ['54 picture/format']),
    picture('a script that begins like a GIF', 'GIF89a=1;canary()', ['54 picture/format']),
    picture('a file without a byte', Buffer.alloc(0), ['54 picture/unreadable']),
    picture('a PNG of 50,000 by 50,000', blackPng(50_000, 50_000, [], 10), ['54 picture/too-large']),
    picture('a PNG of 1 by 60,000', blackPng(1, 60_000), ['54 picture/too-large']),
    picture('a PNG of 16,000 by 16,000 in some kilobytes', blackPng(16_000, 16_000, [], whole ? 16_000 : 10), ['54 picture/too-large']),
    picture('a PNG of no width', blackPng(0, 40), ['54 picture/unreadable']),
    picture('a PNG of 1 by 12,000, which is just taken', blackPng(1, 12_000), []),
    ...(whole ? [picture('the largest PNG that is taken', blackPng(12_000, 3333), [])] : []),
    picture('a PNG that ends in its middle', png.subarray(0, png.length - 30), ['54 picture/unreadable']),
    picture('a PNG with only its first bytes', png.subarray(0, 20), ['54 picture/unreadable']),
    picture('a JPEG that ends in its middle', jpeg.subarray(0, 200), ['54 picture/unreadable']),
    picture('a PNG whose text unpacks to 64 megabytes', blackPng(60, 40, [chunk('zTXt', Buffer.concat([Buffer.from('Comment\0\0'), deflateSync(Buffer.alloc(64_000_000))]))]), []),
    picture(
      'a PNG with a text in it',
      blackPng(60, 40, [
        chunk('tEXt', Buffer.from(`Comment\0${hidden}`)),
        chunk('iTXt', Buffer.from(`XML:com.adobe.xmp\0\0\0\0\0${hidden}`)),
        chunk('eXIf', Buffer.from(`MM\0*\0\0\0\b\0\0${hidden}`)),
      ]),
      [],
    ),
    picture('a PNG with a page behind its end', Buffer.concat([png, Buffer.from(`<script>canary()</script>${hidden}`)]), []),
    picture('a JPEG with a page behind its end, called .png', Buffer.concat([jpeg, Buffer.from(`PK\u0003\u0004${hidden}<?php canary() ?>`)]), []),
    picture('a JPEG with a script in its remark', Buffer.concat([jpeg.subarray(0, 2), Buffer.from([0xff, 0xfe, 0, 2 + hidden.length]), Buffer.from(hidden), jpeg.subarray(2)]), []),
    picture('a JPEG in four colours', await drawn().toColourspace('cmyk').jpeg().toBuffer(), [], true, 'hill.jpg'),
    picture('a PNG of 16 bits', await drawn().toColourspace('rgb16').png().toBuffer(), []),
    picture(
      'a WebP that moves',
      await sharp(Buffer.alloc(60 * 80 * 3, 90), { raw: { width: 60, height: 80, channels: 3, pageHeight: 40 } })
        .webp({ loop: 0 })
        .toBuffer(),
      [],
      true,
      'hill.webp',
    ),
    picture(
      'a photo that knows its place',
      await drawn()
        .withExif({ IFD0: { Copyright: hidden }, IFD3: { GPSLatitudeRef: 'N', GPSLatitude: '41/1 24/1 0/1' } })
        .jpeg()
        .toBuffer(),
      [],
      true,
      'hill.jpg',
    ),
    ...(await Promise.all(
      [1, 2, 3, 4, 5, 6, 7, 8].map(async (orientation) => picture(`a photo with orientation ${orientation}`, await drawn().withMetadata({ orientation }).jpeg().toBuffer(), [], true, 'hill.jpg')),
    )),
  ],
};
