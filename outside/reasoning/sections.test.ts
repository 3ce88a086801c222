import { reasoningParts } from "@good-grounds/report";
import { describe, expect, test } from "vitest";
import { reasonedInExample } from "./reasoned-example.ts";

/** Flat twin and cpc, clipped: 1 mm² carries 16 A so, 2.5 mm² 27 A, 4 mm² 37 A. */
const TWIN = { cable: "flat-twin-and-cpc", insulation: "70C-thermoplastic", material: "copper", methods: ["C"] };
const SMALL = { ...TWIN, line: "1 mm²" };
const MIDDLE = { ...TWIN, line: "2.5 mm²" };
const LARGE = { ...TWIN, line: "4 mm²" };

const SPUR = { outlets: "several", fused: false, load: "heavy", heat: "none" };

/** An observation of a circuit on 32 A, c1 the ring and c3 the cooker, that brings in a length of cable. */
function about(topic: string, section: object | undefined, facts: object, circuit = "c1") {
  const brings = section === undefined ? {} : { brings: { sections: [{ id: "piece", ...section }] } };
  return reasonedInExample({ topic, board: "cu", circuit, facts, ...brings });
}

type Reasoned = ReturnType<typeof about>;
const worked = (one: Reasoned) => Object.fromEntries(one.worked.map(({ fact, value }) => [fact, value]));
const against = ({ against }: Reasoned) => against.map(({ fact, value, stated }) => [fact, value, stated]);

describe("what is recorded of a length of cable", () => {
  const old = (section: object | undefined) =>
    about("rubber-or-lead-cable", section, {}, "c3").recorded.map(({ fact, value, of }) => [fact, value, of.length]);
  test("goes before what is recorded of the circuit's cable", () => {
    expect(old({ cable: "lead-sheathed" })).toContainEqual(["metal-sheath", "earthed | unearthed", 1]);
    expect(old({ cable: "flat-twin-and-cpc" })).toEqual([]);
  });
});

describe("a length of cable that the observation names, on the circuit's own device", () => {
  test.each<[string, object, string]>([
    ["1 mm²", SMALL, "no"],
    ["2.5 mm²", MIDDLE, "no"],
    ["4 mm²", LARGE, "yes"],
    ["1 mm², and nobody saw which way it runs", { ...SMALL, methods: undefined }, "no"],
  ])("a spur of %s: %s, whatever the ring carries", (_, section, value) => {
    const one = about("spur-overloaded", section, SPUR);
    expect(worked(one)).toEqual({ "cable-carries": value });
    expect(one.worked[0]?.of?.[0]?.join("/")).toContain("sections");
    expect(one.reasoning.classification).toBe(value === "no" ? "C2" : "none");
  });

  test.each<[string, object]>([
    ["size", { ...TWIN }],
    ["material", { ...SMALL, material: undefined }],
    ["insulation", { ...SMALL, insulation: undefined }],
    ["route, where one would do and another not", { ...LARGE, methods: undefined }],
  ])("%s not recorded: it stays open", (_, section) => {
    const one = about("spur-overloaded", section, SPUR);
    expect(worked(one)).toEqual({});
    expect(one.reasoning.open).toContain("cable-carries");
  });

  test("stated to carry it, and 1 mm²: to settle, and never nothing", () => {
    const one = about("spur-overloaded", SMALL, { ...SPUR, "cable-carries": true });
    expect(against(one)).toEqual([["cable-carries", "no", "yes"]]);
    expect(one.reasoning.possible).toContain("C2");
    expect(one.reasoning.classification).toBeNull();
    expect(reasoningParts(one)[0]?.heading).toBe("To settle first");
  });

  test("a flexible cord joined to the circuit", () => {
    const facts = { "used-as-fixed": true, ends: "held", wears: "nothing", "wet-or-conductive": false, heat: "none" };
    const one = about(
      "flexible-cord-as-fixed-wiring",
      { ...SMALL, layer: "sheathed" },
      { ...facts, excess: "large", "cable-load": "can-exceed" },
      "c3",
    );
    expect(worked(one)["within-cable"]).toBe("no");
    expect(one.recorded.find(({ fact }) => fact === "live-covering")?.value).toBe("sheathed");
    expect(one.reasoning.possible).toEqual(["C2"]);
    const said = { ...facts, "live-covering": "bare", "within-cable": true };
    const against_ = about("flexible-cord-as-fixed-wiring", { ...SMALL, layer: "sheathed" }, said, "c3");
    expect(
      against(against_)
        .map(([fact]) => fact)
        .sort(),
    ).toEqual(["live-covering", "within-cable"]);
  });

  test("the smaller of two cables on one device", () => {
    const one = about("circuits-mixed", SMALL, { mix: "doubled", terminal: "holds", heat: "none" }, "c3");
    expect(worked(one)["smallest-carries"]).toBe("no");
  });

  test("a smaller piece of a circuit's own cable is not carried by what the rest is", () => {
    const one = about("overload-device-oversize", SMALL, { load: "can-exceed", heat: "none" }, "c3");
    expect(worked(one)).toEqual({ "within-cable": "no", excess: "large" });
    expect(one.reasoning.classification).toBe("C2");
  });

  test("a piece that carries it does not answer for the rest of the circuit", () => {
    expect(worked(about("overload-device-oversize", LARGE, { heat: "none" }, "c3"))["within-cable"]).toBeUndefined();
  });

  test("a leg of the ring itself is judged as a ring and not as a radial", () => {
    expect(worked(about("overload-device-oversize", MIDDLE, { heat: "none" }, "c1"))["within-cable"]).toBeUndefined();
  });

  test("none named: as before, the circuit's cable says nothing of it", () => {
    expect(worked(about("spur-overloaded", undefined, SPUR))).toEqual({});
  });

  test("figures given with the observation go before", () => {
    const figures = { shape: "radial", phases: "1", standard: "BS EN 60898", rated: "32 A", kind: "flat-twin-and-cpc" };
    const more = { insulation: "70C-thermoplastic", material: "copper", line: "4 mm²", methods: "C" };
    expect(worked(about("spur-overloaded", SMALL, { ...SPUR, ...figures, ...more }))).toEqual({
      "cable-carries": "yes",
    });
  });
});
