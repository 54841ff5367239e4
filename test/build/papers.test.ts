/** The sheets of small libraries: rulings true to size, one side whatever a pack holds, text that stays text, and what is told when a sheet cannot be made. */
import { mkdtemp, readFile, rm, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { pathToFileURL } from 'node:url';
import { afterAll, describe, expect, test } from 'vitest';
import { makePdfs } from '../../src/build/pdf.ts';
import { build, type Built } from '../../src/build/build.ts';
import { rulings } from '../../src/outputs/sheets/ruling.ts';
import { readPdf, type ReadPdf } from '../paper/read-pdf.ts';
import { smallLibrary, soundPack } from './small-library.ts';

const scratch = await mkdtemp(join(tmpdir(), 'bookfellow-papers-'));
afterAll(() => rm(scratch, { recursive: true, force: true }));

async function papersOf(
  packs: Readonly<Record<string, string>>,
  library = 'name: A shelf\nlanguage: en\nlanguages: [en, es]\ncontact: Ask at the desk.\nrights: Ours.\n',
): Promise<{ readonly built: Built; readonly pdf: (path: string) => Promise<ReadPdf>; readonly site: string }> {
  const files: Record<string, string> = { 'library.yaml': library };
  for (const [slug, text] of Object.entries(packs)) files[`packs/${slug}/pack.md`] = text;
  const { content, site, cache } = await smallLibrary(files);
  const built = await build({ content, site, cache, strict: false, paper: true });
  return { built, site, pdf: (path) => readPdf(join(site, 'packs', path)) };
}

const about = (built: Built) => built.findings.filter((found) => found.code.startsWith('paper/'));

describe('lines to write on', () => {
  test.each(Object.values(rulings))('$name: headline to base line is $height mm, within 0.3 mm, read from the PDF', async ({ name, height, lines }) => {
    const { pdf } = await papersOf({ hill: await soundPack(['  minutes: 30', `  minutes: 30\n  ruling: ${name}`]) });
    const booklet = await pdf('hill/booklet.pdf');
    const bases = booklet.lines.filter((line) => line.thickness === 1 && line.length > 150);
    expect(bases).toHaveLength(lines);
    for (const base of bases) {
      const above = booklet.lines.filter((line) => line.page === base.page && line.y < base.y - 1);
      const head = above.filter((line) => line.thickness === 0.5 && !line.dashed).at(-1);
      const middle = above.filter((line) => line.dashed).at(-1);
      expect(Math.abs(base.y - (head?.y ?? 0) - height)).toBeLessThan(0.3);
      expect(Math.abs(base.y - (middle?.y ?? 0) - height / 2)).toBeLessThan(0.3);
      expect(middle?.length).toBeCloseTo(base.length, 3);
    }
  });

  test('a pack that names no size gets the one for its youngest grade', async () => {
    const { pdf } = await papersOf({ young: await soundPack(), old: await soundPack(['grades: [K, 1]', 'grades: [2, 3]']) });
    const pitch = async (slug: string) => {
      const [first, second] = (await pdf(`${slug}/booklet.pdf`)).lines.filter((line) => line.thickness === 1 && line.length > 150);
      return (second?.y ?? 0) - (first?.y ?? 0);
    };
    expect(await pitch('young')).toBeCloseTo(rulings.large.height + rulings.large.gap, 1);
    expect(await pitch('old')).toBeCloseTo(rulings.small.height + rulings.small.gap, 1);
  });
});

/** A text of at most this many characters, in sentences. */
const filler = (most: number) =>
  'The wheel goes round and the long road goes on past the mill. '
    .repeat(Math.ceil(most / 60))
    .slice(0, most - 1)
    .trimEnd() + '.';

/** A pack with every text as long as it may be, and more stops than any lesson holds. */
async function stuffed(stops: number): Promise<string> {
  const more = Array.from(
    { length: stops },
    (_, index) => `  - id: more-${index}
    at: { opening: ${1 + (index % 12)}, cue: "${filler(80)}", picture: hidden }
    ask: "${filler(300)}"
    kind: reason
    depth: 3
    answer: ${index % 2 === 0 ? 'write' : 'draw'}
    or: say
    must: true
    wait: 5
    task: 20
    shares: 2
    materials: ["${filler(80)}", "${filler(70)}"]
    frames: ["It is ___ because ___.", "It is ___."]
    models: [{ text: "It is long because ${filler(350)}" }, { text: "It is long." }]
    listen for: "${filler(300)}"
    if quiet: "${filler(300)}"
`,
  ).join('');
  return soundPack(
    ['title: The Wheelbarrow Goes Home', `title: "${filler(110)}"`],
    ['  minutes: 30', '  minutes: 120'],
    ['    purpose: Push along with Odile, and guess what each hill will do.', `    purpose: "${filler(300)}"`],
    ['words:\n', `${more}care: ["${filler(400)}", "${filler(400)}", "${filler(400)}"]\nquestions: [{ ask: "${filler(300)}", depth: 3 }, { ask: "${filler(300)}", depth: 3 }]\nwords:\n`],
    ['    - What would you carry in a wheelbarrow?', `    - "${filler(300)}"`],
    ['    - Who could you give it back to?', `    - "${filler(300)}"\n    - "${filler(299)}"\n  note: "${filler(400)}"`],
  );
}

test.each([1, 3, 9])('a substitute gets one side and a family one page, however much %i long stops say', async (stops) => {
  const { built, pdf } = await papersOf({ full: await stuffed(stops) });
  expect(about(built)).toEqual([]);
  const substitute = await pdf('full/substitute.pdf');
  expect(substitute.pages).toBe(1);
  expect(Math.min(...substitute.runs.filter((run) => run.y < 262).map((run) => run.size))).toBeGreaterThanOrEqual(10.5);
  expect(substitute.text).toMatch(/For want of room/);
  expect(Math.max(...substitute.runs.map((run) => run.to))).toBeLessThan(205);
  expect((await pdf('full/letter.pdf')).pages).toBe(1);
});

test('what a teacher wrote is set as written, whatever it means to the typesetter', async () => {
  const odd = 'Is *this* a #panic("stop") or $x^2$ <here> @there [a] `b` \\\\ {c}? // Yes = no ~ maybe';
  const { built, pdf } = await papersOf({ odd: await soundPack(['ask: What will Odile do with the stone? What makes you think so?', `ask: '${odd}'`]) });
  expect(about(built)).toEqual([]);
  for (const sheet of ['lesson', 'substitute', 'booklet'])
    expect((await pdf(`odd/${sheet}.pdf`)).text).toContain('Is *this* a #panic("stop") or $x^2$ <here> @there [a] `b` \\\\ {c}? // Yes = no ~ maybe');
});

test('a character that no font here has is left out and told: paper/letters', async () => {
  const { built, pdf } = await papersOf({ odd: await soundPack(['ask: What will Odile do', 'ask: What 漢 will 🪨 Odile do']) });
  expect(about(built).map(({ code, level, facts }) => ({ code, level, facts }))).toEqual([{ code: 'paper/letters', level: 'note', facts: { characters: '漢 🪨' } }]);
  expect((await pdf('odd/lesson.pdf')).text).toContain('What will Odile do with the stone?');
});

test('the letter has a square code and the address in words where the library has an address, and a line to fill in where it has none', async () => {
  const pack = await soundPack();
  const library = 'name: A shelf\nlanguage: en\nlanguages: [en]\ncontact: Ask at the desk.\nrights: Ours.\n';
  const at = await papersOf({ hill: pack }, `${library}address: https://shelf.example/books\npaper: a4\n`);
  const letter = await at.pdf('hill/letter.pdf');
  expect(letter.text).toContain('https://shelf.example/books/packs/hill/');
  expect(letter.figures).toEqual(['(Square code for the address https://shelf.example/books/packs/hill/)']);
  expect(letter.paper.map(Math.round)).toEqual([210, 297]);
  const none = await (await papersOf({ hill: pack }, library)).pdf('hill/letter.pdf');
  expect(none.figures).toEqual([]);
  expect(none.text).toContain('Who to ask: Ask at the desk.');
});

test('the same library makes the same bytes', async () => {
  const packs = { hill: await soundPack() };
  const [one, other] = [await papersOf(packs), await papersOf(packs)];
  for (const sheet of ['lesson', 'substitute', 'booklet', 'letter', 'cards']) {
    const path = join('packs/hill', `${sheet}.pdf`);
    expect((await readFile(join(one.site, path))).equals(await readFile(join(other.site, path)))).toBe(true);
  }
});

test('only a sheet whose data, template or fonts changed is set again', async () => {
  const cache = join(scratch, 'again');
  const job = (text: string) => ({ template: 'letter', data: { text }, pictures: [] });
  const worker = pathToFileURL(join(scratch, 'counts.mjs'));
  await writeFile(
    worker,
    `import { parentPort } from 'node:worker_threads';\nlet set = 0;\nparentPort.on('message', ({ job }) => parentPort.postMessage({ job, pages: ++set, pdf: new Uint8Array([37]) }));\nparentPort.postMessage('ready');\n`,
  );
  const told: number[] = [];
  const progress = (_: number, all: number) => void told.push(all);
  await makePdfs([job('a'), job('b')], { cache, worker, progress });
  await makePdfs([job('a'), job('b'), job('c')], { cache, worker, progress });
  expect(told).toEqual([2, 2, 1]);
});

describe('where sheets cannot be made', () => {
  const broken = async (name: string, program: string) => {
    const worker = join(scratch, `${name}.mjs`);
    await writeFile(worker, program);
    const { content, site, cache } = await smallLibrary({ 'packs/hill/pack.md': await soundPack() });
    const built = await build({ content, site, cache, strict: true, paper: true, paperProgram: pathToFileURL(worker) });
    return { built, page: await readFile(join(site, 'packs/hill/lesson/index.html'), 'utf8') };
  };

  test('for want of the program on this machine: told once, and the site is whole without them: paper/no-program', async () => {
    const { built, page } = await broken('absent', `import 'a-program-that-is-not-here';`);
    expect(about(built).map(({ code, level }) => `${level} ${code}`)).toEqual(['warn paper/no-program']);
    expect(built.published).toBe(1);
    expect(page).not.toContain('.pdf');
  });

  test('because one sheet has a fault, or ends its thread: told, and the others are made: paper/not-made', async () => {
    const { built, page } = await broken(
      'faulty',
      `import { parentPort } from 'node:worker_threads';
parentPort.on('message', ({ job, template }) => {
  if (template === 'cards.typ') process.exit(3);
  parentPort.postMessage(template === 'letter.typ' ? { job, fault: 'no such font' } : { job, pages: 1, pdf: new Uint8Array([37]) });
});
parentPort.postMessage('ready');`,
    );
    expect(about(built).map(({ level, facts }) => `${level} ${JSON.stringify(facts)}`)).toEqual([
      'warn {"sheet":"letter","reason":"no such font"}',
      'warn {"sheet":"cards","reason":"the thread ended with 3"}',
    ]);
    expect(page).toContain('substitute.pdf');
    expect(page).not.toContain('letter.pdf');
  });
});
