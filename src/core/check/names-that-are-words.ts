/**
 * Given names that are words as well, in English and in Spanish, in small letters and without accents. A capital tells the
 * two apart, and only where no sentence begins. Put together by hand.
 */
export const namesThatAreWords: ReadonlySet<string> = new Set(
  `amber angel april art ash aspen august autumn bay bear berry bill birch blue bob brook bud candy chance charity chase cherry
christian chuck clay cliff colt coral crystal daisy dale dash dawn dean dear destiny dolly drew duke earl earnest ebony eden faith fern
finch flora forest fox frank gay gene ginger glen glory grace grant gray guy harmony harp hazel heather heath heaven holly honey honor hope
hunter iris ivory ivy jack jade jasmine jay jet jewel josh joy june junior justice king lane lark laurel lily linden love mark maple march
marina mason may melody mercy miles minty misty nick noble nova oak ocean olive opal page pansy pat patience pearl penny peg pepper pierce
poppy precious prince queen rain raven ray red reed rich river rob robin rocky rod rose ruby rusty sage sandy scout sky skip skipper sonny
spring star stella sterling stone storm sue summer sunny tiger tony trinity trip trudy ty van victory violet wade ward warren west will willow
winter wolf woody wren carol dot eve jean kit long man max pip sally son van yes
abril agosto alba alma amada amparo angel ascension aurora azucena bella blanca bruno caridad celeste cielo clara clemente concepcion
consuelo cruz custodio dalia delfin dolores domingo estrella esperanza felicidad felix flor fortunata gloria gracia hortensia inocencia
inocente jacinto jazmin julio justo leon leona libertad lirio lluvia luna luz mar margarita marino mercedes milagros modesto nieves norma
olivo olvido ortiz paloma paz perla piedad pilar pio plata primavera prudencia pura remedios rio rocio rosa sagrario salud salvador serena
severo socorro sol soledad tomas valiente ventura vera victoria violeta virtudes leo lea sean mira mara marco linda reina noel leal canto lazaro pascual ven sea`.split(/\s+/u),
);
