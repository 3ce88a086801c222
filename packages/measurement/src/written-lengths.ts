import {
  type Evidence,
  type Fact,
  fact,
  isExact,
  isKnown,
  isKnownFact,
  type LengthFound,
  TERM,
} from "@good-grounds/core";
import { type Circuit, type Installation, MATTER } from "@good-grounds/inspection";
import { conductorResistance } from "@good-grounds/tables";
import { isConductorOfTable } from "./cable.ts";
import { CONDUCTOR_TOLERANCE, testFactor } from "./conductor.ts";
import { doubtedOf, standardOf } from "./doubted.ts";
import { LENGTH_DOUBT } from "./length.ts";
import { normalDensity } from "./normal.ts";

/**
 * How a length of a job was found. Where nobody wrote it down, the other circuits of the job tell: whoever wrote lengths
 * that their conductors bear out writes estimates, and whoever wrote others guesses. A length is then taken as estimated
 * where the others are `ENOUGH` times likelier as estimates than as guesses, and as of unknown origin where they are not,
 * or are too few to tell: where most lengths were left blank, none was taken with care. A circuit by itself stays as it is, as
 * figures given by hand do. Its own reading has no voice: a joint would make its length a guess and so explain itself. Its
 * figure has: a guess is mostly a round one.
 */
export function lengthFoundIn(circuit: Circuit, installation: Installation): Fact<LengthFound> {
  const { length, lengthFound } = circuit.cable;
  if (isKnownFact(lengthFound) || !isExact(length) || installation.circuits.length < 2) return lengthFound;
  let weights = WEIGHTS.get(installation);
  if (weights === undefined) {
    weights = weightsOf(installation);
    WEIGHTS.set(installation, weights);
  }
  const others = weights.all - (weights.of.get(circuit) ?? 0);
  return others + byItsFigure(length) >= ENOUGH ? AS_ESTIMATED : AS_GUESSED;
}

/** 20 to 1. */
const ENOUGH = Math.log(20);

const AS_ESTIMATED = fact<LengthFound>(
  MATTER.lengthFound,
  "estimated",
  [],
  "not said; the readings of other circuits bear their written lengths out",
  "assumed",
);
const AS_GUESSED = fact<LengthFound>(
  MATTER.lengthFound,
  "unknown",
  [],
  "not said; the readings of other circuits do not bear their written lengths out, or are too few to tell",
  "assumed",
);

interface Weights {
  /** Logarithm of how much likelier the lengths of all circuits are as estimates than as guesses. */
  readonly all: number;
  readonly of: ReadonlyMap<Circuit, number>;
}

/** Worked out once for a job: it is asked by every circuit. */
const WEIGHTS = new WeakMap<Installation, Weights>();

function weightsOf({ boards }: Installation): Weights {
  const of = new Map<Circuit, number>();
  let all = 0;
  for (const { circuits } of boards) {
    for (const circuit of circuits) {
      const weight = weightOf(circuit);
      of.set(circuit, weight);
      all += weight;
    }
  }
  return { all, of };
}

/** What conductors differ by beside their length: 4 % together, as a standard deviation. */
const OF_CONDUCTORS = 0.04;
/** One circuit in so many has something else the matter, and then says nothing of its length. */
const OTHERWISE = 0.05;
/** Density of a reading that has nothing to do with its length: anything from nothing to twice as much. */
const ANYTHING = 0.5;

/** Logarithm of how much likelier a circuit's length is as an estimate than as a guess; 0 where it says nothing. */
function weightOf(circuit: Circuit): number {
  const { length, lengthFound } = circuit.cable;
  if (isKnownFact(lengthFound) || !isExact(length) || !isKnown(length) || !(length.value > 0)) return 0;
  const read = throughout(circuit);
  if (read === undefined) return 0;
  const { reading, perMetre } = read;
  const doubted = doubtedOf(reading);
  if (doubted === undefined || doubted.open !== 0) return 0;
  const expected = perMetre * length.value;
  const off = doubted.value / expected - 1;
  const beside = Math.hypot(standardOf(doubted) / expected, OF_CONDUCTORS);
  const density = (found: LengthFound) => {
    const { part, metres } = LENGTH_DOUBT[found];
    const spread = Math.hypot(beside, part / ROOT_3, metres / (ROOT_3 * length.value));
    return (1 - OTHERWISE) * (normalDensity(off / spread) / spread) + OTHERWISE * ANYTHING;
  };
  return Math.log(density("estimated") / density("unknown")) + byItsFigure(length);
}

const ROOT_3 = Math.sqrt(3);

/** How often a length from 10 m on is written in steps of five metres: where it was guessed, and where it was estimated. */
const ROUND = Object.freeze({ guessed: 0.8, estimated: 0.6 });
const STEP = 5;

/** What the figure of a length says by being round or not, as a logarithm. Habits of writing, without a source. */
function byItsFigure({ value }: Evidence<"metre">): number {
  if (!(value >= 2 * STEP)) return 0;
  const { guessed, estimated } = ROUND;
  return value % STEP === 0 ? Math.log(estimated / guessed) : Math.log((1 - estimated) / (1 - guessed));
}

/** The reading that goes along the whole of a cable, and what a metre of it is expected to add, Ω. */
function throughout(circuit: Circuit): { readonly reading: Evidence<"ohm">; readonly perMetre: number } | undefined {
  const { cable, readings, shape } = circuit;
  const { material, line, cpc, cpcArrangement } = cable;
  if (!isKnownFact(material) || !isExact(line)) return undefined;
  const warmth = testFactor(readings.temperature);
  if (!isKnown(warmth)) return undefined;
  const factor = CONDUCTOR_TOLERANCE.value * ((warmth.low + warmth.high) / 2);
  const ofLine = conductorResistance(TERM.linePerMetre, line.value, material.word);
  if (!isKnown(ofLine)) return undefined;
  if (isKnownFact(shape) && shape.word === "ring") return { reading: readings.r1, perMetre: ofLine.value * factor };
  if (!isConductorOfTable(cpcArrangement) || !isExact(cpc)) return undefined;
  const ofCpc = conductorResistance(TERM.cpcPerMetre, cpc.value, material.word);
  if (!isKnown(ofCpc)) return undefined;
  return { reading: readings.r1r2, perMetre: (ofLine.value + ofCpc.value) * factor };
}
