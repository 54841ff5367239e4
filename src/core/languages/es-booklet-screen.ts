/** Spanish phrases that the booklet on the screen says before its first answer. A child is spoken to with "tú". A file of its own: a slow phone loads these first, and the rest when it has time. */
import type { enBookletScreen } from './en-booklet-screen.ts';

export const count = (n: number, one: string, many: string) => `${String(n)} ${n === 1 ? one : many}`;

export const esNames: Readonly<Record<'patterns' | 'colours', Readonly<Record<string, string>>>> = {
  patterns: { waves: 'olas', leaves: 'hojas', stitches: 'puntadas', roofs: 'tejados', rain: 'lluvia' },
  colours: { red: 'rojo', blue: 'azul', green: 'verde', yellow: 'amarillo', brown: 'café' },
};

export const nameOf = (names: Readonly<Record<string, string>>, slug: string) => (Object.hasOwn(names, slug) ? names[slug] : undefined) ?? slug;

export const esBookletScreen: typeof enBookletScreen = {
  bookmarks: { waves: 'olas', leaves: 'hojas', stitches: 'puntadas', roofs: 'tejados', rain: 'lluvia' },
  blank: 'espacio para completar',
  screen: {
    whose: '¿De quién es el cuadernillo?',
    openIt: (answers) => (answers === 0 ? 'todavía sin respuestas' : count(answers, 'respuesta', 'respuestas')),
    another: 'Empezar otro cuadernillo',
    choose: 'Elige un marcador',
    chooseNote: 'Va en tu lugar, y no hace falta un nombre. El cuadernillo guarda tus respuestas en este aparato y no se las manda a nadie.',
    pattern: '¿Qué tiene dibujado?',
    colour: '¿De qué color es?',
    bookmark: (pattern, colour) => `El marcador ${nameOf(esNames.colours, colour)} de ${nameOf(esNames.patterns, pattern)}`,
    yours: (pattern, colour) => `Tu marcador: ${nameOf(esNames.colours, colour)}, de ${nameOf(esNames.patterns, pattern)}`,
    taken: 'Ese marcador ya está en un cuadernillo de este aparato. Al abrirlo, sigues con ese.',
    colours: { red: 'rojo', blue: 'azul', green: 'verde', yellow: 'amarillo', brown: 'café' },
    when: '¿Cuándo quieres responder?',
    flows: { each: 'En cada pausa, mientras leemos', end: 'Cuando termine el cuento: primero lo leemos o lo vemos entero' },
    begin: 'Abrir el cuadernillo',
    change: 'Guardarlo y elegir otro marcador',
    goneElsewhere: 'Este cuadernillo se borró en otra ventana.',
    readFirst: 'Primero, el cuento entero',
    readFirstNote: 'Lean el libro juntos, o véanlo, de la primera página a la última. Por el camino nadie tiene que responder. No hay prisa.',
    readDone: 'Se acabó el cuento: pasa la página',
    pages: 'Pasar las páginas',
    page: (n, of) => `página ${String(n)} de ${String(of)}`,
    forward: 'Pasa la página',
    back: 'Una página atrás',
    keeping: {
      kept: 'Guardado en este aparato.',
      full: 'En este aparato ya no queda espacio, y la última respuesta no se guardó. Ve a tu página de respuestas e imprímela, o guárdala como archivo, antes de cerrar esta ventana.',
      blocked: 'Este navegador no deja que el cuadernillo guarde nada. Puedes seguir; pero imprime tu página de respuestas, o guárdala como archivo, antes de cerrar esta ventana.',
    },
    toMine: 'A mi página de respuestas',
    how: '¿Cómo vas a responder?',
    ways: { write: 'Escribir', draw: 'Dibujar', feeling: 'Elegir una palabra para lo que se siente', say: 'Decirlo', act: 'Actuarlo', pass: 'Pasar' },
    has: 'tiene algo',
    write: {
      label: 'Tus palabras',
      frames: 'Pon una de estas para empezar:',
      bank: 'Palabras para poner:',
      undo: 'Deshacer el último cambio',
      look: 'Míralo una vez más',
      looks: ['¿Es una frase completa?', '¿Dice por qué, con «porque»?', '¿Tiene su punto al final?'],
      lookNote: 'Nadie lo califica. Cambia algo, o déjalo como está.',
      two: 'Aquí hay dos: se escribieron en dos aparatos o en dos ventanas. Las dos están guardadas. Puedes quitar una.',
      takeAway: 'Quitar esta',
    },
    say: {
      partner: 'Cuéntaselo a quien tienes al lado, y escucha lo suyo.',
      aloud: 'Dilo en voz alta a alguien.',
      label: 'Un adulto puede escribir lo que dices, palabra por palabra',
      micOff: 'Si la familia quiere, el cuadernillo también puede guardar tu voz en este aparato. Un adulto lo permite en la primera página.',
    },
    act: {
      note: 'Muéstralo con las manos, con la cara o con todo el cuerpo.',
      label: '¿Qué hiciste? Basta una palabra',
    },
    pass: {
      note: 'Puedes pasar. Nadie pregunta por qué.',
      do: 'Esta la paso',
      done: 'Esta la pasaste.',
      undo: 'Responder, después de todo',
    },
    models: 'Lo que podrían responder otros',
    modelsFirst: 'Lo que podrían responder otros: mejor después de lo tuyo',
    expand: 'Un adulto podría repetirlo así:',
    late: {
      wait: 'Esta página está en camino.',
      missing: 'Esta parte de la página no llegó, quizá porque no hay red. Lo que respondiste está a salvo. Una hoja de papel vale lo mismo.',
      again: 'Intentar otra vez',
    },
    mine: { title: 'Mi página de respuestas' },
    grown: { title: 'Para el adulto' },
  },
};
