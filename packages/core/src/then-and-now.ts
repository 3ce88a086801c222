import type { Evidence } from "./grounds/evidence.ts";
import type { Path } from "./issue/issue.ts";
import type { Term } from "./terms/term.ts";

/** What two circuits are compared by when they are matched across inspections. */
export type MatchTrait =
  | "words"
  | "designation"
  | "board"
  | "load"
  | "shape"
  | "phases"
  | "standard"
  | "type"
  | "rated"
  | "line"
  | "cpc"
  | "points"
  | "length"
  | "readings";

/** What one trait speaks for two circuits being the same (above 0) or against: natural logarithm of odds. */
export interface TraitWeight {
  readonly trait: MatchTrait;
  readonly weight: number;
}

/** A circuit of one of the files. */
export interface CircuitAt {
  /** Place in its own file. */
  readonly path: Path;
  readonly board: string;
  readonly id: string;
  readonly designation: string;
  readonly description: string;
}

/** Readings that are compared with their earlier selves, by their names in the inspection file. */
export type ComparedReading =
  | "r1"
  | "rn"
  | "r2"
  | "r1r2"
  | "r2Only"
  | "insulationLiveLive"
  | "insulationLiveEarth"
  | "zs"
  | "ze"
  | "zdb"
  | "ra"
  | "lineNeutralLoop"
  | "bonding";

/** `within`: no more than repeating the test may give. `cannot-say`: what would settle it is not known. */
export type ChangeVerdict = "within" | "up" | "down" | "cannot-say";

/** Why a change cannot be told. */
export type ChangeSilence =
  | "not-taken-then"
  | "not-taken-now"
  | "not-taken"
  | "display-ended"
  | "supply-not-known"
  | "test-voltages-differ";

/**
 * What a comparison rests on beside the readings. `temperature-assumed`: conductor temperature not recorded.
 * `one-temperature`: one stated for the whole job. `accuracy-assumed`: the ceiling of the instrument standard.
 * `leads-assumed`: what nulling left of the leads. `same-instrument`: what is common to both readings cancels.
 * `surroundings`: moisture, warmth or season move the reading; their spread is assumed. `supply-taken-out`: the loop
 * before the circuit is subtracted on both sides. `as-a-whole`: it could not be, but the loop as a whole has not changed.
 */
export type ChangeNote =
  | "temperature-assumed"
  | "one-temperature"
  | "accuracy-assumed"
  | "leads-assumed"
  | "same-instrument"
  | "surroundings"
  | "supply-taken-out"
  | "as-a-whole";

/** One reading, then and now. Continuity at 20 °C; of Zs the part of the circuit at 20 °C. */
export interface ReadingChange {
  readonly reading: ComparedReading;
  /** What it is about where the reading alone does not say, such as the part that is bonded; else empty. */
  readonly about: string;
  readonly past: Evidence<"ohm">;
  readonly now: Evidence<"ohm">;
  readonly change: ChangeVerdict;
  readonly why: ChangeSilence | null;
  /** `difference`: `amount` and `standard` are ohms, now less then. `ratio`: natural logarithms of now over then. */
  readonly scale: "difference" | "ratio";
  /** The least change that both readings allow; NaN where nothing was compared. */
  readonly amount: number;
  /** Standard uncertainty of the amount. */
  readonly standard: number;
  /** Chance that readings of something unchanged differ by so much, either way; NaN where nothing was compared. */
  readonly chance: number;
  readonly notes: readonly ChangeNote[];
}

/** Circuits of both files held to be the same: one and one, or one and its parts. */
export interface MatchedCircuits {
  readonly kind: "same" | "split" | "merged";
  readonly past: readonly CircuitAt[];
  readonly now: readonly CircuitAt[];
  /** 0 to 1. */
  readonly confidence: number;
  readonly because: readonly TraitWeight[];
  /** Empty for parts: their readings are those of other conductors. */
  readonly readings: readonly ReadingChange[];
}

/** The present inspection against one earlier one. */
export interface AgainstEarlier {
  readonly id: string;
  readonly inspectedOn: string;
  /** The address of its premises is written otherwise than that of the present file. */
  readonly otherAddress: boolean;
  /** Too many circuits: only names were compared. */
  readonly byNameOnly: boolean;
  readonly circuits: readonly MatchedCircuits[];
  readonly unsettled: readonly { readonly past: readonly CircuitAt[]; readonly now: readonly CircuitAt[] }[];
  readonly onlyThen: readonly CircuitAt[];
  readonly onlyNow: readonly CircuitAt[];
  readonly supply: readonly ReadingChange[];
  readonly boards: readonly {
    readonly path: Path;
    readonly past: string;
    readonly now: string;
    readonly readings: readonly ReadingChange[];
  }[];
}

/** A point of a trend. */
export interface TrendPoint {
  readonly on: string;
  /** Ω, as the display showed it. */
  readonly value: number;
  readonly text: string;
  /** `above`: the display ended at the value, and the true one lies beyond. */
  readonly bound: "exact" | "above" | "below";
}

/** What a line through the readings says for a day, Ω. */
export interface Projected {
  readonly on: string;
  readonly value: number;
  /** Within this band the next reading is expected; 0 and ∞ where it has no end. */
  readonly low: number;
  readonly high: number;
}

/** Days on which a limit is reached: at the earliest by the band, by the line itself, and at the latest by the band. */
export interface Crossing {
  readonly limit: number;
  readonly earliest: string;
  readonly expected: string | null;
  readonly latest: string | null;
}

/** Readings of one thing over the years on a logarithmic scale, and where they lead. */
export interface Trend {
  /** Circuit or supply in the present file. */
  readonly path: Path;
  readonly reading: "insulationLiveLive" | "insulationLiveEarth" | "ra";
  readonly term: Term<"ohm">;
  /** Oldest first, the present one last. */
  readonly points: readonly TrendPoint[];
  /** Factor per year with its band; null where the readings leave it open. */
  readonly perYear: { readonly value: number; readonly low: number; readonly high: number } | null;
  /** `falling` or `rising` where the band of the factor excludes 1. */
  readonly direction: "falling" | "rising" | "not-told";
  /** Values read on two days only: a change, and no forecast. */
  readonly twoPoints: boolean;
  /**
   * From the day of the present inspection to the next one; empty where no next one is stated, no band can be given, or
   * values were read on fewer than three days.
   */
  readonly projected: readonly Projected[];
  readonly limit: Evidence<"ohm">;
  readonly worse: "falling" | "rising";
  /** Null where the limit is not reached by the band before the next inspection. */
  readonly crossing: Crossing | null;
}

/** The present inspection beside earlier ones. */
export interface ThenAndNow {
  /** A change is called one where chance alone gives as much less often than this. */
  readonly level: number;
  /** Assurance of the bands of trends. */
  readonly assurance: number;
  readonly nextOn: string | null;
  /** Oldest first. */
  readonly earlier: readonly AgainstEarlier[];
  readonly trends: readonly Trend[];
}
