/**
 * A library as a district has it, of any size and the same each time: three languages, translations beside their books, pictures, several
 * schools, and one pack in a hundred that is broken. The words are everyday ones in sentences that hold together; the books are invented.
 */
import { cpSync, mkdirSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import sharp from 'sharp';
import { seeded } from './invented-library.ts';

/** What sentences are made of in a language: who, what they do, what with, and the questions. */
interface Words {
  readonly title: (a: string, b: string) => string;
  readonly who: readonly string[];
  readonly does: readonly string[];
  readonly what: readonly string[];
  readonly sentence: (who: string, does: string, what: string) => string;
  readonly ask: (who: string) => string;
  readonly why: (who: string) => string;
  readonly frames: readonly [string, string];
  readonly models: readonly [string, string];
  readonly purpose: string;
  readonly headings: readonly [string, string];
  readonly alt: (what: string) => string;
}

const english: Words = {
  title: (a, b) => `${a} and ${b}`,
  who: ['the ferryman', 'a small sparrow', 'my grandmother', 'the baker', 'a lost kitten', 'the new girl', 'our neighbour', 'the oldest crow'],
  does: ['mends', 'carries home', 'hides', 'looks for', 'shares', 'paints', 'forgets', 'borrows'],
  what: ['the lantern', 'a wooden boat', 'the last pear', 'a blue kite', 'the garden gate', 'a warm blanket', 'the old drum', 'a jar of buttons'],
  sentence: (who, does, what) => `In the morning ${who} ${does} ${what}.`,
  ask: (who) => `What will ${who} do now, and what makes you think so?`,
  why: (who) => `Why did ${who} wait so long?`,
  frames: ['I think ___.', 'I think ___ because ___.'],
  models: ['I think it will wait.', 'I think it will wait because the door is shut.'],
  purpose: 'Follow what happens and guess what comes next.',
  headings: ['About this book', 'After reading'],
  alt: (what) => `Someone holds ${what} in both hands beside an open window.`,
};
const spanish: Words = {
  title: (a, b) => `${a} y ${b}`,
  who: ['el barquero', 'una gaviota pequeña', 'mi abuela', 'la panadera', 'un gato perdido', 'la niña nueva', 'nuestro vecino', 'el cuervo más viejo'],
  does: ['arregla', 'lleva a casa', 'esconde', 'busca', 'comparte', 'pinta', 'olvida', 'pide prestado'],
  what: ['el farol', 'una barca de madera', 'la última pera', 'una cometa azul', 'la puerta del jardín', 'una manta tibia', 'el tambor viejo', 'un frasco de botones'],
  sentence: (who, does, what) => `Por la mañana ${who} ${does} ${what}.`,
  ask: (who) => `¿Qué hará ahora ${who}, y por qué lo crees?`,
  why: (who) => `¿Por qué esperó tanto ${who}?`,
  frames: ['Creo que ___.', 'Creo que ___ porque ___.'],
  models: ['Creo que va a esperar.', 'Creo que va a esperar porque la puerta está cerrada.'],
  purpose: 'Seguir lo que pasa y adivinar lo que viene.',
  headings: ['Sobre este libro', 'Después de leer'],
  alt: (what) => `Alguien sostiene ${what} con las dos manos junto a una ventana abierta.`,
};
const arabic: Words = {
  title: (a, b) => `${a} و${b}`,
  who: ['الملاح', 'العصفور الصغير', 'جدي', 'الخباز', 'القط الضائع', 'الولد الجديد', 'جارنا', 'الغراب العجوز'],
  does: ['يصلح', 'يحمل', 'يخفي', 'يجد', 'يقسم', 'يرسم', 'ينسى', 'يستعير'],
  what: ['المصباح', 'القارب', 'الإجاصة الأخيرة', 'الطائرة الورقية', 'باب الحديقة', 'الغطاء الدافئ', 'الطبل القديم', 'وعاء الأزرار'],
  sentence: (who, does, what) => `في الصباح ${does} ${who} ${what}.`,
  ask: (who) => `ماذا سيفعل ${who} الآن، ولماذا تظن ذلك؟`,
  why: (who) => `لماذا انتظر ${who} طويلًا؟`,
  frames: ['أظن أن ___.', 'أظن أن ___ لأن ___.'],
  models: ['أظن أنه سينتظر.', 'أظن أنه سينتظر لأن الباب مغلق.'],
  purpose: 'نتابع ما يحدث ونخمّن ما سيأتي.',
  headings: ['عن هذا الكتاب', 'بعد القراءة'],
  alt: (what) => `يد تمسك ${what} قرب نافذة مفتوحة.`,
};
const wordsOf = { en: english, es: spanish, ar: arabic } as const;
type Language = keyof typeof wordsOf;

const schools = ['Saltmarsh Primary', 'Ladle Street School', 'Harbour Row Infants', 'Northgate', 'The Tin Roof School'];
/** Ways in which packs of many hands are broken. Each keeps its pack off the site and no other. */
const breaks: readonly ((text: string) => string)[] = [
  (text) => text.replace(/^summary: .*$/m, 'summary: "never closed'),
  (text) => text.replace(/^title: .*\n/m, ''),
  (text) => text.slice(0, Math.floor(text.length / 3)),
  (text) => text.replace('stops:', 'stosp:'),
  (text) => text.replace(/depth: \d/, 'depth: 9'),
];

export interface Mixed {
  /** Files of packs that are sound, and of those that are broken. */
  readonly sound: number;
  readonly broken: readonly string[];
}

/** Writes a library of `count` books below `content`. One in eight has a translation beside it, one in three a picture. */
export async function writeMixedLibrary(content: string, count: number, seed = 20261128): Promise<Mixed> {
  const random = seeded(seed);
  const pick = <T>(list: readonly T[]): T => list[Math.floor(random() * list.length)] as T;
  const pictures = await Promise.all([1, 2, 3, 4].map(drawing));
  mkdirSync(content, { recursive: true });
  writeFileSync(
    join(content, 'library.yaml'),
    'name: The Saltmarsh district shelf\nnames: { es: Estante del distrito, ar: رف الحي }\nlanguage: en\nlanguages: [en, es, ar]\ncontact: desk@saltmarsh.example\nrights: Each companion names its own licence.\naddress: https://shelf.saltmarsh.example/reading/\n',
  );
  // What a library says about itself is the demo's.
  cpSync(fileURLToPath(new URL('../../content/pages', import.meta.url)), join(content, 'pages'), { recursive: true });
  const broken: string[] = [];
  let files = 0;
  for (let index = 0; index < count; index++) {
    const slug = `book-${String(index).padStart(5, '0')}`;
    const folder = join(content, 'packs', slug);
    const picture = index % 3 === 0;
    mkdirSync(picture ? join(folder, 'pictures') : folder, { recursive: true });
    if (picture) writeFileSync(join(folder, 'pictures/plate.png'), pictures[index % pictures.length] as Buffer);
    const first: Language = index % 10 === 9 ? 'ar' : index % 5 === 2 ? 'es' : 'en';
    const languages: readonly Language[] = index % 8 === 0 ? [first, first === 'en' ? 'es' : 'en'] : [first];
    for (const [at, language] of languages.entries()) {
      const text = packText(index, language, wordsOf[language], picture, pick, random);
      const breaks_ = at === 0 && index % 100 === 57 ? breaks[Math.floor(index / 100) % breaks.length] : undefined;
      const name = at === 0 ? 'pack.md' : `pack.${language}.md`;
      if (breaks_) broken.push(`packs/${slug}/${name}`);
      files += 1;
      writeFileSync(join(folder, name), breaks_ ? breaks_(text) : text);
    }
  }
  return { sound: files - broken.length, broken };
}

function packText(index: number, language: Language, words: Words, picture: boolean, pick: <T>(list: readonly T[]) => T, random: () => number): string {
  const sentence = () => words.sentence(pick(words.who), pick(words.does), pick(words.what));
  const sentences = (number: number) => Array.from({ length: number }, sentence).join(' ');
  const month = 1 + (index % 9);
  const stops = Array.from({ length: 4 + (index % 3) }, (_, stop) => {
    const own = stop === 2;
    return `  - id: stop-${String(stop)}
    at: { opening: ${String(stop * 2 + 1)}, cue: "${pick(words.who)} ${pick(words.does)}" }
    ask: "${stop % 2 === 0 ? words.ask(pick(words.who)) : words.why(pick(words.who))}"
    kind: ${own ? 'own life' : stop % 2 === 0 ? 'predict' : 'reason'}
    depth: ${String(1 + ((stop + index) % 4))}
    answer: ${['write', 'say', 'draw', 'partner'][stop % 4] ?? 'say'}
    or: ${stop % 4 === 2 ? 'say' : 'draw'}
    frames: ["${words.frames[0]}", "${words.frames[1]}"]
    models: [{ text: "${words.models[0]}" }, { text: "${words.models[1]}" }]
    listen for: "${sentence()}"
    if quiet: "${sentence()}"
`;
  }).join('');
  return `---
title: "${words.title(pick(words.who), pick(words.what))} ${String(index + 1)}"
language: ${language}
summary: "${sentences(2)}"
book: { title: "${words.title(pick(words.who), pick(words.what))} ${String(index + 1)}", author: "A. Nobody", year: ${String(1990 + (index % 36))}, openings: 14, words: ${String(250 + Math.floor(random() * 500))}, rights: our own }
by: { name: "R. Nobody", school: "${pick(schools)}", licence: ${index % 4 === 0 ? 'CC0 1.0' : 'CC BY 4.0'}, reviewed: 2026-0${String(month)}-1${String(index % 10)} }
for: { grades: [${['K, 1', '1, 2', 'PreK', '2, 3'][index % 4] ?? 'K'}], minutes: ${String(30 + (index % 4) * 5)} }
readings: [{ reading: 1, purpose: "${words.purpose}" }]
stops:
${stops}words:
${Array.from({ length: 3 }, () => `  - { word: "${pick(words.what)}", meaning: "${sentence()}", situation: "${sentence()}" }\n`).join('')}home: { prompts: ["${words.ask(pick(words.who))}", "${words.why(pick(words.who))}"] }
${picture ? `pictures: [{ file: plate.png, alt: "${words.alt(pick(words.what))}", credit: "R. Nobody", rights: our own }]\n` : ''}---

## ${words.headings[0]}

${sentences(4)}

## ${words.headings[1]}

${sentences(4)}
`;
}

/** A small drawing of ours: a window and a round thing, of another colour each time. */
async function drawing(number: number): Promise<Buffer> {
  const svg = `<svg xmlns="http://www.w3.org/2000/svg" width="360" height="240"><rect width="360" height="240" fill="#f3e7cf"/><rect x="30" y="30" width="120" height="150" fill="none" stroke="#2b211a" stroke-width="6"/><circle cx="${String(190 + number * 30)}" cy="150" r="40" fill="hsl(${String(number * 80)},40%,45%)"/></svg>`;
  return sharp(Buffer.from(svg)).png().toBuffer();
}
