import type { HandOverPhrases } from './en-hand-over.ts';

/** Spanish text of the page on how a pack made with the form reaches a library. */
export const handOverInSpanish: HandOverPhrases = {
  title: 'Cómo entregarla',
  description: 'Cómo llega el archivo de una guía de su dispositivo a una biblioteca, y qué pasa con él allí.',
  lead: 'Una guía es un archivo, y una carpeta de ilustraciones si las tiene. Nadie la recibe hasta que usted la entrega.',
  steps: [
    ['Lea el último capítulo.', '«Antes de compartir» dice qué hace falta todavía. Una biblioteca la publica en cuanto nada de allí esté marcado como necesario.'],
    ['Guarde el archivo.', 'Con ilustraciones, guarde el zip. Sin ellas basta pack.md. Su navegador lo pone donde pone todas las descargas.'],
    ['Envíelo a quien lleva la biblioteca.', 'Por correo o en una carpeta compartida, como enviaría cualquier archivo. La dirección está al pie de esta página.'],
    ['Allí lo ponen en la biblioteca.', 'Abren el zip en la carpeta «packs», o hacen allí una carpeta y ponen en ella pack.md. Después lo miran y lo publican.'],
  ],
  beforeHeading: 'Antes de enviarla',
  before: [
    '¿Hay en ella el nombre de un niño, una lista de clase, un salón, un teléfono? Quítelo. La revisión los busca, pero no conoce los nombres de su clase.',
    '¿Son suyas las ilustraciones, o las permite una licencia? La foto de una página del libro es una copia del libro.',
    '¿Cita del libro más que las pocas palabras después de las cuales se para? Dígalo con sus propias palabras.',
    'Quizá su escuela quiera verla antes. Sus normas están por encima de todo lo escrito aquí.',
  ],
  laterHeading: 'Cambiarla después',
  later: 'Abra aquí otra vez el mismo archivo, cámbielo y envíelo de nuevo. Póngale otra versión y el día en que la revisó, para que todos sepan cuál es la última.',
  runnerHeading: 'Para quien lleva la biblioteca',
  runner:
    'El archivo va en packs/<carpeta>/pack.md dentro de la carpeta de contenido, y las ilustraciones en packs/<carpeta>/pictures/. «bookfellow check» dice lo mismo que el formulario. Con «npm start», el formulario de su propia máquina puede guardar directamente en esa carpeta; queda una copia de lo que había.',
};
