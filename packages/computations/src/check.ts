import type { Conclusion, Evidence, Grade, Ground, Reckoner, Remark, Unit, Verdict } from "@good-grounds/core";
import type { Board, BondingConductor, Circuit, Installation, ResidualDevice } from "@good-grounds/inspection";
import type { Given, Needs } from "./need.ts";

/** What a check looks at. */
export interface Subjects {
  readonly circuit: Circuit;
  readonly board: Board;
  readonly supply: Installation;
  /** One RCD, whether a circuit's own or a board's. */
  readonly rcd: ResidualDevice;
  /** One main bonding conductor, or the part that would need one. */
  readonly bond: BondingConductor;
}

export type Scope = keyof Subjects;

/** The answer of `gather` where the question does not arise, with what shows that. */
export class DoesNotArise {
  readonly reason: string;
  readonly because: readonly Ground[];

  constructor(reason: string, because: readonly Ground[]) {
    this.reason = reason;
    this.because = because;
  }
}

/** A worked case of a computation: what is given in writing, and what must come out. Run by one test for all of them. */
export interface Example {
  readonly name: string;
  /** Needs by name, as text with units; a need left out is not known. */
  readonly given: Readonly<Record<string, string | readonly string[]>>;
  readonly verdict?: Verdict;
  /** How well the verdict has to be founded, where that is part of the case. */
  readonly grade?: Grade;
  /** Quantities that must appear in the result, by term id, in the coherent unit. */
  readonly values?: Readonly<Record<string, { readonly value: number; readonly within: number }>>;
  /** Ids of the terms and matters the result must name as missing. */
  readonly missing?: readonly string[];
  /** Where the expected figures come from: a publication, or the arithmetic written out. */
  readonly source: string;
}

interface Described<N extends Needs> {
  /** Stable name, kebab case, equal to the file's name. */
  readonly id: string;
  readonly title: string;
  /** The formula in the trade's symbols. */
  readonly formula: string;
  readonly regulations: readonly string[];
  readonly needs: N;
  readonly examples: readonly Example[];
}

/** A comparison with a limit: evidence is gathered from an inspection, and concluded on without looking at it again. */
export interface Check<S extends Scope = Scope, N extends Needs = Needs> extends Described<N> {
  readonly scope: S;
  /** Finds the evidence for one subject. */
  readonly gather: (subject: Subjects[S], installation: Installation) => Given<N> | DoesNotArise;
  /** Concludes from the evidence alone, so that it can be run with figures given by hand. */
  readonly conclude: (given: Given<N>, reckon: Reckoner) => Conclusion;
}

/** A computation without a verdict: an expected value, a factor, a figure read from a table. */
export interface Calculation<N extends Needs = Needs> extends Described<N> {
  readonly compute: (given: Given<N>, reckon: Reckoner) => Results;
}

export interface Results {
  readonly results: readonly Evidence<Unit>[];
  readonly remarks: readonly Remark[];
}

/** States a check; the type parameters follow from its scope and needs. */
export function check<S extends Scope, const N extends Needs>(definition: Check<S, N>): Check<S, N> {
  return Object.freeze(definition);
}

/** States a calculation. */
export function calculation<const N extends Needs>(definition: Calculation<N>): Calculation<N> {
  return Object.freeze(definition);
}

export function doesNotArise(reason: string, ...because: readonly Ground[]): DoesNotArise {
  return new DoesNotArise(reason, because);
}

const NO_JUDGEMENTS: Conclusion["beside"] = Object.freeze([]);
const NO_REMARKS: Conclusion["remarks"] = Object.freeze([]);

/** A conclusion; judgements beside it, remarks and the matters within it that facts may rest on are optional. */
export function concluded(
  judgement: Conclusion["judgement"],
  beside: Conclusion["beside"] = NO_JUDGEMENTS,
  remarks: Conclusion["remarks"] = NO_REMARKS,
  settles?: Conclusion["settles"],
): Conclusion {
  return settles === undefined ? { judgement, beside, remarks } : { judgement, beside, remarks, settles };
}
