import type { passageFindingsInEnglish, privacyFindingsInEnglish } from './en-findings-private.ts';

export const passageFindingsInSpanish: typeof passageFindingsInEnglish = {
  'passage/word-count': (f) =>
    `"words" dice ${String(f.said)}, y en el texto del libro se cuentan ${String(f.counted)}. De este número salen los minutos de la clase: escriba "words: ${String(f.counted)}" o compruebe si el texto está completo.`,
  'passage/opening-mark': (f) => {
    if (f.why === 'past the end') return `El texto del libro marca la doble página ${String(f.opening)}, pero el libro tiene ${String(f.openings)}. Corrija la marca o "openings".`;
    const wrong = f.why === 'form' ? 'parece la marca de una doble página y no se lee como tal' : 'no va después de la anterior';
    return `En el texto del libro, la marca de la línea ${String(f.line)} ${wrong}. Escriba "[opening 4]" en una línea aparte, con los números de menor a mayor.`;
  },
  'words/not-in-passage': (f) => `La palabra "${f.word}" no se encuentra en el texto del libro. Elija una que los niños vayan a oír, o déjela si habla de una ilustración.`,
  'words/first-met': (f) =>
    `"first met" dice doble página ${String(f.said)}, y en el libro "${f.word}" sale por primera vez en la ${String(f.found)}. Cambie el número para que la palabra esté lista cuando llegue.`,
  'copy/long-quote': (f) =>
    `Este texto repite ${String(f.words)} palabras seguidas del libro, desde "${f.begins} …". Un paquete cita ${String(f.most)} como mucho, porque el libro tiene derechos de autor. Dígalo con sus palabras o deje solo las pocas que necesita.`,
  'copy/too-much': (f) =>
    `En total, este paquete repite ${String(f.words)} palabras del libro (${String(f.percent)} %), y para él el máximo son ${String(f.most)}. Acorte las frases de aviso y las citas, y cuente lo demás con sus palabras.`,
};

export const privacyFindingsInSpanish: typeof privacyFindingsInEnglish = {
  'privacy/roster-name': (f) => `"${f.name}" está en su lista privada de nombres. Quite el nombre de este texto o, si es de un personaje del libro, añádalo a "allow words".`,
  'privacy/roster-unread': () =>
    'Hay una lista de nombres en private/roster.txt y no se puede leer, así que no se sabe si algún nombre aparece en este paquete. Guárdela como texto sin formato en UTF-8, un nombre por línea.',
  'privacy/email': (f) => `La dirección "${f.found}" quedaría a la vista de todos. Quítela. Si cualquiera puede escribir ahí, póngala en "contact" de library.yaml.`,
  'privacy/phone': (f) => `"${f.found}" parece un número de teléfono y quedaría a la vista de todos. Quítelo. Si cualquiera puede llamar ahí, póngalo en "contact" de library.yaml.`,
  'privacy/room': (f) => `"${f.found}" dice dónde está un grupo de niños. Escriba "nuestra clase" o "el aula" o, si es parte del cuento, añada el nombre a "allow words".`,
  'privacy/picture-place': (f) =>
    f.holds === 'place'
      ? `El archivo "${f.picture}" guarda el lugar donde se hizo. La imagen publicada no lo lleva, pero quien reciba la carpeta puede leerlo. Guarde la imagen de nuevo sin ubicación.`
      : `El archivo "${f.picture}" guarda con qué cámara se hizo. La imagen publicada no lo lleva. Si comparte la carpeta, guarde la imagen de nuevo sin esos datos.`,
  'rights/book-note': (f) =>
    `El libro está marcado como "${f.rights}". Añada una línea "rights note: …" que diga ${f.rights === 'licensed' ? 'con qué licencia y quién la dio' : 'por qué: el año, o la fecha en que murió el autor'}.`,
  'rights/picture-note': (f) =>
    f.cover
      ? `"${f.picture}" parece una cubierta, y las cubiertas son de quien las hizo. Añada una línea "rights: …" que diga quién dio permiso, o quite la imagen.`
      : `La imagen "${f.picture}" no dice de quién es. Añada "rights: …" (por ejemplo, "Dibujado para este paquete, CC BY 4.0") o "credit: …". Las imágenes de un libro con derechos de autor necesitan permiso.`,
  'translation/unchecked': (f) =>
    `Nadie ha firmado que revisó esta traducción (falta "${f.missing}").${f.careful ? ' Contiene palabras de cuidado o de permiso, donde un error puede hacer daño; por eso espera.' : ''} Pídaselo a alguien que hable bien el idioma y añada "checked by" y "checked".`,
  'by/review-past': (f) => `Este paquete se revisó por última vez el ${f.reviewed}, hace más de ${String(f.years)} años. Léalo otra vez y cambie "reviewed".`,
  'by/review-ahead': (f) => `"reviewed" es ${f.reviewed}, y ese día aún no ha llegado (hoy es ${f.today}). Escriba el día en que se revisó.`,
};
