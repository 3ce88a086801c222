import { Reckoner, type Verdict } from "@good-grounds/core";
import { expect, test } from "vitest";
import { givenFromText } from "../given.ts";
import { maximumZs } from "./maximum-zs.ts";

const TT = {
  system: "TT",
  nominalVoltage: "230 V",
  underTable411: "yes",
  standard: "BS EN 61009",
  type: "B",
  rated: "32 A",
} as const;

/** The verdicts of the whole and of the matters within it, by their ids. */
function judged(given: Readonly<Record<string, string>>): Readonly<Record<string, Verdict>> {
  const made = givenFromText(maximumZs.needs, given);
  if (!made.ok) throw new Error(JSON.stringify(made.issues));
  const { judgement, settles = [] } = maximumZs.conclude(made.given, new Reckoner(true));
  return Object.fromEntries([judgement, ...settles].map(({ matter, verdict }) => [matter.id, verdict]));
}

test("what the RCD does is no verdict on the fuse or breaker, and the other way round", () => {
  expect(judged({ ...TT, rcd: "yes", residual: "30 mA", rcdTest: "in-time", zs: "74.11 Ω" })).toMatchObject({
    disconnection: "met",
    "overcurrent-disconnects": "not-met",
    "residual-disconnects": "met",
  });
  expect(judged({ ...TT, rcd: "no", zs: "0.50 Ω", r1r2: "0.20 Ω", temperature: "20 °C" })).toMatchObject({
    disconnection: "met",
    "overcurrent-disconnects": "met",
    "residual-disconnects": "not-met",
  });
});
