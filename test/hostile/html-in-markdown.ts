/** Tags in every casing and break. After OWASP's sheet on the evasion of XSS filters and CommonMark's part on raw HTML, in our own words. All of it is text, as typed. */
import { body, bodyLine, withBody, type HostileClass } from './hostile-case.ts';

/** Each is shown as it is typed. */
const typed: Readonly<Record<string, string>> = {
  'a script': '<script>canary()</script>',
  'a script in mixed case': '<ScRiPt>canary()</sCrIpT>',
  'a script with a line break in its name': '<script\t>canary()</script >',
  'a script that is not closed': '<script>canary()',
  'a script from elsewhere': '<script src=//elsewhere.example/a.js></script>',
  'a picture with a handler': '<img src=x onerror=canary()>',
  'a picture with a handler and a slash for a space': '<img/src=x/onerror=canary()>',
  'a picture that is not closed': '<img src=x onerror="canary()"',
  'an SVG that loads': '<svg onload=canary()><g/onload=canary()></svg>',
  'an SVG with a script within': '<svg><script href=data:,canary()></script></svg>',
  'an animation that sets an address': '<svg><a><animate attributeName=href values=javascript:canary() /><text>press</text></a></svg>',
  'MathML with an address': '<math><mtext href="javascript:canary()">press</mtext></math>',
  'MathML that changes how the rest is read': '<math><mi><table><mglyph><style><img src=x onerror=canary()>',
  'a frame with a page in it': '<iframe srcdoc="<script>parent.canary()</script>"></iframe>',
  'a frame from elsewhere': '<iframe src=https://elsewhere.example></iframe>',
  'an object and an embed': '<object data=data:text/html,canary></object><embed src=x>',
  'a base that moves all links': '<base href=https://elsewhere.example/>',
  'a refresh': '<meta http-equiv=refresh content="0;url=https://elsewhere.example">',
  'a policy of its own': '<meta http-equiv=Content-Security-Policy content="script-src *">',
  'a style': '<style>body{display:none}</style>',
  'a style that asks elsewhere': '<style>@import "//elsewhere.example/a.css";</style>',
  'a style sheet': '<link rel=stylesheet href=//elsewhere.example/a.css>',
  'a form': '<form action=//elsewhere.example><input name=attributes><button formaction=javascript:canary()>press</button></form>',
  'a field that takes the focus': '<input autofocus onfocus=canary()>',
  'parts that open and play': '<details open ontoggle=canary()></details><video><source onerror=canary()></video><audio src=x onerror=canary()></audio>',
  CDATA: '<![CDATA[<script>canary()</script>]]>',
  'an instruction and a declaration': '<?php canary() ?> <!DOCTYPE x> <!ENTITY y>',
  'the end of the document': '</main></body></html><script>canary()</script>',
  'the end of a title and of a text area': '</title></textarea></noscript><script>canary()</script>',
  'a template': '<template><script>canary()</script></template><noscript><p title="</noscript><img src=x onerror=canary()>">',
  'a custom element': '<x-hostile is=script onclick=canary()></x-hostile>',
  'a tag behind a null sign': '<scr%00ipt>canary()</scr%00ipt>',
  'letters that look like brackets': '＜script＞canary()＜/script＞ ‹img src=x onerror=canary()›',
};

export const htmlInMarkdown: HostileClass = {
  class: 'HTML in Markdown',
  cases: [
    ...Object.entries(typed).map(([name, text]) => body(name, text, [], [text.replace(/\t/g, ' ')])),
    body('tags as entities', '&lt;script&gt;canary()&lt;/script&gt; &#60;img src=x onerror=canary()&#62; &#x3c;b&#x3e;', [], ['<script>canary()</script> <img src=x onerror=canary()> <b>']),
    body(
      'tags in a heading, a list, a quote, a table and in code',
      '# <script>canary()</script>\n\n- <img src=x onerror=canary()>\n\n> <svg onload=canary()>\n\n| <b> |\n| - |\n| <iframe srcdoc=x> |\n\n`<u>` and\n\n    <plaintext>',
      [],
      ['<script>canary()</script>', '<img src=x onerror=canary()>', '<iframe srcdoc=x>', '<plaintext>'],
    ),
    body('a fence whose language breaks out', '```"><script>canary()</script>\nHello\n```', [], ['Hello']),
    body(
      'remarks, which are taken out',
      'Before <!-- <script>canary()</script> --> after\n\n<!--[if IE]><script>canary()</script><![endif]-->\n\n<!--><img src=x onerror=canary()>-->\n\nEnd',
      [],
      ['Before', 'after', 'End'],
    ),
    { name: 'a remark that never ends', files: { 'pack.md': withBody('Before\n\n<!-- and then <script>canary()</script>') }, told: [`${bodyLine + 2} body/comment-unclosed`], published: false },
  ],
};
