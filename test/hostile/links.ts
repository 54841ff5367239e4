/** Links and pictures that run, lead astray or ask elsewhere. After OWASP's sheets and the tests of markdown-it's door, in our own words. Only http, https, mailto, tel and relative links stay links. */
import { body, bodyLine, withBody, type Hostile, type HostileClass } from './hostile-case.ts';

const refused = 'body/link-refused';
/** A link that is left as text, with one thing told, on its line. */
const link = (name: string, text: string, line = 1): Hostile => body(name, text, [[line, refused]]);

export const links: HostileClass = {
  class: 'links and pictures',
  cases: [
    link('javascript:', '[press](javascript:canary())'),
    link('in mixed case', '[press](JaVaScRiPt:canary())'),
    link('with an entity for a letter', '[press](java&#115;cript:canary())'),
    link('with an entity for the colon', '[press](javascript&colon;canary())'),
    link('with an entity for a tab', '[press](java&Tab;script:canary())'),
    link('with an entity for a line break', '[press](java&#10;script:canary())'),
    link('with a backslash before the colon', '[press](javascript\\:canary())'),
    link('in angle brackets, after a space', '[press](< javascript:canary()>)'),
    link('over two lines', 'Before\n[press](\njavascript:canary())', 3),
    link('vbscript:', '[press](vbscript:canary())'),
    link('data:', '[press](data:text/html;base64,PHNjcmlwdD5jYW5hcnkoKTwvc2NyaXB0Pg)'),
    link('blob:', '[press](blob:https://books.example/1)'),
    link('view-source:', '[press](view-source:javascript:canary())'),
    link('feed:', '[press](feed:javascript:canary())'),
    link('intent:', '[press](intent://books.example#Intent;end)'),
    link('file:', '[press](file:///etc/hostname)'),
    link('without a scheme, to another host', '[press](//elsewhere.example)'),
    link('a null sign', '[press](https://books.example/%00)'),
    link('a sign that steers a terminal', '[press](https://books.example/%1b[31m)'),
    link('by reference', 'Read [this]\n\n[this]: javascript:canary()', 3),
    link('by reference, over two lines', 'Read [this]\n\n[this]:\n  javascript:canary()', 4),
    link('an automatic link', '<javascript:canary()>'),
    link('an automatic link with a null sign', '<https://books.example/%00>'),
    link('a picture that runs', '![a hill](javascript:canary())'),
    link('a picture from another host', '![a hill](//elsewhere.example/x.png)'),
    link('a picture in a page', '![a hill](data:image/svg+xml,%3Csvg/onload=canary()%3E)'),
    { name: 'a picture that the pack does not list', files: { 'pack.md': withBody('![a hill](https://elsewhere.example/x.png)') }, told: [`${bodyLine} body/picture-not-listed`], published: false },
    { name: 'a picture outside the pack', files: { 'pack.md': withBody('![a hill](../../private/roster.png)') }, told: [`${bodyLine} body/picture-not-listed`], published: false },
    { name: 'a picture outside the pack, in signs', files: { 'pack.md': withBody('![a hill](%2e%2e%2f%2e%2e%2fprivate)') }, told: [`${bodyLine} body/picture-not-listed`], published: false },
    body('a title that breaks out', '[press](https://books.example "\\"><script>canary()</script>")', [], ['press']),
    body('a title that breaks out, in single quotes', '[press](https://books.example \'" onmouseover="canary()\')', [], ['press']),
    body('an address that breaks out', '[press](https://books.example/"onmouseover="canary())', [], ['press']),
    body('an address in signs that breaks out', '[press](https://books.example/&quot;onmouseover=&quot;canary())', [], ['press']),
    body('a link within a link', '[a [b](https://one.example) c](https://two.example)', [], ['b']),
    { ...body('a name before another host', '[press](https://books.example@elsewhere.example/)', [[1, 'privacy/email']]), published: false },
    body('backslashes before a host, which stay within the site', '[press](/\\\\elsewhere.example)', [], ['press']),
    body('a letter from another alphabet in the host', '[press](https://bооks.example/)', [], ['press']),
    body('an address on the site that climbs', '[press](../../../../etc/passwd)', [], ['press']),
    { ...body('a letter to a person, with a script as its subject', '[write](mailto:desk@books.example?subject=%3Cscript%3E)', [[1, 'privacy/email']]), published: false },
  ],
};
