import type { AltRule, ReadAlt } from './alt-context.ts';

/**
 * A screen reader says "image" by itself, so the alt text begins with what is shown. Only the everyday words for a picture count, and only
 * at the beginning: a map, a portrait, a child's drawing or an old photograph say something that matters. A photo that hangs on a wall is a
 * thing in the picture. Source: W3C, "Tips and Tricks" of the Images Tutorial.
 */
const noun = '(?:image|picture|pic|photo|photograph|illustration|graphic|drawing|cartoon|clip ?art)s?';
const praise = '(?:(?:nice|beautiful|cute|lovely|funny|simple|small|large|big|colou?r|colou?red|colou?rful|digital|close-?up|full-page|detailed|cheerful) ){0,2}';
const nounInSpanish = '(?:imagen|imágenes|fotos?|fotografías?|ilustración|ilustraciones|dibujos?|gráfico)';
const praiseInSpanish = '(?: (?:bonit[oa]|lind[oa]|hermos[oa]|sencill[oa]|en color|a color|digital|detallad[oa]))?';

const openings = [
  new RegExp(
    `^(?:(?:this|here|it) is |here we see |we (?:can )?see |you (?:can )?see )?(?:(?:an?|the|this|one|some) )?${praise}${noun} (?:of|showing|shows|depicting|depicts|with|that shows|which shows|featuring)(?= )`,
    'iu',
  ),
  new RegExp(`^(?:this|the) ${noun} (?:shows|depicts|is of|features|illustrates)(?= )`, 'iu'),
  new RegExp(`^in (?:this|the) ${noun}(?:,| (?:we|you|there|one|a|an|is|are) )`, 'iu'),
  new RegExp(`^${noun}(?: ?:| -| –| —)(?= ?\\S)`, 'iu'),
  new RegExp(
    `^(?:(?:esta|este|esto|aquí) (?:es|hay|vemos|se ve) |vemos |se ve )?(?:(?:una?|la|el|esta|este|l[oa]s) )?${nounInSpanish}${praiseInSpanish} (?:de|del|que muestra|que representa|con|mostrando|donde|en la que|en el que)(?= )`,
    'iu',
  ),
  new RegExp(`^(?:la|el|esta|este) ${nounInSpanish} (?:muestra|representa|enseña|ilustra|presenta)(?= )`, 'iu'),
  new RegExp(`^en (?:la|el|esta|este) ${nounInSpanish}(?:,| (?:se|vemos|hay|aparece|aparecen|podemos|está|están|un|una) ?)`, 'iu'),
  new RegExp(`^${nounInSpanish}(?: ?:| -| –| —)(?= ?\\S)`, 'iu'),
] as const;

/** The picture is itself a thing that hangs, lies or is stuck somewhere. No "who" or "that" may stand before: "a man who hangs his coat". */
const isAThing =
  /^(?:(?!\b(?:who|that|which|que|quien|cuando|when|where|while|mientras)\b)[^.!?;]){0,120}?\b(?:(?:hangs?|leans?|falls?|flutters?|curls?|peels?|lies?|stands?|sits?) (?:\p{L}+ )?(?:on|over|above|from|against|in|off|out|at|by|between|under|beside|behind)|(?:is|are) (?:taped|pinned|tacked|stuck|glued|nailed|clipped|painted)|(?:cuelgan?|está colgad[oa]|están colgad[oa]s|se cae|asoma|está (?:pegad|clavad|sujet)[oa]|están (?:pegad|clavad|sujet)[oa]s))(?!\p{L})/iu;

export const imageOf: AltRule<'alt-text/image-of'> = {
  code: 'alt-text/image-of',
  level: 'warn',
  look: (alt) => {
    const found = openings.map((each) => each.exec(alt.text)?.[0]).find((each) => each !== undefined);
    return found === undefined || showsThePictureAsAThing(alt) ? undefined : { found: found.trim() };
  },
};

function showsThePictureAsAThing(alt: ReadAlt): boolean {
  return /^(?:an?|the|one|some|two|una?|el|la|l[oa]s|un[oa]s|photo|picture|drawing|foto|dibujo)/iu.test(alt.text) && isAThing.test(alt.text);
}
