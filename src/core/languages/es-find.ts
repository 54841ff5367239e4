import type { findInEnglish } from './en-find.ts';

/** Spanish for finding a book: the search, and the index at the back of the library. */

const count = (n: number) => `${new Intl.NumberFormat('es').format(n)} ${n === 1 ? 'libro' : 'libros'}`;

export const findInSpanish: typeof findInEnglish = {
  title: 'Buscar un libro',
  lead: 'Busque un título, un nombre, una palabra que quiera enseñar, un sentimiento o algo que los niños deban aprender a hacer. Un desliz al escribir no importa.',
  description: (n) => `Encuentre uno de ${count(n)} por su título, por una palabra para enseñar, por un sentimiento, por el grado, por los minutos o por la manera de responder.`,
  words: 'Palabras que busca',
  look: 'Buscar',
  narrow: 'Y solo',
  fields: {
    language: 'En el idioma',
    grade: 'Grado',
    minutes: 'Minutos como máximo',
    way: 'Los niños pueden',
    kind: 'Con una pausa para',
    feeling: 'Un sentimiento',
    skill: 'Los niños aprenden a',
    school: 'De la escuela',
    rights: 'El libro está',
    since: 'Revisado desde',
    order: 'En el orden de',
  },
  recording: 'Con grabación',
  any: 'cualquiera',
  anyLanguage: 'cualquier idioma',
  orders: { best: 'lo que mejor responde', title: 'los títulos', minutes: 'los minutos', reviewed: 'la última revisión' },
  all: 'Empezar de nuevo',
  found: {
    none: 'Ningún libro responde a esto. Quite una palabra o elija menos.',
    one: 'Un libro.',
    some: '{n} libros.',
    failed: 'No se pudo traer la lista. El índice de abajo funciona sin ella.',
  },
  results: 'Lo que se encontró',
  pages: 'Páginas de los resultados',
  page: (n) => `Página ${String(n)}`,
  withoutScript: 'La búsqueda necesita un programa que aquí está apagado. El índice lleva a todos los libros sin él.',
  toIndex: 'El índice de la biblioteca',
  newest: 'Revisados hace poco',
  allInIndex: (n) => `Todos en el índice: ${count(n)}`,
  index: {
    title: 'El índice',
    lead: 'Todos los libros de la biblioteca, como en el índice al final de un libro: busque un grado, un sentimiento o lo que los niños aprenden.',
    description: (n) => `Un índice de ${count(n)}: por grado, por sentimiento, por lo que los niños aprenden, por escuela y de la A a la Z.`,
    groups: {
      grade: 'Por grado',
      feeling: 'Por sentimiento',
      skill: 'Por lo que los niños aprenden',
      school: 'Por escuela',
      letter: 'De la A a la Z',
      language: 'En otros idiomas',
    },
    other: 'Otros signos',
    books: count,
    listDescription: (name, n) => `${count(n)} en el índice de la biblioteca bajo «${name}».`,
    back: 'Volver al índice',
    pages: 'Páginas de esta lista',
  },
};
