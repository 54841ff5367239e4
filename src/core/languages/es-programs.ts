import type { ProgramsPhrases } from './en-programs.ts';

/** The same page in Spanish. */
export const programsInSpanish: ProgramsPhrases = {
  title: 'Para otros programas',
  description: 'Todos los archivos de esta biblioteca que puede leer un programa: qué contienen, qué norma siguen y qué no va a cambiar.',
  lead: 'Un catálogo, un buscador o el sistema de una escuela puede recoger esta biblioteca. Nada de esto necesita una clave, y no se cuenta a nadie.',
  filesHeading: 'Los archivos',
  file: 'Archivo',
  holds: 'Qué contiene',
  standard: 'Norma',
  own: 'propia, descrita aquí',
  onlyWithAddress:
    'Esta biblioteca no dice en qué dirección está (address en library.yaml); por eso no se hacen los archivos que necesitan direcciones completas: los canales, la lista de páginas y la descripción de la búsqueda.',
  files: {
    list: 'Todas las guías: título, idioma, resumen, el libro, grados, minutos, licencia, cuándo se revisó por última vez, y las direcciones de sus páginas y archivos.',
    pack: 'La cabecera de una guía, cada campo con su nombre. Dentro se nombra su esquema JSON.',
    arrivals: 'Cuándo llegó a este sitio la página de cada guía, por su dirección. Una guía que estaba desde el principio tiene un texto vacío.',
    schema: 'La forma de ese archivo.',
    text: 'La guía misma, como archivo que otra biblioteca puede publicar: la cabecera y el texto. Las notas internas de quien la hizo no están.',
    page: 'En cada página para familias: qué es la guía, para quién, en qué libro se basa, qué metas tiene y qué se comprobó sobre el acceso. Una característica se nombra cuando se ha comprobado al generar el sitio; si no, no se nombra.',
    atom: 'Lo que se revisó más recientemente, hasta cincuenta guías; un canal por idioma.',
    feed: 'Lo mismo para quien lee JSON.',
    sitemap: 'Todas las páginas, con sus otros idiomas.',
    search: 'Cómo puede buscar aquí un navegador.',
    robots: 'Que todos pueden leerlo todo.',
    stops: 'De una guía con grabación: sus pausas como capítulos.',
    folder: 'Las páginas, hojas e imágenes de una guía en una carpeta.',
  },
  fieldsHeading: 'La lista, campo por campo',
  fields: [
    ['library, schema', 'El nombre de la biblioteca; dónde está la forma del archivo de una guía, a partir de la lista.'],
    ['title, language, summary', 'Texto; una etiqueta de idioma según BCP 47; texto.'],
    ['book', 'Título, autor y derechos del libro: in copyright (con derechos), public domain (dominio público), licensed (con licencia), our own (propio). Sus clases y el ISBN, si se dieron.'],
    ['grades, minutes', 'Una lista de PreK, K, 1, 2, 3, 4; minutos enteros de la primera lectura en clase.'],
    ['licence, reviewed, version, based on', 'Como se escribieron. El día es una fecha según ISO 8601.'],
    ['parent, forks', 'Páginas de la guía de la que salió y de las que salieron de ella, cuando están en esta lista.'],
    ['retired', 'Una lista aparte: guías que se retiraron, desde cuándo, por qué, y la página de lo que ocupa su lugar. Sus direcciones se quedan y dicen lo mismo.'],
    ['provider', 'En una biblioteca de varias escuelas: de quién es la carpeta de la que viene la guía, y cómo hablarle.'],
    ['aims', 'Destrezas en palabras y, donde se nombró una norma: su marco, código, dirección web e identificador (un UUID, como en CASE de 1EdTech).'],
    ['pages, files', 'Direcciones a partir de la lista.'],
  ],
  promisesHeading: 'Con qué se puede contar',
  promises: [
    'La dirección de una guía se mantiene mientras su carpeta conserve el nombre. Los idiomas que no son el de la biblioteca llevan su etiqueta delante.',
    'Se pueden añadir campos. Un campo que ya está conserva su nombre y su significado.',
    'Los archivos son simples y estáticos. Pregunte con If-None-Match o If-Modified-Since, según su servidor; una vez al día basta.',
    'Ningún archivo contiene nada sobre un niño, una clase o un visitante, ni el texto de un libro.',
  ],
  rightsHeading: 'Qué se puede hacer',
  rights:
    'Cada guía nombra su propia licencia, en la lista y en su archivo. Vale para la guía y nunca para el libro. Conserve con ella el nombre de quien la hizo. El grado de una guía dice para qué la pensó su autor; no sitúa a ningún niño.',
};
