import { createHash } from 'node:crypto';
import { groundsOf } from '../core/check/grounds.ts';
import type { Finding, Level } from '../core/finding.ts';
import { sayFinding } from '../core/languages/say-finding.ts';

/** SARIF's word for each of our levels. Source: SARIF 2.1.0, 3.27.10. */
const levels: Readonly<Record<Level, 'error' | 'warning' | 'note'>> = { stop: 'error', warn: 'warning', note: 'note' };

/**
 * Findings as a log in SARIF 2.1.0 (OASIS), which code hosts show beside the lines of a proposed change.
 *
 * @param below Where the content folder lies below the root of what is checked, with forward slashes: `content/`. Empty when it is the root.
 * @param version Of Bookfellow.
 */
export function asSarif(findings: readonly Finding[], language: string, below: string, version: string): string {
  const codes = [...new Set(findings.map(({ code }) => code))].sort();
  const rules = codes.map((code) => {
    const ground = groundsOf[code];
    const stands = ground === undefined ? undefined : ground.source === undefined ? ground.mark : `${ground.mark}: ${ground.source}`;
    return { id: code, ...(stands !== undefined && { fullDescription: { text: `What the rule stands on: ${stands}.` } }) };
  });
  const seen = new Map<string, number>();
  const results = findings.map((found) => {
    const { code, level, place, facts } = found;
    const uri = encodeURI(below + place.file)
      .replaceAll('#', '%23')
      .replaceAll('?', '%3F');
    // A line that moves is still the same finding: so neither line nor column is part of its mark, and likes are numbered.
    const like = createHash('sha256')
      .update(JSON.stringify([code, place.file, facts]))
      .digest('hex')
      .slice(0, 32);
    const before = seen.get(like) ?? 0;
    seen.set(like, before + 1);
    return {
      ruleId: code,
      ruleIndex: codes.indexOf(code),
      level: levels[level],
      message: { text: sayFinding(found, language) },
      locations: [{ physicalLocation: { artifactLocation: { uri, uriBaseId: 'ROOT' }, region: { startLine: place.line, startColumn: place.column } } }],
      partialFingerprints: { 'findingWithoutLine/v1': `${like}:${String(before)}` },
    };
  });
  const log = {
    $schema: 'https://json.schemastore.org/sarif-2.1.0.json',
    version: '2.1.0',
    runs: [
      {
        tool: { driver: { name: 'Bookfellow', version, language, rules } },
        columnKind: 'utf16CodeUnits',
        originalUriBaseIds: { ROOT: { description: { text: 'The root of the checkout.' } } },
        results,
      },
    ],
  };
  return JSON.stringify(log, null, 2);
}
