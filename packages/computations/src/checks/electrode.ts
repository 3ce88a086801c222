import {
  EARTHING_SYSTEMS,
  type Evidence,
  factNotKnown,
  isKnown,
  isKnownFact,
  notKnown,
  Reckoner,
  type Remark,
  TERM,
} from "@good-grounds/core";
import { type Installation, MATTER } from "@good-grounds/inspection";
import { electrodeStability, permittedTouchVoltage } from "@good-grounds/tables";
import { check, concluded, doesNotArise } from "../check.ts";
import { type RcdTest, rcdWorks } from "../circuits/rcd-test.ts";
import { type ResidualBefore, residualsBefore } from "../circuits/residual-devices.ts";
import { ASKED, QUESTION } from "../matters.ts";
import { asksQuantity, asksRcdTests, asksWord } from "../need.ts";

/**
 * Earth electrode of a TT installation: RA·IΔn ≤ 50 V for the RCD with the largest residual operating current that has
 * to disconnect a fault (411.5.3), and those RCDs were found to work, for through no electrode does a dead one open. Of
 * RCDs in series before a circuit the first that works serves it. RA in Ω with the electrode disconnected from the installation, IΔn in A. Above about
 * 200 Ω an electrode may not be stable; that is shown beside and does not decide.
 */
export const electrode = check({
  id: "electrode",
  scope: "supply",
  title: "Earth electrode suits the RCDs, and they work",
  formula: "RA·IΔn ≤ 50 V, with RCDs that work",
  regulations: ["411.5.3", "542.2"],
  needs: {
    system: asksWord(MATTER.earthingSystem, EARTHING_SYSTEMS),
    ra: asksQuantity(TERM.measuredRa, "74 Ω"),
    residual: asksQuantity(TERM.residualOperatingCurrent, "100 mA, the largest that serves for fault protection"),
    rcdTest: asksRcdTests(ASKED.rcdTested, "of each RCD that serves for fault protection"),
  },
  gather(installation) {
    const { earthing, ra, ze } = installation.supply;
    if (isKnownFact(earthing) && earthing.word !== "TT") return doesNotArise("not a TT system", earthing);
    return { system: earthing, ra: isKnown(ra) ? ra : ze, ...serving(installation) };
  },
  conclude({ system, ra, residual, rcdTest }, reckon) {
    const touch = reckon.product(TERM.touchVoltage, ra, residual);
    const tests: readonly RcdTest[] = rcdTest.length === 0 ? [NO_TEST] : rcdTest;
    const held = reckon.all(
      QUESTION.electrodeSuits,
      reckon.atMost(QUESTION.touchVoltage, touch, permittedTouchVoltage),
      ...tests.map((test) => rcdWorks(test, reckon)),
    );
    const judgement = isKnownFact(system)
      ? held
      : reckon.settled(QUESTION.electrodeSuits, "not-known", "", system, held);
    const stable = reckon.atMost(QUESTION.electrodeStable, ra, electrodeStability);
    return concluded(judgement, [stable], stable.verdict === "met" ? [] : [UNSTABLE]);
  },
  examples: [
    {
      name: "74 Ω behind 100 mA",
      given: { system: "TT", ra: "74 Ω", residual: "100 mA", rcdTest: "in-time" },
      verdict: "met",
      values: { "touch-voltage": { value: 7.4, within: 1e-9 } },
      source: "arithmetic: 74 × 0.1 = 7.4 V; BS 7671 411.5.3",
    },
    {
      name: "at the limit of Table 41.5",
      given: { system: "TT", ra: "500 ± 0 Ω", residual: "100 mA", rcdTest: "in-time" },
      verdict: "met",
      source: "BS 7671 Table 41.5: 500 Ω for 100 mA",
    },
    {
      name: "beyond it",
      given: { system: "TT", ra: "534 Ω", residual: "100 mA", rcdTest: "in-time" },
      verdict: "not-met",
      source: "BS 7671 Table 41.5: 500 Ω for 100 mA",
    },
    {
      name: "good electrode, one of two RCDs dead",
      given: { system: "TT", ra: "74 Ω", residual: "100 mA", rcdTest: ["in-time", "does-not-operate"] },
      verdict: "not-met",
      source: "BS 7671 411.5.3, 643.8: nothing disconnects the circuits behind the dead one",
    },
    {
      name: "good electrode, RCD too slow",
      given: { system: "TT", ra: "74 Ω", residual: "100 mA", rcdTest: "too-slow" },
      verdict: "not-met",
      source: "BS 7671 411.5.3, 643.8: the RCD failed its test",
    },
    {
      name: "good electrode, RCD not tested",
      given: { system: "TT", ra: "74 Ω", residual: "100 mA" },
      verdict: "not-known",
      missing: ["rcd-tested"],
      source: "nothing shows that the RCD works",
    },
    {
      name: "electrode not measured",
      given: { system: "TT", residual: "100 mA", rcdTest: "in-time" },
      verdict: "not-known",
      missing: ["measured-ra"],
      source: "an input that is missing leaves the comparison open",
    },
  ],
});

/** The RCDs that have to disconnect an earth fault of some circuit: the largest IΔn among them, and their tests. */
function serving({ circuits }: Installation) {
  let largest: Evidence<"ampere"> | undefined;
  // A device stands before many circuits; its reading is one leaf of the file and tells it from the others.
  const tests = new Map<unknown, RcdTest>();
  for (const circuit of circuits) {
    const { present, devices } = residualsBefore(circuit);
    if (isKnownFact(present) && !present.word) continue;
    const { residual, test } = servingOf(devices);
    if (!isKnown(residual)) return { residual, rcdTest: [test] };
    if (largest === undefined || residual.value > largest.value) largest = residual;
    tests.set(residual, test);
  }
  const rcdTest = [...tests.values()];
  return { residual: largest ?? notKnown(TERM.residualOperatingCurrent, ["boards"]), rcdTest };
}

/** Of RCDs in series the first that works; without one the first of which it is not known, else the one at the circuit. */
function servingOf(devices: readonly ResidualBefore[]): Pick<ResidualBefore, "residual" | "test"> {
  const verdicts = devices.map(({ test }) => rcdWorks(test, VERDICTS_ONLY).verdict);
  const works = verdicts.indexOf("met");
  const open = verdicts.findIndex((verdict) => verdict !== "not-met");
  return devices[works >= 0 ? works : Math.max(0, open)] ?? NO_DEVICE;
}

const VERDICTS_ONLY = new Reckoner(false);
const NO_TEST = factNotKnown(ASKED.rcdTested, ["rcdTest"]);
const NO_DEVICE = { residual: notKnown(TERM.residualOperatingCurrent, ["rcd"]), test: NO_TEST };

const UNSTABLE: Remark = Object.freeze({
  code: "electrode-may-be-unstable",
  words: "Not shown to be at most 200 Ω: above that an electrode may not stay stable as the ground dries.",
});
