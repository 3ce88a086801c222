import { parseInspectionData, resolveInstallation } from "@good-grounds/inspection";
import { weigh } from "@good-grounds/judgement";
import { describe, expect, test } from "vitest";
import { smallestFile } from "../../../../outside/files/arbitrary-file.ts";

function verdicts(bond: object): readonly (readonly [check: string, verdict: string])[] {
  const parsed = parseInspectionData({ ...smallestFile(), supply: { bonding: [{ id: "gas", to: "gas", ...bond }] } });
  if (!parsed.ok) throw new Error(JSON.stringify(parsed.issues));
  return weigh(resolveInstallation(parsed.file))
    .supply.filter(({ path }) => path.includes("bonding"))
    .map(({ check, judgement }) => [check, judgement.verdict]);
}

describe("main bonding", () => {
  test("is not asked for where there is no such service", () => {
    expect(verdicts({ service: "no-such-service" })).toEqual([
      ["bonding-size", "not-applicable"],
      ["bonding-continuity", "not-applicable"],
    ]);
  });

  test.each([
    ["nothing is said of the service", {}],
    ["nobody could see whether there is one", { service: { notKnown: "limited", reason: "boxed in" } }],
    ["the service is there", { service: "present" }],
    ["it is said to be extraneous all the same", { service: "no-such-service", extraneous: true }],
    ["it is said to be joined all the same", { service: "no-such-service", connected: true }],
  ])("stays asked for where %s", (_, bond) => {
    for (const [, verdict] of verdicts(bond)) expect(verdict).toBe("not-known");
  });
});
