import type { Source } from "../grounds/evidence.ts";
import type { Expression } from "./expression.ts";
import type { FactOf } from "./fact.ts";

/** Ways in which an installation hurts. */
export const HAZARDS = [
  "contact-with-live-parts",
  "shock-under-fault",
  "burns-or-fire",
  "mechanical-movement",
  "loss-of-supply",
] as const;
export type Hazard = (typeof HAZARDS)[number];

/** What stands between a hazard and a person. */
export const PROVISIONS = [
  "insulation",
  "barrier-or-enclosure",
  "obstacle",
  "out-of-reach",
  "restricted-access",
  "fault-protection",
  "additional-protection",
  "equipotential-bonding",
  "overcurrent-protection",
  "thermal-protection",
  "isolation",
  "information",
  "surroundings",
] as const;
export type Provision = (typeof PROVISIONS)[number];

/**
 * One layer between a hazard and a person. `gone`: it does not hold now. `sound`: it holds and no single foreseeable
 * event takes it away. Neither: it holds, and one foreseeable event would take it away.
 */
export interface Layer {
  readonly id: string;
  readonly provision: Provision;
  /** What it is here: "the cover of the consumer unit". */
  readonly words: string;
  readonly gone: Expression;
  readonly sound: Expression;
  readonly regulations?: readonly string[];
}

/** A route from a hazard to a person, and the layers in the way. */
export interface HarmPath {
  readonly id: string;
  readonly hazard: Hazard;
  /** How harm would come about, as a clause: "somebody touches the busbar through the gap". */
  readonly route: string;
  /** Whether the route is there at all. */
  readonly exists: Expression;
  readonly layers: readonly Layer[];
}

/** A way of falling short of the edition in force, whether or not anything can come of it. */
export interface Departure {
  readonly when: Expression;
  /** As a clause: "the enclosure is below IP2X". */
  readonly words: string;
  readonly regulations: readonly string[];
}

/**
 * A statement that is danger whatever else is said: live metal in reach, something hot or arcing now, an earth that is
 * open. The severity is at least `least` wherever `when` holds; no other answer takes that away, not even one that says
 * the thing is not there. Of two statements that cannot both be true the dangerous one stands until it is withdrawn.
 */
export interface Danger {
  readonly id: string;
  /** The least severity while it is so. */
  readonly least: "C1" | "C2";
  readonly when: Expression;
  /** As a clause: "the bond has been hot". */
  readonly words: string;
  readonly regulations: readonly string[];
}

/**
 * Statements about one thing that cannot all be true: an earth terminal of the supply that is used, in a system that has
 * none. A completion in which `when` holds is no completion. Where what was stated makes it certain, the statements
 * contradict each other: one of them has to be withdrawn, and until then nothing counts as less than any of them gives.
 */
export interface Contradiction {
  /** Speaks of facts only: a position is an opinion and contradicts no fact. */
  readonly when: Expression;
  /** What cannot be, as a clause: "a thing that is not there cannot be hot". */
  readonly words: string;
}

/** A matter on which competent inspectors differ. Positions are never averaged; the first is the more usual. */
export interface ContestedPoint {
  readonly question: string;
  readonly positions: Readonly<Record<string, Position>>;
}

export interface Position {
  /** What is held, as a clause. */
  readonly words: string;
  /** The fact or argument it rests on. */
  readonly because: string;
  readonly source?: Source;
}

/**
 * What is so of a thing, worked out from facts in one place for all rules that rest on it. Values run from best to worst;
 * each but the first has the rule under which it is so, and the worst whose rule holds is the state.
 */
export interface State {
  /** The thing it is a state of: "a live part". */
  readonly of: string;
  /** As a phrase that the words of a value complete: "what is around it" "keeps everybody off". */
  readonly words: string;
  readonly values: Readonly<Record<string, { readonly words: string; readonly when?: Expression }>>;
}

/** Everything the reasoner needs to know about one subject of observation. */
export interface Subject {
  readonly id: string;
  readonly facts: Readonly<Record<string, FactOf>>;
  readonly contested: Readonly<Record<string, ContestedPoint>>;
  readonly paths: readonly HarmPath[];
  readonly departures: readonly Departure[];
  /** What is worked out of facts and never asked, by name; none where left out. */
  readonly states?: Readonly<Record<string, State>>;
  /** Statements that are danger by themselves; none where left out. */
  readonly dangers?: readonly Danger[];
  /** Statements that cannot all be true; none where left out. */
  readonly contradictions?: readonly Contradiction[];
}

/** Severities that rules lead to, from least to most; FI is not among them: it says that something is not settled. */
export const SEVERITIES = ["none", "C3", "C2", "C1"] as const;
export type Severity = (typeof SEVERITIES)[number];
