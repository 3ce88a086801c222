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
import { testFactor } from "./conductor-expectation.ts";

/** Between a protective conductor that stays cool and thermosetting insulation at its limit. */
const LEAST_RISE = 1.04;
const GREATEST_RISE = 1.28;

/** What the temperature correction of a loop needs. */
export interface LoopTemperatures {
  readonly temperature: Evidence<"celsius">;
  readonly insulation: Fact<Insulation>;
  readonly cpcArrangement: Fact<CpcArrangement>;
}

/**
 * The factor that takes a resistance measured cold to operating temperature: F/Ft with F = 1 + 0.004(θp − 20) and
 * Ft = 1 + 0.004(θ − 20). Where the test temperature, the insulation or the way of the protective conductor is not
 * recorded, the factor becomes the band of every value it can have, as a stated assumption.
 */
export function temperatureRise(loop: LoopTemperatures, reckon: Reckoner): Evidence<"ratio"> {
  return reckon.quotient(TERM.temperatureRise, hotFactorOf(loop), testFactor(loop.temperature));
}

function hotFactorOf({ insulation, cpcArrangement }: LoopTemperatures): Evidence<"ratio"> {
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
