/** An order that a seed decides, so that two people and two tries can have the same one. No secret is kept with it. */

/** Sixteen letters and digits for a text: two hashes of 32 bits after FNV-1a. Source: G. Fowler, L. C. Noll, K.-P. Vo, public domain, from memory. */
export function hashOf(text: string): string {
  return [fnv(text, 0x811c9dc5, 0x01000193), fnv(text, 0x9747b28c, 0x85ebca6b)].map((each) => each.toString(16).padStart(8, '0')).join('');
}

function fnv(text: string, begin: number, prime: number): number {
  let hash = begin;
  for (let at = 0; at < text.length; at++) {
    hash ^= text.charCodeAt(at);
    hash = Math.imul(hash, prime);
  }
  // Mixed once more, since FNV's last letters reach the high bits late.
  hash ^= hash >>> 15;
  hash = Math.imul(hash, 0x2c1b3c6d);
  return (hash ^ (hash >>> 13)) >>> 0;
}

/** The items in an order of the seed's choosing: each order as likely as any other (Fisher and Yates), by numbers from a Weyl sequence. */
export function shuffled<T>(items: readonly T[], seed: string): readonly T[] {
  const next = numbersFrom(seed);
  const order = [...items];
  for (let last = order.length - 1; last > 0; last--) {
    const other = Math.floor(next() * (last + 1));
    [order[last], order[other]] = [order[other] as T, order[last] as T];
  }
  return order;
}

/** Numbers from 0 up to 1. */
function numbersFrom(seed: string): () => number {
  let state = Number.parseInt(hashOf(seed).slice(0, 8), 16);
  return () => {
    state = (state + 0x9e3779b9) | 0;
    let mixed = Math.imul(state ^ (state >>> 16), 0x21f0aaad);
    mixed = Math.imul(mixed ^ (mixed >>> 15), 0x735a2d97);
    return ((mixed ^ (mixed >>> 15)) >>> 0) / 4294967296;
  };
}
