import { isAtOrigin } from "@good-grounds/computations";
import { type Evidence, isExact, isKnown, isKnownFact, type Measured, type Unit } from "@good-grounds/core";
import type { Circuit, Installation } from "@good-grounds/inspection";
import { cableExpectation, doubtedReading, lengthFoundIn, standardOf, sumOf } from "@good-grounds/measurement";
import { type Kind, repeatability } from "./repeatability.ts";

/** A reading that showed a value, not the end of its range. In the coherent unit. */
export interface Figure {
  readonly value: number;
  readonly resolution: number;
  /** Standard deviation about the true value, by all its causes. */
  readonly doubt: number;
  /** Standard deviation of a repeat. */
  readonly repeat: number;
  readonly leaf: Measured<Unit>;
}

/** What a cable lets expect, Ω/m at the test temperature times m, with the standard deviation of its logarithm. */
interface Foreseen {
  readonly line: number;
  readonly cpc: number;
  readonly spread: number;
  /** The part of that which other circuits of the job tell nothing of: a length given as a range, no temperature. */
  readonly beside: number;
  readonly length: readonly [low: number, high: number];
  /** Ω for each metre of line and protective conductor together. */
  readonly perMetre: number;
}

/** A circuit with what its tests showed. */
export interface Row {
  readonly circuit: Circuit;
  readonly board: number;
  readonly name: string;
  readonly ring: boolean;
  readonly r1: Figure | undefined;
  readonly rn: Figure | undefined;
  readonly r2: Figure | undefined;
  readonly crossLineNeutral: readonly Figure[];
  readonly crossLineCpc: readonly Figure[];
  readonly r1r2: Figure | undefined;
  readonly zs: Figure | undefined;
  /** The loop before the circuit: that of the board, or Ze where the board is at the origin and has none of its own. */
  readonly before: Figure | undefined;
  readonly ze: Figure | undefined;
  readonly insulation: readonly Figure[];
  readonly rcdTime: Figure | undefined;
  readonly cable: Foreseen | undefined;
}

/** What a usual instrument is right to: part of the reading and digits. */
export const UNSTATED: Readonly<Record<Kind, readonly [number, number]>> = {
  continuity: [0.03, 2],
  loop: [0.05, 3],
  insulation: [0.05, 1],
  "rcd-time": [0.02, 1],
};

/** A reading as a figure; undefined where it was not taken or shows the end of a range. */
export function figureOf(evidence: Evidence<Unit> | undefined, kind: Kind): Figure | undefined {
  if (evidence?.kind !== "measured" || evidence.detail.bound !== "exact") return undefined;
  const { resolution } = evidence.detail;
  return {
    value: evidence.value,
    resolution,
    doubt: Math.max(standardOf(doubtedReading(evidence)), resolution / 2),
    repeat: repeatability(kind, evidence.value, resolution),
    leaf: evidence,
  };
}

/** Every circuit of an installation with its figures. */
export function rowsOf(installation: Installation): readonly Row[] {
  return withOwnSpread(read(installation));
}

function read(installation: Installation): readonly Row[] {
  const ze = figureOf(installation.supply.ze, "loop");
  return installation.boards.flatMap((board, at) =>
    board.circuits.map((circuit): Row => {
      const { readings, shape } = circuit;
      const own = (evidence: Evidence<"ohm">) => figureOf(evidence, "continuity");
      const known = (figures: readonly (Figure | undefined)[]) => figures.filter((one) => one !== undefined);
      const atOrigin = isAtOrigin(board) ? ze : undefined;
      const device = circuit.residual.devices.find(({ path }) => path.at(-1) === "own");
      return {
        circuit,
        board: at,
        name: `circuit ${circuit.designation} (${circuit.description})`,
        ring: isKnownFact(shape) && shape.word === "ring",
        r1: own(readings.r1),
        rn: own(readings.rn),
        r2: own(readings.r2),
        crossLineNeutral: known(readings.crossLineNeutral.map(({ reading }) => own(reading))),
        crossLineCpc: known(readings.crossLineCpc.map(({ reading }) => own(reading))),
        r1r2: own(readings.r1r2),
        zs: figureOf(readings.zs, "loop"),
        before: figureOf(board.zdb, "loop") ?? atOrigin,
        ze: atOrigin,
        insulation: known(
          [readings.insulationLiveLive, readings.insulationLiveEarth].map((one) => figureOf(one, "insulation")),
        ),
        rcdTime: figureOf(device?.timeAtRated, "rcd-time"),
        cable: foreseen(circuit, installation),
      };
    }),
  );
}

/** Circuits it takes to tell from a job how well its lengths hold, and the limits within which that is believed. */
const ENOUGH = 4;
const LEAST_SPREAD = 0.015;
const MOST_SPREAD = 0.1;
const MOST_BIAS = 0.12;
/** Readings coarser than this part of themselves say more about the display than about the cable. */
const COARSE = 0.06;
/** A standard deviation from the median of the amounts: of a normal quantity. */
const OF_MEDIAN = 1.4826;

/**
 * Some inspectors measure lengths on a plan, others pace them and forget the drops: how well the lengths of a job hold is
 * taken from the job, as the median by which its circuits are off and the median distance from that, which a few odd ones
 * do not move.
 */
function withOwnSpread(rows: readonly Row[]): readonly Row[] {
  const off = rows.flatMap(({ r1, r2, r1r2, ring, cable }) => {
    const value = ring ? (r1?.value ?? Number.NaN) + (r2?.value ?? Number.NaN) : (r1r2?.value ?? Number.NaN);
    const doubt = ring ? Math.hypot(r1?.doubt ?? 0, r2?.doubt ?? 0) : (r1r2?.doubt ?? 0);
    if (cable === undefined || !(value > 0) || doubt > COARSE * value || cable.length[0] !== cable.length[1]) return [];
    return [Math.log(value / (cable.line + cable.cpc))];
  });
  if (off.length < ENOUGH) return rows;
  const bias = Math.min(MOST_BIAS, Math.max(-MOST_BIAS, median(off)));
  const own = Math.min(MOST_SPREAD, Math.max(LEAST_SPREAD, OF_MEDIAN * median(off.map((one) => Math.abs(one - bias)))));
  const factor = Math.exp(bias);
  return rows.map((row) => {
    if (row.cable === undefined) return row;
    const { line, cpc, beside, perMetre } = row.cable;
    const cable = { ...row.cable, line: line * factor, cpc: cpc * factor, perMetre: perMetre * factor };
    return { ...row, cable: { ...cable, spread: Math.hypot(own, beside) } };
  });
}

function median(values: readonly number[]): number {
  const sorted = [...values].sort((a, b) => a - b);
  const half = sorted.length >> 1;
  const upper = sorted[half] ?? 0;
  return sorted.length % 2 === 1 ? upper : (upper + (sorted[half - 1] ?? upper)) / 2;
}

export const CABLE_ASSUMED =
  "conductors a few per cent below the greatest resistance of BS EN 60228, and different by as much; stated lengths right to what most circuits of the job show (where too few do, to what their way of being found leaves); conductors between 0 and 30 °C where no temperature is recorded; common practice";

/** By the one model of cables. Nothing where a size is a range, or the protective conductor none of the table. */
function foreseen(circuit: Circuit, installation: Installation): Foreseen | undefined {
  const { temperature } = circuit.readings;
  const lengthFound = lengthFoundIn(circuit, installation);
  const { core, length, warmth } = cableExpectation({ ...circuit.cable, lengthFound, temperature });
  if (core.line === undefined || core.cpc === undefined || length === undefined) return undefined;
  const stated = circuit.cable.length;
  if (!isKnown(stated) || !(stated.low > 0)) return undefined;
  const both = sumOf(core.line.perMetre, core.cpc.perMetre);
  const ofLength = standardOf(length) / length.value;
  const ofWarmth = isKnown(temperature) ? 0 : standardOf(warmth) / warmth.value;
  return {
    line: core.line.perMetre.value * length.value,
    cpc: core.cpc.perMetre.value * length.value,
    spread: Math.hypot(standardOf(both) / both.value, ofLength),
    beside: Math.hypot(isExact(stated) ? 0 : ofLength, ofWarmth),
    length: [stated.low, stated.high],
    perMetre: both.value,
  };
}
