import type { sameBookInEnglish } from './en-same-book.ts';

/** Spanish for the page that shows packs of one book beside each other. */

const books = (n: number) => `${new Intl.NumberFormat('es').format(n)} ${n === 1 ? 'libro' : 'libros'}`;

export const sameBookInSpanish: typeof sameBookInEnglish = {
  title: 'El mismo libro dos veces',
  titleOfPage: (n) => `El mismo libro dos veces, página ${String(n)}`,
  description: 'Acompañamientos de un mismo libro, uno junto a otro: en qué se parecen, en qué difieren, quién los hizo y qué se puede hacer.',
  lead: 'Puede que varias personas hayan hecho un acompañamiento para el mismo libro, y que uno sea copia de otro. Aquí están uno junto a otro, para que alguien decida cuáles se quedan.',
  none: 'Ningún libro tiene dos acompañamientos que nadie haya mirado.',
  count: (n) => (n === 1 ? 'Un libro tiene más de un acompañamiento en el mismo idioma.' : `${books(n)} tienen más de un acompañamiento en el mismo idioma.`),
  short: (n) => (n === 0 ? 'Ningún libro está aquí dos veces' : `${books(n)} con más de un acompañamiento`),
  what: 'Qué se puede hacer',
  ways: [
    [
      'Uno ocupa el lugar del otro.',
      'Retire el otro: escriba «retired» en su archivo, con el día, el motivo y, en «instead», el nombre de la carpeta que se queda. Su página dirá entonces adónde ir.',
    ],
    ['Uno se hizo a partir del otro.', 'Escríbalo en el archivo del más nuevo: «based on» con el nombre de la carpeta del más antiguo. Así se llaman parientes y ya no están aquí.'],
    ['Los dos son buenos.', 'Escriba los nombres de sus carpetas en «both stay» de library.yaml. No se volverá a preguntar.'],
  ],
  grounds: { isbn: 'El mismo ISBN', title: 'El mismo título y autor, tal cual o con un desliz al escribir', prompts: 'Muchas de las mismas preguntas' },
  why: 'Por qué están aquí',
  alike: 'Igual en todos',
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
    maker: 'Hecho por',
    grades: 'Grados',
    minutes: 'Minutos',
    stops: 'Pausas',
    reviewed: 'Última revisión',
    version: 'Versión',
    licence: 'Licencia',
    from: 'Basado en',
    file: 'Archivo',
  },
  relatedHeading: 'Parientes, que nadie tiene que decidir',
  relatedLead: 'Las traducciones de un acompañamiento están en una sola carpeta y no se enumeran.',
  how: { fork: 'uno se hizo a partir del otro, o ambos de un tercero', 'both stay': 'alguien miró los dos, y los dos se quedan', language: 'el mismo libro en dos idiomas, en dos carpetas' },
  and: 'y',
  toQuality: 'Cómo son los acompañamientos',
};
