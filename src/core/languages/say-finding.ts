import type { Finding } from '../finding.ts';
import { findingsInArabic } from './ar-findings.ts';
import { findingsInEnglish, type FindingSentences } from './en-findings.ts';
import { findingsInSpanish } from './es-findings.ts';

const sentences: Readonly<Record<string, FindingSentences>> = { en: findingsInEnglish, es: findingsInSpanish, ar: findingsInArabic };

/** A finding as one sentence or two in a language; in English where the language has no sentences yet. */
export function sayFinding(finding: Finding, language: string): string {
  const catalogue = sentences[language.split('-')[0] ?? ''] ?? findingsInEnglish;
  const say = catalogue[finding.code] as (facts: Finding['facts']) => string;
  return say(allPrintable(finding.facts) as Finding['facts']);
}

/** The language in which a finding is said to a reader of `language`: its own where it has sentences, English where not. */
export function languageOfFindings(language: string): string {
  return (language.split('-')[0] ?? '') in sentences ? language : 'en';
}

/** The facts, each text in them printable. A sentence's own marks, which keep Latin names apart from Arabic words, come after this. */
function allPrintable(fact: unknown): unknown {
  if (typeof fact === 'string') return printable(fact);
  if (Array.isArray(fact)) return fact.map(allPrintable);
  if (typeof fact !== 'object' || fact === null) return fact;
  return Object.fromEntries(Object.entries(fact).map(([name, value]: [string, unknown]) => [name, allPrintable(value)]));
}

/** Text from a pack can hold characters that steer a terminal; a message shows them by name instead. */
function printable(text: string): string {
  // eslint-disable-next-line no-control-regex -- control characters are what is replaced
  return text.replace(/[\u0000-\u001f\u007f-\u009f\u200b-\u200f\u202a-\u202e\u2066-\u2069]/g, (character) => `‹U+${character.charCodeAt(0).toString(16).toUpperCase().padStart(4, '0')}›`);
}
