/** Names that Windows keeps for devices; a folder of that name could not be copied there. */
const reserved = /^(?:con|prn|aux|nul|com\d|lpt\d)$/;

/** Most letters of an address of a pack. */
const longest = 80;

/** The address that a folder's name makes: small letters, digits and single dashes, at most 80. */
export function slugOf(name: string): string {
  const slug = plain(name);
  return slug === '' || reserved.test(slug) ? `pack-${slug}`.replace(/-$/, '') : slug;
}

/**
 * The address of a pack of another folder than the library's own, whose names the librarian cannot change. However the disk
 * writes accents, a name has one address. A name without Latin letters gets one made of all its letters, so that two of them differ.
 */
export function slugInSource(name: string, prefix: string | undefined): string {
  const own = plain(name) === '' ? `pack-${marksOf(name.normalize('NFC'))}` : slugOf(name);
  const slug = prefix === undefined ? own : `${prefix}-${own}`;
  return slug.slice(0, longest).replace(/-+$/, '');
}

function plain(name: string): string {
  return name
    .normalize('NFKD')
    .replace(/\p{M}/gu, '')
    .toLowerCase()
    .replace(/[^a-z0-9]+/g, '-')
    .replace(/^-+|-+$/g, '')
    .slice(0, longest)
    .replace(/-+$/, '');
}

/** FNV-1a with 32 bits, as letters and digits. Source: Fowler, Noll and Vo, from memory. */
function marksOf(text: string): string {
  let hash = 0x811c9dc5;
  for (let at = 0; at < text.length; at++) hash = Math.imul(hash ^ text.charCodeAt(at), 0x01000193);
  return (hash >>> 0).toString(36);
}
