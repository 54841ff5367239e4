/** What a page says of itself to machines, held against a copy of the vocabularies that it uses (`schemas/schema-org.json` tells where they come from). */
import vocabulary from './schemas/schema-org.json' with { type: 'json' };

const types: Readonly<Record<string, string>> = vocabulary.types;
const properties: Readonly<Record<string, { readonly of: readonly string[]; readonly is: readonly string[] }>> = vocabulary.properties;
const values: Readonly<Record<string, readonly string[]>> = vocabulary.accessibility;

/** The blocks of a page, each parsed. */
export function jsonLdIn(html: string): readonly unknown[] {
  return [...html.matchAll(/<script type="application\/ld\+json">(.*?)<\/script>/gs)].map(([, text = '']) => JSON.parse(text) as unknown);
}

/** What is wrong with a block: `isBasedOn.author: …`. */
export function jsonLdFaults(block: unknown): readonly string[] {
  if (!isNode(block)) return ['a block is no object'];
  return [...(block['@context'] === 'https://schema.org' ? [] : ['@context is not https://schema.org']), ...faultsOfNode(block, ''), ...contradictions(block)];
}

type Node = Readonly<Record<string, unknown>>;
const isNode = (value: unknown): value is Node => typeof value === 'object' && value !== null && !Array.isArray(value);

function faultsOfNode(node: Node, at: string): readonly string[] {
  const type = node['@type'];
  if (typeof type !== 'string' || (types[type] === undefined && type !== 'Thing')) return [`${at}@type: ${JSON.stringify(type)} is no type we know`];
  return Object.entries(node).flatMap(([name, value]) => {
    if (name.startsWith('@')) return [];
    const property = properties[name];
    if (!property) return [`${at}${name}: no property we know`];
    if (!property.of.some((each) => isKindOf(type, each))) return [`${at}${name}: a ${type} has no such property`];
    const list: readonly unknown[] = Array.isArray(value) ? value : [value];
    if (list.length === 0) return [`${at}${name}: an empty list`];
    return list.flatMap((each) => [...faultsOfValue(each, property.is, `${at}${name}`), ...outsideVocabulary(name, each, at)]);
  });
}

function faultsOfValue(value: unknown, ranges: readonly string[], at: string): readonly string[] {
  if (isNode(value)) {
    const type = String(value['@type']);
    return [...(ranges.some((range) => isKindOf(type, range)) ? [] : [`${at}: a ${type} is none of ${ranges.join(', ')}`]), ...faultsOfNode(value, `${at}.`)];
  }
  return ranges.some((range) => isOf(value, range)) ? [] : [`${at}: ${JSON.stringify(value)} is none of ${ranges.join(', ')}`];
}

function isKindOf(type: string, ancestor: string): boolean {
  for (let each: string | undefined = type; each !== undefined; each = types[each]) if (each === ancestor) return true;
  return false;
}

/** The plain kinds of values. Sources: schema.org for their names; ISO 8601 for days and durations; RFC 3986 for addresses. */
function isOf(value: unknown, range: string): boolean {
  if (range === 'Boolean') return typeof value === 'boolean';
  if (typeof value !== 'string' || value.trim() === '') return false;
  if (range === 'Text') return true;
  if (range === 'URL') return /^(?:https?:\/\/[^\s<>"]+|urn:[a-z0-9-]+:\S+)$/.test(value);
  if (range === 'Date') return /^\d{4}(?:-(?:0[1-9]|1[0-2])(?:-(?:0[1-9]|[12]\d|3[01]))?)?$/.test(value);
  if (range === 'Duration') return /^P(?=.)(?:\d+D)?(?:T(?=.)(?:\d+H)?(?:\d+M)?(?:\d+S)?)?$/.test(value);
  return false;
}

/** Words that a published list does not hold; of `accessModeSufficient` the items of each of its lists. */
function outsideVocabulary(name: string, value: unknown, at: string): readonly string[] {
  const known = values[name];
  if (!known) return [];
  const words: readonly unknown[] = isNode(value) ? (Array.isArray(value['itemListElement']) ? value['itemListElement'] : [value['itemListElement']]) : [value];
  return words.filter((word) => typeof word !== 'string' || !known.includes(word)).map((word) => `${at}${name}: ${JSON.stringify(word)} is not of the published vocabulary`);
}

/** Source: the same vocabulary: "none" and "unknown" stand alone, and a hazard is not there and not there at once. */
function contradictions(block: Node): readonly string[] {
  const hazards = block['accessibilityHazard'];
  if (!Array.isArray(hazards)) return [];
  const alone = ['none', 'unknown'].filter((each) => hazards.includes(each) && hazards.length > 1).map((each) => `accessibilityHazard: "${each}" beside others`);
  const both = ['flashing', 'motionSimulation', 'sound'].filter((each) => hazards.includes(each) && hazards.includes(`no${each.charAt(0).toUpperCase()}${each.slice(1)}Hazard`));
  return [...alone, ...both.map((each) => `accessibilityHazard: "${each}" and its opposite`)];
}
