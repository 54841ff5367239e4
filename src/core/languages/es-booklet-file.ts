import type { enBookletFile } from './en-booklet-file.ts';
import { count, esNames, nameOf } from './es-booklet-screen.ts';

/** Spanish phrases of the file that a family hands over; the stack says them too. */
export const esBookletFile: typeof enBookletFile = {
  stars: (n) => count(n, 'estrella', 'estrellas'),
  starWords: ['no es para mí', 'estuvo más o menos', 'me gustó', 'me gustó mucho', 'lo quiero otra y otra vez'],
  file: {
    title: (book) => `${book}: mi página de respuestas`,
    lead: 'Un niño o una niña respondió a estas preguntas sobre un álbum ilustrado. Este archivo no guarda nada más que estas páginas. Se pueden leer aquí y volver a poner en el cuadernillo de otro aparato.',
    mark: (pattern, colour) => `Guardado con el marcador de ${nameOf(esNames.patterns, pattern)}, de color ${nameOf(esNames.colours, colour)}`,
    open: (opening) => `Doble página ${String(opening)}`,
    whole: 'Todo el libro',
    about: { character: 'Sobre alguien del cuento', me: 'Sobre quien responde: toda respuesta es verdadera' },
    nothing: 'Aquí todavía no hay nada.',
    kinds: {
      written: 'Escrito',
      feeling: 'Una palabra para lo que se siente',
      'cannot-tell': 'Una palabra para lo que se siente',
      said: 'Dicho, y escrito por un adulto',
      voice: 'Dicho en voz alta',
      drawing: 'Dibujado',
      photo: 'Una foto',
      acted: 'Actuado',
      passed: 'Pasó',
      stars: 'Estrellas',
      because: 'Y porque',
      chosen: 'Uno entre varios libros',
    },
    passed: 'Esta la paso.',
    cannotTell: 'No lo sé decir.',
    stars: (stars, of, words) => `${String(stars)} de ${String(of)}: ${words}`,
    chosen: (best, last) => [best, last && `al final de todos: ${last}`].filter(Boolean).join('; '),
    untitledDrawing: 'Un dibujo sin palabras al lado',
    untitledPhoto: 'Una foto sin palabras al lado',
    seconds: (n) => count(n, 'segundo', 'segundos'),
  },
  unreadable: {
    empty: 'Este archivo está vacío. Elige el que se guardó desde un cuadernillo: su nombre termina en «.booklet.html».',
    'too-big': 'Este archivo es más grande de lo que puede ser un cuadernillo, así que no se abrió. Elige uno cuyo nombre termine en «.booklet.html».',
    'not-a-booklet': 'Este archivo no es un cuadernillo. Elige uno que se haya guardado desde un cuadernillo: su nombre termina en «.booklet.html».',
    'cut-short': 'A este archivo le falta el final, como si la copia se hubiera cortado. Cópialo otra vez desde donde se guardó.',
    newer: 'Este archivo se guardó con una versión más nueva de estas páginas. Vuelve a cargar esta página e inténtalo otra vez.',
    damaged: 'Algo cambió dentro de este archivo y sus respuestas ya no se pueden recuperar. Quizá todavía se pueda abrir y leer, como cualquier página.',
  },
};
