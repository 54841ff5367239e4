import type { offlineInEnglish } from './en-offline.ts';

/** What pages say about the copy of a book on the device, in Spanish. */
export const offlineInSpanish: typeof offlineInEnglish = {
  kept: (size) => `Este libro está guardado en este aparato (${size} MB), así que sus páginas se abren sin conexión.`,
  remove: 'Quitar la copia',
  removed: 'En este aparato no hay ninguna copia de este libro.',
  keep: 'Guardar una, para usarla sin conexión',
  newer: 'Hay una versión más nueva de este libro, ya guardada. Lo que escribiste se queda.',
  show: 'Usarla ahora',
  noRoom: 'En este aparato no queda sitio para una copia de este libro. Funciona mientras haya conexión.',
  folder: {
    heading: 'Para llevar',
    inside: 'Un solo archivo contiene esta página, el cuadernillo, la lección, sus hojas impresas y las imágenes.',
    insideWithoutSheets: 'Un solo archivo contiene esta página, el cuadernillo, la lección y las imágenes.',
    open: 'Descomprímelo y abre «index.html» con un doble clic: funciona sin conexión, desde una memoria o en una computadora del aula.',
    noFilm: 'La grabación no está incluida.',
    answers:
      'Lo que un niño responde ahí se queda en el navegador que lo abrió. Si un navegador no guarda nada de páginas abiertas desde un disco, el cuadernillo lo dice y ofrece papel y un archivo.',
    get: (size) => `Descargar la carpeta (zip, ${size} MB)`,
  },
  title: 'Esta página no está guardada en este aparato',
  text: 'Ahora no hay conexión. Los libros que abriste en este aparato están guardados y funcionan. Esta página funcionará de nuevo cuando haya conexión.',
  back: 'Volver a la biblioteca',
  description: 'No hay conexión y esta página no está guardada en este aparato. Los libros que se abrieron antes siguen funcionando.',
};
