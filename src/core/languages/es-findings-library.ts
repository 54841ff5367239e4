import type { FindingSentences } from './en-findings.ts';

const sourceFolder = {
  missing: 'no está. Revise la ruta, o si la unidad compartida está conectada',
  'not a folder': 'no es una carpeta. Indique la carpeta que contiene los paquetes',
  link: 'es un enlace a otro lugar. Indique ese lugar mismo; los enlaces no se siguen',
  unreadable: 'no se puede abrir. Compruebe que tiene permiso para leerla',
  twice: 'ya forma parte de la biblioteca. Indique cada carpeta una sola vez',
};

/** Spanish sentences for what shows when a whole library is seen together. */
export const libraryFindingsInSpanish = {
  'source/folder': (f) => `La carpeta de ${f.owner}, "${f.folder}", ${sourceFolder[f.why]}.${f.why === 'twice' ? '' : ' Mientras tanto, ninguna de sus guías está en el sitio.'}`,
  'source/clash': (f) =>
    `Esta carpeta y ${f.others.join(', ')} piden la misma dirección, "${f.slug}". No se publica ninguna. Dé a una fuente otro "prefix" en library.yaml, o cambie el nombre de una carpeta.`,
  'page/address-taken': (f) =>
    f.by === undefined
      ? `El sitio ya tiene una página propia en la dirección "${f.address}". Dé otro nombre a este archivo. Mientras tanto esta página no se publica.`
      : `Esta página y ${f.by} piden la misma dirección, "${f.address}". Deje una de las dos. Mientras tanto solo se publica la otra.`,
  'by/parent-missing': (f) =>
    `"based on" nombra "${f.named}", y ninguna guía de aquí tiene esa dirección.${f.suggestion === undefined ? '' : ` ¿Quería decir "${f.suggestion}"?`} Nombre la carpeta de la guía de la que salió, o dígalo con palabras.`,
  'retired/instead': (f) =>
    f.why === 'itself'
      ? 'Esta guía retirada lleva a sí misma. Nombre otra en "instead", o borre la línea.'
      : f.why === 'retired'
        ? `"${f.named}" también está retirada. Nombre en "instead" lo que ocupa su lugar ahora.`
        : `"instead" nombra "${f.named}", que no está aquí.${f.suggestion === undefined ? '' : ` ¿Quería decir "${f.suggestion}"?`} Nombre una carpeta de esta biblioteca, o una dirección web completa.`,
  'retired/ahead': (f) => `Esta guía se queda hasta el ${f.on}. Un sitio construido ese día o después la muestra como retirada.`,
} satisfies Partial<FindingSentences>;
