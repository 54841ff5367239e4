/** Front matter that says it is code. The reader of front matter that we use runs `---js` as it comes (gray-matter 4.0.3); none of these reaches it. */
import { refused, sound, type HostileClass } from './hostile-case.ts';

const code = '{ title: globalThis.canaryRan = require("node:fs").writeFileSync("was-run", "run") }';
const engine = (name: string, line: string) => refused(name, `${line}\n${code}\n---\n\nText.\n`, '1 front-matter/not-yaml');

export const codeInFront: HostileClass = {
  class: 'front matter as code',
  cases: [
    ...['---js', '---javascript', '---JS', '--- js', '---\tjs', '---json', '--- json', '---coffee', '---toml', '---ejs', '---node', '---yaml', '---constructor', '---__proto__', '----', '---js '].map(
      (line) => engine(JSON.stringify(line), line),
    ),
    refused('a byte order mark before it', `\ufeff---js\n${code}\n---\n`, '1 front-matter/not-yaml'),
    refused('lines of a Mac of old', `---js\r${code}\r---\r`, '1 front-matter/not-yaml'),
    refused('an empty line before it', `\n---js\n${code}\n---\n`, '1 front-matter/missing'),
    refused('other hyphens', `−−−js\n${code}\n−−−\n`, '1 front-matter/missing'),
    refused('a closing line that says js', `---\ntitle: T\n---js\n${code}\n`, '3 front-matter/not-yaml'),
    // The same faulty file twice: a reader that keeps what it read would give the second an empty pack.
    refused('a file like another', `---\ntitle: [T\n---\n`, '2 yaml/syntax'),
    refused('the file like it', `---\ntitle: [T\n---\n`, '2 yaml/syntax'),
    { name: 'code after a sound front matter, which is text', files: { 'pack.md': `${sound}\n---js\n${code}\n---\n` }, told: [], published: true, shows: ['globalThis.canaryRan'] },
  ],
};
