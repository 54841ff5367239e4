import type { passageFindingsInEnglish } from './en-findings-private.ts';

export const passageFindingsInSpanish: typeof passageFindingsInEnglish = {
  'passage/word-count': (f) =>
    `"words" dice ${String(f.said)}, y en el texto del libro se cuentan ${String(f.counted)}. De este número salen los minutos de la clase: escriba "words: ${String(f.counted)}" o compruebe si el texto está completo.`,
  'passage/opening-mark': (f) => {
    if (f.why === 'past the end') return `El texto del libro marca la doble página ${String(f.opening)}, pero el libro tiene ${String(f.openings)}. Corrija la marca o "openings".`;
    const wrong = f.why === 'form' ? 'parece la marca de una doble página y no se lee como tal' : 'no va después de la anterior';
    return `En el texto del libro, la marca de la línea ${String(f.line)} ${wrong}. Escriba "[opening 4]" en una línea aparte, con los números de menor a mayor.`;
  },
  'words/not-in-passage': (f) => `La palabra "${f.word}" no se encuentra en el texto del libro. Elija una que los niños vayan a oír, o déjela si habla de una ilustración.`,
  'words/first-met': (f) =>
    `"first met" dice doble página ${String(f.said)}, y en el libro "${f.word}" sale por primera vez en la ${String(f.found)}. Cambie el número para que la palabra esté lista cuando llegue.`,
  'copy/long-quote': (f) =>
    `Este texto repite ${String(f.words)} palabras seguidas del libro, desde "${f.begins} …". Un paquete cita ${String(f.most)} como mucho, porque el libro tiene derechos de autor. Dígalo con sus palabras o deje solo las pocas que necesita.`,
  'copy/too-much': (f) =>
    `En total, este paquete repite ${String(f.words)} palabras del libro (${String(f.percent)} %), y para él el máximo son ${String(f.most)}. Acorte las frases de aviso y las citas, y cuente lo demás con sus palabras.`,
};
