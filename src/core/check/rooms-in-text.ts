/** Rooms and classes that lead to a group of children: Room 12, class 2B, Mr. Okoro's class; aula 4, 2.º B, la clase del profesor Ruiz. */

const name = String.raw`\p{Lu}[\p{L}’'-]{1,30}`;
const titles = String.raw`(?:Mr|Mrs|Ms|Miss|Mx|Dr|Teacher|Coach|Maestra|Maestro|Señora|Señor|Sra|Sr)`;
const spanishTitles = String.raw`(?:[Mm]aestr[oa]|[Pp]rofesora?|[Pp]rofe|[Ss]eñor(?:a|ita)?|[Ss]r(?:a|ta)?\.|[Ss]eño|[Dd]on|[Dd]oña|[Mm]iss|[Mm]íster|[Tt]utora?)`;
/** A hall in a story, and no room of a school. */
const inAStory = String.raw`(?!\s+(?:of\b|(?:del?|de la|de los)\s+(?:castillo|museo|palacio|hotel|torre|casa|cuento|barco)))`;

const patterns: readonly RegExp[] = [
  // A capital is a name given to a room. Small letters are told from two digits or a letter on: stories have a room 3.
  new RegExp(String.raw`\b(?:Room|Rm\.?|Classroom|Homeroom|Portable)\s+(?:No\.?\s*|#\s*)?(?:\d{1,4}[A-Za-z]?|[A-Z]\d{1,3})\b${inAStory}`, 'gu'),
  new RegExp(String.raw`\b(?:room|rm\.?)\s+(?:no\.?\s*|number\s+|#\s*)?(?:\d{2,4}[A-Za-z]?|\d[A-Za-z]|[A-Z]\d{1,3})\b${inAStory}`, 'gu'),
  new RegExp(String.raw`\b(?:classroom|homeroom)\s+(?:no\.?\s*|number\s+|#\s*)?(?:\d{1,4}[A-Za-z]?|[A-Z]\d{1,3})\b${inAStory}`, 'gu'),
  /\b(?:[Cc]lass|[Gg]rade|[Yy]ear)\s+(?:\d{1,2}\s?-?[A-H]|K-?\d|[A-Z]\d{1,2})\b/gu,
  new RegExp(
    String.raw`\b${titles}\.?\s+${name}(?:\s${name})?[’']s?\s+(?:(?:first|second|third|fourth|1st|2nd|3rd|4th|morning|afternoon)[- ](?:grade\s+)?)?(?:class(?:room)?|homeroom|room|kindergarten|kindergart[en]ers|students|pupils|graders|grade)\b`,
    'gu',
  ),
  new RegExp(String.raw`\b(?:[Aa]ula|[Ss]al[oó]n(?:\s+de\s+clases?)?)\s+(?:n\.?\s?[º°o]\.?\s*|n[úu]m(?:ero|\.)?\s*)?\d{1,4}(?:\s?-?[A-F])?(?![\p{L}\p{N}])${inAStory}`, 'gu'),
  /\b(?:[Cc]lase|[Gg]rupo|[Cc]urso|[Gg]rado)\s+(?:de\s+)?\d{1,2}(?:\s?\.?\s?[ºª°])?\s?-?["“«]?[A-F](?![\p{L}\p{N}])/gu,
  /(?<![\p{L}\p{N}])[1-6]\s?\.\s?[ºª°]\s?["“«]?[A-F](?![\p{L}\p{N}])/gu,
  new RegExp(String.raw`\b(?:[Cc]lase|[Aa]ula|[Ss]alón|[Gg]rupo|[Aa]lumn[oa]s|[Ee]studiantes)\s+(?:del|de la|de el|de)\s+${spanishTitles}\s+${name}`, 'gu'),
];

/** What every pattern needs, so that most texts are passed over at once. */
const mayHold = /\d|\b(?:M(?:rs?|s|iss|x|aestr[oa])|Dr|Teacher|Coach|S(?:eñora?|ra?)|[Cc]lase|[Aa]ula|[Ss]al[oó]n|[Gg]rupo|[Aa]lumn[oa]s|[Ee]studiantes)\b/u;

/** What names a room or a class, as it stands in the text. `allowed` are names of characters: their class belongs to the story. */
export function roomsIn(text: string, allowed: readonly string[] = []): readonly string[] {
  if (!mayHold.test(text)) return [];
  const free = new Set(allowed.flatMap((phrase) => phrase.match(/\p{Lu}[\p{L}’'-]+/gu) ?? []));
  const found = new Set<string>();
  for (const pattern of patterns) {
    for (const match of text.matchAll(pattern)) {
      const names = (match[0].match(/\p{Lu}[\p{L}-]+/gu) ?? []).filter((word) => !/^(?:Mr|Mrs|Ms|Miss|Dr)$/u.test(word));
      if (!names.some((word) => free.has(word))) found.add(match[0].replace(/\s+/gu, ' '));
    }
  }
  const all = [...found];
  return all.filter((one) => !all.some((other) => other !== one && other.includes(one)));
}
