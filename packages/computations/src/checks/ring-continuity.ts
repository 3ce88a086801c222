import {
  assumed,
  CONDUCTOR_MATERIALS,
  type Compared,
  type Evidence,
  isKnown,
  isKnownFact,
  type Judgement,
  LENGTH_FOUND,
  type Reckoner,
  type Remark,
  TERM,
} from "@good-grounds/core";
import { MATTER } from "@good-grounds/inspection";
import {
  agreement,
  BETWEEN_CORES,
  CONDUCTOR_TOLERANCE,
  cableExpectation,
  type Doubted,
  doubtedOf,
  exactly,
  lengthFoundIn,
  lengthWithin,
  parallelOf,
  perMetre,
  productOf,
  sumOf,
  testFactor,
  timesOf,
} from "@good-grounds/measurement";
import { check, concluded, doesNotArise } from "../check.ts";
import { POSSIBLE_MISFIT } from "../circuits/possible-misfit.ts";
import { QUESTION } from "../matters.ts";
import { asksQuantities, asksQuantity, asksWord, type Given } from "../need.ts";

const needs = {
  r1: asksQuantity(TERM.ringLine, "0.44 Ω"),
  rn: asksQuantity(TERM.ringNeutral, "0.44 Ω"),
  r2: asksQuantity(TERM.ringCpc, "0.73 Ω"),
  crossLineNeutral: asksQuantities(TERM.ringCrossLineNeutral, "0.22 Ω, one for each point"),
  crossLineCpc: asksQuantities(TERM.ringCrossLineCpc, "0.29 Ω, one for each point"),
  r1r2: asksQuantity(TERM.measuredR1R2, "0.29 Ω"),
  line: asksQuantity(TERM.lineArea, "2.5 mm²"),
  cpc: asksQuantity(TERM.cpcArea, "1.5 mm²"),
  material: asksWord(MATTER.material, CONDUCTOR_MATERIALS),
  length: asksQuantity(TERM.length, "60 m"),
  lengthFound: asksWord(MATTER.lengthFound, LENGTH_FOUND, "estimated where it is not said"),
  temperature: asksQuantity(TERM.testTemperature, "20 °C"),
};

type Ring = Given<typeof needs>;

/**
 * Whether the readings are those of one sound ring (643.2.1). r1, rn, r2 end to end in Ω; cross-connected readings in Ω
 * at each point. Line and neutral agree; r2 fits r1 by the conductors' resistances; both fit the length where it is
 * known. With line and neutral of equal size every L–N reading is (r1 + rn)/4; the L–cpc reading rises from
 * r1·r2/(r1 + r2) beside the board to (r1 + r2)/4 half way round. A point that reads lower cannot be explained; one that
 * reads higher may be a spur and is named without being held against the ring. All is held against the errors between the
 * readings, those of one meter shared: a clear misfit is not met, a possible one too near to call.
 */
export const ringContinuity = check({
  id: "ring-continuity",
  scope: "circuit",
  title: "Ring final circuit continuous and whole",
  formula: "r1 ≈ rn; r2 ≈ r1·r(cpc)/r(line); R(L-N) ≈ (r1 + rn)/4; r1·r2/(r1 + r2) ≤ R(L-cpc) ≤ (r1 + r2)/4",
  regulations: ["643.2.1", "433.1.204"],
  needs,
  gather(circuit, installation) {
    const { shape, readings, cable } = circuit;
    if (isKnownFact(shape) && shape.word !== "ring") return doesNotArise("not a ring final circuit", shape);
    return {
      r1: readings.r1,
      rn: readings.rn,
      r2: readings.r2,
      crossLineNeutral: readings.crossLineNeutral.map((point) => point.reading),
      crossLineCpc: readings.crossLineCpc.map((point) => point.reading),
      r1r2: readings.r1r2,
      line: cable.line,
      cpc: cable.cpc,
      material: cable.material,
      length: cable.length,
      lengthFound: lengthFoundIn(circuit, installation),
      temperature: readings.temperature,
    };
  },
  conclude(ring, reckon) {
    const judgement = reckon.all(
      QUESTION.ringSound,
      legsAgree(ring, reckon),
      cpcFits(ring, reckon),
      ...lengthFits(ring, reckon),
      ...lineNeutralPoints(ring, reckon),
      ...lineCpcPoints(ring, reckon),
      ...furthest(ring, reckon),
    );
    return concluded(
      judgement,
      reckon.beside(() => habit(ring, reckon)),
      remarks(ring, judgement, reckon),
    );
  },
  examples: [
    {
      name: "60 m of 2.5/1.5 mm²",
      given: {
        r1: "0.44 Ω to 0.45 Ω",
        rn: "0.44 Ω to 0.45 Ω",
        r2: "0.72 Ω to 0.74 Ω",
        crossLineNeutral: ["0.22 Ω to 0.23 Ω", "0.22 Ω to 0.23 Ω"],
        crossLineCpc: ["0.27 Ω to 0.28 Ω", "0.29 Ω to 0.30 Ω"],
        line: "2.5 mm²",
        cpc: "1.5 mm²",
        material: "copper",
        length: "60 m",
        temperature: "20 °C",
      },
      verdict: "met",
      source: "BS EN 60228: 7.41 mΩ/m × 60 m = 0.4446 Ω, 12.1 mΩ/m × 60 m = 0.726 Ω; quarters 0.222 and 0.293 Ω",
    },
    {
      name: "line conductor open",
      given: {
        r1: ">99.9 Ω",
        rn: "0.44 Ω to 0.45 Ω",
        r2: "0.72 Ω to 0.74 Ω",
        line: "2.5 mm²",
        cpc: "1.5 mm²",
        material: "copper",
      },
      verdict: "not-met",
      source: "a ring end to end cannot read open; BS 7671 643.2.1",
    },
    {
      name: "a bridge makes the ends read too short for the length",
      given: {
        r1: "0.25 Ω",
        rn: "0.25 Ω",
        r2: "0.41 Ω",
        line: "2.5 mm²",
        cpc: "1.5 mm²",
        material: "copper",
        length: "62 m",
        temperature: "12 °C",
      },
      verdict: "not-met",
      source: "arithmetic: 7.41 mΩ/m × 62 m × 0.968 = 0.445 Ω, less at most 8 %",
    },
    {
      name: "neutral not read",
      given: { r1: "0.44 Ω", r2: "0.72 Ω", line: "2.5 mm²", cpc: "1.5 mm²", material: "copper" },
      verdict: "not-known",
      missing: ["ring-rn"],
      source: "an input that is missing leaves the comparison open",
    },
  ],
});

/** A resistance as it is shown, with what it may be out by. */
interface Account {
  readonly shown: Evidence<"ohm">;
  readonly doubted: Doubted | undefined;
}

const read = (reading: Evidence<"ohm">): Account => ({ shown: reading, doubted: doubtedOf(reading) });

/** A value made of two, where both are known. */
function both(a: Account, b: Account, make: (a: Doubted, b: Doubted) => Doubted): Doubted | undefined {
  return a.doubted === undefined || b.doubted === undefined ? undefined : make(a.doubted, b.doubted);
}

const CORES = doubtedOf(BETWEEN_CORES) ?? exactly(1);

function legsAgree({ r1, rn }: Ring, reckon: Reckoner): Compared {
  const ofNeutral = read(rn);
  const expected = {
    shown: reckon.product(TERM.expectedEnd, rn, BETWEEN_CORES),
    doubted: ofNeutral.doubted && productOf(ofNeutral.doubted, CORES),
  };
  return agreement(reckon, QUESTION.ringLegsAgree, read(r1), expected);
}

function cpcFits({ r1, r2, line, cpc, material }: Ring, reckon: Reckoner): Compared {
  const ratio = reckon.quotient(
    TERM.ringRatio,
    perMetre(TERM.cpcPerMetre, cpc, material, reckon),
    perMetre(TERM.linePerMetre, line, material, reckon),
  );
  const bySize = reckon.product(TERM.expectedRingCpc, r1, ratio);
  const { doubted } = read(r1);
  const expected = {
    shown: reckon.product(TERM.expectedRingCpc, bySize, BETWEEN_CORES),
    doubted: doubted && isKnown(ratio) ? productOf(timesOf(ratio.value, doubted), CORES) : undefined,
  };
  return agreement(reckon, QUESTION.ringCpcFits, read(r2), expected);
}

/** Known length: each end-to-end resistance against r·L. An unknown length leaves these questions out, for they are extra. */
function lengthFits(ring: Ring, reckon: Reckoner): readonly Compared[] {
  const { temperature, material } = ring;
  if (!isKnown(ring.length)) return [];
  const length = lengthWithin(ring.length, ring.lengthFound);
  const { core } = cableExpectation(ring);
  const fit = (end: Evidence<"ohm">, area: Evidence<"square-millimetre">, expected: Doubted | undefined) => {
    const perLength = perMetre(TERM.conductorPerMetre, area, material, reckon);
    const at20 = reckon.product(TERM.expectedEnd, perLength, length);
    const greatest = reckon.product(TERM.expectedEnd, at20, testFactor(temperature));
    const shown = reckon.product(TERM.expectedEnd, greatest, CONDUCTOR_TOLERANCE);
    return agreement(reckon, QUESTION.ringLengthFits, read(end), { shown, doubted: expected });
  };
  return [fit(ring.r1, ring.line, core.line?.whole), fit(ring.r2, ring.cpc, core.cpc?.whole)];
}

function lineNeutralPoints({ r1, rn, crossLineNeutral }: Ring, reckon: Reckoner): readonly Compared[] {
  if (crossLineNeutral.length === 0) return [];
  const quarter = quarterOf(r1, rn, reckon);
  return crossLineNeutral.map((reading) =>
    agreement(reckon, QUESTION.ringPointLineNeutral, read(reading), quarter, "not-below"),
  );
}

function lineCpcPoints({ r1, r2, crossLineCpc }: Ring, reckon: Reckoner): readonly Compared[] {
  if (crossLineCpc.length === 0) return [];
  const nearest = nearestOf(r1, r2, reckon);
  return crossLineCpc.map((reading) =>
    agreement(reckon, QUESTION.ringPointLineCpc, read(reading), nearest, "not-below"),
  );
}

function furthest({ r1, r2, r1r2 }: Ring, reckon: Reckoner): readonly Compared[] {
  if (!isKnown(r1r2)) return [];
  return [agreement(reckon, QUESTION.ringFurthest, read(r1r2), nearestOf(r1, r2, reckon), "not-below")];
}

function quarterOf(a: Evidence<"ohm">, b: Evidence<"ohm">, reckon: Reckoner): Account {
  return {
    shown: reckon.product(TERM.ringQuarter, reckon.sum(TERM.ringHalf, a, b), QUARTER),
    doubted: both(read(a), read(b), (x, y) => timesOf(0.25, sumOf(x, y))),
  };
}

/** Beside the board: line one way and protective conductor the other, in parallel. */
function nearestOf(a: Evidence<"ohm">, b: Evidence<"ohm">, reckon: Reckoner): Account {
  return {
    shown: reckon.inParallel(TERM.ringNearEnd, [a, b]),
    doubted: both(read(a), read(b), parallelOf),
  };
}

const QUARTER = assumed(TERM.quarter, 0.25, "two equal halves of the ring in parallel, there and back");

/** The 0.05 Ω habit, shown beside: it ignores the length of the ring and the instrument. */
function habit({ r1, rn }: Ring, reckon: Reckoner): readonly Judgement[] {
  const apart = reckon.difference(
    TERM.resistanceDifference,
    reckon.largest(TERM.resistance, r1, rn),
    reckon.smallest(TERM.resistance, r1, rn),
  );
  return [reckon.atMost(QUESTION.ringHabit, apart, HABIT)];
}

const HABIT = assumed(
  TERM.resistanceDifference,
  0.05,
  "a habit of the trade, whatever the length of the ring",
  undefined,
  {
    work: "habit of the trade",
    edition: "none",
    basis: "common-practice",
  },
);

function remarks(ring: Ring, { verdict }: Judgement, reckon: Reckoner): readonly Remark[] {
  const { r1, rn, r2, crossLineNeutral, crossLineCpc } = ring;
  const found: Remark[] = [];
  if (crossLineNeutral.length === 0 && crossLineCpc.length === 0) found.push(NOT_CROSSED);
  if (verdict === "too-near") found.push(POSSIBLE_MISFIT);
  const above = (readings: readonly Evidence<"ohm">[], most: Account) =>
    readings.filter(
      (one) => agreement(reckon, QUESTION.ringPointLineNeutral, read(one), most, "not-above").verdict === "not-met",
    ).length;
  const higher = above(crossLineNeutral, quarterOf(r1, rn, reckon)) + above(crossLineCpc, quarterOf(r1, r2, reckon));
  if (higher > 0) {
    found.push({
      code: "ring-points-higher",
      words: `${higher} cross-connected ${higher === 1 ? "reading lies" : "readings lie"} above what the ring itself explains: a spur, a joint, or a ring that is bridged.`,
    });
  }
  return found;
}

const NOT_CROSSED: Remark = Object.freeze({
  code: "ring-not-cross-connected",
  words:
    "No cross-connected readings were recorded: end-to-end values alone do not show that the ring has no bridge and no spur.",
});
