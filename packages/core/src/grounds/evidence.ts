import type { Path } from "../issue/issue.ts";
import type { Quantity } from "../quantity/quantity.ts";
import type { Unit } from "../quantity/unit.ts";
import type { Bound } from "../quantity/written.ts";
import type { Matter, Term } from "../terms/term.ts";
import type { Verdict } from "../verdict/verdict.ts";
import type { ErrorGrade, ReadingError } from "./errors.ts";

/**
 * How well a figure is founded. `published`: read in the named publication or a page that reproduces it. `derived`:
 * computed from published figures by a formula that is given. `common-practice`: a habit of the trade without a source.
 * `memory`: recalled, to be checked against the standard; results that rest on it say so.
 */
export type Basis = "published" | "derived" | "common-practice" | "memory";

/** Where a figure or a rule comes from. */
export interface Source {
  /** Standard or publication, table or regulation: "BS 7671 Table 41.3". */
  readonly work: string;
  /** The edition or the editions it holds for. */
  readonly edition: string;
  readonly basis: Basis;
  /** For derived figures: the formula. */
  readonly formula?: string;
  /** What is not certain about it. */
  readonly doubt?: string;
}

/** How an instrument reading came about. Every part may be unrecorded. */
export interface Taken {
  readonly at?: string;
  readonly by?: string;
  readonly instrument?: string;
  readonly method?: string;
  readonly note?: string;
  /** What the leads may have added since they were nulled last, where that was recorded. */
  readonly leads?: LeadsSince;
}

/** Readings since the same nulling carry the same error of the leads. */
export interface LeadsSince {
  /** Tells this nulling from the others of the same instrument. */
  readonly since: string;
  /** Either way, Ω; left out where what had crept in was not recorded. */
  readonly half?: number;
}

/** Why something is not known. `absent`: nothing was recorded; the others were recorded as such, with a reason. */
export type Silence = "absent" | "limited" | "not-verified" | "not-applicable" | "not-tabulated";

interface Valued<K extends string, U extends Unit> {
  readonly kind: K;
  readonly term: Term<U>;
  readonly value: Quantity<U>;
  /** The band: the true value is taken to lie between `low` and `high`. Equal to `value` where it is exact. */
  readonly low: Quantity<U>;
  readonly high: Quantity<U>;
}

/** Seen on site or stated in the file: a rating on a label, a length on a drawing. */
export interface Seen<U extends Unit> extends Valued<"seen", U> {
  readonly detail: { readonly path: Path; readonly text: string };
  readonly from: readonly [];
}

/** Read off an instrument. The band comes from its errors: the stated accuracy or, without one, a usual instrument's. */
export interface Measured<U extends Unit> extends Valued<"measured", U> {
  readonly detail: {
    readonly path: Path;
    readonly text: string;
    readonly resolution: Quantity<U>;
    readonly bound: Bound;
    readonly accuracy: string | null;
    readonly grade: ErrorGrade;
    /** Its errors by cause; band, standard deviation and covariance all come from these. */
    readonly errors: readonly ReadingError[];
    readonly taken: Taken;
  };
  readonly from: readonly [];
}

/** A figure of a published table or a standard. */
export interface Published<U extends Unit> extends Valued<"published", U> {
  readonly detail: { readonly source: Source; readonly row: string };
  readonly from: readonly [];
}

/** Taken to be so, with the reason; always shown as an assumption. */
export interface Assumed<U extends Unit> extends Valued<"assumed", U> {
  readonly detail: { readonly why: string; readonly source?: Source };
  readonly from: readonly [];
}

/** Taken from physics within bounds that are stated: no figure of the thing itself, and shown as what it is. */
export interface Expected<U extends Unit> extends Valued<"expected", U> {
  readonly detail: { readonly why: string; readonly source?: Source };
  readonly from: readonly [];
}

/** Worked out from other evidence. */
export interface Computed<U extends Unit> extends Valued<"computed", U> {
  readonly detail: Operation;
  readonly from: readonly Ground[];
}

/** Not known. `value`, `low` and `high` are NaN and must not be read. */
export interface NotKnown<U extends Unit> extends Valued<"not-known", U> {
  readonly detail: { readonly path: Path; readonly silence: Silence; readonly reason: string };
  readonly from: readonly [];
}

/** Would be computed, but something it needs is not known. The lines of the computation are kept. */
export interface Lacking<U extends Unit> extends Valued<"lacking", U> {
  readonly detail: Operation;
  readonly from: readonly Ground[];
}

/** The operations of the arithmetic; each is one line of an argument. */
export type Operation =
  | "sum"
  | "difference"
  | "product"
  | "quotient"
  | "less-one"
  | "square"
  | "square-root"
  | "largest"
  | "smallest"
  | "in-parallel"
  | "let-through"
  | "looked-up"
  | "one-of"
  | "at-most-of"
  | "between"
  | "same";

/** A quantity with a value and a band, whatever it rests on. */
export type Known<U extends Unit> = Seen<U> | Measured<U> | Published<U> | Expected<U> | Assumed<U> | Computed<U>;

/** A quantity without a value. */
export type Unsettled<U extends Unit> = NotKnown<U> | Lacking<U>;

/** A quantity, known or not. */
export type Evidence<U extends Unit> = Known<U> | Unsettled<U>;

/** One of a few words, or yes/no, and what it rests on. */
export type Fact<W extends string | boolean> = KnownFact<W> | UnknownFact;

export interface KnownFact<W extends string | boolean> {
  readonly kind: "fact";
  readonly matter: Matter;
  readonly word: W;
  readonly how: "seen" | "measured" | "assumed" | "published";
  readonly detail: { readonly path: Path; readonly text: string; readonly why?: string };
}

export interface UnknownFact {
  readonly kind: "fact-not-known";
  readonly matter: Matter;
  readonly detail: { readonly path: Path; readonly silence: Silence; readonly reason: string };
}

/**
 * How two quantities are compared. `at-most` and `at-least` hold a quantity against a limit. The others ask whether two
 * accounts of the same thing can both be true: met where the bands meet, not met where they lie apart. `not-below` and
 * `not-above` mind one side only.
 */
export type Relation = "at-most" | "at-least" | "agrees-with" | "not-below" | "not-above";

/** How far apart two accounts of one thing are by what they may be out by. */
export interface Apart {
  /** `not-met`: a clear misfit. `too-near`: a possible one. */
  readonly verdict: "met" | "not-met" | "too-near";
  /** Standard deviation of their difference, shared errors cancelled. */
  readonly standard: number;
  /** How often errors alone bring sound accounts this far apart or further. */
  readonly chance: number;
  /** What is left to a clear misfit, as a part of the difference that would be one; negative beyond it. */
  readonly margin: number;
}

/**
 * How well what is concluded is founded. `proven`: on readings and on published or makers' figures. `expected`: on physics
 * within stated bounds as well; a figure of the thing itself would prove it. `assumed`: on something taken to be so.
 */
export type Grade = "proven" | "expected" | "assumed";

/** The grade of a judgement, which decides with the verdict: what is only expected is never taken for proven. */
interface Graded {
  readonly grade: Exclude<Grade, "assumed">;
}

/** A comparison of a quantity with its limit, or with another account of itself. */
export interface Compared extends Graded {
  readonly kind: "compared";
  readonly matter: Matter;
  readonly relation: Relation;
  readonly verdict: Verdict;
  /** What the values alone say, without their bands. */
  readonly asRead: Verdict;
  /**
   * How far from the limit: the part of it that is left (at most), the part of the value that lies above it (at least),
   * negative by how far beyond or short of it. 0 at the limit; NaN where there is none.
   */
  readonly margin: number;
  /** For two accounts of one thing: how far apart they are by what they may be out by. */
  readonly apart?: Apart;
  readonly from: readonly Ground[];
}

/** Several judgements taken together. */
export interface Combined extends Graded {
  readonly kind: "combined";
  readonly matter: Matter;
  readonly rule: "all" | "any";
  readonly verdict: Verdict;
  readonly asRead: Verdict;
  readonly margin: number;
  readonly from: readonly Ground[];
}

/** A judgement that follows from facts rather than from a comparison of numbers. */
export interface Settled extends Graded {
  readonly kind: "settled";
  readonly matter: Matter;
  readonly verdict: Verdict;
  readonly asRead: Verdict;
  readonly margin: number;
  /** Why, in a clause; empty where the facts speak for themselves. */
  readonly why: string;
  readonly from: readonly Ground[];
}

export type Judgement = Compared | Combined | Settled;

/** Any node of the tree that carries a conclusion down to what it rests on. */
export type Ground = Evidence<Unit> | Fact<string | boolean> | Judgement;

/** Tells whether a quantity has a value. */
export function isKnown<U extends Unit>(evidence: Evidence<U>): evidence is Known<U> {
  return evidence.kind !== "not-known" && evidence.kind !== "lacking";
}

/** Tells whether a quantity has one value rather than a range: only then can a table be asked for its row. */
export function isExact(evidence: Evidence<Unit>): boolean {
  return isKnown(evidence) && evidence.low === evidence.high;
}

/** Tells whether a fact is known. */
export function isKnownFact<W extends string | boolean>(fact: Fact<W>): fact is KnownFact<W> {
  return fact.kind === "fact";
}
