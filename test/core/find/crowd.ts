/** Invented packs whose words meet those of the demo often, so that there is something to be mixed up with; the same each time. */
import { daleChall as everyday } from 'dale-chall';
import type { ToFind } from '../../../src/core/find/find-index.ts';
import { families, grades, kinds, kindsOfBook, ways } from '../../../src/core/pack/schema.ts';
import { seeded } from '../../speed/invented-library.ts';

/** Every third word of a text is one of these: things of the demo, and words a slip away from them. */
const things: Readonly<Record<string, string>> = {
  en: 'lamp cloud mouse lion button weather jar boat coat plant street crow story word keeper kite lamb jelly clown house noble planet',
  es: 'faro nube ratón camino botón lluvia vecino tiempo pan puerta zapato árbol',
};
/** The other words of a Spanish text: everyday ones, from memory. */
const everydayInSpanish = `abeja abrigo abuela agua aguja almohada amigo anillo arena armario arroz avión azúcar balcón barco barrio bicicleta bigote bolsillo bosque bota bruja burro
caballo cabra caja calle cama campana canción caracol carta castillo cebolla cepillo cerdo cesta cielo ciruela cocina cohete cola columpio conejo corazón cordón corona cuchara cuento cueva
dedo delfín desierto diente dragón elefante escalera escoba espejo estrella flauta flor fuego gallina gallo galleta gato gigante globo gorro granja grillo guante guitarra hada harina helado
hermana hielo hierba hilo hoja hormiga hueso huevo invierno isla jabón jardín jirafa juguete ladrillo lago lana lápiz leche lechuza libro limón linterna llave lobo luna luz maceta madera maleta
manta manzana mapa mar mariposa martillo mesa miel mochila molino moneda mono montaña mosca música nariz nieve nido noche nuez ola oveja pájaro palabra paloma paraguas pastel pato pelota pera
perro piano piedra pincel pino pirata piscina plaza pluma pollo pozo primavera prima puente pulpo queso rama rana red regalo reina reloj remo rey río risa rosa rueda ruido sábana semilla
sendero serpiente silla sobrino sol sombra sombrero sopa sueño tambor taza techo tela tigre tijera tío tomate tormenta toro torre tortuga trapo tren trigo trompo trueno uva vaca vela ventana
verano viaje viento violín zanahoria zorro`.split(/\s+/);

/** A name that nobody has, of three syllables: some 30,000 there are. */
function name(random: () => number): string {
  const syllables = 'ba bel cor da den el far gin har il jor ka len mar nor ol pen quil ros sel tam ul ver wen yar zo bri clo dru fen gra'.split(' ');
  return Array.from({ length: 3 }, () => syllables[Math.floor(random() * syllables.length)]).join('');
}

/** So many schools there are; with `names`, every author and every school has a name of its own, as in a library of many hands. */
interface Hands {
  readonly schools: number;
  readonly names: boolean;
}

export function crowd(count: number, language: string, { schools, names }: Hands = { schools: 9, names: false }): readonly ToFind[] {
  const random = seeded(20_261_125);
  const of = <T>(list: readonly T[]): T => list[Math.floor(random() * list.length)] as T;
  const schoolNames = Array.from({ length: names ? schools : 0 }, () => name(random));
  const own = (things[language] ?? '').split(' ');
  const others = language === 'es' ? everydayInSpanish : everyday;
  // Frequent words come often, as they do in any text.
  const word = () => (random() < 0.3 ? of(own) : (others[Math.floor(random() ** 2 * others.length)] ?? ''));
  const sentence = () => Array.from({ length: 25 }, word).join(' ');
  return Array.from({ length: count }, (_, number) => {
    const title = `${word()} ${word()} ${word()}`;
    const author = `${word()} ${names ? name(random) : word()}`;
    const summary = sentence();
    return {
      listed: { title, url: `crowd-${number}/`, by: `by ${author}`, summary, who: 'for grades K and 1', long: 'twenty minutes' },
      more: of(families),
      pack: {
        title,
        summary,
        book: {
          title: `${word()} ${number}`,
          author,
          openings: 12,
          words: 300,
          ...(number % 5 > 0 && { kinds: [of(kindsOfBook), of(kindsOfBook)] }),
          rights: of(['in copyright', 'our own'] as const),
        },
        by: { name: 'Somebody', school: `School ${names ? schoolNames[number % schools] : number % schools}`, licence: 'CC0 1.0', ...(number % 2 === 0 && { reviewed: `202${number % 7}-03-01` }) },
        for: { grades: [of(grades)], minutes: 10 + (number % 4) * 5 },
        aims: [{ skill: `Skill ${number % 70}` }],
        ...(number % 3 === 0 && { recording: { permission: 'ours' } }),
        words: [{ word: word(), meaning: '', situation: '' }],
        feelings: [{ word: 'x', family: of(families), strength: 1, situation: '' }],
        stops: [{ id: 'a', at: { opening: 1, cue: '', picture: 'shown' }, ask: '', kind: of(kinds), depth: 1, answer: of(ways) }],
      },
    };
  });
}

/** A word as it is written in a hurry: two neighbours turned round, a letter left out, or one doubled. Short words and first letters are left as they are. */
export function slipped(word: string, random: () => number): string {
  const letters = [...word];
  if (letters.length < 5) return word;
  const at = 1 + Math.floor(random() * (letters.length - 2));
  const kind = Math.floor(random() * 3);
  const [a = '', b = ''] = letters.slice(at, at + 2);
  letters.splice(at, kind === 0 ? 2 : 1, ...(kind === 0 ? [b, a] : kind === 1 ? [] : [a, a]));
  return letters.join('');
}
