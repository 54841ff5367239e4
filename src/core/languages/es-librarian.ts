import type { LibrarianPhrases } from './en-librarian.ts';
import { numbersIn } from './formats.ts';

const count = (n: number, one: string, many: string) => `${numbersIn('es').format(n)} ${n === 1 ? one : many}`;
const guides = (n: number) => count(n, 'guía', 'guías');

/** Spanish phrases of the page for whoever looks after a library. */
export const librarianInSpanish: LibrarianPhrases = {
  title: 'Para quien cuida la biblioteca',
  titleOfPage: (n) => `Para quien cuida la biblioteca, página ${String(n)}`,
  description: 'Qué llegó, qué no se publica, qué guías conviene revisar de nuevo, para qué grados y destrezas hay guías, y a quién escribir.',
  lead: 'Lo que esta biblioteca le pide, según se construyó por última vez. Esta página la puede ver cualquiera, así que de las guías sin publicar dice solo cuántas son.',
  toSum: 'La biblioteca en resumen',
  toOwners: 'A quién escribir',
  link: 'Para quien cuida la biblioteca',

  news: 'Qué pasó',
  newsNote: 'Lo más reciente primero. Una guía llegó cuando se halló por primera vez; se revisó el día que dice su archivo.',
  since: 'Desde',
  sinceShown: 'Desde entonces: {n}',
  what: { 'came in': 'llegó', 'looked over': 'se revisó', 'taken out': 'se retiró' },
  day: 'Día',
  happened: 'Qué',
  companion: 'Guía',
  from: 'De',
  noNews: 'Ninguna guía dice un día todavía.',
  moreLines: (n) => `Y ${count(n, 'línea', 'líneas')} más, anteriores. Todos los días están en la lista para otros programas.`,

  keptOff: 'Sin publicar',
  keptOffNone: 'No hay nada sin publicar.',
  keptOffNote: 'Cada una tiene un error que la detiene. «npx bookfellow check» dice el archivo, la línea y qué escribir en su lugar.',
  keptOffOf: (owner, n) => `${owner}: ${guides(n)}`,
  own: 'De la propia biblioteca',

  past: 'Con la revisión vencida',
  pastNone: 'Ninguna guía tiene la revisión vencida.',
  pastNote: 'Dos años después de la última revisión conviene leerla de nuevo. Es práctica común, sin fuente.',
  lastLooked: 'Última revisión',
  morePast: (n) => `Y ${guides(n)} más, revisadas después que estas.`,
  never: (n) => `${n === 1 ? 'Una guía no dice' : `${numbersIn('es').format(n)} guías no dicen`} cuándo se revisó.`,

  coverage: 'Grados y destrezas',
  coverageIn: (language) => `Grados y destrezas, ${language}`,
  coverageNote: 'El cuadrado crece con el número de al lado; una raya es un hueco. Una guía para dos grados o dos destrezas se cuenta en ambos.',
  skill: 'Destreza',
  otherSkills: 'Otras destrezas',
  noSkill: 'Sin destreza',
  allPacks: 'Todas las guías',

  owners: 'A quién escribir',
  ownersNone: 'Las revisiones no tienen nada que decir de las guías de nadie.',
  ownersNote: 'Un texto para cada escuela o persona, listo para enviar. De aquí no se envía nada: cópielo, o ábralo en su programa de correo.',
  ownerPacks: (n) => guides(n),
  ownerOff: (n) => `${String(n)} sin publicar`,
  ownerLook: (n) => `${String(n)} para mirar otra vez`,
  ownerNotes: (n) => `${String(n)} bueno saberlo`,
  text: 'El texto',
  copy: 'Copiar el texto',
  copied: 'Copiado.',
  notCopied: 'No se pudo copiar. Selecciónelo y cópielo usted.',
  mail: 'Abrirlo en su programa de correo',
  pages: 'Páginas de esta lista',
  page: 'Página',

  subject: (library) => `Sus guías en ${library}`,
  opening: (library, n) => `Sobre ${n === 1 ? 'su' : 'sus'} ${guides(n)} en ${library}:`,
  letterOff: (n) =>
    `${n === 1 ? 'Una guía no se publica' : `${String(n)} guías no se publican`} por un error que ${n === 1 ? 'la' : 'las'} detiene. Para ver cuál y qué escribir en su lugar, llame en su carpeta: npx bookfellow check`,
  letterLook: 'Por favor, mire esto otra vez:',
  letterNotes: 'Bueno saberlo:',
  letterMore: (n) => `… y ${String(n)} más. «npx bookfellow check» los dice todos.`,
  closing: 'Gracias. Si algo aquí no es correcto, escriba a:',
};
