import type { PicturePhrases } from './en-pictures.ts';
import { listsIn } from './formats.ts';

/** The phrases of a pack's pictures in Spanish. */

const count = (n: number, one: string, many: string) => `${String(n)} ${n === 1 ? one : many}`;
const listed = (items: readonly string[]) => listsIn('es').format(items);

const spent: PicturePhrases['spent'] = {
  title: 'En qué se van los minutos',
  table: 'Los minutos en una tabla',
  on: 'Para qué',
  takes: 'Dura',
  minutes: 'minutos',
  spending: {
    reading: 'Leer en voz alta',
    pages: 'Pasar páginas y mirar',
    asking: 'Preguntar',
    thinking: 'Tiempo para pensar',
    doing: 'Decir, escribir, dibujar, actuar',
    hearing: 'Escuchar a los niños',
    ends: 'Inicio y cierre',
  },
  text: (total, reading, children, stops) =>
    `Una clase de unos ${count(total, 'minuto', 'minutos')}. Unos ${String(reading)} son para leer y mirar, y ${stops === 0 ? 'ninguno se guarda para pausas' : `unos ${String(children)} son de los niños, que piensan, responden y son escuchados en ${count(stops, 'pausa', 'pausas')}`}.`,
};

export const picturesInSpanish: PicturePhrases = {
  spent,
  heading: 'El libro y sus pausas, en dibujos',
  inLedger: 'En dibujos',
  table: 'Los datos en una tabla',
  stopMap: {
    title: 'Dónde se detiene la lectura',
    text: (stops, openings, words, must) =>
      `${count(stops, 'pausa', 'pausas')} a lo largo de ${count(openings, 'doble página', 'dobles páginas')} y ${count(words, 'palabra', 'palabras')}. ${must === 0 ? 'Ninguna tiene que quedarse' : must === 1 ? 'Una tiene que quedarse' : `${String(must)} tienen que quedarse`} cuando falta tiempo.`,
    none: 'Esta guía no tiene pausas, así que no hay nada que dibujar a lo largo del libro.',
    counted: 'Las palabras se cuentan en el texto del libro, hasta el final de cada doble página.',
    shared: 'Las palabras se reparten por igual entre las dobles páginas; nadie las ha contado una por una.',
    openings: 'doble página',
    words: 'palabras',
    stop: 'Pausa',
    opening: 'Doble página',
    read: 'Palabras leídas',
    answer: 'Respuesta',
    depth: 'Profundidad',
    keep: 'Si falta tiempo',
    must: 'se queda',
    may: 'puede esperar',
    mustKey: 'Tallo entero: se queda aunque falte tiempo',
    mayKey: 'Tallo cortado: puede esperar',
    depthKey: 'Cuanto más alto el tallo y más hojas tiene, más honda es la pregunta',
  },
  path: {
    title: 'El camino de los sentimientos',
    text: (feelings) => `Lo que las respuestas pueden decir de los sentimientos de un personaje: ${feelings.map(([stop, words]) => `${listed(words)} en la pausa ${String(stop)}`).join('; ')}.`,
    none: 'Ninguna pausa de esta guía pregunta por un personaje con palabras de sentimiento que la biblioteca conozca. Por eso no hay camino que dibujar.',
    note: 'El lugar de cada palabra es un juicio de la propia biblioteca y no dice nada de ningún niño.',
    stop: (n, opening) => `Pausa ${String(n)}, doble página ${String(opening)}`,
    unpleasant: 'cuesta sentirlo',
    pleasant: 'da gusto sentirlo',
    strokes: 'Los trazos bajo una palabra dicen su fuerza, de uno a tres.',
    at: 'Pausa',
    opening: 'Doble página',
    feeling: 'Sentimiento',
    strength: 'Fuerza',
    valence: 'Da gusto sentirlo (−100 a 100)',
  },
};
