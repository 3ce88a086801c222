import { describe, expect, test } from "vitest";
import { reasonedInExample } from "./reasoned-example.ts";

/**
 * A conductor far too small for the 32 A device of its circuit, of which little else was written down. Nothing of it may be
 * read as "over by a tenth at most" or as sound: it is C2, or open, with what would settle it.
 */
const ONLY_SIZE = { line: "1.0 mm²" };
const FLEX = { cable: "flexible", line: "1.5 mm²", layer: "sheathed" };

function about(topic: string, section: object, facts: object, circuit = "c3") {
  return reasonedInExample({
    topic,
    board: "cu",
    circuit,
    facts,
    brings: { sections: [{ id: "piece", ...section }] },
  });
}

const LIMITED = { notKnown: "limited", reason: "fixed finishes" };

describe.each([
  ["1.0 mm² on a B32, only its size known", ONLY_SIZE],
  ["1.5 mm² flex as extension of a circuit on 32 A", FLEX],
  [
    "1.0 mm² flat twin, clipped",
    { ...ONLY_SIZE, cable: "flat-twin-and-cpc", insulation: "70C-thermoplastic", material: "copper", methods: ["C"] },
  ],
])("%s", (_, section) => {
  test.each([
    ["nothing else said", {}],
    ["the load stays under", { load: "stays-under", heat: "none" }],
    ["the load can exceed it", { load: "can-exceed", heat: "none" }],
  ])("%s: C2, or open with C2 among what is possible", (_, facts) => {
    const one = about("overload-device-oversize", section, facts);
    expect(one.worked.find(({ fact }) => fact === "excess")?.value ?? "open").not.toBe("slight");
    expect(one.worked.find(({ fact }) => fact === "within-cable")?.value ?? "open").not.toBe("yes");
    expect(one.reasoning.possible).toContain("C2");
    expect(["C2", null]).toContain(one.reasoning.classification);
  });

  test("what is not known cannot be found out: C2, or FI", () => {
    const beyond = Object.fromEntries(["within-cable", "excess"].map((name) => [name, LIMITED]));
    const one = about("overload-device-oversize", section, { ...beyond, load: "can-exceed", heat: "none" });
    expect(["C2", "FI"]).toContain(one.reasoning.classification);
  });
});

describe("1.5 mm² flex joined on, as the subject of its own has it", () => {
  const SOUND = { "used-as-fixed": true, ends: "held", wears: "nothing", "wet-or-conductive": false };
  test.each([[{}], [SOUND]])("%j: C2 among what is possible, and never less by itself", (facts) => {
    const one = about("flexible-cord-as-fixed-wiring", FLEX, facts);
    expect(one.worked.find(({ fact }) => fact === "within-cable")?.value ?? "open").not.toBe("yes");
    expect(one.reasoning.possible).toContain("C2");
    expect(["C2", "C1", null]).toContain(one.reasoning.classification);
  });
});
