/** Attributes that Markdown of other houses would take, and ids that stand in for a property of the document. After OWASP's sheet on DOM clobbering, in our own words. */
import { body, withPart, type HostileClass } from './hostile-case.ts';

const names = ['location', 'forms', 'cookie', 'body', 'head', 'getElementById', 'querySelector', 'constructor', 'prototype', 'attributes', 'children', 'main', 'top', 'name'];

export const attributes: HostileClass = {
  class: 'attributes from Markdown',
  cases: [
    body(
      'attributes in curly brackets',
      '## A heading {onclick=canary()}\n\nA word{style="display:none"} {#location} {.skip} {: onclick=canary() }',
      [],
      ['A word{style="display:none"} {#location} {.skip} {: onclick=canary() }'],
    ),
    body('headings named like properties of the document', names.map((name) => `## ${name}`).join('\n\n'), [], names),
    body('a heading named __proto__', '## __proto__\n\n### hasOwnProperty', [], ['proto', 'hasOwnProperty']),
    body('attributes of fences, tables and rules', '```js {onload=canary()} id=location\nHello\n```\n\n--- {onclick=canary()}\n\n::: hostile onclick=canary()\nText\n:::', [], ['Hello']),
    {
      name: 'stops named like properties',
      files: { 'pack.md': withPart('id: one-stone', 'id: constructor').replace('after: one-stone', 'after: constructor').replace('id: the-long-hill', 'id: location') },
      told: [],
      published: true,
    },
  ],
};
