import { wordsOf } from './alt-words.ts';

/** Words that name a feeling. At a stop that asks for one, such a word in the alt text is the answer. From memory; a pack's own are added by its word banks. */
const feelings = new Set(
  (
    'afraid angry anxious annoyed ashamed bored brave calm cheerful confused content cross curious delighted disappointed disgusted embarrassed envious excited frightened frustrated furious glad ' +
    'gloomy grateful greedy guilty happy happier happiest hopeful hopeless hurt jealous jealousy joyful lonely lonesome loving mad miserable nervous offended panicked peaceful pleased proud puzzled relieved sad ' +
    'sadder sadness scared shocked shy sorry stubborn surprised terrified thankful uneasy unhappy upset wistful worried fear joy anger pride shame envy ' +
    'aburrido agradecido alegre aliviado angustiado ansioso apenado asombrado asustado avergonzado calmado celoso celos confundido contento culpable curioso decepcionado desanimado emocionado enfadado enojado ' +
    'envidioso envidia esperanzado feliz felices furioso harto impaciente indignado inquieto inseguro intranquilo melancólico miedo miedoso molesto nervioso nostálgico orgulloso orgullo ofendido preocupado rabia rabioso ' +
    'satisfecho solitario sorprendido susto tímido tranquilo triste tristeza alegría vergüenza valiente'
  )
    .split(' ')
    .flatMap((word) => (word.endsWith('o') ? [word, word.replace(/o$/u, 'a')] : [word]))
    .flatMap((word) => (/[oae]$/u.test(word) ? [word, `${word}s`] : [word])),
);

/** The feelings named in a text, in small letters. */
export function feelingsIn(text: string): readonly string[] {
  return wordsOf(text).filter((word) => feelings.has(word));
}
