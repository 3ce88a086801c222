import type { Hazard, LayerState, Provision, Severity } from "@good-grounds/core";
import { calculationWords } from "./calculations-en.ts";
import { WORDS } from "./en.ts";

export const SEVERITY_WORDS: Readonly<Record<Severity, string>> = Object.freeze({
  none: "no classification",
  C3: "C3",
  C2: "C2",
  C1: "C1",
});

export const HAZARD: Readonly<Record<Hazard, string>> = Object.freeze({
  "contact-with-live-parts": "shock by contact with live parts",
  "shock-under-fault": "shock under fault",
  "burns-or-fire": "burns or fire",
  "mechanical-movement": "mechanical movement",
  "loss-of-supply": "loss of supply",
});

export const PROVISION: Readonly<Record<Provision, string>> = Object.freeze({
  insulation: "insulation",
  "barrier-or-enclosure": "barrier or enclosure",
  obstacle: "obstacle",
  "out-of-reach": "placing out of reach",
  "restricted-access": "restricted access",
  "fault-protection": "fault protection",
  "additional-protection": "additional protection",
  "equipotential-bonding": "bonding",
  "overcurrent-protection": "overcurrent protection",
  "thermal-protection": "protection against heat",
  isolation: "isolation",
  information: "information",
  surroundings: "surroundings",
});

const LAYER_STATE: Readonly<Record<LayerState, string>> = Object.freeze({
  gone: "does not hold",
  "by-one": "holds until one foreseeable event",
  sound: "holds whatever single event comes",
});

const list = (parts: readonly string[], last: string): string =>
  parts.length < 2 ? parts.join("") : `${parts.slice(0, -1).join(", ")} ${last} ${parts[parts.length - 1]}`;

const capital = (text: string): string => text.slice(0, 1).toUpperCase() + text.slice(1);

/** What is left between a hazard and a person, by the least and the most it can be: nothing, one layer, two or more. */
const LAYERS_LEFT: readonly string[] = [
  "nothing stands between",
  "nothing or one layer stands between",
  "nothing, one layer or more stand between",
  "",
  "one layer is left",
  "one layer or more is left",
  "",
  "",
  "two layers or more are left",
];

/** Sentences of a line of reasoning. */
export const REASONING = Object.freeze({
  follows: (what: string) => `Follows from the facts: ${what}`,
  possible: (parts: readonly string[]) => `Still possible: ${list(parts, "or")}`,
  derived: "derived, not decided: the person who signs decides",
  fi: "danger cannot be ruled out, and what would settle it could not be found out",
  atLeast: "C2 at the least; C1 is not ruled out and what would settle it could not be found out",
  noDanger:
    "C3 or no classification, nothing dangerous either way; which of them cannot be settled within the agreed extent",
  /** What follows while statements contradict each other: danger where they give it all the same, else nothing. */
  contradicted: (least: string | null) =>
    least === null
      ? "Nothing follows yet: what was stated cannot all be true"
      : `What was stated cannot all be true; until that is settled, ${least} at the least`,
  chosen: (what: string) => `Chosen by the inspector: ${what}`,
  choice: Object.freeze({
    none: "",
    same: "The choice is what follows from the facts.",
    allowed: "The choice is among what is possible, or follows from another position on a contested point.",
    differs: "The choice is not what follows from the facts recorded; the reason for it stands with the choice.",
  }),
  argument: "The argument",
  cannotBe: "Cannot all be true",
  /** A smallest set of statements to take back, and what is possible without them. */
  withdrawn: (questions: readonly string[], possible: string) =>
    `If this is taken back: ${list(questions, "and")} → ${possible}`,
  route: (route: string) => route,
  noRoute: (route: string) => `This route is not there: ${route}`,
  openRoute: (route: string) => `Whether this route is there is open: ${route}`,
  /** The count of layers left, of which two stand for two or more. */
  layersLeft: (least: number, most: number) => LAYERS_LEFT[least * 3 + most] ?? "",
  departs: (words: string) => `Short of the edition: ${words}`,
  alsoDeparts: (words: string) => `Short of the edition besides: ${words}`,
  /** Something that is danger whatever else is said, and the least that follows. */
  byItself: (words: string, least: string) => `${words}: danger whatever else is so → ${least}`,
  perhapsByItself: (words: string, least: string) => `Perhaps danger by itself: ${words} → ${least} if so`,
  atTheLeast: (severity: string) => (severity === "C1" ? "C1" : `${severity} at the least`),
  notNeeded: (route: string) => `Not asked, because it cannot change the answer: ${route}`,
  mayDepart: (words: string) => `Perhaps short of the edition: ${words}`,
  noRouteAtAll: "None of the routes to harm is there.",
  standsByItself: (words: string) => `${words}: no other answer takes that away`,
  noDeparture: "No departure from the edition is shown.",
  states: (states: readonly LayerState[]) =>
    `${states.length > 1 ? "not known: " : ""}${list(
      states.map((state) => LAYER_STATE[state]),
      "or",
    )}`,
  seen: WORDS.seen,
  measured: WORDS.measured,
  assumed: WORDS.assumed,
  published: WORDS.published,
  computed: WORDS.computed,
  notKnown: WORDS.notKnown,
  /** What the section of an opening shows, by the verdict on it. */
  openingShows: Object.freeze({
    met: "By geometry the jointed finger stays clear of the live part.",
    "not-met": "By geometry the jointed finger touches the live part.",
    "too-near": "Too near to say; try the finger with the part dead.",
    "not-known": "Not settled: more has to be known of the opening.",
    "not-applicable": "",
  }),
  position: "position",
  held: (question: string, words: string) => (words === "" ? question : `${question} Taken: ${words}`),
  notAsked: "not known",
  workedBy: (check: string) => `by ${calculationWords(check)}`,
  /** Something known that does not fit what the observation says; `source` is what knows it. */
  contradiction: (source: string, known: string, stated: string) =>
    `${capital(source)} says that ${known}. The observation says that ${stated}. Settle which is so.`,
  againstSubject: (source: string, known: string, taken: string, askedBy: string) =>
    `${capital(source)} says that ${known}. The subject of the observation takes it that ${taken}. Settle which is so; where the file is right, another subject is meant, such as ${askedBy}.`,
  beside: (source: string, known: string) => `Beside the limitation: ${source} says that ${known}`,
  differing: (said: readonly string[]) => `${capital(said.join("; "))}. Settle which of them is meant.`,
  says: (sources: readonly string[], clause: string) => `${list(sources, "and")} says that ${clause}`,
  byFile: (recorded: string) => `the inspection file (${recorded})`,
  byCheck: (check: string) => calculationWords(check),
  recordedAs: (recorded: string) => `as recorded (${recorded})`,
  toSettle: "To settle first",
  unfinished: "Figures that do not suffice",
  lacks: (asks: string, by: string, lacks: readonly string[]) =>
    lacks.length === 0
      ? `${asks} By these figures ${by} leaves it open.`
      : `${asks} For ${by} there is still missing: ${lacks.join("; ")}.`,
  stated: "stated",
  seeToSettle: "contradicted: see what to settle",
  whyNotWorse: (worse: string) => `Why not ${worse}`,
  whyNotBetter: (better: string) => `Why not ${better}`,
  holds: (route: string, layers: readonly string[]) => `${route} – still holding: ${list(layers, "and")}`,
  fails: (route: string, layers: readonly string[]) => `${route} – not holding: ${list(layers, "and")}`,
  oneLayer: (route: string) => `${route}: one foreseeable event is all it takes`,
  changes: "What would change it",
  change: (to: string, clauses: readonly string[]) => `to ${to} if ${list(clauses, "and")}`,
  more: (count: number) => `and ${count} more, see --json`,
  contested: "Competent inspectors differ",
  taken: "taken here",
  because: (why: string) => `because ${why}`,
  next: "Ask next",
  leaves: (value: string, possible: string) => `${value}: ${possible}`,
  cannotSettle: "Cannot be settled within the extent",
  remedies: "What would put it right, cheapest adequate first",
  after: (what: string) => `then ${what}`,
  client: "For the person who ordered the report",
  doneAboutIt: (done: string) => `When we came, this was found as written. Done about it before we left: ${done}`,
  couldNotFindOut: (what: readonly string[]) => `We could not find out ${list(what, "or")}.`,
  mustBeLookedAt: "It must be looked at soon.",
  regulations: (numbers: readonly string[]) => (numbers.length === 0 ? "" : ` (${numbers.join(", ")})`),
  noTopic: "No topic is named, so no line of reasoning stands behind the classification.",
  howToAnswer:
    "Type a value or its beginning, a quantity with its unit, or ? where it cannot be settled within the agreed extent. An empty line ends the questions.",
  notUnderstood: "That is none of the answers; type one of them, or the start of one.",
  list,
});

/** Groups of topics, in the order of a walk from the origin outwards. */
export const TOPIC_GROUP = Object.freeze({
  intake: "Intake and distributor's equipment",
  earthing: "Earthing and bonding",
  boards: "Boards",
  "residual-current": "RCDs",
  circuits: "Circuits",
  cables: "Cables",
  accessories: "Accessories and equipment",
  baths: "Rooms with a bath or shower",
  outdoors: "Outdoors",
  special: "Other special places",
  sources: "Other sources of supply",
  identification: "Notices and identification",
  fire: "Fire",
});
