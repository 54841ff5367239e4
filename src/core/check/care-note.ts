import { finding, type Finding } from '../finding.ts';
import { placeOf, type Pack } from '../pack/pack.ts';
import { FieldText, type PublishedText } from '../pack/published-texts.ts';
import { foundIn, languageOf, type KnownLanguage } from './plain-words.ts';
import type { Surroundings } from './surroundings.ts';

/**
 * Words of loss and harm, and of great fear. What follows some of them takes the weight away ("died down", "muerto de risa"), so
 * it is looked at as well. A list of our own; common practice, no source.
 */
const harm: Readonly<Record<KnownLanguage, RegExp>> = {
  en: /\b(?:dies|died(?! (?:down|away|out|of (?:laughter|boredom)))|dying(?! (?:to|for|down|away|of (?:laughter|boredom)))|passed away|death(?! valley)|dead(?! (?:tired|end|ends|ahead|calm|quiet|sea|center|centre|on|slow|straight|leaf|leaves|branch|branches|wood|battery|batteries|grass|plant|plants|flower|flowers|serious))|funerals?|graveyards?|cemetery|coffin|burial|orphan(?:s|ed|age)?|widow|grief|grieving|mourn(?:s|ed|ing)?|kill(?:s|ed|ing)?(?! (?:time|the time|two birds))|murder(?:s|ed|er)?|suicide|(?<!(?:water|glue|toy|squirt) )guns?|rifles?|(?<!(?:tug of|tug-of-|pillow) )wars?|(?<!bath )bombs?|bombed|blood(?! orange)|bleed(?:s|ing)?|(?<!(?:doll|dolls'|toy|animal|teddy) )hospitals?|abandoned(?! (?:\w+ )?(?:house|barn|boat|car|mine|building|nest|shed|farm|road|track|station|lot|mill|shell|boot|castle|ship))|beaten (?:up|with)|cancer|divorced?|divorcing|prison|jail|kidnap(?:s|ped|ping)?|drown(?:s|ed|ing)?(?! out)|slavery|enslaved|starv(?:ed|ing) to)\b/u,
  es: /(?<!\p{L})(?:murio|murieron|muere(?!n? (?:de|por))|mueren(?! (?:de|por))|morir(?!se de| de)|(?<!(?:punto|mar) )muert[oa]s?(?! de (?:risa|hambre|sueño|cansancio|sed|frio|miedo|curiosidad|envidia))(?<!(?:hojas?|naturaleza|ramas?|plantas?) muertas?)|fallecio|fallecieron|fallecid[oa]s?|muertes?|funeral(?:es)?|cementerio|ataud|entierro|huerfan[oa]s?|viud[oa]|luto|mato|mataron|matar(?! (?:el|la) (?:tiempo|hambre|curiosidad))|asesin\w+|suicidio|pistolas?(?! de (?:agua|silicona|juguete))|fusil(?:es)?|guerras?(?! de (?:almohadas|agua|bolas|cosquillas))|bombas?(?! de (?:agua|jabon|chicle|baño|aire))|sangre|hospital(?:es)?(?! de (?:muñecas|muñecos|juguetes|peluches))|abandonad[oa]s?(?<!(?:casa|granja|barca|fabrica|mina|estacion|nido|castillo|barco|coche) abandonad[oa])|cancer|divorci\w+|carcel|prision|secuestr\w+|ahogo|ahogaron|ahogad[oa]s?|esclavitud|esclav[oa]s?|maltrat\w+)(?!\p{L})/u,
};
const fear: Readonly<Record<KnownLanguage, RegExp>> = {
  en: /\b(?:terrif(?:ied|ying)|terror|nightmares?|panic(?:s|ked)?)\b/u,
  es: /(?<!\p{L})(?:aterr\w+|terror|pesadillas?|panico)(?!\p{L})/u,
};

/** Where the words of loss, fear or harm occur, a pack has a care note. A single word of the private passage may be named, and no more. */
export function* careNote(pack: Pack, around: Surroundings): Iterable<Finding> {
  const language = languageOf(pack);
  if (language === undefined || pack.partial || (pack.care ?? []).length > 0) return;
  const passage = around.passage === undefined ? [] : [{ text: around.passage, place: placeOf(pack, 'book') }];
  const texts = [...textsOf(pack), ...passage];
  for (const [list, level] of [
    [harm, 'warn'],
    [fear, 'note'],
  ] as const) {
    for (const each of texts) {
      const word = foundIn(each.text, list[language]);
      if (word === undefined) continue;
      yield finding('care/no-note', level, each.place, { word, where: each === passage[0] ? 'passage' : 'pack' });
      return;
    }
  }
}

/** What is read to children or families, in the order of the file. */
function* textsOf(pack: Pack): Iterable<Pick<PublishedText, 'text' | 'place'>> {
  yield new FieldText(pack, ['book', 'title'], pack.book.title);
  yield new FieldText(pack, ['summary'], pack.summary);
  for (const [index, stop] of pack.stops.entries()) {
    const fields = { ask: stop.ask, cue: stop.at.cue, 'listen for': stop.listenFor, 'if quiet': stop.ifQuiet, expand: stop.expand };
    for (const [field, text] of Object.entries(fields)) if (text !== undefined) yield new FieldText(pack, ['stops', index, ...(field === 'cue' ? ['at', 'cue'] : [field])], text);
    for (const [place, model] of (stop.models ?? []).entries()) yield new FieldText(pack, ['stops', index, 'models', place], model.text);
    for (const [place, word] of (stop.words ?? []).entries()) yield new FieldText(pack, ['stops', index, 'words', place], word);
  }
  for (const [index, { ask }] of (pack.questions ?? []).entries()) yield new FieldText(pack, ['questions', index, 'ask'], ask);
  for (const { text, line } of pack.body.blocks) yield { text, place: { file: pack.file, line, column: 1 } };
}
