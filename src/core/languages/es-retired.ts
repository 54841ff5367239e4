import type { RetiredPhrases } from './en-retired.ts';

/** Spanish phrases of the page that is left of a companion that was taken out of the library. */
export const retiredInSpanish: RetiredPhrases = {
  kind: 'Ya no está en la biblioteca',
  title: (title) => `${title}, ya no está en la biblioteca`,
  description: (title) => `La guía de «${title}» se retiró de esta biblioteca. Aquí dice cuándo, por qué y adónde ir ahora.`,
  since: (date) => `Esta guía se retiró el ${date}.`,
  why: 'Por qué',
  ask: (owner) => `Venía de ${owner}. Para preguntar:`,
  where: 'Adónde ir ahora',
  instead: 'ocupa su lugar',
  elsewhere: 'Lo que ocupa su lugar está en otra dirección',
  stillIn: (language) => `sigue aquí: ${language}`,
  find: 'Buscar otro libro',
  answers: 'Lo que respondió un niño aquí',
  answersThere: 'Las respuestas que se guardaron en un dispositivo siguen ahí.',
  toAnswers: 'Verlas y guardarlas',
  answersOnDevice: 'Las respuestas las guardó el navegador, en el dispositivo en que se dieron. Abra esta página ahí, con los scripts permitidos, y se las ofrece como archivo.',
  answersHere: 'Estas respuestas están en este dispositivo y en ningún otro sitio. Guarde cada una como un archivo que abre cualquier navegador, y conserve el archivo.',
  noAnswers: 'En este dispositivo no hay respuestas a este libro.',
  news: (title) => `Retirada: ${title}`,
};
