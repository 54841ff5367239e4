/** Between these marks a handed-over page holds its data. No text of a child can make either: in the data "<" is written as an escape, and in the page as an entity. */
export const dataBegin = '<script type="application/json" id="companion-booklet">';
export const dataEnd = '</script>';

/**
 * Data as text of plain ASCII: whatever a mail program or an editor does to the letters of a page, the data comes through.
 * A half of a surrogate pair on its own, a line separator, `</script>`: all are escapes and come back as they were.
 * Fields stand in one order, so that equal booklets are equal files, byte for byte.
 */
export function dataText(data: unknown): string {
  return JSON.stringify(data, (_, value: unknown) => (typeof value === 'object' && value !== null && !Array.isArray(value) ? inOrder(value) : value)).replace(
    /[<>&\u007f-\uffff]/g,
    (character) => `\\u${character.charCodeAt(0).toString(16).padStart(4, '0')}`,
  );
}

/** These first, so that whoever opens the file sees what it is; then by name. */
const first = ['format', 'version', 'id'];

function inOrder(fields: object): object {
  const rank = (name: string) => (first.includes(name) ? first.indexOf(name) : first.length);
  return Object.fromEntries(Object.entries(fields).sort(([a], [b]) => rank(a) - rank(b) || (a < b ? -1 : 1)));
}
