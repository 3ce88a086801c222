import { readFileSync } from "node:fs";
import { parseInspection, parseInspectionData, resolveInstallation } from "@good-grounds/inspection";
import { weigh } from "@good-grounds/judgement";
import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { adaptCase } from "../checks/cases/adapt.ts";
import { arbitraryFile, smallestFile } from "../checks/files/arbitrary-file.ts";
import { flatWeigh } from "./flat-loop.ts";

function both(installation: ReturnType<typeof resolveInstallation>, grounds: boolean) {
  const { supply, boards, circuits } = weigh(installation, grounds);
  const ours = [...supply, ...boards.flat(), ...circuits.flat()].map(
    ({ check, judgement }) => `${check} ${judgement.verdict}`,
  );
  const names = ours.map((words) => words.split(" ")[0] ?? "");
  return { ours, flat: flatWeigh(installation).map(({ verdict }, i) => `${names[i]} ${verdict}`) };
}

const read = (name: string) => readFileSync(new URL(name, import.meta.url), "utf8");

describe("the flat loop written apart from the checks", () => {
  test.each(["terraced-house", "farmhouse", "workshop"])("agrees with them on %s, with and without grounds", (name) => {
    const parsed = parseInspection(read(`../examples/${name}.json`));
    if (!parsed.ok) throw new Error("example does not parse");
    const installation = resolveInstallation(parsed.file);
    for (const grounds of [true, false]) {
      const { ours, flat } = both(installation, grounds);
      expect(flat).toEqual(ours);
    }
  });

  test.each(["case-1", "case-2"])("agrees with them on %s", (name) => {
    const { ours, flat } = both(
      resolveInstallation(adaptCase(JSON.parse(read(`../checks/cases/data/${name}.json`)))),
      true,
    );
    expect(flat).toEqual(ours);
  });

  test("agrees with them where no circuit is recorded: nothing to add up is no demand of nothing", () => {
    const supply = { bonding: [], phases: 1, device: { rated: "100 A" }, mainSwitch: { rated: "100 A" } } as const;
    const parsed = parseInspectionData({ ...smallestFile(), supply });
    if (!parsed.ok) throw new Error(JSON.stringify(parsed.issues));
    const { ours, flat } = both(resolveInstallation(parsed.file), true);
    expect(ours).toContain("maximum-demand not-known");
    expect(flat).toEqual(ours);
  });

  test("agrees with them on files of every shape, however little is known", () => {
    fc.assert(
      fc.property(arbitraryFile, (file) => {
        const { ours, flat } = both(resolveInstallation(file), true);
        expect(flat).toEqual(ours);
      }),
      { numRuns: 1000 },
    );
  });
});
