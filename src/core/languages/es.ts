import { librarianInSpanish } from './es-librarian.ts';
import { retiredInSpanish } from './es-retired.ts';
import { offlineInSpanish } from './es-offline.ts';
import { esBooklet } from './es-booklet.ts';
import { recordingInSpanish } from './es-recording.ts';
import { programsInSpanish } from './es-programs.ts';
import { stackInSpanish } from './es-stack.ts';
import { handOverInSpanish } from './es-hand-over.ts';
import { makerInSpanish } from './es-maker.ts';
import { findInSpanish } from './es-find.ts';
import { sameBookInSpanish } from './es-same-book.ts';
import { qualityInSpanish } from './es-quality.ts';
import { paperInSpanish } from './es-paper.ts';
import type { Phrases } from './en.ts';
import { lessonInSpanish } from './es-lesson.ts';
import { picturesInSpanish } from './es-pictures.ts';
import { listsIn } from './formats.ts';

/** Spanish as it is written in Latin America. */

const ones = [
  'cero',
  'uno',
  'dos',
  'tres',
  'cuatro',
  'cinco',
  'seis',
  'siete',
  'ocho',
  'nueve',
  'diez',
  'once',
  'doce',
  'trece',
  'catorce',
  'quince',
  'dieciséis',
  'diecisiete',
  'dieciocho',
  'diecinueve',
  'veinte',
  'veintiuno',
  'veintidós',
  'veintitrés',
  'veinticuatro',
  'veinticinco',
  'veintiséis',
  'veintisiete',
  'veintiocho',
  'veintinueve',
];
const tens = ['', '', '', 'treinta', 'cuarenta', 'cincuenta', 'sesenta', 'setenta', 'ochenta', 'noventa'];

function inWords(n: number): string {
  if (n < 30) return ones[n] ?? String(n);
  if (n > 99) return String(n);
  const one = n % 10;
  return `${tens[Math.floor(n / 10)] ?? ''}${one === 0 ? '' : ` y ${ones[one] ?? ''}`}`;
}

/** The number before a masculine noun: "un minuto", "veintiún minutos". */
function beforeNoun(n: number): string {
  return inWords(n)
    .replace(/veintiuno$/, 'veintiún')
    .replace(/uno$/, 'un');
}

function listed(items: readonly string[]): string {
  return listsIn('es').format(items);
}

const ordinals = ['', 'primer', 'segundo', 'tercer', 'cuarto'];

/** "kínder y primer grado", "segundo y tercer grado". */
function gradesInWords(grades: readonly string[]): string {
  const early = grades.filter((grade) => !/^\d$/.test(grade)).map((grade) => (grade === 'PreK' ? 'preescolar' : 'kínder'));
  const numbered = grades.filter((grade) => /^\d$/.test(grade)).map((grade) => ordinals[Number(grade)] ?? grade);
  return listed([...early, ...numbered]) + (numbered.length === 0 ? '' : ' grado');
}

const count = (n: number, one: string, many: string) => `${String(n)} ${n === 1 ? one : many}`;

export const es: Phrases = {
  site: {
    skip: 'Saltar al contenido',
    nav: 'Principal',
    library: 'La biblioteca',
    homeReading: 'Leer en casa',
    about: 'Acerca de',
    languages: 'Idiomas',
    trail: 'Usted está aquí',
    privacy: 'Privacidad',
    accessibility: 'Accesibilidad',
    quality: 'Cómo se miden las guías',
    find: 'Buscar un libro',
    footerNav: 'Más sobre esta biblioteca',
    contact: 'A quién preguntar',
    rights: 'Derechos',
    rules: 'Las normas locales, la escuela y las personas a su cargo están por encima de todo lo escrito aquí.',
    listen: 'Escuchar',
    listenStop: 'Parar',
    endOfLine: 'en',
    awaiting: '',
    partlyEnglish: '',
    notYet: '',
  },
  inWords,
  listed,
  comma: ', ',
  semicolon: '; ',
  grades: (grades) => gradesInWords(grades),
  forGrades: (grades) => `Para ${gradesInWords(grades)}`,
  minutes: (n) => count(n, 'minuto', 'minutos'),
  minutesInWords: (n) => `${beforeNoun(n)} ${n === 1 ? 'minuto' : 'minutos'}`,
  seconds: (n) => count(n, 'segundo', 'segundos'),
  span: (seconds) => {
    const minutes = Math.floor(seconds / 60);
    const rest = Math.round(seconds % 60);
    return [minutes > 0 ? count(minutes, 'minuto', 'minutos') : '', rest > 0 || minutes === 0 ? count(rest, 'segundo', 'segundos') : ''].filter((part) => part !== '').join(' ');
  },
  words: (n) => count(n, 'palabra', 'palabras'),
  opening: (n) => `doble página ${String(n)}`,
  openings: (n) => count(n, 'doble página', 'dobles páginas'),
  stop: (n) => `Pausa ${String(n)}`,
  quoted: (text) => `«${text}»`,
  blank: 'espacio por completar',
  wideTable: 'Tabla',
  inLanguage: (language) => `en ${language}`,
  kinds: {
    predict: 'adivinar lo que viene',
    feeling: 'un sentimiento',
    word: 'una palabra',
    recall: 'lo que pasó',
    reason: 'una razón',
    opinion: 'una opinión',
    'own life': 'su propia vida',
    retell: 'volver a contarlo',
    completion: 'terminar una frase',
  },
  depths: ['recordar', 'relacionar', 'razonar', 'ir más allá'],
  depth: (name) => `profundidad: ${name}`,
  ways: { say: 'decirlo', write: 'escribirlo', draw: 'dibujarlo', act: 'actuarlo', partner: 'contárselo a un compañero' },
  rightsOf: { 'in copyright': 'protegido por derechos de autor', 'public domain': 'de dominio público', licensed: 'de licencia abierta', 'our own': 'propio de la biblioteca' },
  families: {
    glad: 'contento',
    sad: 'triste',
    cross: 'enojado',
    afraid: 'asustado',
    surprised: 'sorprendido',
    disgusted: 'con asco',
    calm: 'tranquilo',
    caring: 'cariñoso',
    proud: 'orgulloso',
    ashamed: 'avergonzado',
    curious: 'curioso',
    lonely: 'solo',
  },
  strengths: ['suave', 'mediano', 'fuerte'],
  about: { character: 'sobre el personaje: pida qué lo demuestra', me: 'sobre el niño: toda respuesta es verdadera' },
  book: {
    by: (author, illustrator) => (illustrator === undefined ? `de ${author}` : `de ${author}, con dibujos de ${illustrator}`),
    companionBy: (name, school) => (school === undefined ? `Guía preparada por ${name}` : `Guía preparada por ${name}, ${school}`),
    licence: (licence) => `Guía con licencia ${licence}`,
    translated: (by) => `Versión en español de ${by}`,
    checked: (by) => `revisada por ${by}`,
    reviewed: (date) => `Última revisión: ${date}`,
    from: (owner) => `De ${owner}`,
    forks: 'Guías hechas a partir de esta',
    moreForks: (n) => `y ${String(n)} más`,
    basedOn: (parent) => `A partir de ${parent}`,
    pictureBy: (credit) => `Dibujo: ${credit}`,
    isbn: (isbn) => `ISBN ${isbn}`,
  },
  ribbon: {
    name: 'Dónde se detiene la lectura',
    first: 'primera página',
    last: 'última página',
    mark: (n, opening, kind) => `Pausa ${String(n)}, doble página ${String(opening)}: ${kind}`,
    short: (opening) => `doble página ${String(opening)}`,
  },
  library: {
    title: 'La biblioteca',
    welcome: 'Guías para leer álbumes ilustrados en voz alta, en la clase y en casa por la noche.',
    contents: 'Los libros',
    none: 'Todavía no hay ningún libro aquí.',
    elsewhere: 'Solo en otro idioma',
    elsewhereNote: 'Estos libros todavía no tienen guía en español.',
    description: (n) => `${count(n, 'guía', 'guías')} para leer álbumes ilustrados en voz alta: una página para la familia, un cuadernillo para los niños y una clase para el maestro.`,
    frontispiece: 'Un libro abierto bajo una lámpara',
  },
  family: {
    kind: 'Para la familia',
    toc: 'Para este libro',
    readIn: 'Léelo en español',
    steps: 'Diez minutos juntos',
    stepsNote: 'No necesita el libro. Su hijo o hija lleva el cuento en la memoria.',
    step: [
      ['Pida el cuento.', 'Diga: «Cuéntame qué pasó». Escuche hasta el final, aunque salga en desorden. Tres minutos.'],
      ['Haga una pregunta.', 'Elija una de la lista de abajo. Respire despacio cinco veces antes de ayudar. Cuatro minutos.'],
      ['Repítalo con algo más.', 'Diga lo que oyó en una frase completa y luego cuente algo suyo. Tres minutos.'],
    ],
    anyLanguage: 'Hable en el idioma que más quiera. Un cuento vale lo mismo en todos.',
    prompts: 'Preguntas para elegir',
    example: 'Así puede sonar',
    speakers: { 'grown-up': 'Adulto', child: 'Niño' },
    words: 'Palabras para usar esta semana',
    wordsNote: 'Que aparezcan en la mesa, en la escalera, a la hora del baño.',
    gesture: 'Con el cuerpo:',
    aims: 'Para qué lo lee la clase',
    care: 'Antes de conversar',
    more: 'Sobre el libro',
    toBooklet: 'El cuadernillo',
    toBookletNote: 'para responder en la pantalla o en papel',
    toLesson: 'La clase',
    toLessonNote: 'la hoja de ruta del maestro, o de quien lo reemplace',
    description: (title) => `De qué conversar en casa después de «${title}»: tres pasos, diez minutos, sin necesitar el libro.`,
  },
  booklet: esBooklet,
  sheet: lessonInSpanish,
  pictures: picturesInSpanish,
  lesson: {
    kind: 'Hoja de ruta',
    of: 'Clase',
    lead: 'Para el maestro, o para quien lo reemplace hoy. No hace falta haber leído el libro antes.',
    toMinutes: 'Directo a los minutos',
    glance: 'De un vistazo',
    who: 'Grupo',
    time: 'Tiempo',
    book: 'Libro',
    have: 'Tenga a mano',
    theBook: 'el libro',
    theBookOrRecording: 'el libro o su grabación',
    aims: 'Para qué es esta lectura',
    before: 'Lea esto primero',
    readUntil: 'Lea hasta la',
    onOpening: (opening) => `doble página ${String(opening)}`,
    cue: 'y deténgase después de',
    picture: { shown: 'El dibujo a la vista.', hidden: 'No muestre el dibujo hasta que hayan respondido.' },
    atRecording: (clock) => `Grabación: ${clock}`,
    say: 'Diga',
    how: 'Cómo responden',
    orWay: (way) => `o ${way}`,
    seated: 'Sin levantarse',
    materials: 'Tenga a mano',
    frames: 'Frases para completar',
    bank: 'Banco de palabras',
    listenFor: 'Esté atento a',
    ifQuiet: 'Si nadie habla',
    expand: 'Repítalo con algo más',
    models: 'Respuestas posibles de un niño',
    shows: (traits) => `muestra: ${traits}`,
    must: 'No la deje fuera si falta tiempo.',
    after: (n) => `Va después de la pausa ${String(n)}.`,
    questions: 'Después del libro',
    rubric: 'Qué notar en una respuesta',
    rubricNote: 'La ortografía y la letra nunca se califican. Un rasgo que aún falta es algo por enseñar, no un juicio sobre un niño.',
    trait: 'Rasgo',
    meets: 'Ya está',
    notYet: 'Todavía no',
    example: 'Por ejemplo',
    words: 'Palabras para enseñar',
    word: 'Palabra',
    meaning: 'Significado',
    situation: 'Cuándo aparece',
    firstMet: 'Aparece en',
    gesture: 'Gesto',
    feelings: 'Palabras para los sentimientos',
    feeling: 'Sentimiento',
    family: 'Pariente de',
    strength: 'Fuerza',
    care: 'Con cuidado',
    rights: 'Derechos',
    bookRights: (rights) => `El libro es ${rights}.`,
    quote: 'Del libro solo aparecen las pocas palabras de cada señal. No copie, proyecte ni grabe más de lo que permitan las normas de su escuela y quien tenga los derechos.',
    description: (title) => `Hoja de ruta para leer «${title}» en voz alta: los minutos, cada pausa con las palabras para decir y a qué estar atento.`,
  },
  offline: offlineInSpanish,
  recording: recordingInSpanish,
  stack: stackInSpanish,
  quality: qualityInSpanish,
  sameBook: sameBookInSpanish,
  maker: makerInSpanish,
  handOver: handOverInSpanish,
  find: findInSpanish,
  programs: programsInSpanish,
  paper: paperInSpanish,
  retired: retiredInSpanish,
  librarian: librarianInSpanish,
  missing: {
    title: 'Esta página no está en el libro',
    text: 'Quizá cambió de lugar, o la dirección perdió una letra por el camino. No se ha perdido nada de lo que usted hizo.',
    back: 'Volver a la biblioteca',
    description: 'No hay ninguna página en esta dirección. La biblioteca y sus libros están a un paso de aquí.',
  },
};
