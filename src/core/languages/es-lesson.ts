import type { LessonPhrases } from './en-lesson.ts';
import { listsIn } from './formats.ts';

/** The lesson's own phrases in Spanish. */

const count = (n: number, one: string, many: string) => `${String(n)} ${n === 1 ? one : many}`;
const listed = (items: readonly string[]) => listsIn('es').format(items);
const minutes = (n: number) => count(n, 'minuto', 'minutos');
const stops = (numbers: readonly number[]) => `${numbers.length === 1 ? 'la pausa' : 'las pausas'} ${listed(numbers.map(String))}`;
const span = (seconds: number) => {
  const whole = Math.floor(seconds / 60);
  const rest = Math.round(seconds % 60);
  return [whole > 0 ? minutes(whole) : '', rest > 0 || whole === 0 ? count(rest, 'segundo', 'segundos') : ''].filter((part) => part !== '').join(' ');
};
const small = ['ninguna', 'una', 'dos', 'tres', 'cuatro', 'cinco', 'seis', 'siete', 'ocho', 'nueve', 'diez'];
const few = (n: number) => small[n] ?? String(n);

export const lessonInSpanish: LessonPhrases = {
  stop: (n) => `Pausa ${String(n)}`,
  stops,
  opening: (n) => `doble página ${String(n)}`,
  minutesOf: minutes,
  span,
  choices: {
    name: 'Esta clase',
    start: 'Empieza a las',
    now: 'Ahora',
    minutes: 'Minutos',
    reading: 'Lectura',
    with: 'Con',
    settings: { class: 'un grupo', 'small group': 'un grupo pequeño', 'one child': 'un solo niño', recording: 'una grabación' },
    pace: 'Palabras por minuto',
    paceNow: (pace) => `Ritmo de lectura: ${String(Math.round(pace))} palabras por minuto`,
    practiceNote: 'O encuentre el suyo: lea una vez todo el libro en voz alta, pasando las páginas, y mire el reloj antes y después. Nadie lee un álbum siempre al mismo ritmo; este es el suyo.',
    practiceTook: 'Mi lectura duró (minutos:segundos)',
    practiceSet: (pace) => `Son unas ${String(pace)} palabras por minuto.`,
    practiceWrong: 'Escriba minutos y segundos, como 4:30, para todo el libro.',
    range: (least, most) => `Escriba un número de ${String(least)} a ${String(most)}.`,
    shared: 'La dirección de esta página guarda lo elegido. No contiene nada sobre nadie.',
  },
  fit: {
    all: (n, takes, given) => (n === 1 ? `Su única pausa cabe: unos ${minutes(takes)} de ${String(given)}.` : `Caben las ${few(n)} pausas: unos ${minutes(takes)} de ${String(given)}.`),
    some: (asked, left, given) => `En ${minutes(given)}, haga ${stops(asked)}. Para otro día: ${stops(left)}.`,
    onlyReading: (left, given) => `${minutes(given)} alcanzan para leer, sin ninguna pausa. Para otro día: ${stops(left)}.`,
    noStops: (takes, given) => `Esta lectura no tiene pausas: unos ${minutes(takes)} de ${String(given)}.`,
    unmet: { 'a feeling': 'No cabe ninguna pregunta sobre un sentimiento.', 'a way without writing': 'Todo lo que cabe pide escribir. Ofrezca a cada niño la otra manera de responder.' },
    cannot: (given, missing, total) =>
      `No cabe: para la lectura y las pausas que no se pueden dejar, a ${minutes(given)} les faltan ${missing}. La lectura completa, abajo, dura unos ${minutes(total)}.`,
    outOfReach: 'Una pausa que no se puede dejar va después de otra que esta lectura no tiene.',
    wouldHelp: 'Qué ayudaría:',
    nothingHelps: 'Solo ayudarían más minutos.',
    remedies: {
      ends: 'Acortar el inicio y el cierre',
      part: (to) => `Leer solo hasta la doble página ${String(to)}`,
      days: (to) => `Leer hoy hasta la doble página ${String(to)} y mañana el resto`,
    },
    endsCut: 'El inicio y el cierre están acortados.',
    endsWhole: 'Darles su tiempo',
    part: (from, to) => `Solo las dobles páginas ${String(from)} a ${String(to)}.`,
    rest: (from, to) => `Al día siguiente: dobles páginas ${String(from)} a ${String(to)}`,
    whole: 'Todo el libro',
  },
  plan: 'Los minutos',
  planNote: (pace) => `Calculado para una lectura de ${String(Math.round(pace))} palabras por minuto. Su grupo tiene su propio ritmo; confíe en él.`,
  part: 'Parte',
  takes: 'Dura',
  bar: 'La clase de izquierda a derecha: la lectura es una línea fina y cada bloque con número es una pausa',
  openingPart: 'Inicio',
  closingPart: 'Cierre',
  readingAloud: 'Leer en voz alta',
  turns: 'Pasar las páginas y mirar',
  total: 'En total',
  runSheet: 'Minuto a minuto',
  runNote: 'El reloj cuenta minutos y segundos desde que usted empieza.',
  runNoteClock: (from, to) => `De ${from} a ${to}.`,
  theBook: 'el libro',
  theRecording: 'la grabación',
  have: (things) => `Tenga a mano: ${listed(things)}.`,
  planFor: (reading, purpose) => `${['', 'Primera', 'Segunda', 'Tercera', 'Cuarta', 'Quinta'][reading] ?? ''} lectura. ${purpose}`,
  begin: 'Muestre la tapa. Lea el título y quién hizo el libro. Diga para qué es esta lectura y empiece.',
  close: 'Cierre el libro. Haga una pregunta de «Después del libro», más abajo, y agradezca al grupo algo que haya oído.',
  toTheEnd: 'Lea hasta el final del libro.',
  readTo: (to) => `Lea hasta la doble página ${String(to)}.`,
  wait: (n) => `Espere ${count(n, 'segundo', 'segundos')} en silencio.`,
  task: (seconds) => `Dé ${span(seconds)} para hacerlo.`,
  shares: (n, secondWait) =>
    n === 0
      ? 'No hace falta oír a nadie por separado; mire a todo el grupo.'
      : `Escuche a ${n === 1 ? 'un niño' : `${few(n)} niños`} y espere ${count(secondWait, 'segundo', 'segundos')} después de cada respuesta.`,
  hold: 'La grabación espera; el niño responde a quien esté con él.',
  rest: 'Fuera de esta clase',
  restNote: 'Las pausas que quedan por falta de minutos y las de las otras lecturas.',
  inReadings: (readings) => (readings.length === 1 ? `En la lectura ${String(readings[0])}.` : `En las lecturas ${listed(readings.map(String))}.`),
  week: 'La semana',
  weekNote: 'El mismo libro en varios días, cada vez con otro propósito.',
  readingN: (n) => `Lectura ${String(n)}`,
  mustAsk: 'No deje de preguntar',
  moved: {
    fresh: (numbers) => `${numbers.length === 1 ? 'Nueva' : 'Nuevas'}: ${stops(numbers)}`,
    again: (numbers) => `Otra vez: ${stops(numbers)}`,
    back: (numbers) => `${numbers.length === 1 ? 'Vuelve' : 'Vuelven'}: ${stops(numbers)}`,
    resting: (numbers) => `${numbers.length === 1 ? 'Descansa' : 'Descansan'}: ${stops(numbers)}`,
  },
  follow: {
    open: 'Seguir paso a paso',
    openNote: 'Un paso a la vez, en letra grande y con el reloj a la vista. No suena nada y no necesita red.',
    name: 'La clase, paso a paso',
    begin: 'Empezar',
    before: (minutesThere) => `${minutes(minutesThere)} desde que pulse «Empezar».`,
    beforeClock: (start, end) => `Prevista de ${start} a ${end}. Pulse «Empezar» cuando empiece.`,
    keys: 'Flecha derecha o espacio: siguiente. Flecha izquierda: atrás. Escape: cerrar.',
    stepOf: (at, all) => `Paso ${String(at)} de ${String(all)}`,
    next: 'Siguiente',
    finish: 'Terminar',
    back: 'Atrás',
    close: 'Cerrar',
    goOn: 'Seguir con la clase',
    until: (time) => `prevista hasta las ${time}`,
    ends: (time) => `Termina hacia las ${time}.`,
    onTime: 'A tiempo',
    behind: (n) => `Con ${n === 1 ? 'un minuto' : `${few(n)} minutos`} de retraso, más o menos`,
    ahead: (n) => `Con ${n === 1 ? 'un minuto' : `${few(n)} minutos`} de adelanto, más o menos`,
    tooMuch: 'Falta más de lo que cabe',
    leaveOut: (numbers) => `omita ${stops(numbers)}`,
    leaveThem: (n) => (n === 1 ? 'Omitirla' : 'Omitirlas'),
    roomFor: (numbers) => `habría tiempo para ${stops(numbers)}`,
    askThem: (n) => (n === 1 ? 'Hacerla después de todo' : 'Hacerlas después de todo'),
    overAlone: (n) => `Se pasa ${n === 1 ? 'un minuto' : `${few(n)} minutos`}, más o menos.`,
    over: (n) => `Aun así se pasa ${n === 1 ? 'un minuto' : `${few(n)} minutos`}, más o menos.`,
    shortClosing: 'Con un cierre corto se recupera.',
    tally: 'Quién ha hablado',
    tallyNote: 'Solo números, para esta clase. Se pierden al salir de esta página, a menos que guarde la clase al final.',
    children: 'Niños presentes',
    heard: (n, left) => {
      const spoken = n === 0 ? 'Nadie ha hablado todavía' : n === 1 ? 'Ha hablado uno' : `Han hablado ${String(n)}`;
      return left === undefined || n === 0 ? spoken : left === 0 ? 'Han hablado todos' : `${spoken}; ${left === 1 ? 'falta uno' : `faltan ${String(left)}`}`;
    },
    oneMore: 'Uno más ha hablado',
    oneLess: 'Quitar uno',
    done: 'La clase ha terminado',
    doneIn: (took, plannedFor) => `Duró ${took}; estaban previstos ${plannedFor}.`,
    planned: 'Previsto',
    took: 'Duró',
    keep: 'Guardar estos tiempos en este aparato',
    keepNote: 'El día, la lectura, los segundos de cada parte y, si contó, dos números. Nada sobre ningún niño, y no va a ninguna parte.',
    kept: 'Guardado en este aparato.',
    cannotKeep: 'Este navegador no deja que la página guarde nada. Anote lo que necesite.',
  },
  past: {
    title: 'Clases guardadas',
    note: 'Solo están en este aparato. Si una parte suele durar más de lo previsto, pide más segundos en la guía, u otra pregunta.',
    caption: (day, reading, given) => `${day}, lectura ${String(reading)}, ${minutes(given)}`,
    heard: (heard, children) => `Habían hablado ${String(heard)} de ${String(children)} niños.`,
    erase: 'Borrar las clases guardadas aquí',
    eraseSure: 'Borrarlas ahora',
    eraseNot: 'Conservarlas',
    erased: 'Borradas de este aparato.',
  },
  calendar: {
    title: 'Llevar la semana a un calendario',
    first: 'Primer día',
    make: 'Hacer el archivo de calendario',
    note: 'El archivo se hace en este aparato. Las lecturas van en días de escuela, de lunes a viernes, con un día entre una y otra si lo hay.',
    made: (days) => `Hecho para ${days}.`,
    event: (title, reading) => `${title}, lectura ${String(reading)}`,
    ask: (question) => `No deje de preguntar: «${question}»`,
    stops: (numbers) => `Haga ${stops(numbers)}.`,
  },
};
