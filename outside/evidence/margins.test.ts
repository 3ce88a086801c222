import type { Judgement } from "@good-grounds/core";
import { resolveInstallation } from "@good-grounds/inspection";
import { weigh } from "@good-grounds/judgement";
import { comparisonWords, decidingComparison, sides } from "@good-grounds/report";
import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { compute } from "../compute.ts";
import { arbitraryFile } from "../files/arbitrary-file.ts";

function* partsOf(judgement: Judgement): Generator<Judgement> {
  yield judgement;
  if (judgement.kind === "combined") for (const part of judgement.from) yield* partsOf(part as Judgement);
}

describe("what is said of a limit", () => {
  test("a margin and its verdict never disagree in sign, in any part of any check", () => {
    fc.assert(
      fc.property(arbitraryFile, (file) => {
        const { supply, boards, circuits } = weigh(resolveInstallation(file));
        for (const { check, judgement, beside } of [...supply, ...boards.flat(), ...circuits.flat()]) {
          for (const part of [judgement, ...beside].flatMap((one) => [...partsOf(one)])) {
            if (part.verdict === "met") expect(part.margin < 0, check).toBe(false);
            if (part.verdict === "not-met") expect(part.margin > 0, check).toBe(false);
          }
        }
      }),
      { numRuns: 400 },
    );
  });

  test("what is not met is never printed as two equal figures", () => {
    const zs = (text: string) =>
      compute("maximum-zs", {
        system: "TN-S",
        nominalVoltage: "230 V",
        underTable411: "yes",
        standard: "BS EN 60898",
        type: "B",
        rated: "32 A",
        rcd: "no",
        zs: text,
        r1r2: "0 ± 0 Ω",
        temperature: "20 °C",
        insulation: "70C-thermoplastic",
        cpcArrangement: "in-cable",
      }).judgement;
    const judgement = zs("1.3660 ± 0 Ω");
    const compared = judgement === undefined ? undefined : decidingComparison(judgement);
    if (compared === undefined) throw new Error("a comparison decides");
    // 218.5 ÷ 160 = 1.365625: both are 1.37 Ω in three figures.
    expect(compared.verdict).toBe("not-met");
    expect(comparisonWords(compared)).toBe(
      "Zs,hot 1.366 Ω at most Zs,max 1.3656 Ω".replace("1.366 Ω at", "1.3660 Ω at"),
    );
  });

  test("on TT the voltage that the RCD lets stand is the headline, not the loop of the breaker", () => {
    const { judgement } = compute("maximum-zs", {
      system: "TT",
      nominalVoltage: "230 V",
      underTable411: "yes",
      standard: "BS EN 60898",
      type: "B",
      rated: "32 A",
      rcd: "yes",
      residual: "100 mA",
      rcdTest: "in-time",
      zs: "720 Ω",
    });
    const compared = judgement === undefined ? undefined : decidingComparison(judgement);
    if (compared === undefined) throw new Error("a comparison decides");
    expect(judgement?.verdict).toBe("not-met");
    expect(sides(compared).map(({ term, value }) => [term.unit, Math.round(value)])).toEqual([
      ["volt", 72],
      ["volt", 50],
    ]);
    expect(judgement?.margin).toBeCloseTo(1 - 72 / 50, 9);
  });
});
