import {
  assumed,
  type ConductorMaterial,
  type CpcArrangement,
  type Evidence,
  type Fact,
  isExact,
  isKnown,
  isKnownFact,
  type LengthFound,
  TERM,
} from "@good-grounds/core";
import { conductorResistance } from "@good-grounds/tables";
import { CONDUCTOR_TOLERANCE, testFactor } from "./conductor.ts";
import { type Doubted, exactly, productOf, sumOf, within } from "./doubted.ts";
import { lengthOf } from "./length.ts";

/** What is known of a cable and of its test; everything may be not known. */
export interface CableGiven {
  readonly line: Evidence<"square-millimetre">;
  readonly neutral?: Evidence<"square-millimetre">;
  readonly cpc: Evidence<"square-millimetre">;
  readonly material: Fact<ConductorMaterial>;
  readonly cpcArrangement?: Fact<CpcArrangement>;
  readonly length: Evidence<"metre">;
  readonly lengthFound: Fact<LengthFound>;
  readonly temperature: Evidence<"celsius">;
}

/** The conductors of a cable. */
export type Core = "line" | "neutral" | "cpc";

/** What one conductor of a cable is expected to read, by the size and the material that were written down. */
export interface CoreExpectation {
  /** Ω/m at the temperature of the test. */
  readonly perMetre: Doubted;
  /** Ω from end to end; undefined where the length is not known. */
  readonly whole: Doubted | undefined;
}

/** What a cable is expected to read. A conductor whose size or material is not known, or that is none, is undefined. */
export interface CableExpectation {
  readonly core: Readonly<Record<Core, CoreExpectation | undefined>>;
  /** m */
  readonly length: Doubted | undefined;
  /** Resistance at the test over that at 20 °C. */
  readonly warmth: Doubted;
}

/**
 * What conductors differ by, as parts of their resistance and as limits either way: all of one cable together by what its
 * maker draws, each by itself, and all by what they are warmer or cooler than where the temperature was taken (3 K).
 * Common practice: measured cables lie between 0.92 and 1 of the greatest resistance of BS EN 60228.
 */
export const CABLE_DOUBT = Object.freeze({ make: 0.03, core: 0.035, warmth: 0.012 });

/** Two conductors of one cable against each other, as the line of an argument: each differs by as much. */
export const BETWEEN_CORES = assumed(
  TERM.betweenCores,
  1,
  "conductors of one cable differ from each other by a few per cent, beside their sizes",
  [1 - Math.SQRT2 * CABLE_DOUBT.core, 1 + Math.SQRT2 * CABLE_DOUBT.core],
  { work: "experience of measured cables", edition: "none", basis: "common-practice" },
);

/**
 * Line and protective conductor of one cable, in expectation and doubt. Errors are shared where causes are: the length
 * and the maker by all conductors of a cable, the temperature by every circuit that it was recorded for.
 */
export function cableExpectation(given: CableGiven): CableExpectation {
  const make = {};
  const warmth = warmthOf(given.temperature);
  const length = lengthOf(given.length, given.lengthFound);
  const core = (area: Evidence<"square-millimetre"> | undefined): CoreExpectation | undefined => {
    const cold = area === undefined ? undefined : coldPerMetre(area, given.material);
    if (cold === undefined || warmth === undefined) return undefined;
    const drawn = productOf(
      within(cold * CONDUCTOR_TOLERANCE.value, cold * CABLE_DOUBT.make, make),
      within(1, CABLE_DOUBT.core, {}),
    );
    const perMetre = productOf(drawn, warmth);
    return { perMetre, whole: length === undefined ? undefined : productOf(perMetre, length) };
  };
  return {
    core: {
      line: core(given.line),
      neutral: core(given.neutral ?? given.line),
      cpc: isConductorOfTable(given.cpcArrangement) ? core(given.cpc) : undefined,
    },
    length,
    warmth: warmth ?? exactly(Number.NaN),
  };
}

/** Whether the protective conductor is a conductor of the table, not armour, sheath or conduit. */
export function isConductorOfTable(arrangement: Fact<CpcArrangement> | undefined): boolean {
  if (arrangement === undefined || !isKnownFact(arrangement)) return true;
  return arrangement.word === "in-cable" || arrangement.word === "separate";
}

function coldPerMetre(area: Evidence<"square-millimetre">, material: Fact<ConductorMaterial>): number | undefined {
  if (!isExact(area) || !isKnownFact(material)) return undefined;
  const figure = conductorResistance(TERM.conductorPerMetre, area.value, material.word);
  return isKnown(figure) && figure.value > 0 ? figure.value : undefined;
}

/** Resistance at the temperature of the test over that at 20 °C, and what it may be out by. */
function warmthOf(temperature: Evidence<"celsius">): Doubted | undefined {
  const factor = testFactor(temperature);
  if (!isKnown(factor)) return undefined;
  const middle = (factor.low + factor.high) / 2;
  return within(middle, (factor.high - factor.low) / 2 + CABLE_DOUBT.warmth, warmthCause(temperature));
}

/** One temperature recorded for several circuits is one cause; one that nobody recorded was the same day's for all. */
function warmthCause(temperature: Evidence<"celsius">): string {
  const { detail } = temperature;
  return isKnown(temperature) && typeof detail === "object" && "path" in detail
    ? `warmth ${detail.path.join("/")}`
    : "warmth";
}

/** Something a cable may be in truth, with how likely that is before anything was measured. */
export interface Hypothesis<T> {
  readonly value: T;
  readonly prior: number;
  readonly asWritten: boolean;
}

/** Sizes of fixed wiring in final circuits and small feeders, mm². */
const SIZES: readonly number[] = [1, 1.5, 2.5, 4, 6, 10, 16, 25];

/** What was written down is wrong about once in so many: of sizes, and of materials. From memory of reports. */
const WRONG_SIZE = 0.03;
const WRONG_MATERIAL = 0.01;

/**
 * Sizes that a conductor written down as `area` may have in truth: as written most likely, the sizes beside it before
 * others. Sums up to one. None where no size is known.
 */
export function sizeHypotheses(area: Evidence<"square-millimetre">): readonly Hypothesis<number>[] {
  if (!isExact(area)) return [];
  const written = area.value;
  const others = SIZES.filter((size) => size !== written);
  const weights = others.map((size) => 4 ** -Math.abs(steps(size) - steps(written)));
  const all = weights.reduce((sum, weight) => sum + weight, 0);
  return [
    { value: written, prior: 1 - WRONG_SIZE, asWritten: true },
    ...others.map((value, i) => ({ value, prior: (WRONG_SIZE * (weights[i] as number)) / all, asWritten: false })),
  ];
}

/** Place in the order of sizes; a size between two stands between them. */
function steps(size: number): number {
  const above = SIZES.findIndex((one) => one >= size);
  return above < 0 ? SIZES.length : SIZES[above] === size ? above : above - 0.5;
}

/** Materials that conductors may have in truth: as written most likely, copper where nothing was written. */
export function materialHypotheses(material: Fact<ConductorMaterial>): readonly Hypothesis<ConductorMaterial>[] {
  const known = isKnownFact(material);
  const likely = known ? material.word : "copper";
  const other = likely === "copper" ? "aluminium" : "copper";
  return [
    { value: likely, prior: 1 - WRONG_MATERIAL, asWritten: known },
    { value: other, prior: WRONG_MATERIAL, asWritten: false },
  ];
}

/** Both conductors of the fault loop within a cable, Ω; undefined where one is not known. */
export function lineAndCpc({ core: { line, cpc } }: CableExpectation): Doubted | undefined {
  return line?.whole === undefined || cpc?.whole === undefined ? undefined : sumOf(line.whole, cpc.whole);
}
