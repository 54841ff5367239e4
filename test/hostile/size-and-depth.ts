/** Markdown that is large, deep, or costs more than it weighs. After the pathological inputs of markdown-it's and CommonMark's own tests. Each in bounded time; what is too large or too deep is told, and the others are as large as a body may be. */
import { body, bodyLine, fill, many, refused, withBody, type HostileClass } from './hostile-case.ts';

const deep = [`${bodyLine} body/too-deep`] as const;

export const sizeAndDepth: HostileClass = {
  class: 'Markdown size and depth',
  cases: [
    refused('a line of ten megabytes', withBody('word '.repeat(2_000_000)), '1 file/too-big'),
    refused('a body of 60,001 letters', withBody('a'.repeat(60_000)), `${bodyLine - 1} body/too-long`),
    refused('quotes within quotes', withBody(`${fill('>', 50_000)}a`), ...deep),
    refused('lists within lists', withBody(`${fill('- ', 50_000)}a`), ...deep),
    body('brackets within brackets', fill('[', 50_000)),
    body('open pictures', fill('![', 50_000)),
    body('stars within stars', `${fill('*', 50_000, 0.5)}a${fill('*', 50_000, 0.5)}`),
    body('stars of unequal length', fill('**x* ', 40_000)),
    body('openings of all kinds', fill('*_[', 50_000)),
    body('runs of backticks, each longer', Array.from({ length: many(300) }, (_, index) => `${'`'.repeat(index + 1)}a`).join('')),
    body('a table of as many columns as a body holds', `${fill('|a', 10_000, 0.3)}|\n${fill('|-', 10_000, 0.3)}|\n${fill('|b', 10_000, 0.3)}|`),
    body('a table whose rows would be filled up', `${fill('|a', 5000, 0.3)}|\n${fill('|-', 5000, 0.3)}|\n${fill('b\n', 30_000, 0.3)}`),
    body('a table of as many rows as a body holds', `|a|b|\n|-|-|\n${fill('|\n', 60_000)}`),
    body('definitions of references', Array.from({ length: many(4000) }, (_, index) => `[a${index}]: x`).join('\n')),
    body('one reference used again and again', `[a]: x\n\n${fill('[a]', 100_000)}`),
    body('a link after the other', fill('[a](b)', 50_000)),
    body('links that are not closed', fill('[a](<b', 60_000)),
    body('links whose titles are not closed', fill('[a](b "', 50_000)),
    body('a remark after the other', fill('<!---->', 60_000)),
    body('tags that are not closed', fill('<a ', 100_000)),
    body('an entity after the other', fill('&amp;', 90_000)),
    body('a heading a line', fill('# a\n', 100_000)),
    body('a fence a line', fill('```\n```\n', 50_000)),
    body('backslashes alone', fill('\\', 400_000)),
    body('hyphens between letters', fill('a-', 200_000)),
    body('one letter under accents', `a${fill('\u0301', 100_000)}`),
    body('one word', fill('a', 400_000)),
    body('one sentence', fill('word ', 90_000)),
    body('line ends alone', `a${fill('\n', 400_000)}b`),
    refused('pictures that nobody listed', withBody(fill('![](a)', 40_000)), ...Array.from({ length: 10 }, () => `${bodyLine} body/picture-not-listed`), `${bodyLine} more/of-the-same`),
    body('links that are refused', fill('<javascript:x>\n', 30_000), [[1, 'body/link-refused']]),
    refused('signs that may not be there', withBody(fill('\u0001', 400_000)), ...Array.from({ length: 10 }, () => `${bodyLine} file/control-character`), `${bodyLine} more/of-the-same`),
  ],
};
