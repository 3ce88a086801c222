import { isKnownFact, type Misfit } from "@good-grounds/core";
import type { Supply } from "@good-grounds/inspection";
import { type Reading, readingOf, wholeDeviation } from "./fitted-reading.ts";
import { lineUp, logNormal, logSpread, type Suspect } from "./line-up.ts";
import { fallbacks, READ_ZE, shownReading } from "./origin-shown.ts";

/** External loops as met, on a logarithmic scale: middle and spread. A judgement of practice, wide on purpose. */
const LOOPS = { "TN-C-S": [0.18, 0.5], "TN-S": [0.4, 0.5], TT: [60, 1.2] } as const;
type LoopSystem = keyof typeof LOOPS;

/** Logarithm of the density of Ze on a system, per unit of its logarithm. */
function densityOf(ze: Reading, system: LoopSystem): number {
  const [middle, spread] = LOOPS[system];
  return logNormal(Math.log(ze.value / middle), 0, Math.hypot(spread, wholeDeviation(ze) / ze.value));
}

/** Loops met with a system, Ω: the middle and the range of nineteen in twenty. */
function bandOf(system: LoopSystem) {
  const [middle, spread] = LOOPS[system];
  return { value: middle, low: middle * Math.exp(-1.96 * spread), high: middle * Math.exp(1.96 * spread) };
}

/** A suspect of Ze; `of` is the system whose loops are to be expected under it. */
function suspectOf(ze: Reading, is: Omit<Suspect, "would">, of: LoopSystem): Suspect {
  return { ...is, would: [{ path: ze.evidence.detail.path, ...bandOf(of) }] };
}

function otherSystems(ze: Reading, recordedAs: LoopSystem): readonly Suspect[] {
  return (Object.keys(LOOPS) as LoopSystem[])
    .filter((one) => one !== recordedAs)
    .map((one) =>
      suspectOf(
        ze,
        {
          id: `system-is-${one}`,
          innocent: false,
          log: Math.log(0.02) + densityOf(ze, one),
          words: `the system is ${one} and not ${recordedAs}`,
          expects: { look: `signs of ${one}`, ze: "as before" },
        },
        one,
      ),
    );
}

/** What is out where the system is the one recorded. */
function within(ze: Reading, recordedAs: LoopSystem): readonly Suspect[] {
  const over = (low: number, high: number) => logSpread(ze.value, low, high) + Math.log(ze.value);
  const look = `signs of ${recordedAs}`;
  if (recordedAs === "TT") {
    const parallel = {
      id: "earth-in-parallel",
      innocent: true,
      log: Math.log(0.02) + over(0.05, 5),
      words: "bonding or another earth was connected while Ze was read",
      expects: { look, ze: "much higher" },
    };
    return [suspectOf(ze, parallel, recordedAs)];
  }
  const poor = {
    id: "distributor-earth-poor",
    innocent: false,
    log: Math.log(0.015) + over(0.5, 1000),
    words: "the distributor's earth or the connection to it is poor",
    expects: { look, ze: "as before" },
  };
  const wrong = {
    id: "reading-wrong",
    innocent: true,
    log: Math.log(0.005) + over(0.005, 1e4),
    words: "Ze was misread or mistyped, or a lead did not make contact",
    expects: { look, ze: "as usual for the system" },
  };
  return [suspectOf(ze, poor, recordedAs), suspectOf(ze, wrong, recordedAs)];
}

/** Ze against what the recorded earthing system can give. */
export function systemMisfit(supply: Supply): Misfit | undefined {
  const ze = readingOf(supply.ze);
  const { earthing } = supply;
  if (ze === undefined || !(ze.value > 0) || !isKnownFact(earthing) || earthing.word === "IT") return undefined;
  const recordedAs = earthing.word;
  return lineUp({
    kind: "earthing-system",
    path: supply.path,
    title: `Ze is not what a ${recordedAs} supply gives`,
    formula: "Ze against what is met with the system",
    innocentCauses: [
      "a long service in the country",
      "a private transformer next door",
      "the system was taken from an older report",
    ],
    soundLog: Math.log(0.97) + densityOf(ze, recordedAs),
    suspects: [...otherSystems(ze, recordedAs), ...within(ze, recordedAs)],
    nexts: {
      look: "look at the cut-out: where the earthing terminal comes from, sheath, neutral block or electrode",
      ze: READ_ZE,
    },
    readings: [shownReading("Ze", ze, bandOf(recordedAs))],
    grounds: [ze.evidence, earthing, ...fallbacks(ze)],
  });
}
