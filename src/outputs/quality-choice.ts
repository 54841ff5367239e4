import type { Facets } from './quality-figures.ts';

/** Which packs a visitor of the page about quality wants to see. An empty field means any. The address carries it: `?language=es&findings=1`. */
export interface Choice {
  readonly language: string;
  readonly grade: string;
  readonly level: string;
  readonly kind: string;
  readonly findings: boolean;
}

/** Names of the fields that hold one of several values, in the form and in the address. */
export const choiceFields = ['language', 'grade', 'level', 'kind'] as const;

/** The choice of an address or of a form; what it does not name is any. */
export function choiceFrom(fields: { get(name: string): unknown }): Choice {
  const text = (name: string): string => {
    const value = fields.get(name);
    return typeof value === 'string' ? value : '';
  };
  return { language: text('language'), grade: text('grade'), level: text('level'), kind: text('kind'), findings: text('findings') !== '' };
}

/** The choice as the end of an address: "" or "?level=warn". */
export function queryOf(choice: Choice): string {
  const parts = choiceFields.filter((name) => choice[name] !== '').map((name) => `${name}=${encodeURIComponent(choice[name])}`);
  if (choice.findings) parts.push('findings=1');
  return parts.length === 0 ? '' : `?${parts.join('&')}`;
}

/** True for a pack that the choice lets through. */
export function isChosen({ language, grades, levels, kinds }: Facets, choice: Choice): boolean {
  return (
    (choice.language === '' || choice.language === language) &&
    (choice.grade === '' || grades.includes(choice.grade)) &&
    (choice.level === '' || levels.includes(choice.level)) &&
    (choice.kind === '' || kinds.includes(choice.kind)) &&
    (!choice.findings || levels.length > 0)
  );
}
