import { isAtOrigin } from "@good-grounds/computations";
import { type Evidence, isKnown, isKnownFact, type Measured, TERM, type Unit } from "@good-grounds/core";
import type { Cable, Circuit, Installation } from "@good-grounds/inspection";
import { conductorResistance, temperatureFactor } from "@good-grounds/tables";
import { type Kind, repeatability } from "./repeatability.ts";

/** A reading that showed a value, not the end of its range. In the coherent unit. */
export interface Figure {
  readonly value: number;
  readonly resolution: number;
  /** Standard deviation about the true value, as far as the instrument states it. */
  readonly doubt: number;
  /** Standard deviation of a repeat. */
  readonly repeat: number;
  readonly leaf: Measured<Unit>;
}

/** What a cable lets expect, Ω/m at the test temperature times m, with the standard deviation of its logarithm. */
interface CableExpectation {
  readonly line: number;
  readonly cpc: number;
  readonly spread: number;
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
  readonly cable: CableExpectation | undefined;
}

/** Part of a stated accuracy that is taken as a standard deviation: errors uniform within it. */
const UNIFORM = 1 / Math.sqrt(3);
/** Taken where an instrument states no accuracy: part of the reading and digits. */
export const UNSTATED: Readonly<Record<Kind, readonly [number, number]>> = {
  continuity: [0.03, 2],
  loop: [0.05, 3],
  insulation: [0.05, 1],
  "rcd-time": [0.02, 1],
};

/** A reading as a figure; undefined where it was not taken or shows the end of a range. */
export function figureOf(evidence: Evidence<Unit> | undefined, kind: Kind): Figure | undefined {
  if (evidence?.kind !== "measured" || evidence.detail.bound !== "exact") return undefined;
  const { resolution, accuracy } = evidence.detail;
  const [part, digits] = UNSTATED[kind];
  const half = accuracy === null ? part * evidence.value + digits * resolution : evidence.high - evidence.value;
  return {
    value: evidence.value,
    resolution,
    doubt: Math.max(half * UNIFORM, resolution / 2),
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
        cable: expectationOf(circuit.cable, readings.temperature),
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
    const { line, cpc, spread, perMetre } = row.cable;
    const square = spread ** 2 - LENGTH_SPREAD ** 2 - CONDUCTOR_SPREAD ** 2 + own ** 2;
    const cable = { ...row.cable, line: line * factor, cpc: cpc * factor, perMetre: perMetre * factor };
    return { ...row, cable: { ...cable, spread: Math.sqrt(Math.max(square, own ** 2)) } };
  });
}

function median(values: readonly number[]): number {
  const sorted = [...values].sort((a, b) => a - b);
  const half = sorted.length >> 1;
  const upper = sorted[half] ?? 0;
  return sorted.length % 2 === 1 ? upper : (upper + (sorted[half - 1] ?? upper)) / 2;
}

/** Real conductors lie a few per cent below the greatest permitted resistance, and stated lengths are paced or drawn. */
const BELOW_GREATEST = 0.97;
const CONDUCTOR_SPREAD = 0.02;
const LENGTH_SPREAD = 0.03;
const UNKNOWN_TEMPERATURE_SPREAD = 0.03;

export const CABLE_ASSUMED =
  "conductors 3 % below the greatest resistance of BS EN 60228, spread 2 %; stated lengths right to what most circuits of the job show (3 % where too few do); conductors between 0 and 30 °C where no temperature is recorded; common practice";

function expectationOf(cable: Cable, temperature: Evidence<"celsius">): CableExpectation | undefined {
  const { line, cpc, material, length, cpcArrangement } = cable;
  if (!isKnown(line) || !isKnown(cpc) || !isKnownFact(material) || !isKnown(length)) return undefined;
  if (line.low !== line.high || cpc.low !== cpc.high || !(length.low > 0)) return undefined;
  if (isKnownFact(cpcArrangement) && cpcArrangement.word !== "in-cable" && cpcArrangement.word !== "separate")
    return undefined;
  const perLine = conductorResistance(TERM.linePerMetre, line.value, material.word);
  const perCpc = conductorResistance(TERM.cpcPerMetre, cpc.value, material.word);
  if (!isKnown(perLine) || !isKnown(perCpc)) return undefined;
  const warm = isKnown(temperature) ? temperatureFactor(temperature.value) : undefined;
  const factor = BELOW_GREATEST * (warm !== undefined && isKnown(warm) ? warm.value : 1);
  const range = (length.high - length.low) / (length.value * Math.sqrt(12));
  return {
    line: perLine.value * length.value * factor,
    cpc: perCpc.value * length.value * factor,
    spread: Math.hypot(CONDUCTOR_SPREAD, LENGTH_SPREAD, range, warm === undefined ? UNKNOWN_TEMPERATURE_SPREAD : 0),
    length: [length.low, length.high],
    perMetre: (perLine.value + perCpc.value) * factor,
  };
}
