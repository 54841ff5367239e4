/** Reads the cases of test/core/cases/*.txt: a title after `=====`, the input, a line of five hyphens, what is expected. */
import { readFileSync } from 'node:fs';

export interface Case {
  readonly title: string;
  readonly input: string;
  readonly expected: string;
}

/** The cases of one file, by its name without `.txt`. */
export function casesIn(name: string): readonly Case[] {
  const text = readFileSync(new URL(`cases/${name}.txt`, import.meta.url), 'utf8').replace(/\r\n/gu, '\n');
  return text
    .split(/^===== /mu)
    .slice(1)
    .map((section) => {
      const [, title = '', input = '', expected] = /^(.*)\n([^]*?)\n-----\n([^]*)$/u.exec(section) ?? [];
      if (expected === undefined) throw new Error(`A case in ${name}.txt has no line of five hyphens: ${section.slice(0, 60)}`);
      return { title, input, expected: expected.trimEnd() };
    });
}
