/** Hidden data of pictures, written by sharp and looked for by us. */
import sharp, { type Metadata, type Sharp } from 'sharp';
import { expect, test } from 'vitest';
import { metadataOf } from '../../src/build/picture-metadata.ts';

const plain = sharp({ create: { width: 8, height: 6, channels: 3, background: '#7a8' } });
const place = { IFD3: { GPSLatitudeRef: 'N', GPSLatitude: '41/1 24/1 0/1' } };
const read = async (picture: Sharp): Promise<Metadata> => sharp(await picture.toBuffer()).metadata();
const xmp = (inside: string) => `<x:xmpmeta xmlns:x="adobe:ns:meta/"><rdf:RDF xmlns:rdf="http://www.w3.org/1999/02/22-rdf-syntax-ns#"><rdf:Description rdf:about="" ${inside}/></rdf:RDF></x:xmpmeta>`;

test.each([
  ['no data at all', undefined, () => plain.clone().jpeg()],
  [
    'a line on rights',
    undefined,
    () =>
      plain
        .clone()
        .jpeg()
        .withExif({ IFD0: { Copyright: 'The test shelf' } }),
  ],
  [
    'a camera',
    'camera',
    () =>
      plain
        .clone()
        .jpeg()
        .withExif({ IFD0: { Make: 'Lanternfish', Model: 'L1' } }),
  ],
  ['a place in JPEG', 'place', () => plain.clone().jpeg().withExif(place)],
  ['a place in PNG', 'place', () => plain.clone().png().withExif(place)],
  ['a place in WebP', 'place', () => plain.clone().webp().withExif(place)],
  ['a place in XMP', 'place', () => plain.clone().jpeg().withXmp(xmp('xmlns:exif="http://ns.adobe.com/exif/1.0/" exif:GPSLatitude="41,24N"'))],
  ['a camera in XMP', 'camera', () => plain.clone().jpeg().withXmp(xmp('xmlns:tiff="http://ns.adobe.com/tiff/1.0/" tiff:Make="Lanternfish"'))],
] as const)('a picture with %s', async (_, expected, make) => {
  expect(metadataOf(await read(make()))).toBe(expected);
});

test('either order of bytes is read', () => {
  const big = Buffer.from('4d4d002a00000008000188250004000000010000001a00000000', 'hex');
  const little = Buffer.from('49492a0008000000010025880400010000001a00000000000000', 'hex');
  expect([metadataOf({ exif: big }), metadataOf({ exif: little })]).toEqual(['place', 'place']);
});

test('data that is cut short, or no data of its kind, harms nothing', async () => {
  const { exif } = await read(plain.clone().jpeg().withExif(place));
  for (let length = 0; length < (exif?.length ?? 0); length++) expect(() => metadataOf({ exif: exif?.subarray(0, length) })).not.toThrow();
  expect(metadataOf({ exif: Buffer.from('not a picture at all') })).toBeUndefined();
});

test('a town in IPTC is a place', () => {
  expect(metadataOf({ iptc: Buffer.from([0x1c, 0x02, 90, 0, 5, 0x53, 0x61, 0x6c, 0x74, 0x67]) })).toBe('place');
  expect(metadataOf({ iptc: Buffer.from([0x1c, 0x02, 80, 0, 5, 0x53, 0x61, 0x6c, 0x74, 0x67]) })).toBeUndefined();
});
