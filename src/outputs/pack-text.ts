/** As long as the file of a pack may be, in bytes: the reader of the build takes no more. */
export const longestPackText = 512_000;

/** Bytes as the text of a pack; a mark of byte order at the beginning stays. */
export function plainText(bytes: Uint8Array | ArrayBuffer): string | undefined {
  try {
    const text = new TextDecoder('utf-8', { fatal: true, ignoreBOM: true }).decode(bytes);
    return /^\ufeff?---/.test(text) ? text : undefined;
  } catch {
    return undefined;
  }
}
