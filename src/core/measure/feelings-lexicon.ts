import type { FeelingWord } from '../pack/pack.ts';

/**
 * Sixty feelings with their words in English and Spanish, written and weighed for this library; copied from no list.
 *
 * Design. The six early families are glad, sad, cross, afraid, surprised and disgusted (Ekman and Friesen 1969, as cited in
 * Baron-Cohen et al. 2010); the schema adds six that picture books live on. Broad words come before narrow ones, and whether a
 * feeling is pleasant is the first thing children tell apart (Grosse et al. 2021), so every feeling has a valence. Words of one
 * family stand on a ladder of three: glad, happy, thrilled (common practice, no source). Sixty, because the feeling words that
 * children know about double every two years from four to eleven (Baron-Cohen et al. 2010): eight at four, a figure of common
 * practice, are sixty just before ten.
 *
 * Valence (-1 to 1) and strength are our own judgement of how a word is used in a story for young children, and are meant for
 * drawing a path and a face. They say nothing about a child. `test/outside/feelings.test.ts` compares their signs with other people's lists.
 */
export type Family = FeelingWord['family'];
export type Strength = 1 | 2 | 3;

export interface Feeling {
  /** Its first English word. */
  readonly name: string;
  readonly family: Family;
  /** Rung of the family's ladder. */
  readonly strength: Strength;
  /** From -1, as unpleasant as can be, to 1. */
  readonly valence: number;
  /** Words by language, the usual one first; Spanish adjectives in the masculine singular, nouns as they follow "siente". */
  readonly words: Readonly<Record<'en' | 'es', readonly string[]>>;
}

type Row = readonly [strength: Strength, valence: number, english: string, spanish: string];

/** `a, b` are words for the same feeling. */
const ladders: Readonly<Record<Family, readonly Row[]>> = {
  glad: [
    [1, 0.4, 'hopeful', 'esperanzado, ilusionado, esperanza'],
    [1, 0.5, 'glad, pleased', 'contento'],
    [2, 0.7, 'happy, cheerful', 'feliz, alegre, alegría, felicidad'],
    [2, 0.7, 'excited', 'emocionado, emoción'],
    [3, 0.8, 'delighted', 'encantado'],
    [3, 0.95, 'thrilled, overjoyed', 'entusiasmado, loco de alegría'],
  ],
  sad: [
    [1, -0.2, 'wistful', 'melancólico, melancolía'],
    [1, -0.4, 'disappointed', 'decepcionado, decepción'],
    [1, -0.45, 'upset', 'disgustado'],
    [2, -0.5, 'discouraged', 'desanimado, desánimo'],
    [2, -0.6, 'sad, unhappy', 'triste, tristeza'],
    [3, -0.85, 'miserable', 'desdichado, abatido'],
    [3, -0.95, 'heartbroken', 'desconsolado, destrozado'],
  ],
  cross: [
    [1, -0.3, 'impatient', 'impaciente, impaciencia'],
    [1, -0.4, 'annoyed', 'molesto, fastidiado'],
    [1, -0.45, 'cross, grumpy', 'enfurruñado, malhumorado, de mal humor'],
    [2, -0.45, 'offended', 'ofendido'],
    [2, -0.5, 'frustrated', 'frustrado, frustración'],
    [2, -0.5, 'jealous, envious', 'celoso, envidioso, celos, envidia'],
    [2, -0.65, 'angry', 'enojado, enfadado, enojo, rabia'],
    [3, -0.75, 'outraged', 'indignado, indignación'],
    [3, -0.85, 'furious', 'furioso, furia'],
  ],
  afraid: [
    [1, -0.3, 'nervous, uneasy', 'nervioso, inquieto, nervios'],
    [1, -0.4, 'worried, anxious', 'preocupado, preocupación'],
    [2, -0.6, 'scared, afraid', 'asustado, miedoso, miedo'],
    [2, -0.65, 'frightened', 'atemorizado, temor'],
    [3, -0.9, 'terrified', 'aterrado, aterrorizado, terror'],
  ],
  surprised: [
    [2, 0.1, 'surprised', 'sorprendido, sorpresa'],
    [2, -0.15, 'startled', 'sobresaltado, sobresalto'],
    [3, 0.2, 'astonished', 'atónito, pasmado'],
    [3, 0.5, 'amazed', 'asombrado, maravillado, asombro'],
  ],
  disgusted: [
    [1, -0.35, 'queasy', 'revuelto'],
    [2, -0.6, 'disgusted', 'asqueado, asco'],
    [3, -0.8, 'revolted', 'repugnado, repugnancia, muerto de asco'],
  ],
  calm: [
    [1, 0.3, 'steady', 'sereno, firme, serenidad'],
    [1, 0.5, 'content', 'satisfecho, satisfacción'],
    [2, 0.45, 'calm, relaxed', 'tranquilo, calmado, relajado, calma, tranquilidad'],
    [2, 0.5, 'relieved', 'aliviado, alivio'],
    [2, 0.5, 'comforted', 'consolado, reconfortado, consuelo'],
    [2, 0.6, 'peaceful', 'en paz, apacible'],
  ],
  caring: [
    [1, 0.5, 'fond', 'encariñado'],
    [2, 0.6, 'caring, tender', 'cariñoso, tierno, cariño, ternura'],
    [2, 0.65, 'grateful, thankful', 'agradecido, gratitud'],
    [3, 0.85, 'loving', 'amoroso, amor'],
  ],
  proud: [
    [1, 0.45, 'confident', 'seguro, confiado, confianza'],
    [2, 0.55, 'brave', 'valiente'],
    [2, 0.7, 'proud', 'orgulloso, orgullo'],
    [3, 0.85, 'triumphant', 'triunfante, victorioso'],
  ],
  ashamed: [
    [1, -0.15, 'shy, bashful', 'tímido, timidez'],
    [1, -0.35, 'sorry', 'arrepentido'],
    [2, -0.45, 'embarrassed', 'abochornado, bochorno'],
    [2, -0.6, 'guilty', 'culpable, culpa'],
    [3, -0.7, 'ashamed', 'avergonzado, vergüenza'],
  ],
  curious: [
    [1, -0.05, 'puzzled', 'perplejo, desconcertado'],
    [2, 0.4, 'curious', 'curioso, curiosidad'],
    [3, 0.6, 'fascinated', 'fascinado, fascinación'],
  ],
  lonely: [
    [1, -0.45, 'left out', 'excluido, dejado de lado'],
    [2, -0.5, 'homesick', 'nostálgico, nostalgia'],
    [2, -0.6, 'lonely', 'solo, solitario, soledad'],
    [3, -0.85, 'abandoned', 'abandonado, desamparado'],
  ],
};

/**
 * Words that mean something else at least as often ("cross the bridge", "solo un poco"). In a list of feeling words they are taken
 * for the feeling; in running text they are passed over.
 */
export const doubleMeaning: ReadonlySet<string> = new Set([
  'cross',
  'content',
  'steady',
  'tender',
  'fond',
  'upset',
  'sorry',
  'solo',
  'firme',
  'seguro',
  'tierno',
  'revuelto',
  'encantado',
  'molesto',
  'calma',
  'amor',
  'emoción',
  'sorpresa',
]);

export const feelings: readonly Feeling[] = Object.entries(ladders).flatMap(([family, rows]) =>
  rows.map(([strength, valence, english, spanish]): Feeling => {
    const words = { en: english.split(', '), es: spanish.split(', ') };
    return { name: words.en[0] ?? '', family: family as Family, strength, valence, words };
  }),
);

/** How pleasant a family is at a strength: the mean of its feelings there, or of its nearest rung. For words of an author's own. */
export function usualValence(family: Family, strength: number): number {
  const rows = ladders[family];
  const nearest = Math.min(...rows.map(([rung]) => Math.abs(rung - strength)));
  const there = rows.filter(([rung]) => Math.abs(rung - strength) === nearest);
  return there.reduce((sum, [, valence]) => sum + valence, 0) / there.length;
}
