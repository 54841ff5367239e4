/**
 * Irregular forms of English words that stories use: the word first, then its other forms. Facts of the language, put
 * together here by hand; common words only, as a form that is missing costs no more than a note too many.
 */
const families = `
arise arose arisen; awake awoke awoken; bear bore borne born; beat beaten; become became; begin began begun; bend bent;
bind bound; bite bit bitten; bleed bled; blow blew blown; break broke broken; breed bred; bring brought; build built;
burn burnt; buy bought; catch caught; choose chose chosen; cling clung; come came; creep crept; dig dug; dive dove;
draw drew drawn; dream dreamt; drink drank drunk; drive drove driven; dwell dwelt; eat ate eaten; fall fell fallen;
feed fed; feel felt; fight fought; find found; flee fled; fling flung; fly flew flown flies; forbid forbade forbidden;
forget forgot forgotten; forgive forgave forgiven; freeze froze frozen; get got gotten; give gave given; go went gone goes;
grind ground; grow grew grown; hang hung; hear heard; hide hid hidden; hold held; keep kept; kneel knelt; know knew known;
lay laid; lead led; lean leant; leap leapt; learn learnt; leave left; lend lent; lie lay lain lying; light lit; lose lost;
make made; mean meant; meet met; mow mown; pay paid; ride rode ridden; ring rang rung; rise rose risen; run ran; saw sawn;
say said says; see saw seen; seek sought; sell sold; send sent; sew sewn; shake shook shaken; shear shorn; shine shone;
shoot shot; show shown; shrink shrank shrunk; sing sang sung; sink sank sunk; sit sat; slay slew slain; sleep slept;
slide slid; sling slung; slink slunk; smell smelt; sow sown; speak spoke spoken; speed sped; spell spelt; spend spent;
spill spilt; spin spun; spit spat; spoil spoilt; spring sprang sprung; stand stood; steal stole stolen; stick stuck;
sting stung; stink stank stunk; stride strode stridden; strike struck stricken; string strung; strive strove striven;
swear swore sworn; sweep swept; swell swollen; swim swam swum; swing swung; take took taken; teach taught; tear tore torn;
tell told; think thought; throw threw thrown; tread trod trodden; understand understood; undo undid undone; wake woke woken;
wear wore worn; weave wove woven; weep wept; win won; wind wound; wring wrung; write wrote written;
child children; man men; woman women; person people; foot feet; tooth teeth; goose geese; mouse mice; louse lice; ox oxen;
leaf leaves; loaf loaves; half halves; calf calves; wolf wolves; shelf shelves; thief thieves; knife knives; life lives;
wife wives; elf elves; self selves; scarf scarves; hoof hooves; sheaf sheaves; die dice dying; penny pence; tie tying;
good better best; bad worse worst; far farther farthest further furthest; little less least; much more most`;

/** The word that an irregular form belongs to: `crept` to `creep`. A form of two words (`lay`, `saw`) names both. */
export const irregularBases: ReadonlyMap<string, readonly string[]> = basesOf(families);

function basesOf(text: string): ReadonlyMap<string, readonly string[]> {
  const bases = new Map<string, string[]>();
  for (const family of text.split(';')) {
    const [base = '', ...forms] = family.trim().split(/\s+/u);
    for (const form of forms) bases.set(form, [...(bases.get(form) ?? []), base]);
  }
  return bases;
}
