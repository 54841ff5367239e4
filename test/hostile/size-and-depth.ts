/** Markdown that is large, deep, or costs more than it weighs. After the pathological inputs of markdown-it's and CommonMark's own tests. Each in bounded time; what is too large or too deep is told. */
import { body, bodyLine, many, refused, withBody, type HostileClass } from './hostile-case.ts';

const deep = [`${bodyLine} body/too-deep`] as const;

export const sizeAndDepth: HostileClass = {
  class: 'Markdown size and depth',
  cases: [
    refused('a line of ten megabytes', withBody('word '.repeat(2_000_000)), '1 file/too-big'),
    refused('quotes within quotes', withBody(`${'>'.repeat(many(50_000))}a`), ...deep),
    refused('lists within lists', withBody(`${'- '.repeat(many(50_000))}a`), ...deep),
    body('brackets within brackets', '['.repeat(many(50_000))),
    body('open pictures', '!['.repeat(many(50_000))),
    body('stars within stars', `${'*'.repeat(many(50_000))}a${'*'.repeat(many(50_000))}`),
    body('stars of unequal length', '**x* '.repeat(many(40_000))),
    body('openings of all kinds', '*_['.repeat(many(50_000))),
    body('runs of backticks, each longer', Array.from({ length: many(900) }, (_, index) => `${'`'.repeat(index + 1)}a`).join('')),
    body('a table of 10,000 columns', `${'|a'.repeat(many(10_000))}|\n${'|-'.repeat(many(10_000))}|\n${'|b'.repeat(many(10_000))}|`),
    body('a table whose rows would be filled up', `${'|a'.repeat(many(5000))}|\n${'|-'.repeat(many(5000))}|\n${'b\n'.repeat(many(30_000))}`),
    body('a table of 60,000 rows', `|a|b|\n|-|-|\n${'|\n'.repeat(many(60_000))}`),
    body('definitions of 20,000 references', Array.from({ length: many(20_000) }, (_, index) => `[a${index}]: x`).join('\n')),
    body('one reference used 100,000 times', `[a]: x\n\n${'[a]'.repeat(many(100_000))}`),
    body('50,000 links', '[a](b)'.repeat(many(50_000))),
    body('links that are not closed', '[a](<b'.repeat(many(60_000))),
    body('links whose titles are not closed', '[a](b "'.repeat(many(50_000))),
    body('60,000 remarks', '<!---->'.repeat(many(60_000))),
    body('tags that are not closed', '<a '.repeat(many(100_000))),
    body('90,000 entities', '&amp;'.repeat(many(90_000))),
    body('100,000 headings', '# a\n'.repeat(many(60_000))),
    body('100,000 fences', '```\n'.repeat(many(60_000) + 1)),
    body('400,000 backslashes', '\\'.repeat(many(400_000))),
    body('200,000 hyphens between letters', 'a-'.repeat(many(200_000))),
    body('one letter under 100,000 accents', `a${'\u0301'.repeat(many(100_000))}`),
    body('one word of 400,000 letters', 'a'.repeat(many(400_000))),
    body('one sentence of 90,000 words', 'word '.repeat(many(90_000))),
    body('400,000 line ends', `a${'\n'.repeat(many(400_000))}b`),
    refused('40,000 pictures that nobody listed', withBody('![](a)'.repeat(many(40_000))), ...Array.from({ length: 10 }, () => `${bodyLine} body/picture-not-listed`), `${bodyLine} more/of-the-same`),
    body('30,000 links that are refused', '<javascript:x>\n'.repeat(many(30_000)), [[1, 'body/link-refused']]),
    refused('400,000 signs that may not be there', withBody('\u0001'.repeat(many(400_000))), ...Array.from({ length: 10 }, () => `${bodyLine} file/control-character`), `${bodyLine} more/of-the-same`),
  ],
};
