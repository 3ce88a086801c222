import { givenFromText, zsAgreement } from "@good-grounds/computations";
import { assumed, matter, Reckoner, TERM } from "@good-grounds/core";
import { resolveInstallation } from "@good-grounds/inspection";
import { doubtedReading, standardOf } from "@good-grounds/measurement";
import { comparedConformity } from "@good-grounds/readings";
import { describe, expect, test } from "vitest";
import { loose } from "../../bench/flat-errors.ts";
import { smallestFile } from "../files/arbitrary-file.ts";

const RECKON = new Reckoner(true);

/** Nothing of a circuit but what a case states. */
function nothingElse() {
  const made = givenFromText(zsAgreement.needs, {});
  if (!made.ok) throw new Error("nothing was given");
  return made.given;
}

/** The reading of Ze of a file whose tester has this accuracy, or none stated. */
function readingOf(shown: string, accuracy: string | undefined) {
  const instruments = [{ id: "m", kind: "tester", serial: "1", ...(accuracy && { accuracy: { loop: accuracy } }) }];
  const file = { ...smallestFile(), instruments };
  const { ze } = resolveInstallation({ ...file, supply: { ...file.supply, readings: { ze: { shown } } } }).supply;
  if (ze.kind !== "measured") throw new Error("a reading was given");
  return ze;
}

describe("one reading has one doubt, whoever asks", () => {
  test.each([
    ["0.44 Ω", "±(2 % + 2 digits)"],
    ["0.44 Ω", "5 %"],
    ["1.2 Ω", undefined],
    ["0.35 Ω", undefined],
    ["74.1 Ω", undefined],
  ])("%s, accuracy %s", (shown, accuracy) => {
    const leaf = readingOf(shown, accuracy);
    const doubted = doubtedReading(leaf);
    const standard = standardOf(doubted);
    expect(standard).toBeGreaterThan(0);
    // The band of a limit comparison.
    expect([leaf.low, leaf.high]).toEqual([
      expect.closeTo(leaf.value - doubted.below, 12),
      expect.closeTo(leaf.value + doubted.above, 12),
    ]);
    // The probability that a limit is met.
    const against = RECKON.atMost(
      matter("invented", "invented"),
      leaf,
      assumed(TERM.permittedZs, leaf.value, "invented"),
    );
    expect(comparedConformity(against)?.standard).toBeCloseTo(standard, 12);
    // A check of agreement against figures without doubt, and the same rule written a second time.
    const sure = (value: number) => assumed(TERM.measuredZe, value, "invented");
    const given = {
      ...nothingElse(),
      zs: leaf,
      zdb: sure(leaf.value),
      ze: sure(leaf.value),
      r1r2: assumed(TERM.measuredR1R2, 0, "none"),
    };
    const { judgement } = zsAgreement.conclude(given, RECKON);
    expect(judgement.kind === "compared" ? judgement.apart?.standard : Number.NaN).toBeCloseTo(standard, 12);
    expect(Math.hypot(...loose(leaf).by.values())).toBeCloseTo(standard, 12);
  });
});
