import { EARTHING_SYSTEMS, type Evidence, isKnown, isKnownFact, notKnown, type Remark, TERM } from "@good-grounds/core";
import { type Installation, MATTER } from "@good-grounds/inspection";
import { electrodeStability, permittedTouchVoltage } from "@good-grounds/tables";
import { check, concluded, doesNotArise } from "../check.ts";
import { nearestResidual } from "../circuits/nearest-residual.ts";
import { QUESTION } from "../matters.ts";
import { asksQuantity, asksWord } from "../need.ts";

/**
 * Earth electrode of a TT installation: RA·IΔn ≤ 50 V for the RCD with the largest residual operating current that has
 * to disconnect a fault (411.5.3). RA in Ω with the electrode disconnected from the installation, IΔn in A. Above about
 * 200 Ω an electrode may not be stable; that is shown beside and does not decide.
 */
export const electrode = check({
  id: "electrode",
  scope: "supply",
  title: "Earth electrode suits the RCDs",
  formula: "RA·IΔn ≤ 50 V",
  regulations: ["411.5.3", "542.2"],
  needs: {
    system: asksWord(MATTER.earthingSystem, EARTHING_SYSTEMS),
    ra: asksQuantity(TERM.measuredRa, "74 Ω"),
    residual: asksQuantity(TERM.residualOperatingCurrent, "100 mA, the largest that serves for fault protection"),
  },
  gather(installation) {
    const { earthing, ra, ze } = installation.supply;
    if (isKnownFact(earthing) && earthing.word !== "TT") return doesNotArise("not a TT system", earthing);
    return { system: earthing, ra: isKnown(ra) ? ra : ze, residual: largestResidual(installation) };
  },
  conclude({ system, ra, residual }, reckon) {
    const touch = reckon.product(TERM.touchVoltage, ra, residual);
    const held = reckon.atMost(QUESTION.touchVoltage, touch, permittedTouchVoltage);
    const judgement = isKnownFact(system)
      ? held
      : reckon.settled(QUESTION.electrodeSuits, "not-known", "", system, held);
    const stable = reckon.atMost(QUESTION.electrodeStable, ra, electrodeStability);
    return concluded(judgement, [stable], stable.verdict === "met" ? [] : [UNSTABLE]);
  },
  examples: [
    {
      name: "74 Ω behind 100 mA",
      given: { system: "TT", ra: "74 Ω", residual: "100 mA" },
      verdict: "met",
      values: { "touch-voltage": { value: 7.4, within: 1e-9 } },
      source: "arithmetic: 74 × 0.1 = 7.4 V; BS 7671 411.5.3",
    },
    {
      name: "at the limit of Table 41.5",
      given: { system: "TT", ra: "500 Ω", residual: "100 mA" },
      verdict: "met",
      source: "BS 7671 Table 41.5: 500 Ω for 100 mA",
    },
    {
      name: "beyond it",
      given: { system: "TT", ra: "534 Ω", residual: "100 mA" },
      verdict: "not-met",
      source: "BS 7671 Table 41.5: 500 Ω for 100 mA",
    },
    {
      name: "electrode not measured",
      given: { system: "TT", residual: "100 mA" },
      verdict: "not-known",
      missing: ["measured-ra"],
      source: "an input that is missing leaves the comparison open",
    },
  ],
});

/** The largest IΔn among RCDs that are the nearest one to some circuit; those have to disconnect an earth fault. */
function largestResidual(installation: Installation): Evidence<"ampere"> {
  let largest: Evidence<"ampere"> | undefined;
  for (const circuit of installation.circuits) {
    const { present, residual: nearest } = nearestResidual(circuit);
    if (isKnownFact(present) && !present.word) continue;
    if (!isKnown(nearest)) return nearest;
    if (largest === undefined || nearest.value > largest.value) largest = nearest;
  }
  return largest ?? notKnown(TERM.residualOperatingCurrent, ["boards"]);
}

const UNSTABLE: Remark = Object.freeze({
  code: "electrode-may-be-unstable",
  words: "Not shown to be at most 200 Ω: above that an electrode may not stay stable as the ground dries.",
});
