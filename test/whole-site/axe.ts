/**
 * What axe objects to on a page.
 * Source: WCAG 2.2, levels A and AA, and axe's best practices. A machine finds a part of what keeps people out, never all of it.
 */
import axe from 'axe-core';
import type { Page } from 'playwright-core';

const tags = ['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22a', 'wcag22aa', 'best-practice'];

/** Rules whose answer may be another one in another width, and in other colours. */
export const rulesOfWidth = ['target-size', 'scrollable-region-focusable'] as const;
export const rulesOfColour = ['color-contrast', 'link-in-text-block'] as const;

/** Rules whose answer depends on what a pack says and shows, and not on how its kind of page looks. */
export const rulesOfContent = [
  'image-alt',
  'link-name',
  'heading-order',
  'empty-heading',
  'list',
  'listitem',
  'definition-list',
  'dlitem',
  'valid-lang',
  'html-has-lang',
  'document-title',
  'landmark-unique',
  'label',
  'page-has-heading-one',
] as const;

/** A sentence for each fault, with the place and the markup. Without `rules`, every rule is asked. Frames within the page are left out. */
export async function axeObjects(page: Page, rules?: readonly string[]): Promise<readonly string[]> {
  // Once a page: to hand over the program takes longer than to ask most of it.
  if (!(await page.evaluate(() => 'axe' in window))) await page.evaluate(axe.source);
  const { violations } = await page.evaluate(
    (runOnly) =>
      // Without the list of all that is well, axe needs half the time.
      (window as unknown as { readonly axe: typeof axe }).axe.run(document, { runOnly, resultTypes: ['violations'], iframes: false }),
    rules ? { type: 'rule' as const, values: [...rules] } : { type: 'tag' as const, values: tags },
  );
  return violations.flatMap(({ id, help, nodes }) =>
    nodes.map((node) => `${id} (${help}) at ${node.target.join(' ')}: ${node.any[0]?.message ?? node.all[0]?.message ?? node.none[0]?.message ?? ''} ${node.html.slice(0, 120)}`),
  );
}
