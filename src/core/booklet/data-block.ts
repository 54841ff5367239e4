/** Between these marks a handed-over page holds its data. No text of a child can make either: in the data "<" is written as an escape, and in the page as an entity. */
export const dataBegin = '<script type="application/json" id="companion-booklet">';
export const dataEnd = '</script>';

/**
 * Data as text of plain ASCII: whatever a mail program or an editor does to the letters of a page, the data comes through.
 * A half of a surrogate pair on its own, a line separator, `</script>`: all are escapes and come back as they were.
 */
export function dataText(data: unknown): string {
  return JSON.stringify(data).replace(/[<>&\u007f-\uffff]/g, (character) => `\\u${character.charCodeAt(0).toString(16).padStart(4, '0')}`);
}
