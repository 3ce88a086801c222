import type {
  AcceptanceRule,
  Classification,
  FaultCurrentMethod,
  Outcome,
  Relation,
  Silence,
  Verdict,
} from "@good-grounds/core";
import type { Link, ThingKind } from "@good-grounds/inspection";
import type { CableDrawing } from "../drawings/cable-section.ts";
import { OUTCOME, SILENCE } from "./labels.ts";

const MONTHS = [
  "January",
  "February",
  "March",
  "April",
  "May",
  "June",
  "July",
  "August",
  "September",
  "October",
  "November",
  "December",
];

function counted(count: number, one: string, several: string): string {
  return `${count} ${count === 1 ? one : several}`;
}

/** "2026-10-06" as "6 October 2026". */
function day(iso: string): string {
  const [year = "", month = "", date = ""] = iso.slice(0, 10).split("-");
  return `${Number(date)} ${MONTHS[Number(month) - 1] ?? month} ${year}`;
}

/** "2026-10-06T18:40:00+01:00" as "6 October 2026, 18:40": the time on the clock where it was written. */
function moment(iso: string): string {
  return `${day(iso)}, ${iso.slice(11, 16)}`;
}

/** Every sentence of the printed report that is not the inspector's own. */
export const REPORT = Object.freeze({
  day,
  moment,
  closed,
  kind: "Condition report on an electrical installation",
  documentTitle: (address: string) => `Electrical condition report, ${address}`,
  documentDescription: (id: string, edition: string) => `Condition report ${id} to ${edition}`,
  header: (address: string) => `Electrical condition report – ${address}`,
  footer: (id: string, on: string) => `Report ${id}, ${day(on)}`,
  page: (now: string, all: string) => `page ${now} of ${all}`,
  skip: "Skip to the report",
  draft: "DRAFT: not issued",
  inventedShort: "INVENTED EXAMPLE – NOT A REAL PROPERTY",
  invented:
    "Invented example. People, firms, places and readings are made up; it tells nothing about any real building.",

  facts: Object.freeze({
    inspected: "Inspected",
    edition: "Measured against",
    topics: "Own topics",
    premises: "Premises",
    client: "Ordered by",
    purpose: "Purpose",
    issue: "Issue",
    report: "This report",
  }),
  length: (id: string) => [`${id}, `, " pages, with the inspection file attached"],

  stated: "As the inspector states it",
  derived: "As it follows from what is recorded",
  notStated: "Not stated",
  outcome: Object.freeze({
    satisfactory: sentence(OUTCOME.satisfactory),
    unsatisfactory: sentence(OUTCOME.unsatisfactory),
    "not-determined": sentence(OUTCOME["not-determined"]),
  } satisfies Record<Outcome["outcome"], string>),
  because: ({ outcome, because, points, investigate }: Outcome, codes: readonly string[]) => {
    if (outcome === "unsatisfactory")
      return `${counted(because.length, "observation makes", "observations make")} it so: ${codes.join(", ")}.`;
    if (outcome === "not-determined")
      return `${counted(points.length, "point decides and stands", "points decide and stand")} open, so nothing can be said yet.`;
    const unknown =
      investigate.length === 0
        ? ""
        : ` ${counted(investigate.length, "matter is", "matters are")} not known (FI) and has to be investigated without delay: until then danger is not ruled out there.`;
    return `No observation makes it unsatisfactory under the edition named above, and nothing that decides stands open.${unknown}`;
  },
  differs: (stated: string, derived: string) =>
    `The two differ. The inspector states “${stated}”; what is recorded comes out as “${derived}”. Ask which of them stands before relying on this report.`,
  summary: "The inspector's summary: ",
  numberedPlace: (number: number, place: string) => `Observation ${number}, ${place}`,

  todoTitle: "What was found and what to do",
  counts: (codes: readonly (readonly [code: Classification, count: number])[], open: number) =>
    `${codes.map(([code, count]) => `${code} ${count}`).join(", ")}${open === 0 ? "" : `; not classified yet ${open}`}.`,
  nothing: "No observation that needs work was recorded.",
  group: (code: Classification | "open", meaning: string, when: string) =>
    code === "open" ? meaning : `${code} – ${meaning}${when === "" ? "" : `. ${when}`}`,
  when: Object.freeze({
    C1: "At once: not to be used until it is put right",
    C2: "",
    FI: "",
    C3: "",
    none: "",
  } satisfies Record<Classification, string>),
  openGroup: "Not classified yet – may turn out to be dangerous",
  openCode: "?",
  furtherBehind: "Further ones stand on the pages behind.",
  moreOfClass: (count: number, numbers: string) =>
    count === 1
      ? `And observation ${numbers}, on the pages behind.`
      : `And ${count} more, observations ${numbers}, on the pages behind.`,
  todo: "To\u00a0do: ",
  noRemedy: "what would put it right is not recorded.",
  /** Nobody wrote a remedy, and the facts allow one or several. */
  proposed: (words: string, more: number) =>
    `${closed(words)} This follows from the facts; the inspector wrote none.${more === 0 ? "" : " Other ways stand with the reasons."}`,
  proposedBelow: "None was written. What the facts allow stands at the end of the reasons below.",
  madeSafeShort: (done: string, told: string, at: string, reply: string) =>
    [`Done about it on ${day(at)}: ${closed(done)} Told at ${at.slice(11, 16)}: ${closed(told)}`, replied(reply)]
      .filter((part) => part !== "")
      .join(" "),
  untold: (reason: string) => `Not recorded as made safe. Nobody was told before leaving: ${closed(reason)}`,
  madeSafeMissing: "Not recorded: whether it was made safe, and who was told.",
  unclassifiedNone: (count: number) =>
    `${counted(count, "further observation needs", "further observations need")} no work; see the next section.`,

  unseenTitle: "What was not seen",
  noneUnseen: "No limits were recorded.",
  unseenMore: (count: number) =>
    `${counted(count, "further limit stands", "further limits stand")} in “Extent, sampling and limitations”.`,
  sampled: (what: string, inspected: number, population: number, most: number | undefined) =>
    most === undefined
      ? `${what}: ${inspected} of ${population}; the others were not looked at.`
      : `${what}: ${inspected} of ${population}; the others were not looked at, and up to ${most} in all may be defective (95 % sure, where those opened were chosen at random).`,
  itemsOpen: (count: number) =>
    `${counted(count, "point", "points")} of the inspection limited, not verified or not answered.`,
  checksOpen: (count: number, of: number) =>
    `${count} of ${of} calculations could not be made because something they need was not recorded.`,
  nextTitle: "Next inspection",
  next: (by: string, reason: string) => `By ${day(by)}. ${reason}`,
  workWithin: (days: number, reason: string) =>
    `Work that this report asks for: within ${counted(days, "day", "days")}, the day of the inspection as the first.${reason === "" ? "" : ` ${closed(reason)}`}`,
  noNext: "No date is recorded.",
  whoTitle: "Who inspected and who answers for it",
  whoHead: ["As", "Name", "Signed"],
  unsigned: "Not signed yet: a draft until it is",
  capacity: Object.freeze({
    "inspected-and-tested": "Inspected and tested",
    "authorised-for-issue": "Authorised for issue",
  }),
  challenge:
    "You may question anything here. Name the observation by its number and ask the inspector for the reason: every conclusion stands below with the readings and figures it rests on. Another inspector can judge the same evidence afresh from the attached file.",
  contentsTitle: "In this report, by page:",

  observationsTitle: "Observations and their reasons",
  noObservations: "No observations were recorded.",
  observationsIntro:
    "Each observation has the classification the inspector chose, with the reason, and below it what follows from the recorded facts. What follows is derived and not decided: the person who signs decides.",
  numbered: (number: number, at: number) => `Observation ${number}, number ${at} in the file`,
  checksLabel: "Calculations for its circuit",
  choiceLabel: "Classification",
  openChoice: "Not classified yet.",
  choice: (meaning: string, reason: string) => `${sentence(meaning)}. Reason: ${reason}`,
  choiceBy: (name: string, at: string) => `Chosen by ${name}${at === "" ? "" : `, ${moment(at)}`}.`,
  factsLabel: "Recorded facts",
  positionLabel: "Position taken",
  position: (words: string, reason: string) => `${sentence(words)}. Reason: ${closed(reason)}`,
  standingView: (words: string, reason: string) =>
    `${sentence(words)}: a standing view of the firm. Reason: ${closed(reason)}`,
  regulationLabel: "Regulations",
  remedyLabel: "What would put it right",
  notRecorded: "Not recorded.",
  madeSafeLabel: "Done about it",
  madeSafe: (done: string, told: string, at: string, reply: string) =>
    [`${closed(done)} Told on ${moment(at)}: ${closed(told)}`, replied(reply)].filter((part) => part !== "").join(" "),
  photosLabel: "Photographs",
  openingCaption:
    "Section through the opening to scale, from the recorded measures: the wall hatched, the jointed finger as it bends, the live part solid, the limit of what the finger reaches broken.",
  cableCaption:
    "Section of a cable of the recorded kind, its layers as such cables usually have them and not to scale. A broken outline is a layer that is gone where it was seen.",
  cableWords: ({ name, layers }: CableDrawing) =>
    `${sentence(name)}. ${[
      ["Gone", layers.filter(({ gone }) => gone === true)] as const,
      ["Left", layers.filter(({ gone }) => gone !== true)] as const,
    ]
      .filter(([, some]) => some.length > 0)
      .map(([what, some]) => `${what}: ${[...new Set(some.map(({ role }) => role))].join(", ")}.`)
      .join(" ")}`,
  noPhotograph: "none recorded",
  untoldLabel: "Not told",
  partsLabel: "Speaks of",
  circuitsLabel: "Circuits",
  foundOnLabel: "Found on",
  times: (name: string, quantity: number) => `${quantity} × ${name}`,
  circuitLabel: "Circuit",
  boardLabel: "Board",

  originTitle: "Supply, earthing and bonding",
  originHead: ["Particular", "Recorded"],
  origin: Object.freeze({
    supply: "The supply",
    earthing: "System earthing",
    phases: "Phases",
    live: "Live conductors",
    current: "Kind of current",
    currents: Object.freeze({ ac: "a.c.", dc: "d.c." }),
    frequency: "Nominal frequency",
    lineVoltage: "Nominal voltage between lines",
    neutral: "Supply neutral",
    notice: "notice",
    public: "Public supply",
    nominal: "Nominal voltage to earth",
    measured: "Measured voltage",
    polarity: "Polarity of the supply",
    sequence: "Phase sequence",
    other: "Other sources",
    noOther: "none recorded",
    readings: "Readings at the origin",
    ze: "External loop impedance Ze",
    loop: "Line to neutral loop",
    ra: "Earth electrode RA",
    faultCurrent: "Prospective fault current",
    faultMethod: Object.freeze({
      "line-neutral": "read between line and neutral",
      "line-line": "read between lines",
      "three-phase": "read on three phases",
    } satisfies Record<FaultCurrentMethod, string>),
    largest: "Largest prospective fault current",
    toEarth: "to earth, as read",
    threePhase: "on three phases, worked out from the reading",
    singlePhase: "between line and neutral, as read",
    earthFaultCurrent: "To earth",
    demand: "Maximum demand as stated",
    protection: "Protection and switching",
    device: "Distributor's device",
    tails: "Meter tails",
    mainSwitch: "Main switch",
    mainSwitchPlace: "Where it is",
    mainRcd: "RCD before everything",
    fitted: "fitted",
    arrangement: "runs",
    sheathed: "sheathed",
    mechanicallyProtected: "mechanically protected",
    earthingConnected: "Connected and continuous",
    earthingItem: "As inspected",
    notAnswered: "not answered",
    terminalItem: "Main earthing terminal",
    earths: "Earthing and bonding",
    earthingConductor: "Earthing conductor",
    electrode: "Electrode",
    note: "Note",
  }),
  bonding: Object.freeze({
    title: "Main bonding, part by part",
    none: "No main bonding is recorded.",
    head: ["Part", "The part", "Conductor", "Connected", "Resistance"],
    heatDamage: "damaged by heat",
  }),
  energyClass: "energy limiting class",
  letThrough: "lets through",
  kiloamperes: (value: string) => `breaking ${value}`,
  poleless: "number of poles",
  poles: (poles: number) => `${poles}-pole`,

  diagramTitle: "The installation from the origin outwards",
  diagramWords: (boards: number, circuits: number, part: number) =>
    `Line diagram, part ${part}: ${counted(boards, "board", "boards")} and ${counted(circuits, "circuit", "circuits")}; the same facts stand in the tables of circuits`,
  diagramNote:
    "From the origin outwards. Each way shows its phases as strokes, its device, the RCDs before it with their residual current in mA (a heavy ring with a name is shared by several circuits), what it serves, its line and protective conductor, and the worst verdict of the calculations for it. A verdict is not a classification.",

  things: Object.freeze({
    title: "Parts recorded one by one",
    intro:
      "What was listed beside the schedules, with everything that was recorded of it. A part that is not listed was not looked at one by one.",
    head: ["Part", "Where", "Recorded"],
    kind: Object.freeze({
      places: "Places",
      enclosures: "Enclosures and barriers",
      sections: "Sections of conductors",
      joints: "Joints",
      supplementaryBonds: "Supplementary bonding",
      electrodes: "Earth electrodes",
      loads: "Loads",
      surgeDevices: "Surge protective devices",
      arcDevices: "Arc fault detection devices",
    } satisfies Record<ThingKind, string>),
    link: Object.freeze({
      between: (names: string) => `between ${names}`,
      enclosure: (names: string) => `in ${names}`,
      feeds: (names: string) => `before circuits ${names}`,
    } satisfies Record<Link, (names: string) => string>),
    times: (name: string, quantity: number) => `${name}, ${quantity} alike`,
    broughtBy: (number: number) => `observation ${number}`,
    nowhere: "at the origin, or for the whole",
    nothing: "nothing further",
    from: (end: string) => `from ${end}`,
    to: (end: string) => `to ${end}`,
    opening: (number: number) => `opening ${number}:`,
  }),

  circuitsTitle: "Circuits and readings",
  protectionHead: [
    ["No", ""],
    ["Circuit", ""],
    ["Serves", ""],
    ["Wiring", ""],
    ["Method", ""],
    ["Phases", ""],
    ["Line / N / cpc", "mm²"],
    ["Device", ""],
    ["RCD", ""],
    ["Within", "s"],
    ["Disconnection", ""],
    ["Worst verdict", ""],
  ],
  /** Each column with the unit its figures have; one that was read in another carries its own. */
  readingsHead: [
    ["No", ""],
    ["Circuit", ""],
    ["r1", "Ω"],
    ["rn", "Ω"],
    ["r2", "Ω"],
    ["R1+R2", "Ω"],
    ["R2", "Ω"],
    ["IR live", "MΩ"],
    ["IR earth", "MΩ"],
    ["IR at", "V"],
    ["Polarity", ""],
    ["Zs", "Ω"],
    ["Leakage", "mA"],
  ],
  rcds: Object.freeze({
    caption: "RCDs, each once, with their tests",
    head: [
      ["RCD", ""],
      ["Serves", ""],
      ["Standard, type", ""],
      ["Rated", ""],
      ["IΔn", ""],
      ["Delay", ""],
      ["at IΔn", ""],
      ["at 5 IΔn", ""],
      ["Button", ""],
      ["Further", ""],
    ],
    delay: Object.freeze({ general: "none" }),
    shared: (id: string) => `RCD ${id}`,
    own: (number: string) => `own of circuit ${number}`,
    circuits: (numbers: readonly string[]) =>
      numbers.length === 0
        ? "no circuit of this board"
        : `${numbers.length === 1 ? "circuit" : "circuits"} ${numbers.join(", ")}`,
  }),
  further: Object.freeze({
    caption: "What else is recorded of the circuits",
    head: [
      ["No", ""],
      ["Recorded", ""],
    ],
    load: "Load",
    socketOutlets: "Socket-outlets",
    designCurrent: "Design current",
    cores: "Cores",
    grouped: "Grouped",
    grouping: (arrangement: string, circuits: number) => `${arrangement}, ${counted(circuits, "circuit", "circuits")}`,
  }),
  protectionCaption: "Circuits and their protection",
  readingsCaption: "Readings",
  noCircuits: "No circuits are recorded on this board.",
  circuitsNote:
    "Method: every reference method the route may have. Within: the permitted disconnection time. Disconnection: the loop at operating temperature, or the RCD's touch voltage, against its limit. The dot is the value, the grey band what the instrument leaves open, the copper stroke the limit (a copper wash its own band), the fine strokes the forbidden side; an open dot is a verdict still open. Words in italics are gaps.",
  readingsNote:
    "r1, rn, r2: ends of the ring. IR live, IR earth: insulation resistance between live conductors and to earth, with the test voltage beside it.",
  seconds: (value: number) => String(Number(value.toPrecision(3))),
  points: (count: number) => counted(count, "point", "points"),
  temperature: (value: string, more: readonly string[]) =>
    `Conductor temperature during the dead tests: ${[value, ...more].join("; ")}.`,
  temperatureNotTaken: (why: string) => `Conductor temperature during the dead tests not taken: ${closed(why)}`,
  taken: (
    people: readonly string[],
    instruments: readonly string[],
    first: string | undefined,
    last: string | undefined,
  ) =>
    [
      "Read",
      people.length === 0 ? "" : ` by ${people.join(", ")}`,
      instruments.length === 0 ? "" : ` with ${instruments.join(", ")}`,
      first === undefined || last === undefined ? "" : spanned(first, last),
      ".",
    ].join(""),
  takenLacks: Object.freeze({ by: "a name", with: "an instrument", at: "a time" }),
  takenMissing: (count: number, lacking: readonly (readonly [what: string, count: number])[]) =>
    `Of ${counted(count, "reading", "readings")} ${lacking.map(([what, without]) => `${without === count ? "all" : without} without ${what}`).join(", ")}.`,
  takenUnsaid: "Who read these, with what and when is not recorded.",
  methodsTitle: "How readings were taken",
  everyCircuit: (reading: string) => `${reading} of every circuit`,
  ofCircuits: (reading: string, numbers: readonly string[]) =>
    `${reading} of ${numbers.length === 1 ? "circuit" : "circuits"} ${numbers.join(", ")}`,
  faultCurrentAt: (designation: string, value: string) =>
    `Circuit ${designation}: prospective fault current at its far end ${value}.`,
  reasonsTitle: "Why readings are missing",
  reason: (why: string, places: readonly string[]) => `${sentence(why)}: ${places.join("; ")}.`,
  ringPoints: (designation: string, between: string, points: readonly string[]) =>
    `Circuit ${designation}, ring cross-connected, ${between}: ${points.join(", ")}.`,
  lineNeutral: "line to neutral",
  lineCpc: "line to protective conductor",
  longNumber: (short: string, whole: string) => `Circuit ${short} in full: ${whole}.`,
  circuitNote: (designation: string, note: string) => `Circuit ${designation}: ${note}`,
  readingName: Object.freeze({
    r1: "r1",
    rn: "rn",
    r2: "r2",
    r1r2: "R1+R2",
    r2Only: "R2",
    insulationLiveLive: "insulation live to live",
    insulationLiveEarth: "insulation live to earth",
    insulationVoltage: "insulation test voltage",
    insulationBetweenNeutrals: "insulation between neutrals",
    neutral: "size of the neutral",
    phases: "phases",
    temperature: "conductor temperature",
    polarity: "polarity",
    zs: "Zs",
    leakage: "leakage",
    faultCurrent: "fault current",
    timeAtRated: "RCD time at IΔn",
    timeAtFive: "RCD time at 5 IΔn",
    button: "RCD button",
  }),
  inCircuit: (designation: string, what: string) => `circuit ${designation} ${what}`,
  board: Object.freeze({
    from: "Fed from",
    location: "Place",
    enclosure: "Enclosure",
    phases: "Phases",
    zdb: "Zdb",
    fault: "Fault current",
    mainSwitch: "Main switch",
    surge: "Surge protection",
    polarity: "Polarity",
    sequence: "Phase sequence",
    conditional: "Conditional rating",
    ahead: "Device ahead",
    arc: "Arc fault detection",
    behind: "behind",
    oneMake: "devices of one make",
    rcd: (id: string) => `RCD ${id}`,
    surgeType: (type: string) => `type ${type}`,
    surgeWord: Object.freeze({ fitted: "fitted", "not-fitted": "not fitted" }),
    wholeBoard: "whole board",
    note: "Note",
  }),
  fromSupply: "the supply",
  rcdType: (type: string) => `type ${type}`,
  rcdDelay: (delay: string) => `time-delayed (${delay})`,
  breaking: "breaking capacity",
  rating: "rating",
  standard: "standard",
  type: "type",
  residual: "residual current",
  size: "size",
  material: "material",
  noRcd: "none",
  ownRcd: "own",
  boardRcd: (id: string) => `board's ${id}`,
  trips: Object.freeze({ trips: "trips", "does-not-trip": "does NOT trip" }),
  polarityWord: Object.freeze({ correct: "correct", incorrect: "INCORRECT" }),
  silence: Object.freeze({ ...SILENCE, "not-applicable": "n/a" } satisfies Record<Silence, string>),

  findingsTitle: "What the calculations say, worst first",
  findingsIntro: (count: Readonly<Record<Verdict, number>>) =>
    [
      `${count.met + count["not-met"] + count["too-near"] + count["not-known"]} calculations arise here: ${count["not-met"]} not met, ${count["too-near"]} too near to call, ${count["not-known"]} not known, ${count.met} met.`,
      "What is met is not written out; every calculation stands in the attached workings.",
      "A finding is not a classification: what it means for safety is judged by the inspector.",
    ].join(" "),
  relation: Object.freeze({
    "at-most": "should be at most",
    "at-least": "should be at least",
    "agrees-with": "should agree with",
    "not-below": "should not be below",
    "not-above": "should not be above",
  } satisfies Record<Relation, string>),
  noFindings: "Nothing is short of its limit, too near to call or not known.",
  regulations: (list: readonly string[]) => (list.length === 0 ? "" : `BS 7671 ${list.join(", ")}`),
  memory: (figures: readonly string[]) =>
    `Rests on ${figures.length === 1 ? "a figure" : "figures"} from memory, to be checked against the standard: ${figures.join("; ")}.`,
  besideLabel: "For comparison, not deciding: ",
  missing: (what: string) => `Missing: ${what}.`,
  workingsPage: Object.freeze({
    title: (id: string) => `Workings of report ${id}`,
    kind: "Workings and sources",
    intro:
      "Every calculation that arises, with all it rests on: what was measured and seen, what is published, what was assumed. Each line bears the one it stands below. How often each calculation came to which verdict, and the sources of the figures, stand at the end.",
    skip: "Skip to the workings",
  }),
  madeTitle: "Every calculation and what it came to",
  madeHead: ["Calculation", "BS 7671", "Not met", "Too near", "Not known", "Met", "Does not arise"],

  curvesTitle: "Time-current drawings of circuits in doubt",
  curvesIntro:
    "Only known points of a device are drawn, joined straight; nothing between them is made up. The slope is the energy the conductor withstands, the shaded strip the fault current as a band.",
  moreCurves: (count: number) =>
    `${counted(count, "further circuit is", "further circuits are")} in doubt and not drawn here; what is found of each stands among the calculations.`,
  curveWords: (device: string, conductor: string) =>
    `Time-current drawing of ${device} with the limit of the ${conductor}`,

  itemsTitle: "What was inspected",
  itemsHead: ["Looked at", "BS 7671", "Outcome", "Note"],
  itemOutcome: Object.freeze({
    "in-order": "in order",
    observed: "observation",
    limited: SILENCE.limited,
    "not-verified": SILENCE["not-verified"],
    "not-applicable": "does not arise",
  }),
  unanswered: "NOT ANSWERED",
  seeObservation: (number: number) => `see observation ${number}`,

  extentTitle: "Extent, sampling and limitations",
  ordered: (client: string, address: string) => (address === "" ? client : `${client}, ${address}`),
  extent: Object.freeze({
    title: "Title of the job",
    letting: "Letting",
    starts: "The tenant may live there from",
    granted: "Tenancy granted",
    equipmentChecked: "Equipment last checked",
    client: "Ordered by",
    purpose: "Purpose",
    premises: "Premises",
    occupier: "Occupier",
    use: "Use and tenure",
    useNotKnown: (why: string) => `Use not known: ${why}`,
    tenureNotKnown: (why: string) => `Tenure not known: ${why}`,
    nationNotKnown: (why: string) => `Nation not known: ${why}`,
    covered: "Covered",
    notCovered: "Not covered",
    agreed: "Agreed with",
    visits: "On site",
    records: "Earlier records",
    last: "Last inspection",
    age: "Age of the installation",
    alterations: "Additions and alterations",
    conditions: "Conditions",
  }),
  uprn: (number: string) => `UPRN ${number}`,
  notAgreed: "no agreement is recorded",
  visit: (on: string, arrived: string, left: string) =>
    arrived === "" && left === "" ? day(on) : `${day(on)}, ${arrived || "?"} to ${left || "?"}`,
  inVisits: (on: string, count: number) => `${day(on)}, in ${count} visits`,
  noRecords: "none were available",
  samplingTitle: "Parts inspected as a sample",
  samplingHead: [
    "What",
    "Present",
    "Opened",
    "Defective",
    "May be defective among all (95 % sure, if chosen at random)",
    "How chosen",
  ],
  sampleReach: (most: number, population: number) => `up to ${most} of ${population}`,
  limitationsTitle: "Limitations",
  limitationsHead: ["Kind", "What", "Why", "Agreed with"],
  limitationKind: Object.freeze({ agreed: "agreed before", operational: "met on site" }),
  noLimitations: "None recorded.",
  concealed:
    "Cables inside walls, floors, ceilings, conduits and the ground, and parts behind what is fixed, are not seen in an inspection unless the extent above says so.",
  agreedWithNobody: "nobody recorded",

  instrumentsTitle: "Instruments",
  instrumentsHead: ["Instrument", "Serial", "Checked", "Leads during the visit", "Accuracy as its maker states it"],
  nulled: (at: string, showed: string) =>
    showed === "" ? `nulled ${at.slice(11, 16)}` : `nulled ${at.slice(11, 16)}, joined they showed ${showed} before`,
  nulledOn: (at: string, showed: string) =>
    showed === "" ? `nulled ${moment(at)}` : `nulled ${moment(at)}, joined they showed ${showed} before`,
  notNulled: "no check recorded",
  noInstruments: "No instruments are recorded.",
  notChecked: "no check recorded",
  noAccuracy: "not stated: readings are taken as shown",
  photographsTitle: "Photographs",
  photographsHead: ["File", "Shows", "Taken", "First of SHA-256"],
  photographsIntro: "Photographs are kept with the inspection file and found by the hash of their bytes.",

  sourcesTitle: "Sources of the figures",
  sourcesIntro:
    "Where limits and factors come from and how well each is founded. A verdict that rests on a figure from memory says so where it stands.",
  sourcesHead: ["Source", "Edition", "Basis"],
  noSources: "No conclusion of this report rests on a published figure.",
  editionTitle: "About the edition",

  recipientsTitle: "For whoever receives this report",
  recipients: (edition: string): readonly string[] => [
    `The purpose of this report is to say how safe the fixed electrical installation was on the day, measured against ${edition}. Rules change; an older installation is not unsafe merely because of that. Each matter is classified by the danger it brings, and the reason stands beside it.`,
    "The report is for the person who ordered it and for whoever is responsible for the installation. Keep the original with the papers of the building. Give a copy to whoever lives or works there and to whoever does the work that follows, and hand it on to the next owner and the next inspector.",
    "Danger now (C1) was made safe as far as was agreed, if the report says so: that is not yet a repair. What could become dangerous (C2) should not wait for a convenient day. Where something could not be settled (FI), have it looked into without delay; until then nobody can say that it is safe. Improvements (C3) are worth doing when work is next done.",
    "Ask for a certificate for every repair and keep it with this report, naming the number of the observation. A new report is not needed only because something was put right.",
    "Parts listed as not seen were not judged. If damage or trouble points to one of them, have that part looked at.",
    "The law may ask more of a landlord or an employer than this outcome: dates for the work, copies for tenants and for the local authority, and in some nations further equipment. These duties run whatever the outcome is. “What the law asks” gives those that follow from what is recorded, as reminders and not as legal advice: ask somebody who knows the law of the place.",
    "Press the test button of every RCD twice a year; it should switch off. If anything gives a tingle, smells burnt or feels hot, switch it off, keep away and call an electrician. Have the installation inspected again by the date given, sooner if its use changes or water or fire reaches it.",
  ],
  cautionsTitle: "Cautions",
  printing:
    "Characters the print face does not have, or that would be invisible, appear as their code points, such as [U+202E]; the attached file has them as written.",

  signaturesTitle: "Declaration and signatures",
  conclusion: Object.freeze({
    stated: "Outcome as stated",
    condition: "General condition",
    next: "Next inspection",
    within: "Work within",
    days: (days: number) => `${counted(days, "day", "days")}, the day of the inspection as the first`,
    rule: "Readings near a limit",
    rules: Object.freeze({
      simple: "taken as they read",
      guarded: "held to the limit less the instrument's error",
    } satisfies Record<AcceptanceRule, string>),
    issue: "Issue",
  }),
  issue: (number: number, replaces: string | undefined) =>
    replaces === undefined
      ? `issue ${number}, the first`
      : `issue ${number}; it replaces issue ${number - 1} (statement ${replaces.slice(0, 16)})`,
  signedAs: Object.freeze({
    name: "Name",
    position: "Position",
    firm: "Firm",
    registration: "Registration",
    signed: "Signed",
  }),
  signedContent: (hash: string) => `content ${hash}`,
  contentNote:
    "“Content” is the beginning of the SHA-256 of what was signed, the inspection without its signatures: any later change gives another.",
  drawnSignature: (name: string) => `Signature drawn by ${name}`,
  notSigned: "Nobody has signed this content: a draft until somebody does",
  signatures:
    "Each person named below declares: I have used reasonable skill and care in what I did here, be it inspecting and testing or authorising for issue. What this report says, its schedules among it, is a true account of the condition in which the installation was found on the days named, within the extent agreed and the limitations stated.",
  attachmentsTitle: "Attached to this document",
  attachmentsHead: ["File", "What it is"],
  attachment: "The inspection file from which this report was made, unchanged: every reading as it was shown",
  workings:
    "The full working of every calculation, met or not, with the sources of its figures: a page for any browser",
});

/** A text of the inspector's own with a full stop at its end. */
function closed(words: string): string {
  return /[.!?…]$/u.test(words) ? words : `${words}.`;
}

/** ", 6 October 2026, 09:40 to 11:50", with both days where they differ. */
function spanned(first: string, last: string): string {
  if (first === last) return `, ${moment(first)}`;
  return `, ${moment(first)} to ${first.slice(0, 10) === last.slice(0, 10) ? last.slice(11, 16) : moment(last)}`;
}

function replied(reply: string): string {
  return reply === "" ? "" : `Reply: ${closed(reply)}`;
}

function sentence(words: string): string {
  const [first = "", ...rest] = words;
  return first.toUpperCase() + rest.join("");
}
