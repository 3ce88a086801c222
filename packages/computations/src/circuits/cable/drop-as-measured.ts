import {
  assumed,
  type CircuitLoad,
  type CircuitShape,
  type CpcArrangement,
  type Evidence,
  expected,
  type Fact,
  isExact,
  isKnown,
  isKnownFact,
  type Reckoner,
  TERM,
} from "@good-grounds/core";
import { BETWEEN_CORES, isConductorOfTable, perMetre, testFactor } from "@good-grounds/measurement";
import { operatingTemperature } from "@good-grounds/tables";
import { isOnPipes } from "../other-path.ts";
import { fromNothing, RESISTANCE_ALONE, underItsLoad } from "./drop-under-load.ts";
import type { Installed } from "./installed-capacity.ts";

/** What the voltage drop is found from where the conductors were read. */
export interface ReadThrough extends Omit<Installed, "hotTerminals"> {
  readonly shape: Fact<CircuitShape>;
  readonly load: Fact<CircuitLoad>;
  readonly designCurrent: Evidence<"ampere">;
  readonly cpc: Evidence<"square-millimetre">;
  readonly cpcArrangement: Fact<CpcArrangement>;
  /** Of a radial, to its far end. */
  readonly r1r2: Evidence<"ohm">;
  /** Of a ring, end to end. */
  readonly r1: Evidence<"ohm">;
  readonly rn: Evidence<"ohm">;
  /** During the test. */
  readonly temperature: Evidence<"celsius">;
}

/**
 * The voltage drop by the resistance of the conductors as it was read, no warmer than the load makes them, V. Needs no
 * length: of a radial 2·R1·Ib with R1 as the sizes share R1+R2 (√3·R1·Ib between lines of three phases), of a ring
 * (r1 + rn) ÷ 4 · Ib. Undefined above 16 mm², where the load is beyond the cable's capacity, and for a radial to which R1+R2
 * may lie beside other metal: a load on pipes, another board.
 */
export function dropAsMeasured(given: ReadThrough, reckon: Reckoner): Evidence<"volt"> | undefined {
  const { shape, insulation, line, designCurrent, temperature } = given;
  if (!isExact(line) || line.value > RESISTANCE_ALONE || !isKnownFact(insulation) || !isKnownFact(shape))
    return undefined;
  const ring = shape.word === "ring";
  const through = ring ? ofRing(given, reckon) : ofRadial(given, reckon);
  if (through === undefined || !isKnown(through) || !Number.isFinite(through.high)) return undefined;
  const greatest = operatingTemperature(insulation.word);
  const inLeg = ring ? reckon.product(TERM.designCurrent, designCurrent, HALF) : designCurrent;
  const underLoad = underItsLoad(inLeg, given, reckon);
  if (underLoad === undefined || !isKnown(greatest)) return undefined;
  const warm = isKnown(underLoad)
    ? underLoad
    : expected(TERM.loadTemperature, greatest.value, NO_WARMER, [COOLEST, greatest.value]);
  const fromTwenty = reckon.quotient(TERM.dropCorrection, fromNothing(warm, reckon), fromNothing(TWENTY, reckon));
  const rise = reckon.quotient(TERM.dropCorrection, fromTwenty, testFactor(temperature));
  return reckon.product(TERM.voltageDrop, reckon.product(TERM.dropPerAmpere, through, rise), designCurrent);
}

function ofRing({ r1, rn, phases }: ReadThrough, reckon: Reckoner): Evidence<"ohm"> | undefined {
  if (!isKnownFact(phases) || phases.word === "3") return undefined;
  return reckon.product(TERM.dropPerAmpere, reckon.sum(TERM.ringHalf, r1, rn), QUARTER);
}

function ofRadial(given: ReadThrough, reckon: Reckoner): Evidence<"ohm"> | undefined {
  const { shape, load, phases, line, cpc, cpcArrangement, material, r1r2 } = given;
  if (!isKnownFact(shape) || shape.word !== "radial" || !isKnownFact(load) || isOnPipes(load)) return undefined;
  if (!isKnownFact(phases) || !isKnownFact(cpcArrangement) || !isConductorOfTable(cpcArrangement)) return undefined;
  const ofLine = perMetre(TERM.linePerMetre, line, material, reckon);
  const both = reckon.sum(TERM.conductorPerMetre, ofLine, perMetre(TERM.cpcPerMetre, cpc, material, reckon));
  const share = reckon.quotient(TERM.ratio, ofLine, both);
  const own = reckon.product(TERM.circuitPart, reckon.product(TERM.circuitPart, r1r2, share), BETWEEN_CORES);
  return reckon.product(TERM.dropPerAmpere, own, phases.word === "3" ? ROOT_3 : THERE_AND_BACK);
}

const NO_WARMER = "capacity as installed not known; no warmer than the insulation permits";
/** In the ground in winter, °C. */
const COOLEST = 10;
const TWENTY = assumed(TERM.loadTemperature, 20, "the temperature that the factor of the test goes back to");
const QUARTER = assumed(TERM.quarter, 0.25, "load spread evenly round the ring");
const HALF = assumed(TERM.ratio, 0.5, "half the load of a ring at the beginning of each of its legs");
const THERE_AND_BACK = assumed(TERM.ratio, 2, "the neutral conductor is as large as the line conductor");
const ROOT_3 = assumed(TERM.root3, Math.sqrt(3), "line voltage over voltage to earth");
