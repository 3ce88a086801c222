import { readFileSync } from "node:fs";
import { isKnownFact } from "@good-grounds/core";
import { resolveInstallation } from "@good-grounds/inspection";
import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { diagnoseRing } from "../../packages/readings/src/diagnosis/ring/index.ts";
import { adaptCase, type CaseFile } from "../cases/adapt.ts";
import { arbitraryFile } from "../files/arbitrary-file.ts";

const installationOf = (name: string) => {
  const file: CaseFile = JSON.parse(readFileSync(new URL(`../cases/data/${name}.json`, import.meta.url), "utf8"));
  return resolveInstallation(adaptCase(file));
};

/** The diagnosis of every ring of a case, by the circuit's number. */
function rings(name: string) {
  const installation = installationOf(name);
  return installation.circuits
    .filter(({ shape }) => isKnownFact(shape) && shape.word === "ring")
    .map((circuit) => {
      const found = diagnoseRing(circuit, installation);
      if (found.diagnosis === undefined) throw new Error(found.reason);
      return found;
    });
}

describe("the rings of the invented installations", () => {
  test("case 1: the ring bridged from 14 m to 48 m is found, and the spur of the other is no fault of the ring", () => {
    const [bridged, other] = rings("case-1");
    const [fault] = bridged?.diagnosis.explanations[0]?.faults ?? [];
    expect(bridged?.diagnosis).toMatchObject({ leading: 1, accounts: true });
    if (fault?.kind !== "interconnection") throw new Error(`found ${fault?.kind}`);
    expect(Math.abs((fault.from?.metres?.value ?? 0) - 14)).toBeLessThan(3);
    expect(Math.abs((fault.to?.metres?.value ?? 0) - 48)).toBeLessThan(3);
    expect(other?.diagnosis.explanations[0]?.faults).toMatchObject([{ kind: "spur", point: 6 }]);
  });

  test("case 2: a sound ring with one reading a digit or two off is a sound ring", () => {
    const [sound] = rings("case-2");
    expect(sound?.diagnosis.explanations[0]?.faults).toEqual([]);
    expect(sound?.diagnosis).toMatchObject({ leading: 1, accounts: true });
  });

  test("the answer carries its readings and what was assumed", () => {
    const [bridged] = rings("case-1");
    expect(bridged?.read).toHaveLength(3 + 7 + 7);
    expect(bridged?.points).toHaveLength(7);
    expect(bridged?.assumed.map(({ kind }) => kind)).toContain("fact");
  });

  test("without r1 there is no diagnosis, and r1 is named as missing", () => {
    const installation = installationOf("case-1");
    const [circuit] = installation.circuits;
    if (circuit === undefined) throw new Error("no circuit");
    const [, , other] = installation.circuits;
    const r1 = other?.readings.r1;
    if (r1 === undefined) throw new Error("no reading");
    const found = diagnoseRing({ ...circuit, readings: { ...circuit.readings, r1 } }, installation);
    expect(found.diagnosis).toBeUndefined();
    if (found.diagnosis === undefined)
      expect(found.missing.map((one) => ("term" in one ? one.term.id : ""))).toEqual(["ring-r1"]);
  });

  test("circuits of files of every shape are diagnosed or refused with a reason", () => {
    fc.assert(
      fc.property(arbitraryFile, (file) => {
        const installation = resolveInstallation(file);
        for (const circuit of installation.circuits) {
          const found = diagnoseRing(circuit, installation);
          if (found.diagnosis === undefined) expect(found.reason).not.toBe("");
          else expect(found.diagnosis.explanations.length).toBeGreaterThan(0);
        }
      }),
      { numRuns: 60 },
    );
  });
});
