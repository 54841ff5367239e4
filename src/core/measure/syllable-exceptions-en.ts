/*
 * Made by test/outside/make-exceptions.ts; change that file, not this one.
 *
 * Syllable counts below are drawn from the CMU Pronouncing Dictionary, by way of cmu-pronouncing-dictionary 3.0.0
 * (ISC License, Copyright (c) 2015 Zeke Sikelianos). The dictionary's own notice:
 *
 * Copyright (C) 1993-2015 Carnegie Mellon University. All rights reserved.
 *
 * Redistribution and use in source and binary forms, with or without modification, are permitted provided that the
 * following conditions are met:
 * 1. Redistributions of source code must retain the above copyright notice, this list of conditions and the following
 *    disclaimer. The contents of this file are deemed to be source code.
 * 2. Redistributions in binary form must reproduce the above copyright notice, this list of conditions and the
 *    following disclaimer in the documentation and/or other materials provided with the distribution.
 *
 * This work was supported in part by funding from the Defense Advanced Research Projects Agency, the Office of Naval
 * Research and the National Science Foundation of the United States of America, and by member companies of the
 * Carnegie Mellon Sphinx Speech Consortium. We acknowledge the contributions of many volunteers to the expansion and
 * improvement of this dictionary.
 *
 * THIS SOFTWARE IS PROVIDED BY CARNEGIE MELLON UNIVERSITY ``AS IS'' AND ANY EXPRESSED OR IMPLIED WARRANTIES,
 * INCLUDING, BUT NOT LIMITED TO, THE IMPLIED WARRANTIES OF MERCHANTABILITY AND FITNESS FOR A PARTICULAR PURPOSE ARE
 * DISCLAIMED. IN NO EVENT SHALL CARNEGIE MELLON UNIVERSITY NOR ITS EMPLOYEES BE LIABLE FOR ANY DIRECT, INDIRECT,
 * INCIDENTAL, SPECIAL, EXEMPLARY, OR CONSEQUENTIAL DAMAGES (INCLUDING, BUT NOT LIMITED TO, PROCUREMENT OF SUBSTITUTE
 * GOODS OR SERVICES; LOSS OF USE, DATA, OR PROFITS; OR BUSINESS INTERRUPTION) HOWEVER CAUSED AND ON ANY THEORY OF
 * LIABILITY, WHETHER IN CONTRACT, STRICT LIABILITY, OR TORT (INCLUDING NEGLIGENCE OR OTHERWISE) ARISING IN ANY WAY OUT
 * OF THE USE OF THIS SOFTWARE, EVEN IF ADVISED OF THE POSSIBILITY OF SUCH DAMAGE.
 */

/** Words that the rules would miscount, by the syllables they have. */
const wordsBySyllables: Readonly<Record<string, string>> = {
  1: `
aced ached aches aer aithne armes asche ashe aue axe baas backe baer bagge bahe bahre bakke balfe balke baltes ban
banke banque barbe barge barke barres barthes based bathke batte beaird beer begue behlke behne behnke beijer beilke
belke belshe benke bente berge berke berle berres berte bertsche bethke bielke bier bing birge birkes birle bjerke
bjorge blanche blanke blaschke blauer blonde blouin blowe blye boehlke boehme boehne boehnke boer bohlke bohne boies
bolte bonde bonet bonte bordes borge borre bourke bourque boutte bowe bowels bowles bowne bowse braer brakke branche
brande braque brekke bring bronze browe browne browse bruen brunke brye buchs budde buerge bugge bulge bunche bunde
bunke bunte burdge burge burges burke burres busche butte buzze byard bye byrge carles carre carte ceased charge charle
cheer cheque chiang childe chiles ching chiu chseing chuang cian ciao cinque cirque clarke cliffe cling clique cloned
clos clowes coale cocke coeur coiffe combe conde conte coombe cordes corpse corte cosme coxe crabbe creath creer creque
crewe cringed crowe crowle crowne crye cuffe czechs dahlke dahnke dalke dalpe danske daoud daoust darke dazs dea deed
deer dehne delre dengue deppe deutsche dial dicke dienst dierkes dietsche digges ding dirge dirkes dirkse dise disque
doepke doer dohme dohse domke donde donze douwe dowe dower downe dowse dr drawer dreher drewes dring drouin drye duan
duane duhe dulce duque duwe dye earle eckes egge ehle ehlke ehrke elbe elkes elmes else emde emge ende enke eppes erbe
erte esche esme espe ewe falke false farge fawkes felde felske feltes fenske ferre feyen ficke fier figge fildes fincke
finke fleer fling flowe fluegge flye foie folkes folse fonte forbes forde forge forgue foulke fowkes fowlkes francke
franke franze fratzke freda freije fricke friis fritsche fritze fritzsche frogge fronde frunze frye fuchs fuer fugue
funke fye fyffe gaffe ganske garbe garde garske gartzke gatzke gaulke gawne gean geer geerdes gehres gehrke genske
geoff george gerdes germe geschke gier gierke gilkes ging gjerde glimpse gnarle gocke goecke goedde goerke goette
goetze gohlke golde gorge gouin grabbe grahams grande graue graunke greer greinke greiwe greunke grewe grinde gring
growe gruen gruhlke grulke guerre haacke hacke hagge hahne hampe hanke happe haque harke harmes harpe harre harte
haschke hawke hegge heinke heintze heinze helke helme helmke henke henze heppe herre hewe heyen hiers hilde hilmes
hinde hing hintze hinze hippe hjerpe hodde hoehne hogge holde holme holste holte hopke hoppe horde hotze hovde howe
howse howze hsiao huan huang huard hucke huette hulce hulme hulse hunke hunte huwe hye ihde ihrke ilse jacque jahnke
janke jaques jeer jeffe jeong jerde jeschke jewel jewkes jiang jing joffe joie jorde juan juhnke kahle kahre kalthoff
kampe kappes kartes keeffe kehne kehres kempe kempke kibbe kidde kiehne kier king kippes kleer klenke kleppe kling
klinke klocke knapke kneer knigge knobbe knowles kobes koehne koepke koeppe kohne kohnke kolbe kopke koppe korte krabbe
kracke krampe krauer kreher krenke krienke kriete kring krinke kroenke krowe kruschke kuan kuehne kuhne kuhnke kunde
kuntze kunze kyes labbe lambe lampe lande lappe lapse large larke lawshe legge lehne lehrke lembke lempke leong lerche
lian liang lichte lieu liffe linde ling linke lipke lippe liu locke loesche loews lohnes lohse lorge lotte lotze louque
lourdes lowe lubke lucke luebbe luebke luecke lunde luque lutze lye lynde lysne macke maher mahnke manke manske manthe
marche marge marje marke marque marschke marte marthe maschke matte meagher meckes meetze meinke mende menke mente
menze merge merle meschke metze mewes micke milke milne ming minke mischke mitschke mixte moerbe moerke mohnke monde
monje moppes morgue morze motte moue muecke muegge muench myhre nacke nantes neer neyens niall nibbe nikes ning nitsche
nitschke nitzsche nobbe noffke nolde nolte nonce norge norte notte nurre nye nyers nyet ochs oehlke oehme oelke oie
olde oooh orme otte oui owe palme papke paque parde parke parte paschke passed pearle peer perle peschke petsche pier
piette pigue ping pique pischke placke plagge plagued plante plaque platte plouffe plourde pointe polce ponte poppe
porte powe pratte prayer preach preas prebe pree preece preis preiss presse prete preuss prey priest prigge pring probe
proehl prone proof propes prose proske proud prough proulx prouse proust prout prove prowse psyched puente purge pye
qing qua quarles quarre queen queer quench quiett quilmes quirke quoin radde ranke rappe rasche raschke ratte rawles
reese reher reim reinke rempe rende reschke reusch reuss reust rials ricke riecke rietz riffe ring rinke rioux ripke
rippe roarke robbe rocke rocque roebke roelke roepke roffe rogge rohde rohe rolfe roque rorke rourke rowe rowles rowse
ruhe ruhnke runde runte ruppe rusche ruwe rye sachs sachse salce sande sarge sarles saxe scharfe scheer schewe schielke
schilke schimke schinke scholtes scholze schoppe schreyer schuelke schuette schuetze schulte schultze schulze schutte
schwalbe schwanke schwantes schwarze schwebke schweer schwenke schweppe schwing scourge searle seer segue selbe selke
senske seoul serge serpe sharpe sheer shing shiu shoppe siers sing sioux sires sirles sitze skewes skibbe skier skye
sling slye sneer snowe soltes sorge sowle sparkes speer sperle spilde splurge sprehe spring spruiell spurge squeak
squeal squeeze staehle stahnke stanke starke steed steer steffe steinke steppe sting stobbe stocke stoeltze stokke
stolpe stolte stolze stormes stowe stracke strande strehle striar string strubbe stubbe stucke stuewe stumpe suave suen
suhre sunde suppes surge svelte swanke sweers swing taaffe tacke taffe tagge tanke tappe tarte tatge tebbe techs ted
teed teer tegge tewes tharpe thielke thing thorpe thwing tian tier tietje tietze tigges tigue timpe ting tofte tongue
torme torque torre torte towe towel towle towne traer traipse trampe tranche trappe trial trieu trimpe trippe tufte
tunde tye uhde urge uwe vande vaughan veer velte venzke verge viers viets vigue vinje virge vliet vocke volpe vowel
vyas wachs wahle walde walke wanke warde watne wehde wehe weihe welge welke welte wempe wende wenke wente werke werle
werre wesche whoa wicke wiehe wienke wier wii wilde wilke wilmes wiltse windes wing witte wobbe wolfe wolke wolske
woulfe wring wrye wuensch wyden wye wylde xanthe xian xiao xing xio xiong xuan yaffe yahnke yanke yarde yer yerke ying
yongue yonke yorke yuen zarre zemke zerbe zielke ziemke zier zierke zing zinke zirbes zuehlke zuelke zuhlke`,
  2: `
aalsmeer abbeville abed absinthe ac acecomm acer aching achmed adames afmed agne agner agua ague ahmed aidan aiesha
airedale aires aldeburgh aldred alehouse aleman alewife alewine alewives alexs alfred algiers alleman allred alred
alves aman ambler amr angling antenne antique anxious aon ap apelike aping aqua aquirre aravind arbed arquette arsehole
arshia ascii ashes asheville asia aspirin assuage astred attached attired auen auerback aug auger aungier av ave aven
aver average awestruck awfully ayesha aylesworth ayotte azmeer ba babbler babbling bachelor backaches backyard baez
baffling baguette baiul bakeman bakeware bakewell balazs ballowe banya barefoot barkeley barlowe barnyard baroque
barrientes barthelme bartl bartling baseball baseboard baseline baseman bases basing basle bassler basye bateman
battling bayesian bazemore bc beadling bealeton beaton beauchesne beaulieu bebe beber bedient beebe begeman behling
beiersdorf belgian belgique belier bellevue bene benecke bening beougher bequeath bequette beresford bergeman bergemann
bergling berkeley berlottes bertilde bessler bette betten better betting beuys beyerle beyerlein beyersdorf bhosle
billiard billion billionth birkeland bitesize bivouac bizarre blakeley blakeman blakemore blakeney blakeslee blakesley
blamestrorm bloodshed bludgeon bluest bluey bluish boatyard boaz bobbling bohling boise boisen boleware bolyard
bonebrake bonenfant bonesteel bonier boredom borgia borneman bornemann bosarge boseman bottler bottling boullion
boundary bourgeois bournewood boutique bovespa bowyer boyleston bozeman bp bracelet bracewell brakebill brakefield
brakeman brakemen branches brandl braveheart braziers brca brcko breastfed breezeway breneman brennecke brenneman
bressler briarcliff brickyard bridegroom bridesburg bridesmaid bridgeford bridgeforth bridgehead bridgeman bridgestone
bridgeton bridgetown brien brietzke brightening brigitte brilliance brilliant briquemont brittler broccoli brocious
brookehill brouillard brouillet brouillette brueggeman brueggemann bruggeman bruin brunnhilde bruynes bryon bs bt
bubbling buckling buell buena buenger buening bueno buffeted buick buil buist bullion bunches bunyan bunyard bunzl buoy
buoying burbling burgeon burgling burrowes buseman bustier bustling buttler byerlein byus cabinet cacique cacld cadotte
caguas cahouet caillebotte caillouet camera canales caouette capehart capetown carefree caremark careplus carleton
carriage casebolt caseload casework cashier cashion catharine catherines catholic causeway cautious caveman cawsl cb cc
cd cds ce ceases ceasing ceded ceding celia centerre ceres chaim chaos chargeback charleston charlestown charlotte
cheesecake cheeseman chemed chengxiang chenier chenxiang chiara childener chmiel chocolat chocolate chokehold choquette
chouinard christophe chromecast chrzan chuckling chui churchyard ciampa ciampi cianci ciani ciardi ciarlo ciocca ciotti
circling cited citing ciucci ciulla ciullo claremont cleah cleaveland cleveland clevetrust cliche clinique cloer cloey
cloning closedown clotheshorse clothestime clothier clothilde clouatre cluett clydesdale cmos cmx cnet coady coalson
coate coated coating coaxum cobbler cocoa codebase coderre coed coen coerce coey cogema coia colebank colebreath
colebrook colegrove coleman coleridge coleslaw colestock collapse collier colonel comeback comedown comfed concorde
conehead conference conkling conquer conscious converge conyer copeland copeman cordial corestate coretech coriell
corteland cortes cottoned couillard coupling courchesne courtemanche courtyard covering crackling cranesbill cranial
crenwelge cressler crimean cringing crippling critique croat croce crocheted cronauer crooked crovl crownx crozier
cruey crumbling cspan cuddeback cuddling cuenca cunliffe cureton curnutte cushion cutesy cv cycling cygne dabbling
dadeland dahlia dalia damewood dangling dania daniell daresay darkening darnedest dashiell dassler dateline dawdling
dazzling dbase dc deathbed debora deborde debuted declerque dederichs deforge deion delatte delia delmed deloitte
delphian delreal deluxe demarche demesne demyan derouen derouin descartes deshaies deslatte desperate dessauer detente
dettling deutschemark devilish dewilde dewitte dewolfe dhaharan diahann dialed diamond diane dianne diaper diener
dieter dietl diez difference different dikeman dillion dinehart discharge disgorge dissuade diverge divulge dj dk
dniester dockiers dockyard doers domangue domingue doppler dornier dorothy dossier doubling dougl dour dovecote
dovetail drakeford dressler dribbling driveway drizzling drouillard druid duarte dubreuil dubuque ducharme duckling
dudgeon duel dueling duenez duenow duensing duet duey dufresne duis dukedom dukeman dulles dumpling duncombe dungeon
duo duong duquesne duquette duryee dwindling dyestuff dykeman earthling eavesdrop ebbed eckl eckler eclipse edgecomb
edgecombe edgemon edgeway edgewise edgewood edgeworth edling eduard edye effler eiermann eiseman eisemann ekkehard
elapse eldred ellerbe ellesmere ellios ellipse elsewhere embed embler emerald emerge emling engelke engeman enholme
enlarge enochs enyart enyeart eos epling epochs eppler eranthe ertl esquer este ester etling eu euchred eveland evening
eyeball eyebrow eyecare eyedrop eyeglass eyelab eyelash eyelet eyelid eyelike eyepiece eyeshade eyesight eyesore
eyespot eyestone eyestrain eyetech eyewear faberge facebook facedown facelift fagundes fahnestock faist falsehood
family fanueil farewell farmyard farquhar fashion fassler fastening fatigue favorite fehling fellowes fencl fessler
fickling fiddling filegate filename filenet fillion finarte fineberg finefrock finegold fineman finestone finevest
firebaugh firebombed firebombs firefight fireman firemen fireplace fireplaces firestone firestorm firewall firewood
firework firstfed firstier fischl fivecoat fivefold flaharty flaherty flatbed flattening flavier fledgling flickr
flores floresheim flours fluid fluitt fluor fm foia foiles foliage folliard foncier fontes forest forex forquer fosia
foundling foxmeyer fractious framework francaises francoeur frankl frashier frasier frazier freddye frederic frederick
freehling freest freia fremiet frequent frerichs friedl friedly friedrichs frightening frontier fruehling fruin fruity
fuchsias fueled fuelled fuels fuente fuentez fumbling fuqua gabehart gagne gagner gaia galesburg gallia gallion gambler
gameboy gamecock gameplay gameshow gamesman gamunde gangl garbling gardener gardening gardiner gared garges garoutte
gateway gatewood gatling gatx gauerke gaultier geers gehling geissler gendarme general genial genius geoffrey georgann
georgene georgetown georgette georgia georgie georgine georgiou georgy gerdeman gergely gericke gerleman giacco giaimo
giambra giampa gianni giesecke giggling gilberte gilyard gimme ginyard gioia giorgi giorgia giraffe gironde gittler
giuffre giunta giusti giusto giveback glacier glazebrook glenfed glidewell glistening glocester gloucester glyndebourne
gm gmail goates gobbling goedecke goguen goleman gomes gonya gonyea gonyer goodbye goodling goodyear googling goosefish
goosefoot goracke gottesman gougeon graceland gracious grambling gramling grapefruit grapeshot grapevine grappling
graveline gravesite gravestone graveyard greasewood grobler groene grolier grosvenor groundling groveman gruel
gruenberg gruenwald gruet gruis grumbling grunebaum grzyb gschwind gsell gtech gudgeon guenette guenna guenter guenther
guenthner guidebook guideline guidepost guillotte guinier guinyard guion guisewite gullion gulyas gurgling guseman
guzzler hackl hades haeussler hafeman hageman hagemann hagewood haist haldeman halebopp hallbauer halteman hamling
handling hanemann hanneman hannemann hapeman happening harangue hardebeck hardeman hardening hardwicke harebrained
harewood hartl hartling haseman hassler hatheway hatred haueter havelock haveman havier hawkiness haydn haynesworth
hbox headaches heckling hedgecock hedgehog hedgepath heffler hegeman hehmeyer heideman heidemann heigl heikes heileman
heindl heinecke heineman heinemann heinicke heinl heinrichs hellier henceforth henneman henrichs henrique hentges
heppler hereby herendeen herewith hernandes hessler hettler hibbler hibler hickling hidebound hideout hileman hilemon
hilgeman hillian hilliard hillyard hilyard himmler hinchcliffe hinchliffe hineman hinrichs hippler hisle history
hitzeman hjort hodgepodge hoene hoener hoeveler hoey holcombe holdeman holeman holleman homebound homeboys homecare
homeclub homefront homegrown homeland homelike homemade homepage homerun homesick homesley homespun homestake homestate
homestead homestretch hometown homeward homewood homework homeworld hoobler hoosier hopewell horehound hornblende
hornyak horseback horseflesh horsehead horseman horsemen horseplay horseshit horseshoe horsetail hotbed hottelet
houseboat houseguest household houseknecht houseman houseware housewife housewives housework houseworth housewright
houy hp hr hrncir hsieh huadong huaneng huddling huenink huey huggler hui huibregtse huish huml hundred huot hurdling
hurtling huseman hyun ia ibmer ibn iceberg icebox icefish iceland iceman iceskate idling ids iiams iida iie ilya imbed
impulse inbred incheon indeed indulge ines inkling innes interest intrigue io ip iq irelands ironton isaly iseman ivory
jacinthe jacquie jaenicke jaime jakeway jameson jamestown jamesway janeway janicke janii jaqua jared jayme jeanerette
jefferies jere jessye jewelry jiangsu jiawen jiggling jillion joann joanne jocelin joceline jocelyn jocelyne jocylan
joedicke joel joelle joey jokebook jokester jolliffe jonestown jose joser joycelyn jr jua judishe juedes juenemann
juenger juggling julia julius junior junkyard juul kappler karges karlsruhe kaseman kaske kassler kastl kastler
katharine katya kauai kcal kcop kearsarge keay keebler keio keleman kelemen kennebeck kennemore kenya kenyen keppler
kessler khaled kibler kiechl kielley kiessling kiev kikatte killian killion kimbler kindling kindred kipling kiryas
kiryat kissler kissling klabunde kleindienst kliethermes kluender kmart kmetz kmiec knifelike knifepoint knipl kniveton
kobe kober kooy kosanke kottler kowalke kraeutler krajina kressler kristoffe krone kronen kroner kruckeberg kuala kubes
kuennen kuenzel kuenzli kuo kuow kuzniar kvamme labarge laberge labonte laborde labouisse labrecque lacefield lacewell
lacquer ladling lafarge laffitte lafitte laforge laforte lagniappe lahaie laimbeer lajoie lakeberg lakefield lakefront
lakeland lakeman lakeshore lakeview lakewood lamonte lamotte lampl lancelet landrieu lanehart lanier lanphier lansdowne
lanyard laos lapointe laporte largeness larocque laroque larowe lavergne lavoie lawyer leaguer leah leann leant
leaseback leasehold leaseway lebed lebegue leboeuf lebouef lebowe lebudde lecompte lecomte ledyard leeuwen leffler
legged legrande leia leibler leicester leist leister lelia lemieux lemme lemmen lemmer lemming lendl lengyel leoda
leola leonard leonelle leonhardt leonhart leonie leopard leora leota lesesne letarte leveque levitte lezotte liao liau
liebler lieske lieurance lifeblood lifeboat lifeco lifeguard lifelike lifeline lifelong lifespan lifestyle lifetime
likewise limehouse limelight limestone lindeman lineback lineman linemen lingua linkedin linneman linnemann linowes
linseed liqueur lire lisle listener listening liveried livestock lizotte lockyer lodestar lodestone lodgepole loeffler
loess loesser loew lois loise lonetree loosestrife lopeman lougheed louisette loveday lovegrove lovejoy lovelace
lovelan loveland loveridge lovewell lowekamp lp ls ludeman ludemann lueck luedecke lueras lui luis lukehart lukewarm
luncheon luong luquette luscious luu lyon macaques maciag macleod macmahon macqueen madl maeve maez magouirk magyar
maia maio maish makefield makegood makepeace makeshift malinde mandl mandler manfred manrique manteer marches marcotte
marlowe marotte marquee marquette marriage marya masefield mathes mathieu mathilde matyas mawr mayotte mbank mccahan
mccaughan mccluer mccuen mcgeorge mcgeough mchargue mcleod mcneer mcqueen mcteer mctigue md measles mechling medved
megace mehling meidl meierfeld meindl mendes menia merengue mesched messieurs messler messrs metcalfe metier mettler mg
mh mhm michener michl michler microbe midyear midyett midyette miert mieske mildred milestone milieu million millionth
mincemeat minecraft minefield minehart mineral mingling miniard minteer minyard mischarge misdeed misled missler miter
mittler moab moates moet molehill molelike molesworth monarchs mongeon monique monsieur montier moorehead moorehouse
moorestown moosehead mopeds morehead morehouse moreland moreman mores moseley moseman mosier mosle motl moua mousehole
mousepad mousetrap mpeg mssrs mtel muddling muehlebach muenchen muenchow muenster muffler muffling mui mulqueen
mulvehill mumbling mungia munyan murrelet myanmar myerson mystique nadia naim naish naked nameplate namesake nasr
national natural navarre ndau nedved needling neidl nepl nessler nestling newcombe newtowne ngo ngor niaid nibbling
niihau nike nilges ninefold nineteen nineteenth ninety ninneman niquette noah nobler noel noelle norsemen nosebleed
nosedive notebook notepad noteware noxious numed numia oblique oddler oest oeuvre offering ohlmeyer oj ok okeeffe olean
olinde omelet onecomm oneself onetime oneyear opaque opera oppler opposite ormonde orourke osred ouaga ouimet ouimette
paceway paddling paez pai paiute pandya paone papier paquette pasqua passe passer passes passing pc pcs peacenik
peacetime peddler peddling peebler pele pepe peper peppler peres pergande persia persuade petr petteway pettitte
peugeot pevehouse pfiester ph phaseout phebe phetteplace phillippe philyaw phonemate phuong physique pickling picone
picotte picou picoult picower piddling pidgeon piecemeal piecework piedboeuf pierette pieter pigeon pillion pilotte
pindling pinterest pinyan pipefish pipeline pipetec piquette pirkl pitchblende placemat placeway plaguing plaia
planeload platelet platelike platinum pleiad plenmeer pm poage poel poem poeschl poet poitier pokeweed polecat poleward
politte polyak pomrenze ponce pontes pontious popejoy poquette porges posse posses pottebaum powercise powertrain pr
prattling prayerful prchal preachy preakness prechtl precious preisig premier pressler preussag prevatte pridemore
pridgeon prieta prieto primebank primeco primenews primestar primetime princeton prindl prisoner pritzl privilege prizm
proia proofread proskauer proudfit proudfoot prouty prudente pruitt prunedale prussia pryor psyche ptyon puentes
puryear puzzler puzzling pyongyang pyre qasr qiao qiryat qmax quaeda quaffed quarreling quealy queasy queena queenfish
queenie queensland queensway quenby quennel quentin quenzer queuing quiles quillian rabes racehorse raceman racetrack
raceway rackliffe radcliffe raffety ragged rai raia rainier rakestraw rambler rambling rankling ratcliffe rateliff
ratier ratliffe rattling rauen rauls reali rearm recharge redactes reesjones reesman reesor reference rehling reichl
reichler reiman reimann reindeer reindl reischauer reish reist relapse relyea rene renfred repr repulse requa reseed
resendes ressler restaurant reum reverend reyes rhea rhinehardt rhinehart rhineland rhineman rhinesmith rhinestone
rhodanthe riddler rideout ridgecrest ridgefield ridgeway ridgewood ridling riedl rietman rietveld rifling rigueur rijn
rinehardt rinehart ringling ringuette riordan ripening rippling risque rissler robarge roberge rodarte roderick rodeway
rodrigue roebling roedl roehling rogier rohling romesburg romines roquemore roseboom rosebrock rosebrook rosebrough
rosebud rosebush rosecrans rosekrans roseland roselawn roseline roseman rosemead rosemond rosemont rosenau rosevear
rosewicz rosewood roshier rothmeier rottler rouillard roukema rouyn rudyard ruelle rugged ruin ruis ruiz rulebook
rumbling runyan ruoff russia russler rustling ryerson ryon sacred saddling sadye saeed safecard safeco safeguard
safehouse safety safeway safier sagebrush saia saif salesforce salesman salesmen salles salyard salzhauer sampling
sandling santerre saone sapling sattler satya saucepan saute sauteed savier savior savoie savr sawyer sayed sayyid
scallion scapegoat scarecrow schaeffler schaffler scheunemann schmidl schoene schoener schoneman schoolyard schreder
schroedl schuessler schuneman schussler schuttler schwalier schweder schwendeman sciacca sciandra scianna sciara
science scientists scimed scohier scolia scoreboard scorecard scoured scours scrambling scribbler scribbling scrimgeour
scrivener scsi scullion seabed seance seaweed sedgewick seedling seelye seidl seidler seles sellier semien semite
semmler senior separate sequa sequence sequent serfling sergio sese sessler settlers settling seve seven sever several
sevier sgt shakedown shakeout shakespeare shandling sharecrop shareware sharpening sheffler shelia sheneman shenyang
shevtl shiffler shiina shipyard shissler shorebird shoreham shoreward shortening shoveling shreffler shrikelike shryock
shuey shuffling shui shuttling siad siam sian sibling sichuan sicotte sidek sidell sider siegecraft siese sigl sikhism
singling sinuous sinyard siobhan sire siren sisemore sittler sizeler sizelove sizemore sizzler sizzling skateboard
skiers smokescreen smokestack smuggler smuggling snakebite snakelike snarled sniffler sniffling soares sofaer softening
soldier soledad solesbee somesh sonia sonya sooy sophomore sourcebook soured sours sovereign spaceball spaceband
spacecraft spacehab spacelink spacenet spacesuit spacewalk spacious spadework spaniard spanier spaniol sparkling
specious spektr spiceland spittler spokesman spokesmen spongebob spongeform spoonemore sporophyte spradling spratling
sprinkling spurgeon squeaky squeamish squeegee sr srdan srpska ss staebler stagecoach stagecraft stagehand stai
stakeout stalemate stallion stangl starpointe startling statecraft statehood statehouse statesman statesmen stateswest
statewide stechschulte steffler stefl stegeman stegemann stegemeier stehling steidl stemmler stettler stiffler stifling
stillion stineman stirewalt stiteler stjohn stockyard stoia stoic stomachs stoneback stoneberg stoneham stonehenge
stonehill stonehouse stoneking stoneman stoneridge stonerock stonestreet stonewall stoneware storefront storehouse
storeroom straddling stradling straggler straightening strangelove strangling strickling strieter strikeout stripling
strnad struggling studeman stumbling sturgeon sturges stutesman suarez suasion suazo submerge suckling suey suez
suffering suhua sui sulya sumptuous sundial suon surcharge surgeon sutcliffe suttmeier svp swindlers swindling
swinehart swoveland synapse tackling takecare takeoff takeout tangeman tangiers tangling tania tanya taoiseach tarleton
tattler tb teate teater technique tele temperate termeer tessler testes tevye th thalia thea theberge thenceforth
theorem theory thereby therefore thereof thereon thereto thickening thielemann thivierge thoene threatening tia
tiedeman tiedemann tietmeyer tightening timeframe timeline timeout timepiece timeplex timeshare timewise timezone
tingling tinkling tocqueville toddler toddling toews toffler toggling toniest tonnesen tonya tonyes toppling torres
towles trademark tradeoff tradesmen trampling tranches traveler traveling travelling trembling treml trendier trendiest
tressler tribesman tribesmen trickling trifling trillion trimedyne triomphe tripling triptychs trnka troia troubling
truell truest truex truncheon tryon tryout ts tsui tumbler tumbling tumblr tunkelang tuolumne turbeville turcotte
turgeon turquoise tv tvs tvsat twiddling twinkling tyo typecast typeface typeset tyres uart uehling ueno ui uk ul
ulfred ultrair unctuous unique unwed upsurge urquhart usenet uv uy vaguer valia valiant vanhecke vanleer vanvliet
vanwyhe vanya vardeman vares vasques venneman verbrugge vermeer veteran viau viceroy vicious victory vieau vieth
vigeland villiers vineland vineyard vingmed vinyard viper visuals visx vivyan vlcek vogl vogler voicemail voicework
vorhauer voxforge vp vrba vsel vuong waage waffling wageman waidelich wakefield wakeham wakeland wakeley wakeman waleed
waleson walfred wandling waren warnecke wasteland waveform wavelength wavetek weakling wedgestone wedgewood wedgeworth
wehling weiand weide weideman weidemann weider weigl weinger weist wellesley wendling wentling wenzl wenzler weppler
werdesheim werewolf werewolves werne wernecke werner wernicke werning weseman wesemann wessler westdeutsche westfed
westling weyenberg whereby wherefore whistling whitebread whitefield whitefish whiteford whitehair whitehall whitehead
whitehill whitehorn whitehorse whitehouse whitehurst whitelaw whiteley whitelock whiteman whitemont whitenack whiteneir
whitener whitenight whitening whitesel whitesell whitestone whitetail whitewash whitling whittemore whittling wholesale
whorehouse wicked wickliffe wideman widespread wiedeman wiedemann wienecke wiesemann wieting wiggling wildeman
wildflowers wileman wilfred william williard willowes willyard wineberg wineheim wineland wineman winfred wipeout
wireline wireman wiretaps wisecrack wisecup wiseguy wisehart wiseman wissler witteman wittler wm wobbling wodehouse
woodling woodshed woodyard worcester wrestlers wrestling wretched wrinkling writedown writeoff wuest wurdeman wussler
wynyard xantippe xavier xbox xers xiaogang xiaoping xiaoyun xscribe xtra yahya yeates yene yentl yeoman yeosock yerkes
ynjiun yolande yorio yuletide zaire zayed zeringue zettler zhejiang ziahe zillion zoete zoey zwerdling`,
  3: `
aaa aba abasia abc abd abiquiu abkhazia abs acampsia acc acceded acceding aceves ach achebe achille acm acquires
actually adenauer adine adlai adrda adrea adrienne aeneas aeneid aeolus aerien afl afsane aguiar aichi aida aiello aisa
aiton akao alagoas albea albeit albemarle aldape alguire alienate alire allegiance allele almaguer aloia altaic althea
alvares alwaleed ama amalia amalya ambien ambience ambient ambitious ambrosia amc amd ameche amelia ammonia amnesia
amoolya amrhein andean andrea andren anemone angeles angelique anglen angove anime anion aniseed annese annuit anreder
anstine antares anteater anthea anthiel antietam antigua antone antunes anyon aoki aol aorta aortic apc aphasia api
apnea apo appleseed aprea aqueous arabe arai arcement archaic archetypal archibeque ardine area arguelles ariel armine
arnone arrieta artale asea asheboro asiel askren aspires assembler assiduous asuncion ati atm atp atrocious attache
attaching atteberry attebury attire atv atx auctioneer audacious audrie aurea aureus auspicious australia austrasia
avalanche aviles avions aydelotte aylesbury ayodhya baa babyish backfired backfires badeah baidoan baillargeon balaguer
baliles bandolier baoguang baptistery barlettesville barriere bartone basically basore batiste battiste baumler
bayerische bbc bbq beachler beata beato beatrice beautifullest beautifully beforehand begnoche begonia behavior
behaviour behringwerke beidler beitler beleaguer belisle bellone belongia belote bendure benyamin berdine berea
berghuis bermea berrien bertone besler bessire bethea beucler beumer beutler bevacqua bevaqua beverages beyonce bichler
biedermeier biegler bieniek biennale bigler billionaire biomed biotechs birchler bitler blasia blessedness blvd bodine
boening boheme bombardier bonaparte bonecrusher bonecutter bongiorno bonine bonneville boolean boroian bosler bottone
bouillabaise boundaries bourgeoisie boyea braaten brandeberry brasilia brazilian brenneke bridgewater brierley
brigadier brigode briones brittian broerman brouhard bruella bruington bruinsma bruxelles bruzzese bta buchler buckler
budai buechler buendia buenrostro buentello buffone bukkake bulthuis bundren burriss busier busily businessland
businesslike businessman businessmen businessphone busler bussiere butare byington byu cabinetry cabrales cacao
cacciola caceres cacioppo caesarean caiazzo caiola calame calcote camire canace canale canape cancienne candler
canilles canipe cannone cansler cantone cantv capacious caprese capricious cardoen cardone carefulness caregiver
caregiving carelessly carelessness caretaker carine carinii carlone carlyon carmean carnine carrere carriere casale
casares casciato cascone caseloads caseze casias casler cassese cassia cassone castine castorena casually catalogued
catania cathmor cation cautiousness cavalier caveat cazares cbc cbs ccd ccs cdc cdrom cea ceaselessly cecelia cecere
cecilia cedrone ceo cercone cerone cerrone certainteed cervone cesare cespedes cfo cgi chaidez chairez chairpeople
chandelier changeover chaotic chappuis charcuterie charlottesville charlottetown charlotteville charpentier chataqua
chautauqua cheerfully cheeseburger chelyabinsk chemania chemically chesler chevalier chihuahua chikane chilean chisler
chmura choiniere chopsuey christiane christianne chronicling cia ciaccio cialis ciancio cianciola cianciolo cianciulli
ciaobella ciccone cicely cifuentes cio ciolino circumference cisler cit cityfed civilian clarion classically clo cmu
cnn cochlea cochlear codebreaker coelho coello coenen coenzyme coequal coercive coexist cohea coincide cojuangco
coldren colestipol coleus coline collegian collegiate coloreds colorfully comandeer comfortable commandeer commerical
comrie conceded conceding condren condry conduit coneflower confidante congenial consciousness consequence consequent
consortiums conspire conspiring contagious contentious coogler copiously coplen corbusier cordry corea cornea cornelia
cornelius corporatewatch corrales correa cortese corzine cothren cotler cotrone cottone cottonseed countercharge
courteous couvillion coverings cozine cps cpu craftspeople crary creager crimea crisler crm crnkovich croatia
crookedness cruea cruikshank crumpler cryolite cryonics crysler csi csv cuello curare curmudgeon cutaia cutesiness
cutrone cuvelier cxc cyclades cyclist cytotechs dacia daiichi dalgleish dalian daloia damien dandrea danese dangler
daniella dannemeyer daredevil darien daseke datapower davide ddt dealba deana deanda deandrade deandrea deanna debruin
debutante decorative decoste decoster decoupling defarges defrates degeorge degrace degrasse degrave deguire dehere
deify deisher deism deity delbene delcine delebarre deletion delfine delgadio delgiorno delicious deline delinquent
deliveries delores delphine deltaic deluise delvalle demille denarii dengler denouement depace depardieu dercole desai
deschler desertion detienne detore dettore devere devillier devours dialing diapers dichroic dicomed didion diego
dierking dieters digioia diianni dildine dilletante dimare dingler dioceses discotheque discovery disgorgement
dissembling dlouhy dlugos dlugosz dmitri dmz dna dnase dnc dns doable doerfler doering dolores domine domineer
domingues dominique doonesbury dorea dorine dorion dorthea dosia doubtfire drastically drechsler druella dsouza dss dsv
dubilier duelist duesler dui dulcea dulciana dullea dumire dunmire dupler duramed duvalier dvd dvds dysplasia dyspnea
eagleye eap easudes eblen echemende ecuador edrea eduardo egregious eichler eifler eightieth eiichi ekk elaborate
electrique element eletr ellithorpe eloquence eloquent elsea elsevier embryo ems emslie emuil enea englbred engler
enlargement ennea ennobling ennui enquire enquirer enslen entangling entwisle epa equation equion equity ercole erion
eritreans esler espalier especially estatehood esteves ethnically ethyol etienne etiquette euclea euphrates eurasia
europewide everyday everyman everyplace everything everytime excellency exchequer expires eyeliner eyeshadow eyewitness
facetious factional factitious faiella faiola falcone falconer fallacious falzone familial familiar fansler fantasia
farace farese farruggia farrugia fasone fastenings faubion favale favorable fayetteville fbi fcc fda fealty featherbed
fenjves ferocious ferrone fesler fiance fictional fictitious fidelia fidler fiennes fieros fiery fiesta fiftieth figler
figueira figurehead finale financier finklea fiore firearm firepower fireside fisler fitzwilliam flageolet flamemaster
flightsafety flirtatious florea fogler fondren fontainebleau forcefulness forensic forestry forestville fortieth fosler
fractional fractiousness fragale fraioli francese franzese franzone fredericksburg frequency frictionless fruition ftp
fukui functional funderburke fuoco fuselier fustian gabbroic gabele gabriel gabriele gabrys galea galiena galyon
gambale gamekeeper gamesmanship gananoque gaona garcia gardenia gaseous gatekeeper gaussian gdp gensia gensler gentlest
genuine geoghegan georgakis georgeson georgina georgio gerace gertler gfeller ghanaian ghettoize giacinta giacobbe
giacomo giambalvo giammarco giampaolo giampapa giampietro giancola gianelli gianfranco giangrande gianini gianino
giannelli giannetti giannetto giannini giannola giannotti gianotti giaquinto giardina giardini giardino giarrusso
giesler giggly giguere gilchrest gilcrest gilliardi gionfriddo giordani giordano giorgio giovenco girdler gisler
giudici giuffrida giulio giurescu giuseppe globetrotter gnc gnp goeas goemon goewey gomillion goncalves gondolier
gonsalves gonzales gouvea gouveia govea govpx gps gracias graciousness graphically grassia greeniaus gremillion griesa
grigoryant gruenewald gruenhagen grumblings grzelak grzywacz guaranteed gucciardo guerneville guiana guidone guidry
gundry gunfire gurion gurtler gusler gustave guzzlers habeas hadler hajime halcyon halcyone hamblen hamler hamtramck
harare hardwired harriet haruo haryana hasler hatler hauenstein hausler hawaii hawaiian hbo hebrides heidler heinlen
heishman heisler hekmatyar hellacious hendren hendrie henneberger henrie henriques hensler hercules heretofore heroic
heroin heroine heroize hertzler heryana hesler hestia hgh hiaasen hideous hierarchies hildegarde hirai hirose hisao
histories hiv hobbyist hoefler holdren holyoak holyoke homebuilder homebuilding homebuyer homecoming homelessness
homemaker homemaking homeowner homesickness honea hopefulness hopelessly hopelessness horatio horatius horsemanship
horsepower horseradish hosea hosler hotelier hotwire hourglass housebroken housecleaning housekeeper housekeeping
houseraising housewarming hrdlicka hrubik huachuca huallaga hudler huetta huguenin huguenot humblest humfry humphries
hurdler hurriedly hustler hyacinthe hyades hydeia hydropower hygeia ianovski ibm icebreaker icelandair icelandic idalia
idler iezzi ignatius igneous ijames ikea imagery imbroglio immunetech impeded impeding impetuous impoverish imrie
incestuous inchoate indifferent infectious infrared infrequent ingenious inglish ingrassia inouye inquired inquires
inscore insouciant intaglio interbred interdictes intuit iole ione iou iroquois irs isaiah isautier israel italian
ixion izquierdo jacksdeit jagiello jayewardene jeopardize jeopardy jerrome jersian jesmer jesuit jeweler jewellers jfk
jna joachim joanna johannes jolicoeur jonesboro josiah judgemental judicious julian jurgensmeyer kadrmas kafkaesque
kahane kalliel kamler kanade kansian kantian kapler kardashian kasese kasler kasprzak kasprzyk kasriel kastenmeier
katia kawai kawate kaweske kazuo keanu keiichi keisler keisling keister keisuke kensler kerien kesler kesling keteyian
kgb kgori kigale kimbriel kimler kindler kingry kinsler kisler kisling kkk klingler kmiecik knievel knoedler
knowledgeware koala koegler koernke kofler kogler koichi kokate kooyman korea koryagin kosyakov koteles kotler kouri
kouyate kreidler kreisher kroening krysiak kuchler kudrna kuechler kugler kusiak kusler kyoko kyoshi labine labrie
labrosse lacasse lacaze lacosse laduke lafler lafuente lagace lagasse lagrone laity lalone lamaist lamere landfried
lanese langelier langille langone laotian lapine laprade laraia larine larose larrea larroquette lastrapes latecomer
latticework laureate laurentiis lavalle lavere lavine lavinia lawrenceburg laypeople lazare lcb lcs leander leandro
leanza leccese lecrone legare leibfried leino lemire lencioni lenient leniently lentine leonara leonarda leonardi
leonardis leonelli leonetti lepere lepine lepore lequire lereah lesane lesiak lettiere leveraging levien leyendecker
lhommedieu liaison licciardi licea licentious lieutenant lifecycle lifesaver lifesaving likelier likeliest likelihood
likhyani lilienthal lineage lineal linear lineberger lineweaver linguine linnea litalien litigious littlest livelier
liveliest livelihood liveliness livonia llc lobbyist loella loewen logically logiudice loiseau loneliness longenecker
longshoremen loquacious lorean louviere lovemaking lpn lsd ltd lti lubricious lucchese luciani lucianna lucien lucienne
lucrezia luella luera luigi luisa lukyanov lumberyard luncheonette luoma luongo lyondell lyonnais lyonnaise lyphomed
lyrically mabry macdiarmid machinegun macias maciejewski macinnes macrame macwilliams madlen madore madyun maeda maenza
maestri magically magnesia magnolia magnone maiello maiolo majeske majure makeover malave malaysia malicious maline
malkiel managua mangine mangone mangope mangueira maoris mapplethorpe marchese marchioness marcial marciante marcone
margiotta mariel marife marineland marion marrone marseilles martinique martire martone marui marylebone masai masao
mascioli maslen massacred massicotte mathai mathea matsui matsuo matthea maurine maxion maxzide mazzei mazzone mba
mbira mcalinden mcauliffe mcbrien mccaffery mccallion mccuin mccutcheon mcdiarmid mcelyea mceuen mcgoey mcgwire mcinnes
mcmillian mcmillion mcnicholas mcqueary mcqueeney mcwilliam mealo meander medallion medically meineke meiosis meisler
melamed meleis meloche melone mendacious meneses mengele mercedes merion mesler messagepad messiah metagogued meyerbeer
mfume mgm micale micciche microprose mignone mijares mildrid millionaire mindboggling minea mineowner minesweeper
mineworker ministering minjares minoan minuet minuteman minutemen mireles miscarriage mischler miscreant miserly
misfire mishandling misiak mit mitsui miyake mkhatshwa mme moammar mobiliare moening moerman moesha mohamed mohammed
mojave moncure mongiello montagnier montague montanye montgomery montiel montien montieth montone morace morea moreover
morine mormonism morones morpheus morrone mortgagepower mosaic mosaicked mothershed mozambique mpg mph mri msgr mtv
mudslinging mugabe muhamed muhammed mukai munguia murguia muriel murrieta museum musial musically myopic myosin nadler
nagai nagao naively nakai nakao namaste naoki naoma naomi napea nardone narvaez natale natalia natalle natchitoches
nationals naturedly nausea nauseate nauta navellier nba nbc nedlloyd needler neisler nemean neoax neorx nesler nestea
nestler netiquette neuendorf neuendorffer neuenfeldt newgateway newlywed newspeople nfc nfl ngema ngueppe niagara
nicollier nienhuis nieves nkohse nmr nobuo nodine nogales nogueira noncorporate nonevent noninterest nordine norwegian
noseworthy nostalgia noteholder notetaker noteworthy npr nuclear nuclei nucleic nucleus nunemaker nutrient nutritious
nvhome nvryan nyina oad oahu oas oases oasis obermaier obnoxious oboist obrien ocain octillion odele odiaum odiaun odp
oeien ofc officemax oglethorpe oguin oishi okabe oken olathe oldfashioned olea oleske oligarchs oncale operan ophelia
opposites optically optional oquendo orangeburg orea orestes orient orion oriordan orlean orpheum orpheus osake osmer
ostia outler overcharge overfed pacemaker pacesetter pagemaker painewebber palese pallone pancreas panhandling pannone
panthea papageorge papale papillion paredes parliament parmele pasquale passageway passaic passionate patese patnaude
patriarchs patrie patrone pautler pavese pavillion pdf peacefulness peacekeeper peacekeeping peacemaker peacemaking
pecore peculiar pedone pelaez pelletier pendyala pensioner penthea pequeno perales perea perine permeate pernicious
perrine perrone perseus personally persuasion persuasive perusse petrea petrone pettine peyote pga pgm phd phileas
phineas photoop php physically piccone pickler pickren picturetel pierie pierrelouis pietro pietrzak pietrzyk piety
pigeonhole pignone pilates pineal pirrone pisciotta pizzazier plagiarize plaisted plebeian pleonasm pneumonia pocius
poetic poetry poggioli policeman policemen pontiac pontikes poppea portales porteous possession posterior pourciau
powerfully ppm practically praiseworthy preceded preceding preciado precocious preferreds premiership prentnieks
preponderance prescience prescient presler prestigious pretentious principally principe priore prodigious promiscuous
propitious prosaic prosciutto protean protease protege proteges provincetown provine prurient przybyl przybysz ptovsky
publically pugnacious puipoe pursueth pvc qiaotou quagmire quassia quattrone queasiness queensberry questioner
questionnaire quievoni quirion quixote racamier racioppi rademaker radically radler rafael rafuse ragone rainger
raleses rambunctious rameses ramires rapacious raphael rasia ratatouille ratepayer rayonier rca reabsorb reacquire
reactive reactor readjust readmit reaffirm reagent realestate realism rearrange rearrest reasonable reassert reassess
reassign reassume reassure reatta reattach rebellion rebellious receded receding recine reconquer recore recovery
reelect reemerged reenact reenter reentry reexport refenes referenced refuel refusenik regalia rehired reichart
reignite reina reinforce reinspect reinstall reinstate reinsure reinvent reinvest reinvite reissue rekindling religious
remarriage remembering renate renschler rensselaer reptilian resilient resseguie restauranteur retemeyer retirements
reunite reveille reveles rewire rhodesia rhythmically ricciardi ricciuti richelieu ricocheted rigler rinehimer ringler
riverbed riviere rna roanoke robare rodine rodrigues roesler roethler roever rohweder rolemodel roleplaying romine
roseate roseboro roseborough rosemarie rosemary rosemeyer rosiak rosine rotea rpf rpm rte rueda ruella ruinous
rulemaking rumblings ruocco rustlers rwanda rwandese ryobi ryohei ryuzo rzasa rzepka saccone safekeeping sagraves
saguenay sakai sakau salacious salesmanship salespeople salesperson salisbury salome samoan samuelle samuels sansui
santone santore sanzone sapiens sapone sapphire sarine sassone satire satyandra savion savoia sba sbf scalese scarpone
schadler schaedler schaufler schedler scheidler scheufler schickler schildknecht schisler schloesser schmutzler
schouten schubring schueneman schuenemann schuerman schuermann schwegler schweizerische schwoerer scialdone sciarrino
sciclone scientist scorekeeper scorekeeping scouring scs sdn seattle seceded seceding sechrest sechrist secrest secrist
sectional sedalia seditious sedore segraves segrest seifried seigler semele semones seniornet separates sequeira
sequential sequoia serviceman servicemen sesler seyfried shamalia shamanism shamelessly shaolin shareholder
shareholding shareowner shashoua shidler shinxiaku shiremanstown shisler shoichi shoshone siamese siano sicilia sidener
siderca sideris sidler sienko sienna sierra siesta siewiorek sifuentes signore silesia similiar simion simler simpler
sinead singler sirrine sisler sistare sitler sixtieth skrzypek sledgehammer smokejumper sms sociable socrates solares
solely soloist somalian sos sosuke soulliere souring sovereignty sovyetsky spangler speciale specialities spengler
spinale spindler spitale spokespeople spokesperson sponsler spracklen sql squeamishness ssn stablest stakeholder
stampeded stampeding starace stasiak statesborough statesmanship statuesque stds stepien stickler stiegemeier stoever
stoneburner stonecipher stonecutter stonehocker stonesifer storagetek storekeeper stricklen strikebreaker subconscious
subnotebook subsequence subsequent subtler subtly sudafed sudler sufferings suicide sunobe supercharge superfluous
superx surace suspicious suu suv swashbuckling swindler swingler tabares tac tadeusz taira takao takeover tanabe
tassone tatyana tavares telecharge teleport temperament temperature templer tenacious tendentious tenement tequiliu
terpsichorde terrien tesler tesmer tetsuo thaddeus theater theatre theism theriault therriault theseus thirtieth
thoroughbred tianjin tiano tiara ticklish tidewater tightenings tijuana timeliness timetable timpone tingler tinkler
tipler tiredness tireless tirelessly tiremaker tiresome tischler titania tlc tokuo tokyo tolkien toweling townspeople
trachea tracheal tragically tramiel transience transients transpire trbovich treichler trevelyan tribalism trisler
troiani tropea trousdale truism trulove trusler trzaska trzcinski tuinstra tuition tunisia turbocharge twentieth
twinkly typewriter typewriting typewritten typically uarco udverhye ueki ufo uinta uliaski uliassi ullyses unbundling
unconscious unforeseen uniondale unionist unionize uniqueness unleveraged unreasoning untangling untermeyer urbanism
urea uribe url urrea usa usaid usair usb usefulness uss ustrust usually valade valea valiente valiquette valliere
vallone valonia valores valuable vandenberghe vanderlinde vandermeer vandervelde vandervliet vandevelde vandevoorde
vandezande vanevery vanleeuwen vanliew vanscyoc vantine varietal varrone vassilios vastine vaudevillian vegetable
verdone verduin verine vermillion vermilya vermilyea veronique versace versluis vertically vexatious viciousness
vidales vidalia viejo vienna viennese vietcong vietnam vietti vieyra vincennes vip virginia virkler visualize visually
vitale vitiate vitreous vivacious vivien vivienne voiceover volksfuersorge volunteer voracious vosler vuolo vyacheslav
wahine wannabe wastebasket wastefulness wastepaper wastewater waterbed watershed waynesboro wegrzyn weidler wengler
wermiel wesler westmoreland weyerhaeuser wherewithal whimsically whitecotton whitescarver whitewater whoever
wholehearted wholesomeness widebody wiggly wiitala wildfire wilkesboro williamsburg williamsburgh williamsen williamson
williamsport williamstown winegarden wineinger winemiller wingler winifred wisecarver wisler wobbly wolstenholme
worcestershire wotring wrangler wrestler wyoming xml yamane yarbrough yasuo yearearlier yessuey yesteryear yogiism
yoichi zaccone zairean zappone zarcone zeidler zeigler zeisler zeitler ziesmer zigler zillionaire zingale zingler
zorine`,
  4: `
abiomed abkhazian abortionist abyssinia accompaniment acoustically acquirer actionable adhd adsl aeritalia aerobically
aeroscience aesthenopia aesthetically affectionate afterhours aganbegyan agnostically agrosiand ahluwalia akyanama
albanese alchemically aleksandr aleshire alethea alfiero alfonsine algebraic algodones algonquian alicea alienates
alleluia allender aloisia aloysia altomare altruism altruistic aluminium alysia amadeus amalea ambrosine ameline
ameliorate amerine amnesiac anaesthesia anaplasia anastasia andalusia andreana andreani andreano andreini anesthesia
aneurysm angelically angelone anguiano annunciata anopheles antigone antipodes antiquity anxiety apocalypse appalachian
apportionment appreciable appreciably arakelian aramaic archimedes arduini arguable arguably arianespace ariela
armbrister artistically asap aseltine asiatic asmodeus associative athenaios athletically athleticism australasia
authentically auxiliary avalanches aveline avionic ayrshire azcuenaga bacchanalia backfiring baldassare balentine
ballentine banasiak banyaluca barentine batignolles battiato batuigas beatify behavioral behaviorist belfiore benavides
benequity benevides benveniste berlascone bevalaqua bevilacqua biaxial biennial biosafety bioscience bisiani blasingame
blassingame bolognese bonaduce bongiovanni bonsignore bramalea brendlinger brentlinger brizendine bucciarelli buonocore
businesspeople businessperson caccavale caesarea cafiero calabrese calderone california caligiuri campanale campione
canandaigua cananea cangialosi capernaum caplinger caporale caracciolo caradine carburetion cardassian cardinale
caribbean carnevale carribean carrizales carusone casiano cassavetes cataclysm cataloguing catalonia catanese cavaliere
cctv cdebaca celestine celosia cenozoic centurion chevrier chianese chiappone chicagoans chmielewski chrismer
christiana christianna christiano chrzanowski ciaccia ciaramella ciaravino ciavarella cicalese circuitous cmudict
coefficient coexistence coincidence coincident coinsurance colaianni coliseum collodion colloquial colloquium colosseum
commemorative commercebancorp commerciale commissioner compaore compassionate complementary compusa comunale
conceptualize concessionaire concessional confectioner conferences confessional congressional congresspeople
consequential constructionist contagiousness contemptuously contentiousness continuum contortionist conventional
conventioneer cooperate cooperatives coordinate copytele corporatewide correctional cosmetically costeira cristiani
cristiano criterion crocodilian cronyism cryogenic cspi cuneiform curiale cusiana cutaneous cyclopean cytherea
dambrosia damietta dandelion dandyism dauenhauer deactivate deangelis debiase decesare deemphasize defiore degeneres
degiacomo degutare delafuente delaurentiis delineate delinquency dellavalle delorean delosreyes delpriore delsignore
demagoguing dementia denatale denlinger depascale depasquale depreciable depriest derflinger derosia desimone desiring
desperately devilishly devouring dhlakama diabetes diarrhea diastole dibiase dicesare dicioccio dickensian dictionary
dielectric dietary dietetic dietician dietitian differences difiore digiacomo digiorgio digiovanna digiovanni digiulio
digiuseppe diiorio diltiazem dimensional dimichele dinatale dinmukhamed dipaola dipaolo dipasquale directional
directionless directv discoveries disimone disinterested disorient dispassionate dobrzynski doerflinger dogmatically
domestically dondlinger dorothea dqalpha dramatically druidism dulcinea duodenal duodenum duopoly dupriest durflinger
dynamically dysfunctional ecstatically ecuadoran edinburgh edrington efficacious egoism elaborates electioneer
elementary elinore elysia emanuel embryonic emdr eminase emmaline emmanuel emmanuelle emotionally emphatically
ensminger enthusiast entirely entringer entsminger epithelial epithelium eritrea erratically erroneous eslinger espn
esthetically eudosia european euthanasia everybody exceptional expansionist expeditious experience expressionist
expressionless extortionate extortionist extraneous facemire faciane facsimile familiarize fantastically faraone
fashionable fashionably feb ferraioli fettuccine fictionalize figueiredo fillingame firefighters fissionable fitzhenry
fluidity fnma focaccia formulaic fortuitous frighteningly fukuoka fullilove functionary gaboriault gabriela gaglione
galatea galentine galicia galilean gallentine geagea gelasia generales generically genetically genitalia genuineness
georgiadis georgiana georgopoulos giacomelli giacometti giacomini giacone gialanella giammarino gianfrancesco
giarratano gilbertine giovanelli giovanetti giovannetti giovannini giovannoni giovinazzo giuliani giuliano glaciation
gonorrhea grandiloquent gratuitous grbavica grismer grzesiak grzybowski grzywinski guarnaccia guglielmi guglielmo
gymnasia hacienda hamiltonian hanseatic harclerode hces hellaciousness herculean heroism hfdf hiaa hialeah hideaki
hierarchy hinduism hiroaki hispaniola hochstedler hochstetler homeownership horacia hosseini hostetler hostutler hsbc
html http huffstetler huffstutler hufstedler hufstetler hybrienko hymeneal hyperplasia hypotheses hysterically iafrate
iannone idealized ieee ierardi iglesia ignasiak ileana iliescu ilyaronoff impoverishment impressionist inauspicious
incipient inconspicuous incorvaia indonesia indosuez inequity infrequency ingratiate iniquity initiate injudicious
inquiries inquiring instantiate instructional intentional interceded interceding intermarriage intuition intuitive
invaluable iovine ironically isadore isbn islamically isosceles italianate ivanyenko izvestia jacobean jeroboam
jingoism jingoistic judaism julietta kamakau kamikaze kaniewski kanouse kaohsiung karaoke kataoka kenealy keplinger
kerpedjiev kganakga kightlinger kilauea killilea kinzlmaier kiplinger knbc knin kociemba koreagate koreatown kostrzewa
kostrzewski kpmg kubisiak kumagai laboratory labossiere lacoursiere laferriere lafreniere lambiase lapd lareina
lariviere laryngeal laverdiere laverdure leopoldina lesbianism letitia leuenberger leverone liberace linguistically
linoleum loaiza logistically loiacano loiacono luevano maccabean macedonian machinea mackiewicz maekawa maglione
mainichi maiorana maiorano maiorino malleable mantione manzanares manzione maraline marcelline marchione margarethe
margeotes marijuana masaaki masciarelli massacring massingale mastandrea mastroianni matarese materiel matsuoka
matsuura matusiak mausoleum mccarthyite mcmurtrie mechanically megacarrier menapace menasion menzione meserole mesozoic
messianic microcosm micrografx micronesia migliore minamide minebea minestrone miniaturize minutia misbehavior
misiaszek missildine missionary moawiya modestine mortification mosaical mozartean mukhopadhyay multibillion
multiethnic multimillion muraoka muratore musicianship myopia myotrophin nacional naivete nakasone nasional nationale
nationally neanderthal negotiate neidlinger netanyahu neuenschwander neuroscience neurosurgeon nicaragua niclaneshia
nicolai nicoline nicosia nonentity nonessential nonexclusive nonexistent nonlinear nonnuclear nonreligious noriega
notestine nucleation numerically nvidia nypd oblinger oblivion obscenely obsessional obstructionist oceana oceanic
odiorne odysseus oecd officeholder ognibene oleander oleandrin oleaster oleksiak olivares oncogenes oplinger
organically oriental ostentatious ouagadougou ourada overleverage overpowering oviedo palmieri palmstierna palomares
panacea paniagua paolella paoletti paolillo paolini paolino paolucci paonessa papandrea paranoia paranoiac paratore
pariagua parishioner parisians parisienne parziale passalacqua patrimonial pedophilia pedophiliac peinado pennsylvania
peragine peraino percipient percussionist perfectionist permeable perniciaro perricone perspicacious persuadable
persuasiveness pescatore petroleum pharaonic pharmacia philately philistia phlcorp phonetically pietruski pingitore
pitiable plagiarism pleomorphism pleuritides poetical poetically poinsettia polymorphism polynesia popolare
postmodernism poudrier powerpc preparedness processional professional prolifically prolinea prometheus proportional
proportionate protectionist protozoan provenience przybyla przybylski przywara pseudoscience ptolemaic ptsd pucciarelli
pugliese questionable raffaele raffaelli ragonese ranieri raphaela reactivate readjustment readmission realisation
realization reanalyze rearmament rearrangement reassemble reassembly reassertion reassessment reassignment reassurance
reauthorize reawaken receptionist recipient recoveries rediscovery redlinger reeducate reelection reemergence
reemphasize reemployment reenactment reengineer reexamine references referencing reincarnate reinforcement reinspection
reinstatement reinstitute reinsurance reintegrate reinterpret reintroduce reinvention reinvestment reitano reitera
reiterate rejectionist remlinger reorient repetitious repossession requiring resiliency resourcefulness restaino
retirement retroactive reunify rhetorically ricciardelli riedlinger riopelle ripplinger riviera rsvp ruotolo sabatine
sacrilegious saitama sakigake sakurai salomone salpetriere salvadore salvatore samuela samuelson santiago sarcastically
satiated satiety satisfactory savarese scaglione scaleatron schiavone scientific scintilore scipione sebastiane
secessionist seismologist seismology sekisui semiprecious senatore seniority separated separating serafine seraphine
serenely serratore servicemaster seventieth shenandoah shiraishi shoichiro sicilian sierracin simione siracuse sobieski
societa societal societe society solimine soltysiak spagnuolo spasmodically specifically speziale spontaneous
sporadically stanzione stoicism strategically stribling strzelecki stylistically subservience subservient substantiate
suicidal superfamily superseded superseding superstitious supremely surrealism surrealistic surreptitious symmetrically
synthetically sypniewski systemically taflinger tagliaferri takeuchi taormina tatiana tbilisi tcas tebuthiuron
teleconference telephoniques telescience temperamental tennessean terrebonne terrifically tessitore theatrical
thematically theologians thirtysomething thomasine threateningly tiananmen timothea tomaino tomasine toriente tornabene
tornatore traditionalists triennial trnopolje trzeciak turrentine twentysomething ubiquity uehara uemura uenohara
ukulele unconsciousness undercarriage underprivileged unethically unexpired unfamiliar unimpeded uninspired
uninterested uninteresting unionism unpretentious unrealistic unreasonable updegrove uplinger urioste usairways
usbancorp usda usmc ussr valencia valencienne valkyrie valladares vanacore vanbiesbrouck vanderleest vandersluis
vanhouten varietals varnadore vecchione veterinary victorine vietnamese viglione villafane viramune virtuoso vizcaino
volcanically volentine vrdolyak watanabe watlington wereldhave whatsoever whomsoever whosoever wisniewski wlodarczyk
wlodarski wrzesinski ws yamaichi yamatake yamauchi yglesias zairian zakrzewski zaniewski zimbabwean zuidema`,
  5: `
academically aerolineas aerospatiale aguascalientes aguinaga ahasuerus albendazole aleatory algorithmic alienated
alienating allegiances alphabetically ambrosiano amelioration amphitheater amphitheatre amyotrophic anacostia
analytically anatomically anfal antitakeover aphrodisiac appreciation aristophanes association astronomically
automatically automoviles baccalaureate bartolomei bengoechea biagioni bidirectional biologically bmw bollettieri
bougainvillea byelorussia caltagirone canariensis cassiopeia castiglione categorically chocolatology christianity
chronologically ciaramitaro cnnfn coarticulate coglianese coincidental concessionary confectionary confectionery
confucianism constantinides construcciones contractionary cooperation cooperative cooperatively coordination
coordinator corporacion degaetano deification delineation democratically demographically denuclearized denunciation
depreciation desantiago desmoplasia dfw differentiate diguglielmo dionysian diplomatically disproportionate
dissociation diversionary dwi ecclesiastic echinacea ecologically economically ecuadorian edizione elaborated
elaborating electricite eleonore emanuele encarnacion energetically enthusiasm enthusiastic epicurean equiangular
ergonomically erythropoietin esophageal etablissements euphemistically euromobiliare expansionary expansionism
experiential expressionism expressionistic factionalism famiglietti familiarity ferrofluidic financiera financiero
fondiaria functionality ganatieuganauf genealogy geometrically giannattasio giovanniello golembiewski gravitationally
grzeskowiak guadarrama guglielmetti gunatilake helionetic heoroico homogeneous homosapien hyakutake hydroelectric
hyperborean hypothetically iannaccone iannacone iavarone idealistic ideologist ideology ideonomy idiotically imperiale
impressionable impressionism impressionistic inalienable inconsequential incrementalism indianian indonesians
industriale inexperience initiation initiator instantaneous instantiation insubstantiate intercollegiate
interventionist investissements jurisdictional kolodziejski korzeniewski kwh liberatore louisiana macedonians
mangiaracina marielito mastrogiovanni matrilineal mazowiecki mccarthyism memorabilia metaphorically microscopically
minneapolis miscellaneous mononuclear monotheism montefiore monteleone motorcyclist multiemployer multifunctional
multimillionaire myocardial myocardium naacp nazionale neapolitan negotiation negotiator neuroscientist noneconomic
nonelectrical nonemergency nonexecutive nonprofessional objectionable obstructionism okoniewski oleaginous orientated
orientation orleanian orthodontia overambitious paleozoic paradoxically paraphernalia parimutuel parliamentary
partiality pathologically patrilineal pennsylvanian pepenadores percutaneous perfectionism peritoneal petrovietnam
pharisaism philibosian photoelectric photovoltaic phraseology pituitary polyolefin polytheism polyurethane popieluszko
postretirement prestigiacomo professionalize pronunciation protectionism prudentialbache psychoanalyst psychologically
pythagorean reactivity reaffirmation realamerica realistically reapportionment reassuringly recessionary reeducation
reevaluate reincarnation reincorporate reintegration reintroduction reinvigorate reiteration religione renegotiate
renunciation reorientate retaliatory revolucion ribonucleic rovaniemi scientologist scientology sebastiana sebastiani
sebastianis semireligious siderographer simultaneous singaporean speciality spiritualism spontaneity subcutaneous
substantiation subterranean systematically tallahassean tartaglione tavoulareas telemecanique teleology theologically
thermonuclear timisoara transoceanic unconscionable unconventional unfashionable unforeseeable unintentional
unionization unmentionable unprofessional unquestionable unquestionably unscientific veterinarian videoconference
videophile virtuosity visualization zentralsparkasse`,
  6: `
aerodynamically afroamerican agroindustrial apologetically archaeological asiamerica astrogeology austroasiatic
aviazione characteristically coarticulation coeducational conceptualization contemporaneous differentiation
dimensionality disorientation ecclesiastical elephantiasis eosinophilia evidentiary extraordinarily finanziaria fyi
gastrointestinal genealogical geopolitically homogeneity hydroencephalus ideologically impartiality incoordination
institucional intelligentsia internationale interventionism isoelectronic louisianian machiavellian malleability
mediterranean meridionale onomatopeia osteoarthritis permeability physiologically piezoelectric pitiesalpetriere
probabilistically professionalism proportionality pseudoscientific psychoanalysis psychoanalytic reaffiliation
reauthorization reevaluation reexamination reincorporation reindustrialize reinterpretation reinvigoration
renegotiation retroactivity retrocessionary reunification revaluations ricostruzione sathyavagiswaran scientifically
superfluidity theatricality uncooperative uncoordinated undiplomatically unenthusiastic unfamiliarity uninitiated
unrealistically unsubstantiated usameribancs vnesheconombank`,
  7: `
assicurazioni cardiomyopathy confidentiality deinstitutionalize denuclearization heterogeneity inmobiliaria
partecipazioni uncharacteristically undifferentiated`,
  8: `
deoxyribonucleic epidemiologically revolucionario`,
  9: `
deinstitutionalization`,
};

/** Syllables of the words that the rules would miscount. */
export const exceptions: ReadonlyMap<string, number> = new Map(
  Object.entries(wordsBySyllables).flatMap(([count, words]) =>
    words.trim().split(/\s+/u).map((word) => [word, Number(count)] as const),
  ),
);
