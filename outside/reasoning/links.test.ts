import { parseInspection, resolveInstallation } from "@good-grounds/inspection";
import { reasonObservations, topicIssues, weigh } from "@good-grounds/judgement";
import { describe, expect, test } from "vitest";
import { changed } from "../reports/example.ts";

type Circuit = Record<string, unknown> & { readonly id: string; readings: Record<string, unknown> };

/** The invented terraced house with one observation of its own, and one circuit of it changed. */
function reasoned(observation: Record<string, unknown>, edit: (circuit: Circuit) => void = () => {}) {
  const text = changed((file) => {
    Object.assign(file, {
      observations: [{ id: "x", place: "somewhere", what: "something", ...observation }],
      inspected: [],
    });
    for (const { circuits } of file.boards as readonly { readonly circuits: readonly Circuit[] }[])
      for (const circuit of circuits) if (circuit.id === observation.circuit) edit(circuit);
  });
  const parsed = parseInspection(text);
  if (!parsed.ok) throw new Error(JSON.stringify(parsed.issues));
  expect(topicIssues(parsed.file)).toEqual([]);
  const installation = resolveInstallation(parsed.file);
  const [one] = reasonObservations(installation, weigh(installation));
  if (one === undefined) throw new Error("not reasoned about");
  return one;
}

const on = (circuit: string, topic: string, facts: Record<string, unknown>) => ({ board: "cu", circuit, topic, facts });
const answered = (one: ReturnType<typeof reasoned>) =>
  Object.fromEntries(one.worked.flatMap(({ fact, value }) => (value === null ? [] : [[fact, value]])));

/** A cable of the size on a 32 A breaker, clipped: figures given with the observation. */
const clipped = (line: string, kind = "flat-twin-and-cpc") => ({
  shape: "radial",
  phases: "1",
  standard: "BS EN 60898",
  rated: "32 A",
  kind,
  insulation: "70C-thermoplastic",
  material: "copper",
  line,
  methods: "C",
});

describe("the cable of the circuit says nothing of another cable", () => {
  // The ring c1 and the cooker circuit c3 both comply on their 32 A devices.
  test.each([
    [
      "c1",
      "spur-overloaded",
      "cable-carries",
      { outlets: "several", fused: false, load: "heavy", heat: "none" },
      "2.5 mm²",
    ],
    ["c3", "circuits-mixed", "smallest-carries", { mix: "doubled", terminal: "holds", heat: "none" }, "1 mm²"],
    [
      "c3",
      "flexible-cord-as-fixed-wiring",
      "within-cable",
      {
        "used-as-fixed": true,
        exposure: "protected",
        state: "sound",
        ends: "held",
        "cable-load": "can-exceed",
        heat: "none",
      },
      "1.5 mm²",
    ],
  ] as const)("%s, %s: %s stays open, and is C2 by its own figures", (circuit, topic, fact, facts, line) => {
    const open = reasoned(on(circuit, topic, facts));
    expect(answered(open)).toEqual({});
    expect(open.reasoning.open).toContain(fact);
    expect(open.reasoning.possible).toContain("C2");
    const own = reasoned(on(circuit, topic, { ...facts, ...clipped(line) }));
    // Where a topic asks by how much, the same figures answer it.
    const { excess, ...rest } = answered(own);
    expect(rest).toEqual({ [fact]: "no" });
    expect(excess).toBe(topic === "flexible-cord-as-fixed-wiring" ? "large" : undefined);
    expect(own.reasoning.classification).toBe("C2");
  });
});

describe("main bonds say nothing of other metal, and one bond nothing of another", () => {
  test("stall metalwork where livestock stand", () => {
    const one = reasoned({
      topic: "farm-protection",
      facts: { livestock: true, "rcd-socket": true, "rcd-fire": true, damage: "sound" },
    });
    expect(one.reasoning.open).toEqual(["bonding"]);
  });

  test("metal of a pool", () => {
    const one = reasoned({ topic: "pool-equipment", facts: { zone: "outside", protection: "selv", ip: true } });
    expect(one.reasoning.open).toEqual(["bonding"]);
  });

  test("gas at 10 mm² and water at 6 mm²: the size of the one spoken of is open", () => {
    const one = reasoned({ topic: "main-bonding-undersized", facts: { heat: "none" } });
    expect(answered(one)).toEqual({});
    expect(one.reasoning.open).toContain("table-size");
  });
});

describe("a joint that no part of the readings explains", () => {
  const high = (circuit: Circuit) => {
    const { zs, r1r2 } = circuit.readings as { zs: object; r1r2: object };
    Object.assign(circuit.readings, { zs: { ...zs, shown: "3.10 Ω" }, r1r2: { ...r1r2, shown: "0.37 Ω" } });
  };

  test("is named although R1+R2 fits the cable and an RCD disconnects", () => {
    const one = reasoned(on("c9", "zs-over-limit", { by: "rcd-only", "rcd-tested": true }), high);
    expect(answered(one)).toMatchObject({ unaccounted: "yes" });
    expect(one.worked.find(({ fact }) => fact === "unaccounted")?.by).toBe("zs-agreement");
    expect(one.reasoning.open).toEqual(["failing-joint"]);
    expect(one.reasoning.possible).toContain("C2");
    expect(one.remedies[0]?.remedy.words).toMatch(/^Check and tighten every connection/);
  });

  test("counts for the protective conductor and for a joint that cannot be got at", () => {
    expect(answered(reasoned(on("c9", "cpc-resistance-high", {}), high))).toMatchObject({ "fits-length": "no" });
    expect(answered(reasoned(on("c9", "joint-inaccessible", {}), high))).toEqual({ "poor-joint": "yes" });
  });

  test("is not ruled out by readings that fit", () => {
    expect(answered(reasoned(on("c9", "joint-inaccessible", {})))).toEqual({});
    expect(answered(reasoned(on("c9", "cpc-resistance-high", {})))).toEqual({ disconnects: "yes" });
  });

  test("is open where only R1+R2 was read", () => {
    const one = reasoned(on("c9", "zs-over-limit", {}), ({ readings }) => {
      delete readings.zs;
    });
    expect(answered(one).unaccounted).toBeUndefined();
  });
});

describe("an RCD says nothing of the fuse or breaker, nor of every circuit of a room, nor of brittle cores", () => {
  const beyondBreaker = ({ readings }: Circuit) => {
    readings.zs = { ...(readings.zs as object), shown: "2.10 Ω" };
  };

  test("the breaker of a circuit that its RCD alone disconnects", () => {
    const one = reasoned(
      on("c4", "supplementary-bonding-needed", { "rcd-in-time": false, "asked-by-place": false, bonded: false }),
      beyondBreaker,
    );
    expect(answered(one)).toEqual({ "in-time": "no" });
    // The RCD of the circuit passed its test: that it did not is a contradiction, which leaves the danger standing.
    expect(one.against.map(({ fact }) => fact)).toEqual(["rcd-in-time"]);
    expect(one.least).toBe("C2");
    expect(answered(reasoned(on("c4", "rcd-none-tt", {}), beyondBreaker))).toEqual({
      rcd: "working",
      "breaker-disconnects": "no",
    });
  });

  test("the room of a circuit that has one", () => {
    const one = reasoned(
      on("c4", "bath-rcd-and-bonding", { bonding: false, parts: "earthed-metal", "electric-shower": false }),
    );
    expect(answered(one)).toEqual({});
    // Every circuit of the house disconnects in time, and so does each of the room, whichever they are.
    expect(one.recorded.map(({ fact, value }) => [fact, value])).toContainEqual(["in-time", "yes"]);
    expect(one.reasoning.open).toEqual(["room-rcds", "main-bonded"]);
  });

  test("cores behind a good reading", () => {
    const one = reasoned(on("c5", "pvc-exudation", { seen: true, reaches: "on-cores", contacts: "clean" }));
    expect(answered(one)).toEqual({});
    expect(one.reasoning.open).toEqual(["insulation"]);
  });

  test("earthed metal round a cable in a partition", () => {
    expect(answered(reasoned(on("c2", "cable-metal-partition", {})))).toEqual({ protection: "earthed-metal | rcd" });
    const stated = reasoned(on("c2", "cable-metal-partition", { protection: "earthed-metal" }));
    expect(stated.against).toEqual([]);
  });
});

test("a limitation stated by the inspector is not lifted by a computation, and what it says is shown", () => {
  const limited = { notKnown: "limited", reason: "the board could not be opened" };
  const one = reasoned(
    on("c5", "lighting-no-rcd", { "rcd-30ma": limited, premises: "home", "asked-when-made": false }),
  );
  expect(answered(one)).toEqual({});
  expect(one.reasoning.unsettled).toEqual(["rcd-30ma"]);
  expect(one.against.map(({ fact, value }) => [fact, value])).toEqual([["rcd-30ma", "no"]]);
  const absent = { notKnown: "not-verified", reason: "not looked at" };
  expect(answered(reasoned(on("c5", "lighting-no-rcd", { "rcd-30ma": absent, premises: "home" })))).toEqual({
    "rcd-30ma": "no",
  });
});
