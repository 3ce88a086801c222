/**
 * What is said on site of a topic, where the topic's own text does not say it. A topic without a line here is found by
 * its text. Common practice.
 */
export const SITE_WORDS: Readonly<Record<string, string>> = Object.freeze({
  // Intake
  "intake-hot":
    "smoke smoking smouldering buzzing fizzing crackling sizzling arcing burning smell fishy hot warm too hot to touch glowing cutout head meter tails isolator henley intake who to call emergency fire brigade thermal image warmer",
  "distributor-equipment-damaged":
    "bakelite service fuse bits incoming head hot to touch supply company fuse carrier holder perished supply cable into house paper lead cutout mains dno service head cutout pitch compound leaking cracked burnt tail smoking incoming cable meter broken",
  "supply-tampered":
    "someone been at wires before meter cut padlock unsealed abstracting jumper weed grow seal seals broken bypass bypassed cannabis fiddled stealing theft tampered abstraction meter illegal wires crocodile",
  "supply-device-unknown":
    "readable marking illegible sealed cant see cartridge dno main fuse size rating unknown type cutout sealed label service amps 60a 80a 100a",
  "looped-supply":
    "upstairs flat flats other same cutout from here through two houses loop neighbour next door shared looped supply feed",
  "supply-polarity-reversed":
    "brown on neutral side cutout tails swopped blue on live whole house cross crossed polarity incoming intake head swapped live neutral incomer dno",
  "supply-voltage-out-of-limits":
    "258 255 207 205 at night brown out bulbs blowing volts high low 253 216 supply voltage overvoltage dim flicker 260v 256 210v",
  "meter-tails-exposed":
    "leads inner insulation only no outer grey tails single insulated sheath basic insulation showing unsheathed copper bare double insulated",
  "meter-tails-size": "16mm 25mm tails small thin undersized main fuse 100a",
  "meter-tails-entry":
    "strain relief supported cleat glands flapping hanging tails clamp gland unclamped pulling strain tug loose hole bush entering entry held",
  "meter-tails-long-run":
    "over 2m no fuse at start switch fuse other end of house distance between meter board tails long 3m metres buried wall hidden run length far",
  "connector-block-open":
    "service block burnt cover henley block lid tails cover off open hot loose live showing burnt isoblock",
  "origin-isolator": "isolator rec2 rec meter isolate tails cracked browned dno switch between",
  "intake-surroundings":
    "meter box door missing broken rain cupboard wet unlockable rubbish combustible hot meter cupboard cabinet damp full stuff stored paint tins access door box flammable",
  "gas-or-water-near-intake":
    "over above beside alongside cutout head pipes service 150mm gas meter water pipe near touching close intake cupboard",
  // Earthing and bonding
  "no-means-of-earthing":
    "tt without electrode nothing connected no rod not earthed at all installation unearthed removed no earth water pipe gas pipe only earth earthing none missing terminal provided main",
  "means-of-earthing-hidden":
    "where does go no sign of location tts unsure type of earth earth cant see find where hidden unverified buried sheath means plaster",
  "external-impedance-high":
    "reading from supply at origin over greater than ze high external loop tns tncs ohms dno supply earth 0.35 0.8 pme",
  "earthing-conductor-undersized":
    "10 mm from head 2.5 smaller than half of tails main earth 4mm 6mm 10mm 16mm small thin",
  "earthing-conductor-condition":
    "green yellow off head detached hanging come off head from cutout fell out parted main main earth wire cut disconnected loose off corroded snapped damaged clamp hanging",
  "main-earthing-terminal":
    "not accessible cramped full no space test link snapped met bar block missing loose inaccessible behind marshalling labelled",
  "electrode-resistance": "ra rod spike tt ohms high dry reading 200 ohm stake unstable",
  "electrode-condition":
    "rod clamp pit manhole rusted rotten snapped corroded loose off spike lid inspection broken disconnected stake",
  "tt-unprotected-length": "tt tails metal board before front end upfront first rcd s type unprotected",
  "pme-exported": "pme tncs exported shed greenhouse barn outbuilding taken outside outdoor tnc-s caravan",
  "earth-neutral-joined":
    "ne link bond neutral earth joined linked connected together n-e submain subboard downstream shed borrowed",
  "main-bonding-absent":
    "none services incoming supply pipe unbonded lightning conductor central heating oil tank frame portal gas water oil steel rsj bonding missing no bond bonded unbonded main mdpe lightning line pipe incoming",
  "main-bonding-undersized": "6mm 4mm bond small undersized 10mm pme thin gas water 2.5",
  "main-bonding-position":
    "downstream wrong side far from entry inside after branch tee lacquered plated stopcock painted pipe clamp 600mm meter wrong place plastic after softener bonded position",
  "main-bonding-hidden": "cant find see bond clamp hidden boxed bath panel label tag kitchen units unverified",
  "main-bonding-resistance": "bond continuity ohm ohms reading high clamp loose corroded painted 0.05 wander lead",
  "supplementary-bonding-needed":
    "supp supplementary bonding cross bond radiator radiators pipes pipework sink taps kitchen canopy",
  // Boards
  "board-cover-missing":
    "hinges lid busbar chamber removed front plate door cover lid front off smashed broken missing hinge no cover",
  "board-blank-missing":
    "open fingers way filled tape cardboard module spaces blank blanks gap slot spare way finger fits hole front missing",
  "board-inner-shield":
    "plate gone live bars behind cover barrier over incoming terminals cover plate inside tp board no escutcheon insulated shroud main switch shield inner busbar shroud barrier behind door dead front showing live bars touch guard internal cover",
  "board-top-opening":
    "screw drop tools fall conduit hole larger than 1mm wire knockout top hole ip4x open drop in coin opening above reach",
  "live-parts-out-of-reach":
    "crane conductors collector overhead conductor slate open bare copper bars trolley switchroom high level bare busbar railing obstacle rail high up fence barrier overhead crane conductor knife switch slate panel out of reach",
  "board-cable-entry": "gland grommet entry sharp edge hole rear cable entries bush holes round sides bottom",
  "board-combustible":
    "plastic combustible metal amendment 3 nonmetal under stairs hallway escape fire insulated enclosure flammable",
  "old-wooden-board": "wooden back backed wood timber wylex board plywood chipboard frame",
  "board-position":
    "metres up 2.4m 1.8m tall ceiling height worktop wardrobe cant reach toilet wc washroom above stool steps over bath door standing get to too high low reach ladder locked access bathroom position kitchen cupboard behind height tenant key obstructed above cooker inside get at",
  "board-fixing":
    "held up cable propped unscrewed supported only by mounting hangs loose off wall falling screws hanging fixed fixing one screw swinging wobbly",
  "board-overheating":
    "crackling noise humming glowing buzz sparks burnt scorched melted arcing smell heat burning busbar browned neutral thermal discoloured fizzing buzzing hot overheating mcb breaker main switch charred",
  "board-terminations":
    "strands not in missed clamp trapped insulation under screw undertorqued crackling fizzing stray loose terminals terminal screws torque tight two wires one strands insulation clamped neutral bar connection connections doubled under same",
  "board-conductor-order":
    "neutral order jumbled cpc numbered sequence muddled corresponding same position bar neutrals earths",
  "main-switch-missing-or-faulty":
    "welded contacts stays on handle isolator handle snapped toggle no means of switching off everything jammed no main switch stuck wont turn off faulty seized broken missing isolator",
  "main-switch-poles":
    "only breaks live one pole line only neutral not broken single pole neutral main switch double pole tt does not break sp",
  "isolation-incomplete":
    "backfed dead side still some circuits remain solar inverter ups still live switched off board second supply backfed two supplies dual main switch off something parts off peak other",
  "neutral-fused":
    "breaker on neutral both poles fuses double pole fusing neutral fuse fused board single pole old fused neutral",
  "breaking-capacity-exceeded":
    "pfc pscc ka 6ka 10ka 3ka breaking capacity fault current rated icn psc prospective short circuit",
  "mixed-devices":
    "mixed make brand maker manufacturer mk hager wylex mem crabtree foreign breakers compatible wrong different other mcbs",
  "device-faulty":
    "reset latch wont stuck dead mcb rcbo breaker broken toggle faulty trips straight away buzzing operate",
  "switch-rating-low":
    "63a 40a 80a 100a rcd rated main switch downstream overloaded in front fuse lower than underrated",
  "rewirable-fuses": "bs3036 3036 rewireable fuses fuse wire semi enclosed old",
  "fuse-wire-oversize":
    "fuse wire thick nail foil 30 amp 15 amp wrong fuse bolt silver paper bridged thicker copper wire instead",
  "fuse-carrier-broken":
    "ceramic porcelain chipped cartridge bridge pulled missing shield asbestos pad fuse carrier holder broken shield cracked missing contacts live hole",
  "maximum-demand-exceeded":
    "max demand overloaded main fuse blows load too much diversity heat pump ev shower 60a supply",
  "supply-division":
    "lose one fault dark whole place trip 100ma main one rcd whole house everything all circuits front end nuisance single lights go out dual split load",
  "selectivity-lacking":
    "go together both fuse breaker takes out supply same coordination cascade discrimination discriminate grade upstream trips first main blows both same time selectivity before",
  "surge-protection-absent":
    "spd surge none missing red window flag spent replace expired green indicator dead lightning",
  "surge-protection-connection":
    "spd surge leads long wires length tails fuse connection backup protection earth 0.5m half metre",
  "arc-detection-absent": "afdd arc fault student hmo care home high rise flats missing none",
  "board-damp":
    "wasps spiders nest mice droppings sand grit plaster cement steam rust rusty water damp dripping muck cobwebs dust dirt dirty corroded condensation wet insects ants filthy nest flooded",
  "board-things-stored":
    "boxes stacked bikes ladder shelving wardrobe blocking coats hoover junk stored front piled blocked stuff cupboard under stairs clutter things shoes ironing",
  // RCDs
  "rcd-none-tt":
    "no earth leakage device earth rod system main electrode tt no rcd missing rod farm fault protection house",
  "voltage-operated-breaker":
    "f e terminals trip wire electrode through coil antique voelcb elcb fault voltage frame leakage old voltage operated four terminals",
  "rcd-does-not-trip":
    "too slow no operation more than 300 over time at times 1 ms test button dead wont trip no trip stuck fails failed faulty 1999 300ms slow time button doesnt nothing happens",
  "rcd-test-not-possible":
    "cant switch off tenant refused customer busy essential equipment high button behind locked cant test untested freezer server button reach stuck not tested covered inaccessible refused occupant",
  "rcd-slow-at-five-times": "x5 5x times 5 150ma 40ms 45ms slow five 50ms",
  "rcd-too-sensitive":
    "on its own nothing wrong random randomly no reason unwanted goes at early below 14 before half rated half 15ma x1/2 trips nuisance tripping 12ma sensitive ramp",
  "rcd-standing-leakage":
    "on its own random randomly no reason milliamp clamp filters vsd drives accumulate protective conductor current leakage ma earth leakage computers server nuisance tripping keeps clamp meter standing too many",
  "rcd-time-delay-missing":
    "takes out house shed other downstream upstream first s type selective time delay series two rcds both instantaneous upfront in front trips both garage",
  "rcd-type-ac":
    "suitability wrong type needs vehicle pv inverter washing machine variable type ac a f b dc induction inverter led wrong type electronics heat pump washing",
  "rcd-one-way-fed-backwards":
    "bidirectional unidirectional one way backfed fed load side solar battery backwards line load generation feeding",
  "rcd-neutrals-crossed": "neutral wrong bar crossed mixed split load other side neutrals borrowed wrong rcd",
  "sockets-no-rcd":
    "unprotected not protected outlets general use sockets no rcd 30ma additional protection missing plug kitchen shop",
  "mobile-outdoors-no-rcd":
    "pressure washer chainsaw strimmer extension through window outside appliance portable lawnmower mower outside garden tools hedge trimmer no rcd lawn pressure washer",
  "lighting-no-rcd": "bedroom house landing domestic dwelling rcbo luminaires lights lighting no rcd 30ma domestic",
  "fixed-equipment-no-rcd":
    "hand dryer heater storage boiler cooker immersion fixed no rcd 30ma appliance water heater",
  // Circuits
  "circuit-unidentified":
    "does go to where runs no clue what breaker does cant tell no label identify supplies unknown mystery what it feeds unidentified dont know trace untraced goes feeds",
  "circuits-mixed":
    "neutrals in wrong terminals swapped between cross connected linked two circuits one mcb same breaker radial and ring doubled crossed mixed split sharing together cpc neutral separate",
  "borrowed-neutral":
    "same neutral one neutral two circuits disconnected shock landing borrowed shared neutral two way upstairs downstairs hall lights up down sharing",
  "overload-device-oversize":
    "32a 40a mcb breaker 1.5 1.0 2.5 6mm 4mm too big oversize thin cable small undersized cooker radial overfused 45a 50a 20a 16a amp on",
  "voltage-drop-high": "volt drop long run dim vd far end flicker percent",
  "ring-broken":
    "line conductor continuous lost leg snapped open circuit one leg missing ring open leg r1 rn r2 no continuity broken end to end not continuous discontinuous disconnected",
  "ring-interconnected":
    "bridge across loop cross middle multiple rings figure eight bridged crossed two rings interconnected linked another ring crossover",
  "spur-overloaded":
    "two doubles off one unfused several more than spur off spur unfused doubles fed immersion off ring three twins many sockets one cable",
  "zs-over-limit": "zs loop fails impedance earth fault too high imp max over limit",
  "cpc-undersized":
    "thinner should be reduced earth size smaller cpc earth thin small 1mm 1.5 undersized adiabatic 1.0 on 4mm 6mm",
  "cpc-resistance-high": "r2 high r1+r2 cpc continuity poor earth reading ohms",
  "socket-no-cpc": "no earth socket cpc missing dead earth power point disconnected not connected open",
  "lighting-no-cpc": "no earth lights lighting cpc old missing switch plates pre 1966 no cpc",
  "metalwork-live":
    "belt buzz off lamp post radiator pipes case volts gives between washing machine shocking static tingle tingles shock shocks zap belt buzz live case tap sink fridge cooker touch metal voltage to earth getting electric",
  "insulation-low":
    "short live to earth l-e n-e breakdown reading zero fail 1 meg damp fault ir meg megohm megohms megger low insulation resistance dead short fault 0.2 0.5",
  "insulation-falling":
    "falling trending dropping year since last megger ir getting worse trend down lower than previous",
  "polarity-reversed-at-point":
    "swopped neutral live crossed over connected incorrectly brown blue reverse polarity l n swapped socket reversed crossed live neutral wrong way round edison centre pin",
  "phase-sequence":
    "motor wrong way fan runs backward pump clockwise phase rotation backwards wrong sequence three phase motor runs reverse l1 l2 l3",
  "neutral-switched-or-fused":
    "light switch in neutral still live when off black switch switched neutral fuse in neutral spur single pole switch wrong wire switch breaks still live off",
  "live-conductors-unterminated":
    "unused end where old was removed capped not terminated spare uncapped disused chopped bare ends loose wires cut left live hanging old removed redundant dead ends poking out unterminated disconnected abandoned sticking behind wall ceiling",
  // Cables
  "cable-damaged":
    "nail screw rats rat mice mouse squirrel rodent chewed eaten gnawed drilled cut nicked copper bare insulation plumber worn core visible pierced crushed damage jcb",
  "sheath-missing":
    "inner cores visible below above board outer cut back too short at box no sheath single insulated stripped back cores showing outside switch enclosure basic insulation grey outer short singles",
  "trunking-or-conduit-open":
    "lid off missing conduit trunking broken apart singles showing coupler inspection flexible pulled open elbow cover dado",
  "cable-in-wall":
    "off zone run horizontally angle screwed 20mm depth plasterboard hidden safe zone zones diagonal chased shallow plaster 50mm nail buried wall prescribed no rcd",
  "cable-metal-partition": "metal stud steel partition frame wall studwork",
  "rubber-or-lead-cable":
    "sheathed lead paper armoured cable old vir rubber lead trs tough cotton crumbling perished imperial old paper brittle",
  "pvc-exudation": "green goo gunge sticky slime stuff dripping plasticiser",
  "cable-unsupported":
    "resting laid on ceiling grid loose across lay in tiles not fixed clipped clips ties lying ceiling tiles drooping hanging sagging tray falling off loft unclipped supported collapse fire",
  "cable-under-insulation":
    "shower buried wool laid under polystyrene loft insulation rockwool covered buried 300mm derate thermal in wool",
  "cable-bunched-or-hot":
    "bunched grouped too many cables hot warm bundle bundled trunking full tied grouping derating",
  "cable-near-services":
    "strapped tied taped fixed to run along gas pipe hot heating water steam flue boiler touching resting on proximity radiator",
  "wiring-not-kept-apart":
    "phone line box network mixed band i ii bt 230 240 doorbell intercom hdmi data cat5 cat6 band telephone aerial elv same trunking with mains alarm speaker segregated segregation selv bell",
  "cable-through-joist":
    "just under boards carpet grippers nails notches screwed plates joist joists notch notched holes top floor floorboards near surface nails",
  "cable-buried": "swa underground depth shallow no tape warning jcb spade trench dug buried deep digger ground fork",
  "cable-armour-unearthed": "swa armour gland banjo not earthed terminated earth tag nut steel wire",
  "overhead-cable":
    "wire across yard poles height tree clearance house to catenary span overhead pole sagging slack tree branches low shed between buildings aerial height lorry",
  "flexible-cord-as-fixed-wiring":
    "3 core permanently feeding clipped run flex used fixed wiring lights socket permanent three core through wall telly extension instead of cable",
  "joint-not-enclosed":
    "chock lying loft above floating loose ended terminals connectors wrapped tape void twisted wires inline crimp choc block jb no box no lid open taped joint loft ceiling connector strip wago bare hanging wagos above ceiling box lid missing",
  "joint-inaccessible":
    "screw terminals plastered in under laminate sealed buried above plasterboard jb junction box buried under floor floorboards screwed tiled behind wall plaster cant get at maintenance free hidden joint",
  "aluminium-or-mixed-conductors": "aluminium ali alu copperclad lugs brass mixed metals terminals",
  // Accessories
  "accessory-broken":
    "half gone plate snapped terminals touchable rocker missing pin button cracked smashed broken busted bakelite front missing hole chipped faceplate plate live showing missing bare",
  "accessory-connection-loose":
    "loose neutral live terminal wire connection arcing inside socket switch behind terminals not tight",
  "accessory-loose": "loose wobbly off wall hanging screws falling pulled out plug socket moves come away",
  "accessory-over-hob": "hob over above cooker beside stove switch socket behind",
  "accessory-overheated":
    "behind washing machine dryer cooked went brown blackened socket melting contacts plug stuck plug scorched burnt melted burn marks hot smoking smell plug top discoloured brown greasy switch socket dimmer fcu contactor timer charred buzzing",
  "adaptors-as-fixed-wiring":
    "lead under rug instead not enough sockets extension leads adaptor 4 way four way daisy chained telly under carpet cube plugged everywhere trailing",
  "back-box-missing": "no back box pattress switch screwed plasterboard straight without box wall",
  "cooker-isolation-missing": "no cooker switch isolator hob oven off cooker point behind missing",
  "downlight-insulation":
    "gu10 smothered fibreglass hot lights loft quilt fitting downlights spots rockwool covered loft insulation under burnt fire wool recessed buried",
  "emergency-switching-missing":
    "bandsaw saw guard press mill stop none kitchen gas interlock e stop emergency stop button conveyor machine saw none lathe workshop boiler house",
  "equipment-connection-open":
    "jointed connected flex inline no plug permanently wired cut off joined hard wired washer dryer fan no spur outlet flex choc cut off plug 13a no fcu cord taped connection equipment",
  "fixed-equipment-isolation":
    "no way to isolate cant switch off maintenance servicing dp switch air con cylinder isolator local isolation fan boiler shower machine out of sight missing pull cord none nowhere switch off",
  "immersion-cutout": "immersion stat thermostat cutout plastic tank overheat thermal boiling",
  "lampholder-or-rose-open":
    "skirt gone ring shade cap bayonet socket base pendant rose lampholder cover cap missing bulb broken stuck live pins perished bare skirt open worn flex wire crumbling bits cotton",
  "lighting-transformer": "transformer driver 12v led loose hot halogen elv ceiling low voltage",
  "luminaire-heat":
    "bulb too big 100w 60w wattage curtain cardboard wood charred hot spot lamp touching scorched shade too close wrong",
  "luminaire-unsupported":
    "plasterboard tape string heavy own cable falling down unfixed bracket hanging by wires chandelier fan falling held loose light ceiling fitting batten fluorescent heavy cable only coming down dangling",
  "metal-accessory-unearthed":
    "metal switch socket plate brass chrome unearthed no earth lampholder fitting class 1 not earthed steel fly lead",
  "motor-protection":
    "relay thermal trip pump fan restart automatic comes back on overload dol starter motor nvr no volt restarts power cut burnt out pump cooking by itself",
  "shower-overloaded": "shower 6mm 4mm 10kw 9.5kw 8.5kw 40a cable small too thin undersized 10.5kw",
  "smoke-alarm-absent":
    "heat alarm kitchen landing no detection removed taken down battery only smokes smoke alarm detector none dead missing bleeping heat interlinked battery expired hanging",
  "socket-height": "skirting low high floor socket flush height disabled 450mm height",
  "socket-near-water":
    "half metre 300mm close taps drainer sink tap basin above next to close splash worktop kitchen socket by",
  "socket-old-type":
    "outlets round 3 pin mixed bs546 dolls eye round pin two pin 2 pin 15 amp 5 amp unshuttered old shutters shutter foreign euro",
  "water-in-equipment":
    "burst pipe flooding soaked downlight got wet bath overflow wet leak wet light fitting water socket indoors flooded dripping ceiling full upstairs damp bathroom leaked",
  // Baths
  "bath-equipment-in-zone":
    "extractor zone 1 mains inside cubicle pump washing machine pendant switch too close zone ip ipx4 ip44 fan downlight light over bath above shower not rated 230v",
  "bath-heater-in-reach": "electric fire bar heater towel wall next to bath reach radiant pull",
  "bath-rcd-and-bonding": "bathroom no rcd bonding supplementary supp cross bond lights shower missing 30ma",
  "bath-socket-position":
    "13a socket shower bedroom less than socket bathroom bath near 3m 2.5m bedroom shower cubicle ensuite",
  "bath-switch-in-reach": "light switch rocker bathroom shower room reach next to pull cord inside",
  "shaver-outlet": "shaver point socket light isolating transformer",
  // Outdoors
  "garden-cable-unprotected":
    "twin and earth flowerbed surface path mower cut t&e lawn fence hedge garden flex clipped outside unprotected sunlight uv not swa twin along across grass",
  "hot-tub-outdoors": "hot tub jacuzzi spa supply rcd pme isolator plug",
  "outbuilding-supply":
    "summer house extension lead cable garden office submain plug shed garage fed plug flex outbuilding supply summerhouse extension submain workshop rod",
  "outdoor-enclosure":
    "flap snapped lid off junction box outside seal perished hole in bottom wet fcu isolator water outside socket switch ip44 ip65 ip rating lid flap broken open rain gland full patio box seal gasket wet",
  "outdoor-luminaire-damaged":
    "garden light bollard spike post broken smashed knocked wires out outside bare lamp wall lantern glass live",
  "pond-or-water-feature": "pond pump fountain fish koi cable taped joint light water feature filter",
  // Special places
  "conducting-place":
    "tank drum vessel boiler inside portable tools 230v inspection lamp confined 110v cellar pit metal",
  "farm-protection":
    "piggery metalwork bonding cows getting shocks rats equine cow milking parlour cattle barn farm stable pig horse rcd bonding 300ma sockets livestock cowshed",
  "floor-heating":
    "ufh underfloor mat electric floor heating thermostat ceiling heating braid screen no rcd no earth tiles",
  "medical-place": "hospital dental dentist surgery theatre ward bonding it system earth bar supply patient vet",
  "pitch-or-mooring-supply": "caravan hook up pole campsite marina pedestal bollard boat rcd broken socket",
  "pool-equipment": "swimming pool light pump room bonding zone rcd underwater",
  "site-distribution":
    "site 110v yellow transformer cabin hut market stall fairground funfair festival marquee temporary supply tower builders supply events stage fete",
  "electric-fence": "electric fence energiser energizer fencer shepherd fencing wire horse cattle pulses earth stake",
  "sauna-equipment": "sauna steam room light heater cable wiring heat",
  // Sources
  "battery-isolation": "battery isolator isolated missing switch off store cant disconnect dc",
  "battery-direct-current":
    "battery terminals bare links dc fuse missing dc isolator battery bank lead acid busbar inverter cables no fuse 48v bess dc side",
  "battery-place":
    "loft bedroom under stairs escape position hot swollen leaking batteries garage location inside lithium",
  "ev-direct-current": "ev charger car 6ma rdc-dd type a type b rcd dc protection no rcd missing",
  "ev-open-pen": "ev charger pme open pen rod lost neutral broken pen tt device earth",
  "generator-changeover":
    "interlock neutral grid parallel standby inlet male plug both genny suicide lead two plugs backfeed changeover feeding back feeds street grid interlock plugged in house",
  "island-earth-reference":
    "backup island grid off mains fail powerwall rod neutral earth relay eps rcd works mode power cut off grid",
  "pv-cable-damaged":
    "string wires chafed ground rats roof squirrel mismatched crimp solar dc cable mc4 connector connectors chewed frayed melted roof tiles burnt panels dangling loose damaged",
  "pv-isolation": "solar isolator ac dc missing burnt inverter panels switch off wet",
  "source-on-final-circuit": "inverter ring socket plug in solar plugged final circuit shared battery balcony",
  // Identification
  "circuit-chart-missing":
    "breakers mcbs blank no notes list on door schedule chart notes labels circuits not labelled handwritten out of date wrong numbered legend list which is which",
  "conductor-colours":
    "red black brown blue old new mixed wrong switch line sleeve marked identification colour yellow",
  "cpc-unsleeved": "bare earth no sleeving sleeve green yellow missing cpc",
  "notice-missing":
    "label sticker sign warning missing next inspection due test rcd six monthly quarterly dual supply mixed colours solar no labels alternative",
  "part-not-inspected":
    "not inspected no access locked room could not get in cant get in lim limitation furniture in way refused access behind kitchen units boarded over not tested unable to access",
  "wrong-label":
    "main switch not labelled no label isolators switches unmarked isolator unlabelled wrong label sign which machine mislabelled says incorrect labelled",
  // Fire
  "dusty-or-storage-place":
    "grain store lighting feed mill fluff lint laundry sawdust straw hay grain dust joinery fittings motors barn stock lights heaters stacked against warehouse wood",
  "emergency-lighting": "em light emergency bulkhead exit sign duration dead battery fails 3 hour test missing",
  "escape-route-equipment":
    "wiring over fire exit drops cable clips meters escape stairs plastic clips trunking meter board communal exit corridor cables only way out fall down hallway",
  "fire-alarm-supply":
    "smokes on ring kitchen sockets wrong circuit fed from shared fire panel smoke alarms off socket lighting circuit fed own dedicated breaker alarm supply plugged local light red",
  "fire-stopping":
    "unsealed penetration penetrations opening gap pipe cable hole between flats floor loft hatch hole holes fire wall ceiling foam sealing cables compartment unsealed fire hoods downlights party trunking riser gap",
  "firefighters-switch": "fireman fireman's firemans switch neon sign high voltage shop",
  "hot-equipment-clearance":
    "bedding infra red boiler range cooker portable fire too close stack heater close curtain wood oven flue near bedding clearance touching combustible hot panel radiant reached burnt shelf",
});
