/**
 * How soon the form that makes packs answers a key, in a pack of 30 stops, on a processor six times slower than this one.
 * Beside it a bare text field of the same page, turn by turn; the fastest run of each is told. A report, never a test: `node --import tsx test/speed/maker-typing.ts [folder of a built site]`.
 */
import { readFile } from 'node:fs/promises';
import { cpus, loadavg } from 'node:os';
import { startBrowser } from '../whole-site/browser.ts';
import { builtSite, serveBelowRoot } from '../whole-site/site.ts';

const stop = (number: number): string => `  - id: stop-${number}
    at: { opening: ${number}, cue: and the wheel went round ${number} }
    ask: How does Odile feel on hill ${number}? How do you know?
    kind: feeling
    depth: 3
    about: character
    answer: write
    or: say
    frames:
      - Odile feels ___.
      - Odile feels ___ because ___.
    models:
      - text: Odile feels tired.
      - text: Odile feels tired because the stone is heavy and hill ${number} is long.
    listen for: Tired, and something in the words or the picture that shows it.
    if quiet: Look at her arms. What do they tell you?
`;
const text = (await readFile('test/packs/sound/the-wheelbarrow-goes-home/pack.md', 'utf8'))
  .replace('openings: 12', 'openings: 40')
  .replace(/stops:\n[\s\S]*\nwords:/, `stops:\n${Array.from({ length: 30 }, (_, index) => stop(index + 1)).join('')}\nwords:`);

/** Runs of each field; the fastest is told. */
const rounds = 4;
const server = await serveBelowRoot(process.argv[2] ?? (await builtSite()));
const browser = await startBrowser();
try {
  const page = await browser.newPage({ viewport: { width: 1280, height: 900 } });
  await page.goto(`${server.address}make/`);
  await page.setInputFiles('#open-file', { name: 'pack.md', mimeType: 'text/markdown', buffer: Buffer.from(text) });
  await page.locator('.workbook button').nth(2).click();
  await page.locator('.stop-line').nth(14).click();
  await page.locator('#field-stops-14-ask').waitFor();
  await page.waitForTimeout(4000);
  const devtools = await page.context().newCDPSession(page);
  await devtools.send('Emulation.setCPUThrottlingRate', { rate: 6 });
  // Time that the page's own thread worked, whatever else the machine had to do meanwhile.
  await devtools.send('Performance.enable', { timeDomain: 'threadTicks' });
  const worked = async (): Promise<number> => (await devtools.send('Performance.getMetrics')).metrics.find(({ name }) => name === 'TaskDuration')?.value ?? 0;
  await page.evaluate(() => {
    const plain = document.body.appendChild(document.createElement('textarea'));
    plain.id = 'plain';
    const times: number[] = [];
    Object.assign(window, { times });
    // From the key to behind the next picture that is drawn.
    addEventListener('keydown', (event) => requestAnimationFrame(() => setTimeout(() => times.push(performance.now() - event.timeStamp))), true);
  });
  const letters = 'And why does she go on, do you think? What would you do at the foot of such a hill?';
  console.log(
    `A pack of 30 stops, ${Math.round(text.length / 1000)} kB; ${letters.length} keys a run; the processor slowed six times; load of this machine ${loadavg()[0]?.toFixed(1) ?? ''} on ${cpus().length}`,
  );
  interface Run {
    readonly half: number;
    readonly most: number;
    readonly worked: number;
  }
  const run = async (id: string): Promise<Run> => {
    await page.locator(id).click();
    await page.evaluate(() => (window as unknown as { times: number[] }).times.splice(0));
    const before = await worked();
    for (const letter of letters) await page.keyboard.type(letter, { delay: 90 });
    const each = ((await worked()) - before) / letters.length;
    await page.waitForTimeout(3000);
    const times = (await page.evaluate(() => (window as unknown as { times: number[] }).times)).sort((a, b) => a - b);
    const at = (share: number): number => times[Math.min(times.length - 1, Math.floor(times.length * share))] ?? 0;
    return { half: at(0.5), most: at(0.95), worked: each * 1000 };
  };
  const bare: Run[] = [];
  const form: Run[] = [];
  // Turn by turn, so that what else the machine does falls on both.
  for (let round = 0; round < rounds; round++) {
    bare.push(await run('#plain'));
    form.push(await run('#field-stops-14-ask'));
  }
  const fastest = (runs: readonly Run[], of: keyof Run): number => Math.min(...runs.map((each) => each[of]));
  for (const [of, says] of [
    ['worked', 'the page worked for each key'],
    ['half', 'drawn, half of the keys within'],
    ['most', 'drawn, 95 of 100 keys within'],
  ] as const)
    console.log(`${says.padEnd(34)} bare field ${fastest(bare, of).toFixed(1)} ms   form ${fastest(form, of).toFixed(1)} ms   ratio ${(fastest(form, of) / fastest(bare, of)).toFixed(2)}`);
} finally {
  await browser.close();
  await server.close();
}
