import type { EstimateToSay, QualityPhrases } from './en-quality.ts';
import { listsIn, numbersIn } from './formats.ts';

/** Spanish phrases of the page that shows how packs measure up. */

const number = (n: number) => numbersIn('es').format(n);
const count = (n: number, one: string, many: string) => `${number(n)} ${n === 1 ? one : many}`;
const list = (items: readonly string[]) => listsIn('es').format(items);

function estimate(found: EstimateToSay): string {
  switch (found.kind) {
    case 'too short':
      return 'Demasiado corto para estimar un grado: hacen falta 100 palabras y 10 oraciones.';
    case 'no formula':
      return 'Ninguna fórmula sirve para este idioma, así que no hay estimación.';
    case 'grades': {
      const { low, high, belowFloor, aboveCeiling, formula } = found;
      const band = belowFloor
        ? `Cerca del grado ${String(high)} o menos`
        : aboveCeiling
          ? `Cerca del grado ${String(low)} o más`
          : low === high
            ? `Cerca del grado ${String(low)}`
            : `Entre los grados ${String(low)} y ${String(high)}`;
      return `${band}, una estimación con la fórmula ${formula}, que solo ve longitudes.`;
    }
    case 'ease': {
      const band = found.band === 'normal' ? 'de dificultad normal' : found.band;
      return `${band.charAt(0).toUpperCase()}${band.slice(1)} para un lector adulto en la escala INFLESZ, una estimación con la fórmula ${found.formula}, que solo ve longitudes.${found.shortSample ? ' La escala se hizo con textos de 500 palabras o más; este es más corto.' : ''}`;
    }
  }
}

export const qualityInSpanish: QualityPhrases = {
  title: 'Cómo se miden las guías',
  titleOfPage: (n) => `Cómo se miden las guías, página ${String(n)}`,
  description: 'Palabras, oraciones, una estimación honesta del grado de lectura y lo que dicen las revisiones de cada guía de esta biblioteca.',
  lead: 'Cada guía se cuenta y se revisa antes de aparecer aquí. Las cifras tratan del texto de la propia guía, nunca del libro, de un niño ni de un maestro.',
  toMeaning: 'Qué significan las cifras y qué no',
  toSum: 'La biblioteca en suma',
  data: 'Lo mismo en forma de datos',

  sum: 'La biblioteca en suma',
  companions: 'Guías',
  inLanguages: (n) => count(n, 'idioma', 'idiomas'),
  stops: 'Pausas',
  familyWords: 'Palabras para las familias',
  pictures: 'Dibujos descritos',
  ofPictures: (described, all) => (all === 0 ? 'sin dibujos' : `${String(described)} de ${String(all)}`),
  withFindings: 'Con algún aviso de las revisiones',
  ofAll: (n, all) => `${String(n)} de ${String(all)}${all === 0 ? '' : `, el ${numbersIn('es', { style: 'percent' }).format(n / all)}`}`,
  keptOff: 'Sin publicar',
  keptOffNote: (n) => `${count(n, 'guía', 'guías')}, hasta que se corrija; «bookfellow check» dice por qué`,
  coverage: 'Grados e idiomas',
  language: 'Idioma',
  coverageNote: 'Cuántas guías hay para cada grado. Una guía para dos grados se cuenta en los dos.',
  gradeShort: (grade) => (grade === 'PreK' ? 'Preescolar' : grade === 'K' ? 'Kínder' : `${grade}.º`),
  allFindings: 'Lo que dicen las revisiones, en total',
  code: 'Tipo',
  noFindingsAtAll: 'Las revisiones no tienen nada que decir de ninguna guía.',

  each: 'Las guías, una por una',
  filter: {
    legend: 'Qué guías ver',
    language: 'Idioma',
    grade: 'Grado',
    level: 'Qué dicen las revisiones',
    kind: 'Sobre qué',
    any: 'cualquiera',
    findings: 'Solo las que tienen algún aviso',
    all: 'Ver todas',
    shown: { none: 'Ninguna guía es así.', one: 'Una guía de {all}.', some: '{n} guías de {all}.', all: 'Se ven todas las guías.' },
    elsewhere: 'En las otras páginas',
    failed: 'Solo se pudo buscar en esta página; el resto no se cargó.',
  },
  pages: 'Páginas de esta lista',
  page: 'página',
  together: 'En total',
  stopsIn: (stops, minutes) => `${count(stops, 'pausa', 'pausas')} en ${count(minutes, 'minuto', 'minutos')}`,

  parts: { family: 'Para las familias', children: 'Lo que leen los niños', passage: 'El texto del libro' },
  passageNote: 'Contado en el equipo de quien prepara la guía; nada de él se publica.',
  counted: (words, sentences) => `${count(words, 'palabra', 'palabras')} en ${count(sentences, 'oración', 'oraciones')}`,
  lengths: (mean, longest) => `${count(mean, 'palabra', 'palabras')} por oración de promedio, ${String(longest)} en la más larga`,
  nothing: 'No hay nada que contar.',
  estimate,
  aim: { en: 'La meta es el grado 6 o menos.', es: 'La meta es «bastante fácil» o más fácil.' },
  longWords: 'Palabras largas:',
  longOrRareWords: 'Palabras largas o poco comunes:',
  andMore: (n) => ` y ${String(n)} más`,
  leftOut: (pieces) => {
    const named = [
      [pieces.headings, 'título', 'títulos'],
      [pieces.listItems, 'elemento de lista', 'elementos de lista'],
      [pieces.meanings, 'línea de la lista de palabras', 'líneas de la lista de palabras'],
      [pieces.frames, 'frase para completar', 'frases para completar'],
      [pieces.bankWords, 'palabra de los bancos de palabras', 'palabras de los bancos de palabras'],
    ] as const;
    const told = named.flatMap(([n, one, many]) => (n === undefined || n === 0 ? [] : [count(n, one, many)]));
    return told.length === 0 ? '' : `No se cuenta, porque no es texto seguido: ${list(told)}.`;
  },
  costliest: 'Las oraciones que más cuestan',
  sees: 'Una fórmula solo ve longitudes: no ve dibujos, repeticiones, rimas, sonidos por descifrar, la página ni lo que ya sabe quien lee. Después, pida a una familia que lo lea.',

  findings: 'Qué dicen las revisiones',
  noFindings: 'Las revisiones no tienen nada que decir.',
  withheld: 'Un aviso sobre privacidad; «bookfellow check» dice cuál es.',
  levels: { stop: 'No se publica', warn: 'Mírelo otra vez', note: 'Conviene saberlo' },
  line: (n) => `línea ${String(n)}`,
  kinds: {
    aims: 'objetivos',
    'alt-text': 'texto alternativo',
    ask: 'cómo se pregunta',
    balance: 'equilibrio de las pausas',
    body: 'el texto bajo los campos',
    by: 'quién la hizo y cuándo',
    care: 'notas de cuidado',
    copy: 'palabras citadas del libro',
    feelings: 'palabras de sentimientos',
    file: 'el archivo',
    folder: 'la carpeta',
    frames: 'frases para completar',
    'front-matter': 'el encabezado',
    home: 'preguntas para casa',
    models: 'respuestas modelo',
    pack: 'campos',
    passage: 'el texto del libro',
    picture: 'dibujos',
    plan: 'minutos',
    privacy: 'privacidad',
    reading: 'lecturas',
    recording: 'la grabación',
    rights: 'derechos',
    stop: 'pausas',
    text: 'texto para las familias',
    translation: 'la traducción',
    words: 'palabras que se enseñan',
    yaml: 'cómo están escritos los campos',
  },

  meaning: 'Qué significan las cifras y qué no',
  meanings: [
    ['Palabras y oraciones', 'se cuentan en el texto seguido. Los títulos, las listas, los bancos de palabras y las frases para completar quedan fuera, y cada entrada lo dice.'],
    ['El promedio y la oración más larga', 'una oración corta puede ser difícil y una larga, fácil; solo indican dónde mirar.'],
    [
      'La estimación',
      'una franja de grados según una fórmula que cuenta sílabas y oraciones, o palabras poco comunes. Ve longitudes: no ve dibujos, repeticiones, rimas, sonidos por descifrar, la página ni lo que ya sabe quien lee. Un texto de menos de 100 palabras o 10 oraciones no recibe ninguna. Es para quien escribe, no un nivel para quien lee.',
    ],
    [
      'Qué fórmula',
      'cada una se usa solo para los lectores para los que se hizo: Flesch-Kincaid o INFLESZ para las familias; Spache en inglés y Crawford en español para los niños. Un libro que un adulto lee en voz alta no está sujeto a ninguna.',
    ],
    [
      'Palabras largas',
      'las de tres sílabas o más; en inglés, para los niños, también las que no están en una lista de palabras comunes. No se cuentan los nombres ni las palabras que la guía enseña. Una palabra larga puede ser la mejor que hay.',
    ],
    ['Las oraciones que más cuestan', 'aquellas sin las cuales la fórmula vería más fácil el texto. Reescribirlas mejora la cifra; si mejora la lectura, pregúntelo a una familia.'],
    ['Dibujos descritos', 'si cada dibujo que dice algo tiene una descripción. Si la descripción es buena, solo una persona lo puede decir.'],
    ['Pausas y minutos', 'cuántos momentos ofrece la guía y cuánto duran. Más no es mejor.'],
    ['Qué dicen las revisiones', 'reglas que una máquina puede mirar. Una guía de la que no se dice nada puede ser aburrida, y una con tres avisos puede ser la mejor de la casa.'],
  ],
};
