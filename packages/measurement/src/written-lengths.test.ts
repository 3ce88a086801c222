import { isKnownFact } from "@good-grounds/core";
import { parseInspectionData, resolveInstallation } from "@good-grounds/inspection";
import { describe, expect, test } from "vitest";
import { smallestFile } from "../../../outside/files/arbitrary-file.ts";
import { lengthFoundIn } from "./index.ts";

/** Ω/m of 1.5 and 1.0 mm² together at 20 °C, as measured cables have it. */
const PER_METRE = 0.97 * (0.0121 + 0.0181);

interface Written {
  readonly metres: number;
  /** How long the cable is in truth, over what was written. */
  readonly truly: number;
  readonly found?: "taped";
}

/** How every length of a house of lighting circuits is taken to have been found. */
function taken(written: readonly Written[]): readonly string[] {
  const circuits = written.map(({ metres, truly, found }, i) => ({
    id: `c${i}`,
    designation: `${i + 1}`,
    description: "lights",
    shape: "radial",
    load: "lighting",
    cable: {
      line: "1.5 mm²",
      cpc: "1 mm²",
      material: "copper",
      cpcArrangement: "in-cable",
      length: `${metres} m`,
      ...(found === undefined ? {} : { lengthFound: found }),
    },
    readings: { temperature: { shown: "20 °C" }, r1r2: { shown: `${(PER_METRE * metres * truly).toFixed(2)} Ω` } },
  }));
  const boards = [{ id: "main", name: "main board", fedFrom: "supply", circuits }];
  const parsed = parseInspectionData({ ...smallestFile(), boards });
  if (!parsed.ok) throw new Error(JSON.stringify(parsed.issues));
  const installation = resolveInstallation(parsed.file);
  return installation.boards.flatMap((board) =>
    board.circuits.map((circuit) => {
      const found = lengthFoundIn(circuit, installation);
      return isKnownFact(found) ? found.word : "not said";
    }),
  );
}

const house = (...truly: readonly number[]) => truly.map((one, i) => ({ metres: 22 + 7 * i, truly: one }));

describe("lengths of which nobody wrote down how they were found", () => {
  test("are estimates where the readings of the others bear them out", () => {
    expect(new Set(taken(house(1.02, 0.95, 1.06, 0.98, 1.03, 0.93)))).toEqual(new Set(["estimated"]));
  });

  test("are of unknown origin where those of the others do not", () => {
    expect(new Set(taken(house(1.4, 0.7, 1.55, 1.3, 0.75, 1.45)))).toEqual(new Set(["unknown"]));
  });

  test("are of unknown origin where there are too few others to tell", () => {
    expect(new Set(taken(house(1, 1.02)))).toEqual(new Set(["unknown"]));
  });

  test("a circuit by itself stays as figures given by hand are", () => {
    expect(taken(house(1))).toEqual(["not said"]);
  });

  test("round figures speak for guesses, others for estimates", () => {
    const both = (metres: readonly number[]) => taken(metres.map((one) => ({ metres: one, truly: 1 })));
    expect(new Set(both([31, 37, 43]))).toEqual(new Set(["estimated"]));
    expect(new Set(both([30, 35, 45]))).toEqual(new Set(["unknown"]));
  });

  test("a circuit that is far out does not make its own length a guess, and hardly those of many good ones", () => {
    const found = taken(house(1.01, 0.97, 1.02, 1.03, 1.6, 0.98, 1.01, 0.99, 1));
    expect(found[4]).toBe("estimated");
    expect(new Set(found)).toEqual(new Set(["estimated"]));
  });

  test("one that says how it was found is believed, and has no voice in the others", () => {
    const taped = house(1, 1, 1, 1, 1, 1).map((one) => ({ ...one, found: "taped" as const }));
    const found = taken([...taped, { metres: 30, truly: 1 }]);
    expect(found).toEqual([...taped.map(() => "taped"), "unknown"]);
  });
});
