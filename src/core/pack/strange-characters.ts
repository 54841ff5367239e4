import { finding, type Finding } from '../finding.ts';

/** Characters that no field and no body may hold: they break feeds and terminals, turn text around to deceive, or are none. Source: XML 1.0, 2.2 Characters; Unicode UAX 9. */
const strange =
  // eslint-disable-next-line no-control-regex -- control characters are what is looked for
  /[\u0000-\u0008\u000b-\u001f\u007f-\u009f\u202a-\u202e\u2066-\u2069\ufffd\ufffe\uffff]|[\ud800-\udbff](?![\udc00-\udfff])|(?<![\ud800-\udbff])[\udc00-\udfff]/g;

/** The strange characters of a text: where each stands, counted from 0, and its name, `U+202E`. */
function* strangeIn(text: string): Iterable<{ readonly at: number; readonly character: string }> {
  for (const { 0: found, index } of text.matchAll(strange)) yield { at: index, character: `U+${found.charCodeAt(0).toString(16).toUpperCase().padStart(4, '0')}` };
}

/** The first of them in a text, where the text as written has none: it was written as a sign for a character, `\u202e` or `&#x202e;`. */
export function strangeBehindSigns(text: string, written: string): string | undefined {
  const [first] = strangeIn(text);
  const [plain] = first ? strangeIn(written) : [];
  return plain ? undefined : first?.character;
}

/** Every such character of a file, up to a few more than are told. */
export function strangeCharacters(text: string, file: string): readonly Finding[] {
  const findings: Finding[] = [];
  // Hardly any file has one, and to look through it line by line takes ten times as long.
  if (text.search(strange) === -1) return findings;
  for (const [index, line] of text.split('\n').entries()) {
    for (const { at, character } of strangeIn(line)) {
      findings.push(finding('file/control-character', 'stop', { file, line: index + 1, column: at + 1 }, { character }));
      if (findings.length > 50) return findings;
    }
  }
  return findings;
}
