import type { AltRule, ReadAlt } from './alt-context.ts';
import { phrase } from './alt-words.ts';

/**
 * A screen reader says "image" by itself, so the alt text begins with what is shown. Only the everyday words for a picture count, and only
 * at the beginning: a map, a portrait, a child's drawing or an old photograph say something that matters. A photo that hangs on a wall is a
 * thing in the picture. Source: W3C, "Tips and Tricks" of the Images Tutorial.
 */
const noun = '(?:image|picture|pic|photo|photograph|illustration|graphic|drawing|cartoon|screenshot|clip ?art)s?';
const praise = '(?:(?:nice|beautiful|cute|lovely|funny|simple|small|large|big|colou?r|colou?red|colou?rful|digital|close-?up|full[- ]page|double[- ]page|detailed|cheerful) ){0,2}';
/** What may stand in front: "this is a picture of". Not "there is": a picture of a ship may hang on a wall. */
const leadIn = "(?:this|that|it|here|it'?s|here'?s|is|we|you|i|can|see|have|just|only|simply|another|also|show(?:s|n)?)";
const leadInInSpanish = '(?:esto|esta|este|eso|es|son|se|trata|de|aquí|hay|vemos|ve|ven|tenemos|podemos|ver|solo|otr[oa]|también|muestra)';
const nounInSpanish = '(?:imagen|imágenes|fotos?|fotografías?|ilustración|ilustraciones|dibujos?|gráfico|figura|captura de pantalla)';
const praiseInSpanish = '(?: (?:bonit[oa]|lind[oa]|hermos[oa]|sencill[oa]|en color|a color|digital|detallad[oa]|pequeñ[oa]|grande|a (?:doble|toda) página|a página completa))?';

const openings = (
  [
    `^(?:${leadIn} ){0,4}(?:(?:an?|the|this|one|some|my|our) )?${praise}${noun} (?:of|showing|shows|depicting|depicts|with|that shows|which shows|featuring|from (?:the|page|opening))(?= )`,
    /^(?:an? |the )?picture ?book (?:page|spread|illustration|picture|image|cover) (?:of|with|showing|where|in which)(?= )/iu,
    `[,;(–—-] ?(?:an? )?${praise}${noun}[).]*$`,
    /^(?:here |in this picture )?(?:we|you) (?:can )?see (?=(?:an?|the|some|two|three|how|his|her) )/iu,
    `^(?:this|the) ${noun} (?:shows|depicts|is of|features|illustrates)(?= )`,
    // A few words before or behind: "goldfish bowl photo", "imagen vaca".
    /^(?:\p{L}+ ){1,3}(?:photo|pic|image|picture|illustration|screenshot)\.?$/iu,
    /^(?:imagen|foto|dibujo|image|photo|pic|picture) (?!album|book|frame|booth|day|finish|antigu|viej|infantil)\p{L}+\.?$/iu,
    `^in (?:this|the) ${noun}(?:,| (?:we|you|there|one|a|an|is|are) )`,
    `^(?:an? |the )?${praise}${noun}(?: \\d{1,3})?(?: description| caption)?(?: ?:| -| –| —)(?= ?\\S)`,
    `^(?:${leadInInSpanish} ){0,4}(?:(?:una?|la|el|esta|este|l[oa]s|mi|nuestr[oa]) )?${nounInSpanish}${praiseInSpanish} (?:de|del|que muestra|que representa|con|mostrando|donde|en la que|en el que)(?= )`,
    `[,;(–—-] ?(?:una? )?${nounInSpanish}[).]*$`,
    /^(?:aquí )?(?:se ven?|vemos|podemos (?:ver|observar)|se pueden? (?:ver|observar)|se observan?) (?=(?:a )?(?:una?|el|la|l[oa]s|al|dos|tres|cómo|su) )/iu,
    `^(?:la|el|esta|este) ${nounInSpanish} (?:muestra|representa|enseña|ilustra|presenta)(?= )`,
    `^en (?:la|el|esta|este) ${nounInSpanish}(?:,| (?:se|vemos|hay|aparece|aparecen|podemos|está|están|un|una) ?)`,
    /^(?:image |picture )?(?:description|alt|alt ?text|descripción(?: de la imagen)?|texto alternativo) ?:(?= ?\S)/iu,
    `^(?:una? |la |el )?${nounInSpanish}${praiseInSpanish}(?: \\d{1,3})?(?: ?:| -| –| —)(?= ?\\S)`,
  ] as const
).map((each) => phrase(each));

/** The picture is itself a thing that hangs, lies or is stuck somewhere. No "who" or "that" may stand before: "a man who hangs his coat". */
const isAThing = phrase(
  /^(?:(?!\b(?:who|that|which|que|quien|cuando|when|where|while|mientras)\b)[^.!?;]){0,120}?\b(?:(?:hangs?|leans?|falls?|flutters?|curls?|peels?|lies?|stands?|sits?) (?:\p{L}+ )?(?:on|over|above|from|against|in|off|out|at|by|between|under|beside|behind)|covers? (?:an?|the|one|every|half)|(?:is|are) (?:taped|pinned|tacked|stuck|glued|nailed|clipped|painted)|(?:cuelgan?|cubren? (?:una?|la|el|tod[oa])|está colgad[oa]|están colgad[oa]s|se cae|asoma|está (?:pegad|clavad|sujet)[oa]|están (?:pegad|clavad|sujet)[oa]s))(?!\p{L})/iu,
);

export const imageOf: AltRule<'alt-text/image-of'> = {
  code: 'alt-text/image-of',
  level: 'warn',
  look: (alt) => {
    const hit = openings.map((each) => each.exec(alt.unaccented)).find((each) => each !== null);
    return !hit || showsThePictureAsAThing(alt) ? undefined : { found: alt.text.slice(hit.index, hit.index + hit[0].length).replace(/^[^\p{L}]+|[^\p{L}\p{N}]+$/gu, '') };
  },
};

function showsThePictureAsAThing(alt: ReadAlt): boolean {
  return /^(?:an?|the|one|some|two|una?|el|la|l[oa]s|un[oa]s|photo|picture|drawing|foto|dibujo)/iu.test(alt.text) && isAThing.test(alt.unaccented);
}
