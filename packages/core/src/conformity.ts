import type { Relation } from "./grounds/evidence.ts";
import type { Path } from "./issue/issue.ts";
import type { Unit } from "./quantity/unit.ts";
import type { Matter, Term } from "./terms/term.ts";
import type { Verdict } from "./verdict/verdict.ts";
import type { AcceptanceRule } from "./vocabulary/acceptance.ts";

/**
 * Causes of doubt. `gain`: the part of an instrument's error that is the same part of every reading on one range.
 * `reading`: the rest of its accuracy, new with every reading. `resolution`: what lies between two digits as written.
 * `leads`: what the nulling of the leads left or what crept in since. `contact`: what contacts of probes add. `range`: a value known only between two limits.
 */
export type ErrorKind = "gain" | "reading" | "resolution" | "leads" | "contact" | "range";

/** One cause of doubt in a comparison and what it adds to the difference that is compared. */
export interface ErrorSource {
  readonly kind: ErrorKind;
  /** The reading or value it belongs to; of a cause that several share, the first one met. */
  readonly term: Term;
  /** Where in the file that value stands, or null where it stands in no file. */
  readonly place: Path | null;
  /** How many values of the comparison it acts on. */
  readonly values: number;
  /** The instrument's id, or null where none is named or the cause is no instrument. */
  readonly instrument: string | null;
  /** Standard uncertainty it adds, in the unit of the comparison. */
  readonly contribution: number;
  /** The part of the combined variance that is due to it, 0 to 1. */
  readonly share: number;
}

/**
 * What the result rests on beside what was read. `accuracy-not-stated`: the greatest operating uncertainty the
 * instrument standard allows was taken. `no-ceiling`: nothing is stated and no standard sets a ceiling; only the digits
 * count. `leads-assumed`: what nulling left was not recorded and is assumed. `ranges`: values known only between limits
 * take part. `open-ended`: a display at the end of its range takes part. `curved`: the errors do not act in proportion,
 * so that no probability is given and the bands decide. `agreement-apart`: agreements among the parts are decided but
 * have no share in the probability.
 */
export type ConformityNote =
  | "accuracy-not-stated"
  | "no-ceiling"
  | "leads-assumed"
  | "ranges"
  | "open-ended"
  | "curved"
  | "agreement-apart";

/** One comparison with its doubt. */
export interface ComparedConformity {
  readonly matter: Matter;
  readonly relation: Relation;
  readonly unit: Unit;
  /** What is in hand: limit − value (at most), value − limit (at least), or one account less the other. */
  readonly difference: number;
  /** Combined standard uncertainty of the difference from the instruments; ranges are apart, in `lowest` and `highest`. */
  readonly standard: number;
  /** Expanded uncertainty, k = 2: the guard band. */
  readonly expanded: number;
  /**
   * For a limit: the probability that it is met, every value of a range being equally likely. For an agreement: how
   * often the errors alone would bring the two accounts this far apart or further. Null where none can be given.
   */
  readonly probability: number | null;
  /** The probability with every range at its worst and at its best. */
  readonly lowest: number;
  readonly highest: number;
  readonly decision: Readonly<Record<AcceptanceRule, Verdict>>;
  readonly notes: readonly ConformityNote[];
  /** Largest contribution first. */
  readonly budget: readonly ErrorSource[];
}

/** How sure a judgement is, and what it comes to under each rule of decision. */
export interface Conformity {
  /** `limit`: probability that the limits are met. `agreement`: chance of the difference. `facts`: no number decides. */
  readonly kind: "limit" | "agreement" | "facts";
  /** Several comparisons together give the least it can be, however they hang together. */
  readonly probability: number | null;
  readonly lowest: number;
  readonly highest: number;
  /** The rule that was chosen. */
  readonly rule: AcceptanceRule;
  readonly decision: Readonly<Record<AcceptanceRule, Verdict>>;
  readonly notes: readonly ConformityNote[];
  /** The comparison that decides; null where facts do. */
  readonly deciding: ComparedConformity | null;
}
