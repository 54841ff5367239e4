/** The bytes of a blob as base64, a slice at a time: a long call stack would end in an error. */
export async function base64(blob: Blob): Promise<string> {
  const bytes = new Uint8Array(await blob.arrayBuffer());
  const slice = 0x8000;
  let text = '';
  for (let at = 0; at < bytes.length; at += slice) text += String.fromCharCode(...bytes.subarray(at, at + slice));
  return btoa(text);
}
