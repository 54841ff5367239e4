/**
 * Syllable counts from the CMU Pronouncing Dictionary: the first pronunciation of each word. Only for the words listed
 * here is a second, shorter one taken, after Flesch's rule that of two accepted pronunciations the shorter counts. Taking
 * the shorter everywhere would make didn't one syllable, violet two and Barbara two.
 */
import { dictionary } from 'cmu-pronouncing-dictionary';

/**
 * Words with two accepted pronunciations, of which the shorter is the usual one when read to children. Chosen by hand
 * from the 1,290 for which the dictionary lists a shorter form; tired, fired and a few more, of which it
 * lists only the longer one, sound like those and are added.
 */
const shorterInUse: Readonly<Record<string, string>> = {
  1: `bowels choir choirs cruel dial dials dire fire fired fires flour fuel hire hired hires hour hours jewel jewels
    mire our ours scour sour spire spires squire squires tire tired tires towel towels trial trials vowel vowels
    wire wired wires`,
  2: `acquire acquired admire admired admires average babbling bachelor baffling battling bonfire bonfires bottling
    boundary brightening broccoli bubbling bustling cabinet cabinets camera cameras campfire campfires circling
    conference covering crippling crumbling cycling dabbling dangling darkening dazzling desire desired desires
    devour devoured difference different dorothy doubling dribbling drizzling dwindling empire empires entire
    every expire expired families family fastening favorite favorites fireplace fireplaces firewood flattening
    frightening fumbling gardener gardeners gardening general generals giggling glistening gobbling grumbling
    gurgling happening happenings hardening history hourly huddling hurdling idling inspire inspired ivory
    jewelry jiggling juggling listener listeners listening mineral minerals mingling muddling mumbling national
    natural nibbling offering offerings opposite ourself ourselves paddling peddling perspire piddling prisoner
    prisoners puzzling quarreling reference require required requires restaurant restaurants retire retired
    reverend ripening rippling rumbling saddling scientists scrambling scribbling separate settling sharpening
    shortening shuttling singling sizzling softening stapler staplers straightening strangling struggling
    stumbling suffering thickening threatening tightening tingling tinkling toppling traveler travelers
    traveling travelling trembling tripling troubling tumbling twinkling umpire umpires vampire vampires veteran
    veterans victories victory whitening wiggling wobbling wrinkling`,
  3: `actually beautifullest casually comfortable deliveries discovery favorable generally magically naturally
    personally physically reasonable remembering separately usually`,
};

/** Every word of the dictionary with its syllables. */
export function dictionaryCounts(): ReadonlyMap<string, number> {
  const counts = new Map<string, number>();
  for (const [word, sounds] of Object.entries(dictionary)) {
    if (!word.includes('(')) counts.set(word, Math.max(1, vowelsIn(sounds)));
  }
  for (const [count, words] of Object.entries(shorterInUse)) {
    for (const word of words.trim().split(/\s+/u)) if (counts.has(word)) counts.set(word, Number(count));
  }
  return counts;
}

/** The counts of every pronunciation the dictionary lists for a word. */
export function listedCounts(word: string): readonly number[] {
  const counts: number[] = [];
  for (let variant = 1; ; variant++) {
    const sounds = dictionary[variant === 1 ? word : `${word}(${String(variant)})`];
    if (sounds === undefined) return counts;
    counts.push(vowelsIn(sounds));
  }
}

/** Vowels carry a stress digit; each is a syllable. */
function vowelsIn(sounds: string): number {
  return sounds.match(/\d/gu)?.length ?? 0;
}
