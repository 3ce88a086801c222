import { readFileSync } from "node:fs";
import { type Finding, missingOf } from "@good-grounds/core";
import { resolveInstallation } from "@good-grounds/inspection";
import { weigh } from "@good-grounds/judgement";
import { describe, expect, test } from "vitest";
import { adaptCase, type CaseFile } from "./adapt.ts";

const read = (name: string): CaseFile =>
  JSON.parse(readFileSync(new URL(`data/${name}.json`, import.meta.url), "utf8"));

/** Every finding that is not met, as "place check". */
function notMet(name: string): readonly string[] {
  const installation = resolveInstallation(adaptCase(read(name)));
  const { supply, boards, circuits } = weigh(installation);
  const all: Finding[] = [...supply, ...boards.flat(), ...circuits.flat()];
  return all
    .filter(({ judgement }) => judgement.verdict === "not-met")
    .map(({ path, check }) => `${path.join("/")} ${check}`)
    .sort();
}

/** The planted faults that belong to the checks, and nothing else. */
const TRUTH: Readonly<Record<string, readonly string[]>> = {
  "case-1": [
    // The ring is bridged: r1 and r2 are far too low for 62 m.
    "boards/0/circuits/0 ring-continuity",
    // 45 A device and 41.3 A load on 6 mm² above a ceiling under deep insulation.
    "boards/0/circuits/3 cable-capacity",
    // R1+R2 of circuit 6 is a copy of circuit 5: it does not fit Zs. Its own cable it misses by 28 %, which is too near to
    // call where nobody said how the length was found.
    "boards/0/circuits/5 zs-agreement",
    // 6 mm² main bonding to water where PME asks 10 mm².
    "supply/bonding/1 bonding-size",
  ],
  "case-2": [
    // Lights behind a 100 mA RCD only.
    "boards/0/circuits/3 additional-protection",
    // Zs of 0.86 Ω where the electrode has 74 Ω.
    "boards/0/circuits/5 zs-agreement",
    // The selective RCD trips at 96 ms, less than 130 ms.
    "boards/0/rcds/0 rcd-time",
  ],
};

describe.each(Object.entries(TRUTH))("%s", (name, expected) => {
  test("every planted fault of the checks is not met, and no sound circuit or benign oddity is", () => {
    expect(notMet(name)).toEqual([...expected].sort());
  });

  test.runIf(name === "case-1")("the copied R1+R2 is no pass against its cable either", () => {
    const { circuits } = weigh(resolveInstallation(adaptCase(read(name))));
    const copied = circuits[5]?.find(({ check }) => check === "r1r2-length");
    expect(copied?.judgement.verdict).toBe("too-near");
  });

  test("whatever is open names what is missing", () => {
    const { supply, boards, circuits } = weigh(resolveInstallation(adaptCase(read(name))));
    for (const finding of [...supply, ...boards.flat(), ...circuits.flat()]) {
      if (finding.judgement.verdict !== "not-known") continue;
      expect(missingOf(finding.judgement).length, `${finding.path.join("/")} ${finding.check}`).toBeGreaterThan(0);
    }
  });
});
