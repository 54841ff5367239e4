/** Code for template engines, and words that an engine would obey. It is text, and the words are fields that nobody knows. */
import { body, withPart, type HostileClass } from './hostile-case.ts';

const engines = [
  '{{ 7919 * 7907 }}',
  '{{{ 7919 * 7907 }}}',
  '{% assign x = 7919 | times: 7907 %}{{ x }}',
  '{% include "/etc/hostname" %}',
  '{% raw %}',
  '{# remark #}',
  '<%= 7919 * 7907 %>',
  '<%- include("x") %>',
  '${7919 * 7907}',
  '#{7919 * 7907}',
  '[[ 7919 * 7907 ]]',
  '@{7919 * 7907}',
  '*{7919 * 7907}',
  '{{ constructor.constructor("canary()")() }}',
];
const keys = [
  'permalink: ../../hostile.html',
  'layout: ../hostile',
  'pagination: { data: collections.all, size: 1 }',
  'eleventyComputed: { title: "{{ 7919 * 7907 }}" }',
  'templateEngineOverride: njk,md',
  'tags: [__proto__, all]',
  'eleventyExcludeFromCollections: true',
  'eleventyNavigation: { key: x }',
  'eleventyImport: x',
  'dynamicPermalink: true',
  'date: git Created',
  'draft: true',
  'templateClass: x',
  'page data: { url: /hostile/ }',
  'collections: {}',
  'pkg: {}',
  'eleventy: { env: x }',
];

/** Files that an engine runs when they lie in its folder. */
const run = 'require("node:fs").writeFileSync(__dirname + "/was-run", "run"); globalThis.canaryRan = true; module.exports = {};';

export const templateCode: HostileClass = {
  class: 'template code',
  cases: [
    ...engines.map((text) => body(`in the body: ${text}`, `Before ${text} after`, [], [text.replaceAll('*', '*')])),
    ...engines.slice(0, 11).map((text) => ({
      name: `in the title: ${text}`,
      files: { 'pack.md': withPart('title: The Wheelbarrow Goes Home\nlanguage', `title: ${JSON.stringify(text)}\nlanguage`) },
      told: [],
      published: true,
      shows: [text],
    })),
    ...keys.map((key) => ({ name: `an engine's key: ${key}`, files: { 'pack.md': withPart('language: en\n', `language: en\n${key}\n`) }, told: ['4 pack/unknown-field'], published: true })),
    {
      name: 'files that an engine would run or obey',
      files: {
        'pack.md': withPart('language: en\n', 'language: en\n'),
        'pack.11tydata.js': run,
        'hostile.11ty.js': `${run} module.exports = { render: () => "canary-rendered" };`,
        'hostile.11tydata.cjs': run,
        'eleventy.config.js': run,
        '.eleventy.js': run,
        '.eleventyignore': '**',
        'hostile.njk': '---\npermalink: hostile.html\n---\ncanary-rendered',
        'hostile.liquid': 'canary-rendered',
        '_data/hostile.js': run,
        '_includes/hostile.njk': 'canary-rendered',
        'index.html': 'canary-rendered',
        'package.json': '{"type":"commonjs","scripts":{"preinstall":"exit 1"}}',
      },
      told: [],
      published: true,
    },
  ],
};
