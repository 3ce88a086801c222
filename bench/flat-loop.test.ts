import { readFileSync } from "node:fs";
import { CHECKS } from "@good-grounds/computations";
import { RCD_DELAYS, RCD_STANDARDS } from "@good-grounds/core";
import { parseInspection, parseInspectionData, resolveInstallation } from "@good-grounds/inspection";
import { weigh } from "@good-grounds/judgement";
import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { adaptCase } from "../outside/cases/adapt.ts";
import { arbitraryFile, smallestFile } from "../outside/files/arbitrary-file.ts";
import { FLAT_IDS, flatWeigh } from "./flat-loop.ts";

function both(installation: ReturnType<typeof resolveInstallation>, grounds: boolean) {
  const { supply, boards, circuits } = weigh(installation, grounds);
  const ours = [...supply, ...boards.flat(), ...circuits.flat()].map(
    ({ check, judgement }) => `${check} ${judgement.verdict}`,
  );
  return { ours, flat: flatWeigh(installation).map(({ check, flat }) => `${check} ${flat.verdict}`) };
}

const read = (name: string) => readFileSync(new URL(name, import.meta.url), "utf8");

describe("the flat loop written apart from the checks", () => {
  test("has every check, by its id", () => {
    const written: ReadonlySet<string> = new Set(Object.values(FLAT_IDS).flat());
    const missing = CHECKS.map(({ id }) => id).filter((id) => !written.has(id));
    expect(missing, "checks that have no second writing in flat-loop.ts").toEqual([]);
  });

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
      resolveInstallation(adaptCase(JSON.parse(read(`../outside/cases/data/${name}.json`)))),
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

  test("agrees with them on RCDs in series, working, slow, dead and not tested, whatever their marks", () => {
    fc.assert(
      fc.property(fileWithRcds, (data) => {
        const parsed = parseInspectionData(data);
        if (!parsed.ok) throw new Error(JSON.stringify(parsed.issues));
        for (const grounds of [true, false]) {
          const { ours, flat } = both(resolveInstallation(parsed.file), grounds);
          expect(flat).toEqual(ours);
        }
      }),
      { numRuns: 1000, seed: 20_261_130 },
    );
  });
});

const time = fc.constantFrom("18 ms", "96 ms", "135 ms", "212 ms", ">300 ms", "480 ms", "700 ms", ">1999 ms");
const device = fc.record(
  {
    standard: fc.constantFrom(...RCD_STANDARDS),
    delay: fc.constantFrom(...RCD_DELAYS),
    residual: fc.constantFrom("10 mA", "30 mA", "100 mA", "300 mA"),
    readings: fc.record(
      {
        atRated: time.map((shown) => ({ shown })),
        atFive: fc.constantFrom("12 ms", "60 ms", ">300 ms").map((shown) => ({ shown })),
        button: fc.constantFrom("trips", "does-not-trip"),
      },
      { requiredKeys: [] },
    ),
  },
  { requiredKeys: [] },
);
const own = fc.oneof(
  fc.constant("none"),
  fc.constant(undefined),
  device.map((one) => ({ own: one })),
);

/** A sub-board behind a circuit of the first, with RCDs or none at every place there can be one. */
const fileWithRcds = fc
  .record({
    earthing: fc.constantFrom("TT", "TN-S"),
    zs: fc.constantFrom("0.5 Ω", "1.4 Ω", "91 Ω", "700 Ω"),
    load: fc.constantFrom("socket-outlets", "lighting", "shower", "vehicle-charging"),
    rcds: fc.tuple(own, own, own),
    boards: fc.tuple(fc.option(device, { nil: undefined }), fc.option(device, { nil: undefined })),
  })
  .map(({ earthing, zs, load, rcds: [feeder, first, second], boards: [origin, sub] }) => {
    const circuit = (id: string, rcd: unknown, rest: Record<string, unknown>) => ({
      id,
      designation: id,
      description: id,
      ...(rcd === undefined ? {} : { rcd }),
      device: { standard: "BS EN 60898", type: "B", rated: "32 A" },
      ...rest,
    });
    const rcds = (one: unknown) => (one === undefined ? [] : [{ id: "r", serves: "whole-board", ...(one as object) }]);
    const final = {
      shape: "radial",
      load,
      cable: {
        insulation: "70C-thermoplastic",
        material: "copper",
        line: "2.5 mm²",
        cpc: "1.5 mm²",
        cpcArrangement: "in-cable",
      },
      readings: { zs: { shown: zs } },
    };
    return {
      ...smallestFile(),
      supply: { earthing, phases: 1, nominalVoltage: "230 V", bonding: [], readings: { ra: { shown: "90 Ω" } } },
      boards: [
        {
          id: "a",
          name: "A",
          fedFrom: "supply",
          rcds: rcds(origin),
          circuits: [circuit("f", feeder, { shape: "distribution", load: "board" })],
        },
        {
          id: "b",
          name: "B",
          fedFrom: { board: "a", circuit: "f" },
          rcds: rcds(sub),
          readings: { zdb: { shown: earthing === "TT" ? "90 Ω" : "0.3 Ω" } },
          circuits: [circuit("c", first, final), circuit("d", second, final)],
        },
      ],
    };
  });
