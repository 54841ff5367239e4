import type { sameBookInEnglish } from './en-same-book.ts';
import { numbersIn } from './formats.ts';

/** Spanish for the page that shows packs of one book beside each other. */

const books = (n: number) => `${numbersIn('es').format(n)} ${n === 1 ? 'libro' : 'libros'}`;

export const sameBookInSpanish: typeof sameBookInEnglish = {
  title: 'El mismo libro dos veces',
  titleOfPage: (n) => `El mismo libro dos veces, página ${String(n)}`,
  description: 'Guías de un mismo libro, una junto a otra: en qué se parecen, en qué difieren, quién las hizo y qué se puede hacer.',
  lead: 'Puede que varias personas hayan hecho una guía para el mismo libro, y que una sea copia de otra. Aquí están una junto a otra, para que alguien decida cuáles se quedan.',
  none: 'Ningún libro tiene dos guías que nadie haya mirado.',
  count: (n) => (n === 1 ? 'Un libro tiene más de una guía en el mismo idioma.' : `${books(n)} tienen más de una guía en el mismo idioma.`),
  what: 'Qué se puede hacer',
  ways: [
    [
      'Una ocupa el lugar de la otra.',
      'Retire la otra: escriba «retired» en su archivo, con el día, el motivo y, en «instead», el nombre de la carpeta que se queda. Su página dirá entonces adónde ir.',
    ],
    ['Una se hizo a partir de la otra.', 'Escríbalo en el archivo de la más nueva: «based on» con el nombre de la carpeta de la más antigua. Así se llaman parientes y ya no están aquí.'],
    ['Las dos son buenas.', 'Escriba los nombres de sus carpetas en «both stay» de library.yaml. No se volverá a preguntar.'],
  ],
  grounds: { isbn: 'El mismo ISBN', title: 'El mismo título y autor, tal cual o con un desliz al escribir', prompts: 'Muchas de las mismas preguntas' },
  why: 'Por qué están aquí',
  alike: 'Igual en todas',
  differs: 'En qué difieren',
  same: 'Nada más que las preguntas y los textos mismos.',
  shared: (n) => (n === 1 ? 'Una pregunta que comparten' : `${String(n)} preguntas que comparten`),
  andMore: (n) => (n === 1 ? 'y una más' : `y ${String(n)} más`),
  others: 'También del mismo libro',
  pages: 'Páginas de esta lista',
  notGiven: 'no se dice',
  facts: {
    book: 'Título del libro',
    author: 'Autor',
    illustrator: 'Dibujos',
    edition: 'Edición',
    maker: 'Hecha por',
    grades: 'Grados',
    minutes: 'Minutos',
    stops: 'Pausas',
    reviewed: 'Última revisión',
    version: 'Versión',
    licence: 'Licencia',
    from: 'Basada en',
    file: 'Archivo',
  },
  relatedHeading: 'Parientes, que nadie tiene que decidir',
  relatedLead: 'Las traducciones de una guía están en una sola carpeta y no se enumeran.',
  how: { fork: 'una se hizo a partir de la otra, o ambas de una tercera', 'both stay': 'alguien miró las dos, y las dos se quedan', language: 'el mismo libro en dos idiomas, en dos carpetas' },
  and: 'y',
};
