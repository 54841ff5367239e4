import type * as v from 'valibot';
import { finding, type Expected, type Finding, type Place } from '../finding.ts';
import { nearest } from './nearest.ts';
import type { Step } from './pack.ts';

/** What valibot says of a value, as findings. */

/** The place of what stands at some steps. */
export type Where = (...steps: readonly Step[]) => Place;

/** The finding for one issue; `steps` lead through what the author wrote. */
export function asFinding(issue: v.BaseIssue<unknown>, steps: readonly Step[], where: Where): Finding {
  const place = where(...steps);
  const field = label(steps);
  const found = typeof issue.input === 'string' ? issue.input.slice(0, 60) : typeof issue.input === 'number' ? String(issue.input) : '';
  const requirement: unknown = issue.requirement;
  const number = typeof requirement === 'number' ? requirement : undefined;
  switch (issue.type) {
    case 'min_value':
      return finding('pack/out-of-range', 'stop', place, { field, found, ...(number === undefined ? {} : { least: number }) });
    case 'max_value':
      return finding('pack/out-of-range', 'stop', place, { field, found, ...(number === undefined ? {} : { most: number }) });
    case 'max_length':
      return finding('pack/too-long', 'stop', place, { field, length: Number(issue.received), most: number ?? 0 });
    case 'non_empty':
      return finding('pack/empty-field', 'stop', place, { field });
    case 'integer':
      return finding('pack/wrong-type', 'stop', place, { field, expected: 'whole number', found });
    case 'picklist': {
      if (issue.input === undefined) return missing(steps, where);
      const choices = choicesOf(issue);
      const suggestion = nearest(found, choices);
      return finding('pack/not-a-choice', 'stop', place, { field, found, choices, ...(suggestion === undefined ? {} : { suggestion }) });
    }
    case 'regex':
    case 'url':
    case 'starts_with':
    case 'iso_date':
      return finding('pack/bad-format', 'stop', place, { field, found, example: exampleFor(steps) });
    default:
      return issue.input === undefined ? missing(steps, where) : finding('pack/wrong-type', 'stop', place, { field, expected: kindOf(issue.expected), found });
  }
}

function missing(steps: readonly Step[], where: Where): Finding {
  const last = String(steps.at(-1) ?? '');
  return finding('pack/missing-field', 'stop', where(...steps), { field: last, within: label(steps.slice(0, -1)) });
}

/** What a finding about a field of the wrong kind is known by, so that the same field is not told again as missing; empty for other findings. */
export function causeOf(told: Finding): string {
  return told.code === 'pack/wrong-type' || told.code === 'pack/not-a-choice' ? `${String(told.place.line)} ${told.facts.field}` : '';
}

/** What a finding about the field at some steps would be known by. */
export function causeAt(steps: readonly Step[], place: Place): string {
  return `${String(place.line)} ${label(steps)}`;
}

/** How a field is named to its author: `stops 3: ask`, counting from 1. */
export function label(steps: readonly Step[]): string {
  return steps.reduce<string>((said, step) => (typeof step === 'number' ? `${said} ${String(step + 1)}` : said === '' ? step : `${said}: ${step}`), '');
}

function choicesOf(issue: v.BaseIssue<unknown>): readonly string[] {
  return (issue.expected ?? '')
    .replace(/^\(|\)$/g, '')
    .split(' | ')
    .map((each) => each.replace(/^"|"$/g, ''));
}

function kindOf(expected: string | null): Expected {
  if (expected === 'Array') return 'list';
  if (expected === 'Object') return 'group';
  if (expected === 'number') return 'number';
  return expected === 'boolean' ? 'yes or no' : 'text';
}

const examples: Readonly<Record<string, string>> = {
  id: 'cold-hands',
  after: 'cold-hands',
  'must ask': 'cold-hands',
  stop: 'cold-hands',
  language: 'en',
  reviewed: '2026-09-01',
  checked: '2026-09-01',
  recording: '2:40',
  isbn: '978-0-00-000000-2',
  uri: 'https://standards.example/items/1',
  uuid: '0f3c9c1e-5d0b-4a7e-9a51-2f6f6c1d7b10',
  file: 'harbour.png',
  picture: 'harbour.png',
  captions: 'reading.vtt',
};
function exampleFor(steps: readonly Step[]): string {
  const name = steps.findLast((step) => typeof step === 'string');
  return examples[String(name)] ?? (steps.includes('in other languages') ? 'es' : '…');
}
