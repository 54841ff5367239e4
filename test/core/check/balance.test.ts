/** The checks of balance and fit, by cases a teacher can read: hits and near misses in English and Spanish. */
import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { balance } from '../../../src/core/check/balance.ts';
import { checkPack } from '../../../src/core/check/check-pack.ts';
import { patternOf } from '../../../src/core/check/frame-pattern.ts';
import { nothingAround } from '../../../src/core/check/surroundings.ts';
import { asksWhy } from '../../../src/core/check/why-and-how.ts';
import type { Finding } from '../../../src/core/finding.ts';
import type { Pack } from '../../../src/core/pack/pack.ts';
import { readPack } from '../../../src/core/pack/read-pack.ts';
import { casesIn } from '../cases.ts';

type Language = 'en' | 'es';
const shelf = new URL('../../packs/sound/the-kettle-band/', import.meta.url);
const sound = { en: readFileSync(new URL('pack.md', shelf), 'utf8'), es: readFileSync(new URL('pack.es.md', shelf), 'utf8') };

/** The places that the cases name, by what stands there in the sound pack. */
const places: Readonly<Record<string, Readonly<Record<Language, string>>>> = {
  'in the summary': {
    en: "Grandma's kettle has stopped whistling. Wren taps on a lid to cheer it up, and the street begins to listen.",
    es: 'La tetera de la abuela ya no silba. Wren toca una tapa para animarla, y la calle empieza a escuchar.',
  },
  'among the prompts for home': { en: "Let's find three things in this room that make a sound.", es: 'Busquemos en este cuarto tres cosas que suenen.' },
  'as the question about me': { en: 'What sound do you like to hear, and how does it make you feel? Draw it.', es: '¿Qué sonido te gusta oír, y cómo te hace sentir? Dibújalo.' },
  'as the question about a character': { en: 'How does Wren feel when the kettle stays quiet? How do you know?', es: '¿Cómo se siente Wren cuando la tetera sigue callada? ¿Cómo lo sabes?' },
  'as an aim': { en: 'Explain why characters do what they do', es: 'Explicar por qué los personajes hacen lo que hacen' },
  'as the meaning of': { en: 'When things rattle, they knock together and make many short sounds.', es: 'Cuando unas cosas traquetean, chocan y hacen muchos sonidos cortos.' },
  'as the situation of': { en: 'The cat has not come in, and it is dark.', es: 'El gato no ha vuelto, y ya es de noche.' },
  'as the second model of a feeling': { en: 'Wren feels disappointed because her song did not help.', es: 'Wren se siente desilusionada porque su canción no ayudó.' },
  'as the third model of a feeling': { en: 'Wren feels worried, and in the picture her spoon hangs down.', es: 'Wren se siente preocupada, y en el dibujo su cuchara cuelga.' },
  'as the first frame about me': { en: '- I like ___.', es: '- Me gusta ___.' },
  'as the first frame about a character': { en: '- Wren feels ___.', es: '- Wren se siente ___.' },
};

function packOf(text: string): Pack {
  const read = readPack({ slug: 'kettle', file: 'pack.md', text, languageOfFile: undefined, pictureFiles: [], passage: undefined });
  if (!read.value) throw new Error(`not readable: ${JSON.stringify(read.findings)}`);
  return read.value;
}

/** What a finding is about, in a word. */
function about({ facts }: Finding): string {
  const { word, words, lacks, article, frame, kinds } = facts as Readonly<Record<string, unknown>>;
  const said = word ?? words ?? lacks ?? article ?? frame ?? (kinds as readonly string[] | undefined)?.[0] ?? 'told';
  return typeof said === 'string' ? said : JSON.stringify(said);
}

describe('words that a check looks for', () => {
  test.each(casesIn('balance-words'))('$title', ({ title, input, expected }) => {
    const [, code = '', place = '', language = ''] = /^(\S+), (.+?)(?: "\S+")?, (en|es)\b/u.exec(title) ?? [];
    const there = places[place]?.[language as Language] ?? '';
    let text = sound[language as Language];
    expect(there).not.toBe('');
    expect(text).toContain(there);
    // A frame with "because" asks for the reason too.
    if (title.includes('frames without')) text = text.replace(/^ *- Wren (?:feels ___ because|se siente ___ porque) ___\.\n/mu, '');
    const told = input.split('\n').map((line) => {
      const replaced = text.replace(there, () => (there.startsWith('- ') ? `- ${JSON.stringify(line)}` : JSON.stringify(line)));
      const found = checkPack(packOf(replaced)).findings.filter((each) => each.code === code);
      return found.map(about).join(', ') || '-';
    });
    expect(told.join('\n')).toBe(expected);
  });
});

test.each(casesIn('why-and-how'))('a question that asks why or how: $title', ({ title, input, expected }) => {
  expect(
    input
      .split('\n')
      .map((line) => (asksWhy(line, title as Language) ? 'yes' : '-'))
      .join('\n'),
  ).toBe(expected);
});

test.each(casesIn('frame-fits'))('an answer fits a frame: $title', ({ input, expected }) => {
  const lines = input.split('\n').map((line) => line.split(' -> '));
  expect(lines.map(([frame = '', answer = '']) => (patternOf(frame)(answer) ? 'yes' : '-')).join('\n')).toBe(expected);
});

describe('a whole pack', () => {
  test.each(casesIn('balance'))('$title', ({ input, expected }) => {
    const [language = 'en', ...changes] = input.split('\n');
    let text = sound[language as Language];
    for (const change of changes) {
      const [from = '', to = ''] = change.split(' => ');
      const lines = from.replaceAll('|', '\n');
      expect(text).toContain(lines);
      text = text.replaceAll(lines, () => to.replaceAll('|', '\n'));
    }
    const findings = checkPack(packOf(text)).findings;
    expect(findings.map(({ level, code, facts }) => `${level} ${code} ${JSON.stringify(facts)}`).join('\n')).toBe(expected);
  });
});

describe('the passage', () => {
  const words = (count: number) => Array.from({ length: count }, () => 'la').join(' ');
  const near = (gap: number) => `${words(230)} and nobody said a word ${words(gap)} first one door and then six ${words(200)} a whole street of lids ${words(40)}`;
  const told = (passage: string) => Object.values(balance).flatMap((rule) => [...rule(packOf(sound.en), { ...nothingAround, passage })]);

  test('where it is there, words are counted from cue to cue', () => {
    expect(told(near(40)).map(({ code }) => code)).toEqual([]);
    expect(told(near(10)).map(({ code, facts }) => [code, facts])).toEqual([['stop/too-close', { stop: 'pots-come-out', before: 'cold-kitchen', words: 16, estimated: false, least: 40 }]]);
  });

  test('of its words of loss one is named, and nothing around it', () => {
    expect(told(`${near(40)} The old cat Mirabelle died in the night.`).map(({ code, facts }) => [code, facts])).toEqual([['care/no-note', { word: 'died', where: 'passage' }]]);
  });
});

test('in a language whose words nobody taught the checks, they keep silent about words', () => {
  const text = sound.en.replace('language: en', 'language: it').replace("Grandma's kettle has", 'Grandma died, and her kettle has').replace('- I like ___.', '- Wren likes a ___.');
  expect(checkPack(packOf(text)).findings.map(({ code }) => code)).toEqual(['models/fits-no-frame']);
});

test('a pack with parts left out, or none at all, is looked at without a slip', () => {
  for (const text of Object.values(sound)) {
    const lines = text.split('\n');
    for (let line = 1; line < lines.length; line++) {
      const read = readPack({ slug: 'kettle', file: 'pack.md', text: lines.toSpliced(line, 1).join('\n'), languageOfFile: undefined, pictureFiles: [], passage: undefined });
      if (read.value) expect(() => checkPack(read.value as Pack)).not.toThrow();
    }
  }
});
