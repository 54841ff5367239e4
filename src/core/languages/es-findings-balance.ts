/** Las frases de las comprobaciones de equilibrio y ajuste: lo que diría una colega amable, y qué escribir en su lugar. */
import type { Code, FactsOf } from '../finding.ts';

type Sentences = { readonly [C in Code]?: (facts: FactsOf[C]) => string };

const kinds = (list: readonly string[]) => list.map((kind) => `"kind: ${kind}"`).join(' o ');
const words = (list: readonly string[]) => list.map((word) => `"${word}"`).join(', ');
const deep = {
  prompt: 'Ninguna pregunta llega a la profundidad 3, donde los niños razonan. Basta un "por qué" con lo que lo muestra en el libro.',
  model: 'Ninguna pregunta de profundidad 3 tiene una respuesta modelo. Escriba una que nombre lo que lo muestra en el libro; así sabrá qué espera oír.',
  evidence: 'Ninguna respuesta modelo de profundidad 3 señala el libro. Añada una como "…, y en el dibujo …" o "…, y el libro dice que …".',
};
const shows = {
  sentence: 'Póngale mayúscula, signo final y al menos tres palabras',
  reason: 'Añada el porqué, con porque, así que o ya que',
  book: 'Nombre lo que se oyó o se vio, como en "el libro dice que …" o "en el dibujo …"',
  word: 'Use una palabra que ofrezca el paquete, ponga la suya en "words" o "allow words"',
};

export const balanceInSpanish = {
  'balance/few-kinds': (f) =>
    `Las paradas son de ${f.found === 1 ? 'una sola clase' : `solo ${String(f.found)} clases`}. Con ${String(f.least)} o más los niños responden de más maneras: por ejemplo, algo que adivinar, un "por qué" y algo propio.`,
  'balance/no-own-life': () => 'Ninguna parada llega a la vida de los niños. Una con "kind: own life" o "about: me" da algo que decir también a quien no está seguro del cuento.',
  'balance/mostly-completion': (f) => `${String(f.found)} de ${String(f.stops)} paradas piden completar palabras. Desde primer grado, deje que la mayoría pida una idea.`,
  'balance/mostly-recall': (f) => `${String(f.found)} de ${String(f.of)} preguntas piden lo que pasó (profundidad 1). Con un tercio basta: cambie una o dos por un "por qué" o un "cómo lo sabes".`,
  'balance/no-deep-prompt': (f) => deep[f.missing],
  'balance/few-why': (f) =>
    `${String(f.found)} de ${String(f.of)} preguntas piden un porqué o un cómo, o admiten más de una respuesta. Dos de cada cinco es una buena meta; esas preguntas dan respuestas más largas.`,
  'balance/few-ways': (f) =>
    `Los niños responden de ${f.found === 1 ? 'una sola manera' : `solo ${String(f.found)} maneras`}. Con ${String(f.least)} o más, como decir, dibujar y actuar, más niños encuentran la suya.`,
  'balance/only-own-feelings': () => 'Todos los sentimientos por los que se pregunta son de los niños. Añada una parada con "about: character", donde algo del libro muestre el sentimiento.',
  'reading/no-why': (f) => `La lectura ${String(f.reading)} no tiene ninguna pregunta de por qué o cómo. Una cerca del final deja algo en que pensar.`,
  'reading/many-first-stops': (f) => `La primera lectura tiene ${String(f.found)} paradas. Con ${String(f.most)} o menos los niños oyen primero el cuento; "readings: [2]" pasa una parada a otro día.`,
  'reading/first-has-most': (f) =>
    `La primera lectura tiene más paradas (${String(f.first)}) que la segunda (${String(f.second)}). Se habla más cuando ya se conoce el cuento: ¿podría una parada esperar a la segunda lectura?`,
  'reading/hands-twice': (f) => `En la lectura ${String(f.reading)} los niños escriben o dibujan en "${f.first}" y enseguida otra vez en "${f.second}". Deje que en una de las dos hablen o se muevan.`,
  'stop/needs-handwriting': (f) => `En "${f.stop}" quien aún no escribe no tiene cómo responder. Añada una línea "or: say" (o draw, act, partner); lo dicho o dictado vale lo mismo.`,
  'stop/needs-a-pencil': (f) => `En "${f.stop}" todos necesitan un lápiz. Añada una línea "or: say" para quien prefiera contar lo que dibujaría.`,
  'stop/no-seated-way': (f) => `"${f.stop}" se actúa. Añada una línea "seated: …" que diga cómo hacerlo en la silla, con las manos o la cara.`,
  'stop/too-close': (f) =>
    `Entre "${f.before}" y "${f.stop}" ${f.words < 1 ? 'no se lee casi nada' : f.words === 1 ? 'se lee una sola palabra' : f.estimated ? `se leen unas ${String(f.words)} palabras, según una estimación` : `se leen solo ${String(f.words)} palabras`}. Con ${String(f.least)} o más no se pierde el cuento; ¿podría una de las dos moverse, o esperar a otra lectura?`,
  'stop/too-early': (f) => `"${f.stop}" llega antes de que empiece el cuento. Tan pronto solo sirve adivinar lo que vendrá; pásela una o dos páginas más allá.`,
  'stop/at-the-end': (f) => `"${f.stop}" está al final mismo del libro. Deje oír el final y ponga la pregunta antes, o en "questions", para después.`,
  'stop/short-wait': (f) => `En "${f.stop}" la espera es de ${String(f.wait)} s. Dé ${String(f.least)} s o más: en el silencio encuentra su respuesta la mayoría de los niños.`,
  'stop/depth-four-must': (f) => `"${f.stop}" es obligatoria y de profundidad 4, que va más allá de un libro. Déjela como oferta y haga obligatoria una de profundidad 3.`,
  'stop/deep-word-first': (f) => `"${f.word}" aparece en "${f.first}" con una pregunta más difícil que en "${f.later}". Haga primero la fácil, mientras la palabra es nueva.`,
  'stop/no-about': (f) => `"${f.stop}" no dice de quién es el sentimiento. Añada "about: character" (algo del libro lo muestra) o "about: me" (toda respuesta es verdadera).`,
  'stop/no-evidence-asked': (f) => `"${f.stop}" pregunta qué siente un personaje y no cómo se sabe. Añada "¿Cómo lo sabes?"`,
  'ask/family-trouble': (f) =>
    `Esta pregunta puede llevar a un niño a contar ante la clase problemas de su casa ("${f.words}"). Pregunte por el personaje o por algo pequeño y propio, y deje pasar a quien quiera.`,
  'frames/too-many-blanks': (f) => `"${f.frame}" tiene ${String(f.found)} huecos. Más de ${String(f.most)} no caben en la memoria de un niño; divida la frase o complete un hueco.`,
  'frames/article-before-blank': (f) => `"${f.frame}" tiene "${f.article}" justo antes de un hueco, y eso deja fuera buenas palabras. Escriba "${f.instead} ___" o deje el artículo al niño.`,
  'frames/not-first-person': (f) => `Esta parada trata de mí, y "${f.frame}" habla de otra persona. Empiécela con yo, me o mi.`,
  'frames/own-feeling-for-character': (f) => `Esta parada trata de un personaje, y "${f.frame}" habla del niño. Empiécela con el nombre del personaje, él o ella.`,
  'models/fits-no-frame': (f) => `"${f.model}" no encaja en ninguna de las frases para completar de "${f.stop}". Escríbala como la diría un niño que usa una, o añada la frase que le falta.`,
  'models/does-not-show': (f) => `De este modelo se dice que muestra "${f.trait}", y en "${f.model}" no se ve. ${shows[f.lacks]} o quite el rasgo.`,
  'models/unknown-trait': (f) => `"${f.trait}" no es un rasgo de la rúbrica de este paquete.${f.suggestion === undefined ? ' Añádalo allí o quítelo aquí.' : ` ¿Quería decir "${f.suggestion}"?`}`,
  'models/alike': (f) => `En "${f.stop}" hay dos respuestas modelo iguales: "${f.model}". Cambie una, para que muestren dos maneras de acertar.`,
  'models/no-short-one': (f) =>
    `La respuesta modelo más corta de "${f.stop}" tiene ${String(f.shortest)} palabras. Añada una de ${String(f.most)} o menos, para que una respuesta corta no parezca mala.`,
  'home/needs-the-book': (f) => `"${f.words}" necesita el libro, y la mayoría de las familias no lo tiene a mano. Pregunte por lo que el niño recuerda.`,
  'home/example-length': (f) =>
    `El ejemplo para casa tiene ${f.found === 1 ? 'una línea' : `${String(f.found)} líneas`}. Lo mejor son ${String(f.wanted)}: lo que pregunta la persona adulta, lo que dice el niño, y la respuesta devuelta con algo más.`,
  'aims/no-prompt': (f) => `Ninguna pregunta practica el objetivo "${f.skill}". Añada una parada con ${kinds(f.kinds)}, o quite el objetivo.`,
  'feelings/no-entry': (f) =>
    `El banco de palabras de "${f.stop}" ofrece ${words(f.words)} sin entrada en "feelings". Añada familia, fuerza y una situación de una línea; una pequeña historia dice un sentimiento mejor que una cara.`,
  'feelings/situation-names-word': (f) => `La situación de "${f.word}" nombra el sentimiento. Cuente solo lo que pasa, y deje que los niños encuentren la palabra.`,
  'words/meaning-uses-word': (f) => `La explicación de "${f.word}" usa la misma palabra. Dígalo con palabras que los niños ya tienen, como en "Si eres …, …".`,
  'words/long-meaning': (f) => `La explicación de "${f.word}" tiene ${String(f.found)} palabras. Los niños retienen una de ${String(f.most)} o menos.`,
  'words/too-many': (f) => `Con este libro se enseñan ${String(f.found)} palabras. Elija las ${String(f.most)} más útiles; dos o tres a fondo, las demás de paso.`,
  'care/no-note': (f) =>
    `La palabra "${f.word}" está ${f.where === 'pack' ? 'aquí' : 'en el texto del libro'}, y el paquete no tiene ninguna nota "care". Añada una: qué página puede tocar a un niño y qué hacer.`,
} satisfies Sentences;
