import type { Code, FactsOf } from '../finding.ts';

type AltCode = Extract<Code, `alt-text/${string}`>;

/** Lo mismo que `en-findings-alt-text.ts`, en español. */
export const altTextInSpanish: { readonly [C in AltCode]: (facts: FactsOf[C]) => string } = {
  'alt-text/missing': (f) => `La imagen "${f.picture}" no tiene texto alternativo. Añada una línea "alt: …" que diga lo que muestra, o "decorative: true" si solo es un adorno.`,
  'alt-text/decorative-with-alt': (f) => `La imagen "${f.picture}" está marcada como adorno y además tiene texto alternativo. Borre uno de los dos.`,
  'alt-text/link-without-words': (f) => `Un enlace contiene solo el adorno "${f.picture}", y quien escucha no sabe adónde lleva. Escriba también unas palabras en el enlace.`,
  'alt-text/encoding': (f) => `El texto alternativo de "${f.picture}" tiene letras dañadas: "${f.found}". Escriba la palabra de nuevo y guarde el archivo como UTF-8.`,
  'alt-text/no-words': (f) => `El texto alternativo de "${f.picture}" no tiene palabras, solo "${f.found}". Diga en una frase lo que muestra la imagen.`,
  'alt-text/file-name': (f) => `"${f.found}" es el nombre de un archivo. Diga en una frase lo que muestra la imagen "${f.picture}": quién está, qué hace y dónde.`,
  'alt-text/placeholder': (f) => `"${f.found}" solo ocupa el lugar de un texto alternativo. Diga lo que muestra la imagen "${f.picture}", o escriba "decorative: true" si solo es un adorno.`,
  'alt-text/personal-data': (f) =>
    `El texto alternativo de "${f.picture}" podría llevar hasta una persona real: "${f.found}". Quítelo y diga lo que se ve: "Unos niños levantan barcos de papel." Si viene del libro, añádalo a "allow words".`,
  'alt-text/markup': (f) => `El texto alternativo de "${f.picture}" contiene signos que se leerían en voz alta: "${f.found}". Escriba palabras sencillas; una dirección va en el texto de la página.`,
  'alt-text/credit': (f) => `"${f.found}", en el texto alternativo de "${f.picture}", dice quién hizo la imagen. Páselo a "credit", que se muestra debajo, y diga aquí lo que la imagen muestra.`,
  'alt-text/image-of': (f) => `A quien escucha ya se le anuncia que "${f.picture}" es una imagen. Quite "${f.found}" y empiece por lo que muestra: "Una niña con una cometa en una loma."`,
  'alt-text/points-elsewhere': (f) => `"${f.found}" manda a otro lugar a quien escucha. Diga aquí, en pocas palabras, lo que muestra la imagen "${f.picture}".`,
  'alt-text/not-purpose': (f) => `La imagen "${f.picture}" es lo único que hay en un enlace, y "${f.found}" no dice adónde lleva. Escriba adónde se llega: "El cuadernillo".`,
  'alt-text/too-long': (f) =>
    `El texto alternativo de "${f.picture}" tiene ${String(f.length)} caracteres, y de oído no se puede parar ni volver atrás. No pase de ${String(f.most)}: deje lo que importa para el cuento y pase el resto al texto de al lado.`,
  'alt-text/text-left-out': (f) => `En la imagen "${f.picture}" se puede leer "${f.found}", pero en su texto alternativo no. Añádalo: … un letrero que dice "${f.found}".`,
  'alt-text/repeats': (f) =>
    `El texto alternativo de "${f.picture}" dice lo que ya está al lado: "${f.found}". Diga lo que solo la imagen cuenta: quién está dónde, qué lleva en las manos, cómo es la luz.`,
  'alt-text/same-as-another': (f) => `Las imágenes "${f.picture}" y "${f.other}" tienen el mismo texto alternativo. Diga qué hay de distinto en esta.`,
  'alt-text/gives-answer': (f) =>
    `El texto alternativo de "${f.picture}" adelanta una respuesta a la pregunta de su parada: "${f.found}". Describa en qué se nota, como una cara, unas manos o el tiempo que hace, y deje que los niños digan lo que significa.`,
  'alt-text/too-vague': (f) => `"${f.found}" podría estar debajo de muchas imágenes. Diga lo que pasa en "${f.picture}": quién, qué hace y dónde.`,
  'alt-text/wrong-language': (f) => `El texto alternativo de "${f.picture}" no parece estar en la lengua del paquete ("${f.language}"). Se leería con la voz equivocada: tradúzcalo.`,
  'alt-text/all-caps': (f) =>
    `"${f.found}", en el texto alternativo de "${f.picture}", va en mayúsculas, y algunas voces las deletrean. Escriba en minúsculas; ponga entre comillas lo que está escrito en la imagen.`,
  'alt-text/ending': (f) => `El texto alternativo de "${f.picture}" acaba en "${f.found}", como si faltara algo. Termine la frase, o ciérrela con un solo punto.`,
  'alt-text/spaces': (f) => `El texto alternativo de "${f.picture}" tiene saltos de línea o espacios de más, y una voz puede detenerse ahí. Escríbalo en una sola línea y con espacios sencillos.`,
  'alt-text/long-sentence': (f) =>
    `Una frase del texto alternativo de "${f.picture}" tiene ${String(f.words)} palabras, y de oído no se puede volver atrás. Haga dos, de menos de ${String(f.most)} palabras cada una.`,
  'alt-text/opinion': (f) =>
    `"${f.found}", en el texto alternativo de "${f.picture}", dice lo que usted piensa. Diga por qué es así, con un color, una forma o una mirada, y deje que quien escucha lo juzgue.`,
};
