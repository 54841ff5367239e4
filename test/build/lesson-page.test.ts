/** The lesson page as it is built, for packs whose first reading does not fit their minutes. */
import { readFile } from 'node:fs/promises';
import { join } from 'node:path';
import { expect, test } from 'vitest';
import { bookfellow, buildSmall, smallLibrary, soundPack } from './small-library.ts';

/** What the page says about the fit, and the stops in its run sheet and outside it. */
async function pageFor(minutes: number, must = '') {
  const library = await smallLibrary({ 'packs/wheelbarrow/pack.md': await soundPack(['minutes: 30', `minutes: ${minutes}`], ['id: the-long-hill\n', `id: the-long-hill\n${must}`]) });
  await buildSmall(library);
  const html = await readFile(join(library.site, 'packs/wheelbarrow/lesson/index.html'), 'utf8');
  const stopsIn = (name: string) => {
    const section = new RegExp(`<section class="${name}".*?</section>`, 's').exec(html)?.[0] ?? '';
    return [...section.matchAll(/data-stop="([^"]+)"/g)].map((match) => match[1]);
  };
  const plan = await bookfellow(['plan', 'wheelbarrow', '--content', library.content, '--json']);
  return {
    html,
    fit: /<p class="fit"[^>]*>(.*?)<\/p>/.exec(html)?.[1],
    run: stopsIn('run'),
    rest: stopsIn('rest'),
    plan: JSON.parse(plan.out) as { fits: boolean; rows?: readonly { stop?: string }[]; remedies?: readonly unknown[] },
  };
}

test('the page shows the stops that fit, says which are left for another day, and agrees with the command', async () => {
  const { fit, run, rest, plan } = await pageFor(7);
  expect([run, rest]).toEqual([['one-stone'], ['the-long-hill']]);
  expect(fit).toBe('In 7 minutes, ask stop 1. Left for another day: stop 2. No question about a feeling fits.');
  expect(plan.rows?.flatMap((row) => row.stop ?? [])).toEqual(run);
});

test('where even the musts do not fit, the page shows the whole reading and says what would help', async () => {
  const { html, fit, run, rest, plan } = await pageFor(7, '    must: true\n');
  expect([run, rest]).toEqual([['one-stone', 'the-long-hill'], []]);
  expect(fit).toMatch(/^It does not fit: for the reading and the stops that must stay, 7 minutes are [\w ]+ too few\./);
  expect(html).toContain('<li>Cut the opening and the closing short</li>');
  expect([plan.fits, (plan.remedies ?? []).length > 0]).toEqual([false, true]);
});

test('where all of it fits, nothing is left out', async () => {
  const { fit, run, rest, plan } = await pageFor(30);
  expect([run, rest]).toEqual([['one-stone', 'the-long-hill'], []]);
  expect(fit).toBe('Both stops fit: about 9 of the 30 minutes.');
  expect(plan.rows?.flatMap((row) => row.stop ?? [])).toEqual(run);
});
