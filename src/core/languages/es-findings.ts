import type { FindingSentences } from './en-findings.ts';
import { passageFindingsInSpanish, privacyFindingsInSpanish } from './es-findings-private.ts';
import { altTextInSpanish } from './es-findings-alt-text.ts';
import { libraryFindingsInSpanish } from './es-findings-library.ts';
import { lookFindingsInSpanish } from './es-findings-look.ts';
import { balanceInSpanish } from './es-findings-balance.ts';
import { listsIn } from './formats.ts';

const kinds = { text: 'un texto', number: 'un número', 'whole number': 'un número entero', list: 'una lista (líneas que empiezan con "- ")', group: 'un grupo de campos', 'yes or no': 'true o false' };
const within = (place: string) => (place === '' ? '' : ` en "${place}"`);
const meant = (suggestion: string | undefined) => (suggestion === undefined ? '' : ` ¿Quería decir "${suggestion}"?`);
const found = (text: string) => (text === '[list]' ? 'una lista' : text === '[group]' ? 'un grupo de campos' : text === '' ? 'nada' : `"${text}"`);

const gradesFromTo = (low: number, high: number) => (low === high ? `grado ${String(low)}` : `los grados ${String(low)} a ${String(high)}`);
const linesThatCost = (lines: readonly number[]) => (lines.length === 0 ? '' : `Empiece por ${lines.length === 1 ? 'la línea' : 'las líneas'} ${listsIn('es').format(lines.map(String))}.`);

const yamlProblems: Readonly<Record<string, string>> = {
  BAD_INDENT: 'Las líneas no están alineadas aquí. Ponga el mismo número de espacios delante de los campos que van juntos.',
  BLOCK_AS_IMPLICIT_KEY: 'Hay un segundo ": " en esta línea. Ponga todo el texto entre comillas dobles.',
  MULTILINE_IMPLICIT_KEY: 'El nombre de un campo ocupa más de una línea. Mire si falta un signo de dos puntos o una comilla más arriba.',
  MISSING_CHAR: 'Falta un signo aquí: a menudo los dos puntos tras el nombre de un campo, o una comilla o un corchete de cierre.',
  TAB_AS_INDENT: 'Esta línea empieza con un tabulador. Use espacios.',
  UNEXPECTED_TOKEN: 'Aquí hay algo que no se esperaba. Si es texto, póngalo entre comillas dobles.',
  BAD_SCALAR_START: 'Un texto no puede empezar con este signo. Póngalo entre comillas dobles.',
  BAD_DQ_ESCAPE: 'Una barra invertida entre comillas dobles tiene un sentido especial. Use comillas simples.',
};

export const findingsInSpanish: FindingSentences = {
  ...balanceInSpanish,
  ...libraryFindingsInSpanish,
  'file/unreadable': (f) => `No se puede abrir este archivo (${f.reason}). Compruebe que existe y que tiene permiso para leerlo.`,
  'file/empty': () => 'Este archivo está vacío. Empiece con "bookfellow new" o copie un paquete que funcione.',
  'file/too-big': (f) => `Este archivo pesa ${String(f.kilobytes)} kB; un paquete puede tener ${String(f.most)} kB. ¿Contiene el texto del libro? Ese va en private/passage.txt.`,
  'file/encoding': (f) => `Este archivo no está guardado en UTF-8 (hallado: ${f.found}). Guárdelo de nuevo con la codificación UTF-8.`,
  'file/control-character': (f) => `Aquí hay un carácter invisible (${f.character}) que puede estropear las páginas. Bórrelo y escriba la palabra de nuevo.`,
  'file/link': (f) => `"${f.name}" es un enlace a otro lugar del disco. Ponga aquí el archivo mismo; los enlaces no se siguen.`,
  'file/not-a-file': (f) => `"${f.name}" no es un archivo corriente. Un paquete es un archivo de texto llamado pack.md.`,
  'folder/name': (f) => `El nombre de carpeta "${f.folder}" no sirve como dirección web. Cámbielo por "${f.suggestion}".`,
  'folder/no-pack': (f) => `La carpeta "${f.folder}" no tiene pack.md. Añádalo o quite la carpeta.`,
  'front-matter/missing': () => 'Falta la cabecera: el archivo debe empezar con una línea "---", luego campos como "title: …" y otra línea "---".',
  'front-matter/unclosed': () => 'La cabecera no termina. Añada una línea "---" después del último campo.',
  'front-matter/not-yaml': (f) => `La línea de guiones solo puede contener "---"; ahí dice "${f.found}". Solo se lee YAML sencillo y no se ejecuta nada.`,
  'yaml/syntax': (f) => yamlProblems[f.problem] ?? 'La cabecera no se puede leer a partir de aquí. Busque una comilla que falte o una línea mal alineada.',
  'yaml/duplicate': (f) => `El campo "${f.field}" aparece aquí por segunda vez. Deje uno de los dos.`,
  'yaml/alias': (f) => `"*${f.name}" repite otra parte del archivo por referencia, y los paquetes no lo usan. Escriba el texto completo.`,
  'yaml/tag': (f) => `"${f.tag}" es una marca de tipo, y los paquetes no las usan. Ponga el texto entre comillas dobles o borre la marca.`,
  'yaml/too-deep': (f) => `Aquí hay listas y grupos anidados en más de ${String(f.most)} niveles. Un paquete necesita seis como mucho.`,
  'yaml/too-many': (f) => `La parte entre las líneas de guiones tiene más de ${String(f.most)} campos y elementos. Un paquete completo tiene unos cuatrocientos: mira si algo se copió muchas veces.`,
  'pack/unknown-field': (f) => `"${f.field}"${within(f.within)} no es un campo de un paquete. No se tiene en cuenta; bórrelo o revise cómo está escrito.`,
  'pack/misspelt-field': (f) => `"${f.field}"${within(f.within)} no es un campo de un paquete.${meant(f.suggestion)}`,
  'pack/missing-field': (f) => `Falta el campo "${f.field}"${within(f.within)}. Añada una línea "${f.field}: …".`,
  'pack/empty-field': (f) => `El campo "${f.field}" está vacío. Complételo o borre la línea.`,
  'pack/wrong-type': (f) => `"${f.field}" debe ser ${kinds[f.expected]}, y ahí hay ${found(f.found)}.`,
  'pack/not-a-choice': (f) => `"${f.field}" no puede ser "${f.found}".${meant(f.suggestion)} Puede ser: ${f.choices.join(', ')}.`,
  'pack/out-of-range': (f) => (f.least !== undefined ? `"${f.field}" debe ser ${String(f.least)} o más; es ${f.found}.` : `"${f.field}" debe ser ${String(f.most)} o menos; es ${f.found}.`),
  'pack/too-long': (f) => `"${f.field}" es demasiado largo: ${String(f.length)}, y el máximo es ${String(f.most)}. Acórtelo.`,
  'pack/bad-format': (f) => `"${f.field}" es "${f.found}", y esa no es la forma que se necesita. Escríbalo así: ${f.example}`,
  'pack/language-of-file': (f) => `El nombre de este archivo dice "${f.file}", pero su idioma es "${f.language}". Haga que coincidan.`,
  'pack/unknown-language': (f) => `La biblioteca no tiene páginas en "${f.language}". Añádalo a "languages" en library.yaml o revise la etiqueta.`,
  'pack/two-of-a-language': (f) => `Este paquete y ${f.other} están los dos en "${f.language}". Deje uno de los dos.`,
  'pack/blank': (f) => (f.field === '' ? 'Esta parte del texto sigue en blanco.' : `"${f.field}" sigue en blanco.`) + ' Escriba su propio texto en lugar de « … », o bórrelo.',
  'more/of-the-same': (f) => `… y ${String(f.more)} más del mismo tipo (${f.code}).`,
  'body/too-long': (f) => `El texto debajo de la cabecera tiene ${String(f.found)} caracteres; puede tener ${String(f.most)}, y lo habitual son 1000. Quizá se pegó algo de más. Acórtelo.`,
  'body/too-deep': (f) => `Hay listas o citas anidadas en más de ${String(f.most)} niveles. Use menos.`,
  'body/comment': () => 'Este comentario (<!-- … -->) no sale en las páginas.',
  'body/comment-unclosed': () => 'Aquí empieza un comentario con "<!--" y no termina nunca. Añada "-->" donde acaba.',
  'body/link-refused': (f) => `El enlace "${f.link}" se muestra solo como texto. Los enlaces pueden empezar con https:, http:, mailto: o tel:, o llevar a una página de este sitio.`,
  'body/picture-not-listed': (f) => `La imagen "${f.picture}" del texto no está en la lista "pictures". Añádala allí con su texto alternativo.`,
  ...altTextInSpanish,
  'picture/missing-file': (f) => `No hay ninguna imagen "${f.picture}" en la carpeta pictures/.${meant(f.suggestion)}`,
  'picture/not-named': (f) => `La imagen "${f.picture}" está en la carpeta, pero ningún campo la nombra, así que no se publica. Añádala a "pictures" o bórrela.`,
  'picture/format': (f) => `"${f.picture}" no es una imagen PNG, JPEG o WebP. Guárdela en uno de esos formatos.`,
  'picture/too-large': (f) => `"${f.picture}" mide ${String(f.width)} × ${String(f.height)} píxeles; ningún lado puede pasar de ${String(f.most)}. Redúzcala.`,
  'picture/unreadable': (f) => `"${f.picture}" no se puede abrir como imagen; puede estar dañada. Guárdela de nuevo.`,
  'picture/unknown-stop': (f) => `La imagen "${f.picture}" pertenece a la parada "${f.stop}", que no está en este paquete.`,
  'recording/none': () => 'Esta parada tiene una hora en una grabación y el paquete no nombra ninguna. Añada "recording" con su archivo o su enlace, o borre la hora.',
  'recording/nothing-to-play': () => 'La grabación no tiene ni "file" en la carpeta recording/ ni "link" al lugar donde se guarda. Añada uno de los dos.',
  'recording/missing-file': (f) => `No hay ningún archivo "${f.file}" en la carpeta recording/.${meant(f.suggestion)}`,
  'recording/format': (f) => `"${f.file}" no es una película WebM ni MP4. Guárdela en uno de estos formatos.`,
  'recording/too-large': (f) =>
    `"${f.file}" pesa ${String(f.megabytes)} MB; el máximo es ${String(f.most)} MB. Haga la imagen más pequeña, o deje la película donde la escuela guarda las suyas y dé su "link".`,
  'recording/no-captions': (f) => `"${f.file}" no tiene subtítulos, y quien no oye se queda fuera. Añada un archivo WebVTT y nómbralo en "captions".`,
  'recording/captions-unreadable': (f) =>
    `Los subtítulos "${f.file}" no se pueden leer en la línea ${String(f.line)}: ${
      {
        'no header': 'la primera línea debe ser "WEBVTT"',
        times: 'las horas se escriben 00:01:05.000 --> 00:01:08.000, y la segunda es posterior',
        order: 'un subtítulo empieza antes que el anterior',
        empty: 'no hay texto',
      }[f.why]
    }.`,
  'recording/captions-too-fast': (f) =>
    `${f.count === 1 ? 'Un subtítulo no da' : `${String(f.count)} subtítulos no dan`} tiempo a leerlo, el primero en la línea ${String(f.line)} de "${f.file}". Dé a cada uno dos segundos, y no más de ${String(f.most)} palabras por minuto.`,
  'recording/out-of-order': (f) => `En la grabación, la parada "${f.stop}" llega en ${f.time}, antes que la que está más arriba. Revise las horas.`,
  'stop/duplicate-id': (f) => `El id "${f.id}" ya lo usa la parada de la línea ${String(f.firstLine)}. Dé a cada parada el suyo.`,
  'stop/unknown-reference': (f) => `"${f.field}" nombra la parada "${f.id}", que no está en este paquete.${meant(f.suggestion)}`,
  'stop/after-itself': (f) => `La parada "${f.id}" tendría que ir después de sí misma. Cambie una de las líneas "after".`,
  'stop/opening-past-the-end': (f) => `La parada "${f.id}" está en la doble página ${String(f.opening)}, pero el libro tiene ${String(f.openings)}.`,
  'reading/unknown': (f) => `La lectura ${String(f.reading)} no está en la lista "readings". Añádala allí con su propósito.`,
  'frames/missing': (f) => `En la parada "${f.stop}" los niños escriben, y no tiene frases para completar. Dos o tres ayudan a quien no sabe cómo empezar.`,
  'models/missing': (f) =>
    `La parada "${f.stop}" ${f.found === 0 ? 'no tiene respuestas modelo' : 'tiene una sola respuesta modelo'}. Dé dos, una de ellas corta, para que las respuestas se valoren igual.`,
  'best-of/how-many': (f) => `"best of" ofrece ${String(f.found)} ${f.found === 1 ? 'libro' : 'libros'}. Un niño puede elegir entre ${String(f.least)} y ${String(f.most)}.`,
  ...lookFindingsInSpanish,
  'best-of/twice': (f) => `"best of" nombra dos veces "${f.book}", y nadie sabría cuál de los dos se eligió. Nombre cada libro una vez.`,
  'home/too-many-prompts': (f) => `Hay ${String(f.found)} preguntas para casa. Elija las ${String(f.most)} mejores; una familia tiene diez minutos.`,
  ...passageFindingsInSpanish,
  ...privacyFindingsInSpanish,
  'text/too-hard': (f) =>
    `El texto para familias se lee como de ${gradesFromTo(f.low, f.high)}, según una estimación. Busque el grado 6: frases más cortas, palabras de todos los días. ${linesThatCost(f.lines)} Luego pida a una familia que lo lea.`,
  'text/low-ease': (f) =>
    `El texto para familias es «${f.band}» en la escala INFLESZ, según una estimación. Busque que sea «bastante fácil»: frases más cortas, palabras de todos los días. ${linesThatCost(f.lines)} Luego pida a una familia que lo lea.`,
  'paper/no-program': (f) =>
    `No se hicieron las hojas para imprimir (PDF): el programa que las hace no funciona en este tipo de máquina (${f.machine}). El sitio está completo sin ellas, y sus páginas se pueden imprimir desde el navegador.`,
  'paper/not-made': (f) => `No se pudo hacer la hoja "${f.sheet}" en PDF (${f.reason}). La página se puede imprimir desde el navegador. Avise a quien se ocupa de este programa.`,
  'paper/letters': (f) => `Las tipografías de las hojas impresas no tienen letra para: ${f.characters}. En el papel se omiten; las páginas las muestran.`,
  'plan/over-minutes': (f) => `La primera lectura con todas sus paradas dura unos ${String(f.planned)} minutos, y "minutes" dice ${String(f.minutes)}. Deje menos paradas o dé más tiempo.`,
};
