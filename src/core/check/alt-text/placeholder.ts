import { folded, phrase, tidy } from './alt-words.ts';
import type { AltRule, ReadAlt } from './alt-context.ts';

/**
 * A word that keeps the place of an alt text. Source: W3C failure F30 ("image", "picture 1", "spacer"); the rest common practice.
 * All are held against the whole alt text: "A blank page" and "A picture book" are no placeholders.
 */
const kindOfPicture =
  '(?:images?|imgs?|pictures?|pics?|photos?|photographs?|illustrations?|drawings?|graphics?|figures?|figs?|screenshots?|artwork|clip ?art|imagen|imágenes|fotos?|fotografías?|ilustración|ilustraciones|dibujos?|figuras?|gráficos?|captura de pantalla)';
const article = '(?:(?:an?|the|this|my|una?|el|la|esta|este|mi) )?';
const whole: readonly RegExp[] = [
  '(?:aquí )?(?:va|iría|irá|poner|falta) (?:el |la |un |una )?(?:texto|texto alternativo|descripción|alt)(?: aquí)?',
  `${article}${kindOfPicture} (?:on|in|from|at|de|en|del)(?: (?:this|the|a|este|esta|el|la))? (?:page|book|story|opening|spread|stop|página|libro|cuento|parada)(?: \\d{1,3})?`,
  `${article}(?:main|hero|header|profile|decorative|default|sample|example|stock|placeholder|missing|new) ${kindOfPicture}`,
  `${article}${kindOfPicture} (?:principal|decorativ[oa]|de portada|de ejemplo|de perfil|de muestra|de prueba|por defecto)`,
  `${kindOfPicture} (?:coming soon|to come|not available|unavailable|missing|no disponible|próximamente|pendiente)`,
  '(?:no|without) (?:alt|alt ?text|description|image|picture)(?: (?:available|yet|needed))?|sin (?:descripción|imagen|texto alternativo|texto)',
  '(?:alt ?text|alternative text|description|texto alternativo|descripción) (?:for|of|de|del|para)(?: (?:the|this|la|el|esta|este))? .{0,60}',
  `${article}${kindOfPicture}(?: goes)?(?: here| aquí)?(?: (?:no|number|número|n\\.?º))?\\.?[ #(_-]*\\d{0,4}\\)?(?: (?:of|de) \\d{1,4})?`,
  `${article}${kindOfPicture} (?:of|de|del|showing|con)(?: (?:an?|the|una?|el|la))?`,
  '(?:page|opening|spread|slide|página|pág|doble página|diapositiva)\\.? ?\\d{1,3}',
  'untitled(?: ?-?\\d+)?|sin título(?: ?-?\\d+)?|placeholder|marcador(?: de posición)?|spacer|blank|empty|vacío|tbd|tba|n/?a|none|null|undefined|ninguno|ninguna|test(?:ing)?|prueba|asdf\\p{L}*|qwerty|x{2,}|decorative|decorativ[oa]',
  'alt|alt ?text|alternative text|alternate text|texto alt|texto alternativo|description|image description|descripción|caption|title|título|leyenda|pie de foto',
  '(?:alt(?:ernative)? ?text|description|texto alternativo|descripción|caption)(?: (?:goes|to come|to do|here|pending|missing|needed|pendiente|por hacer|va|aquí|falta)){1,3}',
  '(?:insert|add|write|enter|describe|type|put|insertar|inserte|añadir|añada|agregar|escribir|escriba|poner)(?: \\p{L}+){0,3} (?:alt|alt ?text|description|picture|image|texto alternativo|descripción|imagen)(?: text)?(?: \\p{L}+)?',
  'to ?do|(?:.{1,60} )?(?:goes|go|comes|belongs) here|(?:.{1,60} )?(?:va|iría|irá) aquí',
  'lorem ipsum.*',
  '(?:falta|pendiente|por hacer)(?: (?:el|la))?(?: (?:texto|texto alternativo|descripción|alt))?',
].map((each) => phrase(`^(?:${each})$`));
/** In capitals on purpose: `todo` is Spanish for everything. */
const toDo = /^(?:TODO|TO DO|FIXME|TK|XXX)(?:$|[:!-]| (?:alt|add|describe|write|text|texto)\b)/u;
/** A note to oneself in brackets. */
const noteInBrackets = /[[(](?:[^[\]()]{0,60} )?(?:to ?do|tbd|tbc|check|ask|confirm|fix|alt ?text|revisar|preguntar|confirmar|pendiente|falta)(?!\p{L})[^[\]()]{0,60}[\])]$/iu;
const toDoInSmallLetters = phrase(/^todo ?: ?(?:escribir|añadir|agregar|poner|describir|texto|alt|add|write|describe)(?!\p{L})/iu);

export const placeholder: AltRule<'alt-text/placeholder'> = {
  code: 'alt-text/placeholder',
  level: 'stop',
  look: (alt) => (isPlaceholder(alt) ? { found: alt.text.slice(0, 60) } : undefined),
};

function isPlaceholder(alt: ReadAlt): boolean {
  const bare = tidy(alt.text.replace(/^[[({<«"“*_.:\s]+/u, '').replace(/[\])}>»"”*_.:!\s]+$/u, ''));
  if (toDo.test(bare) || noteInBrackets.test(alt.text) || toDoInSmallLetters.test(folded(bare))) return true;
  // A picture of a taught word may be called by it, whatever the word is.
  if (alt.use === 'word picture' && (alt.known ?? []).some((word) => word.toLowerCase() === bare.toLowerCase())) return false;
  return bare.length <= 200 && whole.some((each) => each.test(folded(bare)));
}
