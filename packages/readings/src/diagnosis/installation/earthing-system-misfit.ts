import { isKnownFact, type Misfit } from "@good-grounds/core";
import type { Supply } from "@good-grounds/inspection";
import { lineUp, logNormal, logSpread, type Suspect } from "./line-up.ts";
import { readingOf, wholeDeviation } from "./noise.ts";
import { fallbacks, READ_ZE, shownReading } from "./pair-of-readings.ts";

/** External loops as met, on a logarithmic scale: middle and spread. A judgement of practice, wide on purpose. */
const LOOPS = { "TN-C-S": [0.18, 0.5], "TN-S": [0.4, 0.5], TT: [60, 1.2] } as const;
type LoopSystem = keyof typeof LOOPS;

/** Ze against what the recorded earthing system can give. */
export function systemMisfit(supply: Supply): Misfit | undefined {
  const ze = readingOf(supply.ze);
  const { earthing } = supply;
  if (ze === undefined || !(ze.value > 0) || !isKnownFact(earthing) || earthing.word === "IT") return undefined;
  const recordedAs = earthing.word;
  const own = wholeDeviation(ze) / ze.value;
  const density = (system: LoopSystem) => {
    const [middle, spread] = LOOPS[system];
    return logNormal(Math.log(ze.value / middle), 0, Math.hypot(spread, own));
  };
  const band = ([middle, spread]: readonly [number, number]) => ({
    value: middle,
    low: middle * Math.exp(-1.96 * spread),
    high: middle * Math.exp(1.96 * spread),
  });
  const suspect = (
    id: string,
    innocent: boolean,
    log: number,
    words: string,
    expects: Suspect["expects"],
    of: LoopSystem,
  ): Suspect => ({
    id,
    innocent,
    words,
    log,
    expects,
    would: [{ path: ze.evidence.detail.path, ...band(LOOPS[of]) }],
  });
  const over = (low: number, high: number) => logSpread(ze.value, low, high) + Math.log(ze.value);
  const others = (Object.keys(LOOPS) as LoopSystem[])
    .filter((one) => one !== recordedAs)
    .map((one) =>
      suspect(
        `system-is-${one}`,
        false,
        Math.log(0.02) + density(one),
        `the system is ${one} and not ${recordedAs}`,
        { look: `signs of ${one}`, ze: "as before" },
        one,
      ),
    );
  const suspects =
    recordedAs === "TT"
      ? [
          ...others,
          suspect(
            "earth-in-parallel",
            true,
            Math.log(0.02) + over(0.05, 5),
            "bonding or another earth was connected while Ze was read",
            { look: `signs of ${recordedAs}`, ze: "much higher" },
            recordedAs,
          ),
        ]
      : [
          ...others,
          suspect(
            "distributor-earth-poor",
            false,
            Math.log(0.015) + over(0.5, 1000),
            "the distributor's earth or the connection to it is poor",
            { look: `signs of ${recordedAs}`, ze: "as before" },
            recordedAs,
          ),
          suspect(
            "reading-wrong",
            true,
            Math.log(0.005) + over(0.005, 1e4),
            "Ze was misread or mistyped, or a lead did not make contact",
            { look: `signs of ${recordedAs}`, ze: "as usual for the system" },
            recordedAs,
          ),
        ];
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
    soundLog: Math.log(0.97) + density(recordedAs),
    suspects,
    nexts: {
      look: "look at the cut-out: where the earthing terminal comes from, sheath, neutral block or electrode",
      ze: READ_ZE,
    },
    readings: [shownReading("Ze", ze, band(LOOPS[recordedAs]))],
    grounds: [ze.evidence, earthing, ...fallbacks(ze)],
  });
}
