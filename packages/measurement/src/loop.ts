import {
  assumed,
  type CpcArrangement,
  type Evidence,
  type Fact,
  type Insulation,
  isKnown,
  isKnownFact,
  type Reckoner,
  TERM,
} from "@good-grounds/core";
import { lineHotFactor } from "@good-grounds/tables";
import { testFactor } from "./conductor.ts";

/** What the temperature correction of a section of the loop needs. */
export interface SectionWarmth {
  /** °C during the test. */
  readonly temperature: Evidence<"celsius">;
  readonly insulation: Fact<Insulation>;
  readonly cpcArrangement: Fact<CpcArrangement>;
}

/** One section of an earth fault loop that heats with its load: the cable of a circuit or of a feeder. */
export interface LoopSection extends SectionWarmth {
  /** Line and protective conductor of the section as read during the test, Ω. */
  readonly r1r2: Evidence<"ohm">;
  /** The loop at the board where the section begins, Ω. */
  readonly from: Evidence<"ohm">;
}

/** The earth fault loop from the source to a point. */
export interface LoopModel {
  /** As read at the point, Ω. */
  readonly zs: Evidence<"ohm">;
  /** From the point towards the source: the circuit itself, then each feeder. What lies before them does not heat. */
  readonly sections: readonly LoopSection[];
}

/**
 * The loop with every section at its own operating temperature: Zs + Σ (R1+R2)·(F/Ft − 1). A section whose resistance
 * was not read is the difference of the loops at its ends, or anything from nothing to the loop at its end.
 */
export function operatingLoop({ zs, sections }: LoopModel, reckon: Reckoner): Evidence<"ohm"> {
  const rises: Evidence<"ohm">[] = [];
  let end = zs;
  for (const section of sections) {
    const { r1r2, from } = section;
    const settled = isKnown(r1r2) || !isKnown(end) || isKnown(from);
    const part = isKnown(r1r2) || !isKnown(end) ? r1r2 : settled ? partBetween(end, from, reckon) : anyPartOf(end);
    const addition = reckon.lessOne(TERM.temperatureAddition, temperatureRise(section, reckon));
    rises.push(reckon.product(TERM.loopRise, part, addition));
    // What may be all of the loop that is left holds the sections beyond as well.
    if (!settled) break;
    end = isKnown(from) || !isKnown(end) ? from : partBetween(end, part, reckon);
  }
  return reckon.sum(TERM.operatingZs, zs, ...rises);
}

function partBetween(end: Evidence<"ohm">, from: Evidence<"ohm">, reckon: Reckoner): Evidence<"ohm"> {
  return reckon.difference(TERM.circuitPart, end, from);
}

function anyPartOf(end: Evidence<"ohm">): Evidence<"ohm"> {
  const why = "R1+R2 not recorded; it lies between nothing and the whole loop";
  return assumed(TERM.circuitPart, end.value, why, [0, end.high]);
}

/** What conductors are warmer or cooler in the live test than in the dead one, as the line of an argument: 8 K at most. */
export const BETWEEN_TESTS = assumed(
  TERM.betweenTests,
  1,
  "conductors may be some kelvin warmer or cooler in the live test than in the dead one",
  [0.97, 1.03],
  { work: "experience of installation testers", edition: "none", basis: "common-practice" },
);

/** Between a protective conductor that stays cool and thermosetting insulation at its limit. */
const LEAST_RISE = 1.04;
const GREATEST_RISE = 1.28;

/**
 * The factor that takes a resistance measured cold to operating temperature: F/Ft with F = 1 + 0.004(θp − 20) and
 * Ft = 1 + 0.004(θ − 20). Where the test temperature, the insulation or the way of the protective conductor is not
 * recorded, the factor becomes the band of every value it can have, as a stated assumption.
 */
export function temperatureRise(section: SectionWarmth, reckon: Reckoner): Evidence<"ratio"> {
  return reckon.quotient(TERM.temperatureRise, hotFactorOf(section), testFactor(section.temperature));
}

function hotFactorOf({ insulation, cpcArrangement }: SectionWarmth): Evidence<"ratio"> {
  if (!isKnownFact(insulation)) return UNKNOWN_HOT_FACTOR;
  const factor = lineHotFactor(insulation.word);
  if (isKnownFact(cpcArrangement) && cpcArrangement.word === "in-cable") return factor;
  if (!isKnown(factor)) return UNKNOWN_HOT_FACTOR;
  return assumed(
    TERM.hotFactor,
    factor.value,
    "a protective conductor apart from the line conductor stays cooler; the line conductor's factor is the upper limit",
    [LEAST_RISE, factor.value],
  );
}

const UNKNOWN_HOT_FACTOR = assumed(
  TERM.hotFactor,
  1.2,
  "insulation not recorded; any insulation of fixed wiring is allowed for",
  [LEAST_RISE, GREATEST_RISE],
);
