import { diagnoseInstallation } from "@good-grounds/readings";
import { reasoningParts } from "@good-grounds/report";
import { describe, expect, test } from "vitest";
import { deadRcds, type Farm, farmhouse } from "./farmhouse.ts";

/** Situations as an inspector meets them, each with the answer that is right and was not always given. */

const on = (circuit: string, topic: string, facts: Record<string, unknown>, board = "house") => ({
  board,
  circuit,
  topic,
  facts,
});
const answers = ({ worked }: ReturnType<typeof farmhouse>["one"]) =>
  Object.fromEntries(worked.map(({ fact, value }) => [fact, value]));
describe("a farmhouse on TT, Zs above 90 Ω, every RCD over 1999 ms, buttons dead", () => {
  const BATH = { bonding: false, parts: "earthed-metal", "electric-shower": false };

  test("no circuit meets disconnection by an RCD", () => {
    const { weighing } = farmhouse(on("h1", "zs-over-limit", {}), deadRcds);
    const verdicts = weighing.circuits.flatMap((findings) =>
      findings.flatMap(({ check, judgement }) => (check === "maximum-zs" ? [judgement.verdict] : [])),
    );
    expect(verdicts.length).toBeGreaterThanOrEqual(9);
    expect(verdicts).not.toContain("met");
    expect(verdicts.filter((verdict) => verdict === "not-met").length).toBeGreaterThanOrEqual(9);
  });

  test("a bathroom without bonding: C2, and no working RCD is said to be there", () => {
    const { one } = farmhouse(on("h1", "bath-rcd-and-bonding", BATH), deadRcds);
    expect(answers(one)).toEqual({ "room-rcds": "no", "in-time": "no" });
    expect(one.reasoning.classification).toBe("C2");
  });

  test("the same at a circuit of which no RCD is asked: C2, since nothing disconnects, and never a working one", () => {
    const { one } = farmhouse(on("h3", "bath-rcd-and-bonding", BATH), deadRcds);
    expect(answers(one)).toEqual({ "in-time": "no" });
    expect(one.reasoning.classification).toBe("C2");
  });

  test("supplementary bonding, B32: neither breaker nor RCD disconnects, C2", () => {
    const { one } = farmhouse(
      on("h1", "supplementary-bonding-needed", { "asked-by-place": false, bonded: false }),
      deadRcds,
    );
    expect(answers(one)).toEqual({ "in-time": "no", "rcd-in-time": "no" });
    expect(one.reasoning.classification).toBe("C2");
  });

  test("sockets: no RCD that works", () => {
    const facts = {
      "outdoor-use": "likely",
      "other-socket": false,
      "used-by": "ordinary",
      "risk-assessment": false,
    };
    const { one } = farmhouse(on("h1", "sockets-no-rcd", facts), deadRcds);
    expect(answers(one)).toEqual({ "rcd-30ma": "no" });
    expect(one.reasoning.classification).toBe("C2");
  });

  test("a loop too high: nothing disconnects, C2 whatever else is open", () => {
    const { one } = farmhouse(on("h1", "zs-over-limit", {}), deadRcds);
    expect(answers(one)).toMatchObject({ disconnects: "not-in-time", by: "rcd-only" });
    expect(one.recorded.map(({ fact, value }) => [fact, value])).toContainEqual(["rcd-tested", "no"]);
    expect(one.reasoning.possible).toEqual(["C2"]);
  });

  test("said to be in time all the same: a contradiction to settle, and none is below it", () => {
    const stated = { disconnects: "in-time", by: "overcurrent", unaccounted: false };
    const choice = { choice: { classification: "none", reason: "works", by: "inspector" } };
    const { one } = farmhouse({ ...on("h1", "zs-over-limit", stated), ...choice }, deadRcds);
    expect(one.against.map(({ fact, value }) => [fact, value])).toEqual([
      ["disconnects", "not-in-time"],
      ["by", "rcd-only"],
    ]);
    expect([one.reasoning.classification, one.least, one.choice]).toEqual([null, "C2", "differs"]);
  });

  test("the same house with RCDs that work: none of these", () => {
    const bath = farmhouse(on("h3", "bath-rcd-and-bonding", BATH)).one;
    expect(answers(bath)).toEqual({});
    const { one } = farmhouse(on("h1", "zs-over-limit", {}));
    expect(answers(one)).toMatchObject({ disconnects: "in-time", "rcd-tested": "yes" });
    expect(one.reasoning.possible).toContain("none");
  });
});

describe("Zs 3.10 Ω, R1+R2 0.37 Ω, Zdb 0.19 Ω, B20 behind an RCD", () => {
  const raised = (farm: Farm) => {
    farm.supply.earthing = "TN-S";
    const readings = farm.supply.readings as Record<string, unknown>;
    delete readings.ra;
    readings.ze = { shown: "0.17 Ω" };
    const [house] = farm.boards;
    if (house === undefined) throw new Error("no board");
    house.readings.zdb = { shown: "0.19 Ω" };
    for (const { id, readings: own, cable } of house.circuits) {
      if (id === "h2") {
        Object.assign(own, { zs: { shown: "3.10 Ω" }, r1r2: { shown: "0.37 Ω" } });
        // What a cable of 0.37 Ω is long.
        Object.assign(cable, { length: "23 m", lengthFound: "taped" });
      } else delete own.zs;
    }
    for (const { circuits, readings: others } of farm.boards.slice(1)) {
      delete others.zdb;
      for (const { readings: own } of circuits) delete own.zs;
    }
  };
  const at = on("h2", "zs-over-limit", {});

  test("the joint that the check of agreement finds is what is shown first, and the first remedy", () => {
    const { one } = farmhouse(at, raised);
    expect(answers(one)).toEqual({
      disconnects: "in-time",
      by: "rcd-only",
      "rcd-tested": "yes",
      unaccounted: "yes",
    });
    expect(one.worked.find(({ fact }) => fact === "unaccounted")?.by).toBe("zs-agreement");
    expect(one.reasoning.next?.fact).toBe("failing-joint");
    expect(one.reasoning.possible).toContain("C2");
    expect(one.remedies[0]?.remedy.words).toMatch(/^Check and tighten every connection/);
    const argument = reasoningParts(one).find(({ heading }) => heading === "The argument")?.lines ?? [];
    expect(argument[0]?.words).toContain("a poor joint heats under load");
    expect(argument[1]?.words).toBe(
      "the reading is well above what the cable accounts for, by the comparison of Zs with R1+R2 and the loop before the circuit",
    );
  });

  test("is what the diagnosis names as well: in the circuit, or between its board and it while no other Zs is known", () => {
    const { installation } = farmhouse(at, raised);
    const here = diagnoseInstallation(installation).filter(({ path }) => path.join("/").startsWith("boards/0"));
    const loops = here.filter(({ kind }) => kind === "board-loop" || kind === "circuit-readings");
    expect(loops.map(({ clear }) => clear)).toEqual([true]);
    const named = loops.flatMap(({ explanations }) => explanations.map(({ id }) => id));
    expect(named.filter((id) => id === "joint-before-circuits" || id === "resistance-in-loop-test-only")).not.toEqual(
      [],
    );
  });

  test("said to be no more than the cable accounts for: a contradiction, and the joint stays possible", () => {
    const { one } = farmhouse(on("h2", "zs-over-limit", { unaccounted: false }), raised);
    expect(one.against.map(({ fact, value }) => [fact, value])).toEqual([["unaccounted", "yes"]]);
    expect(one.reasoning.possible).toContain("C2");
    expect(one.reasoning.classification).toBeNull();
  });
});

describe("what the file of a farmhouse on TT says is not asked", () => {
  const about = (facts: Record<string, unknown>, topic = "rcd-none-tt") => farmhouse(on("h1", topic, facts)).one;

  test("whether it is TT", () => {
    const one = about({});
    expect(one.recorded.map(({ fact, value }) => [fact, value])).toContainEqual(["earthing-system", "tt"]);
    expect(one.reasoning.open).not.toContain("earthing-system");
  });

  test("another system is a contradiction, and not accepted", () => {
    const one = about({ "earthing-system": "tn-s" });
    expect(one.against.map(({ fact, value, stated }) => [fact, value, stated])).toEqual([
      ["earthing-system", "tt", "tn-s"],
    ]);
    expect(reasoningParts(one)[0]?.lines[0]?.words).toMatch(/system earthing: TT.*it is TN-S.*Settle/);
  });

  test("an answer of an earlier file is read, and told to contradict as well", () => {
    const one = about({ system: "tn" });
    expect(one.against.map(({ fact, value }) => [fact, value])).toEqual([["earthing-system", "tt"]]);
  });

  test("of what type the RCD is", () => {
    const one = about({ loads: "pulsating" }, "rcd-type-ac");
    expect(one.recorded.map(({ fact }) => fact)).toContain("rcd-type");
    expect(one.reasoning.open).not.toContain("rcd-type");
  });

  test("but whether people live there is: a farm may hold a home", () => {
    const one = about({ "rcd-30ma": false, "outdoor-use": "unlikely", "risk-assessment": true }, "sockets-no-rcd");
    expect(one.recorded.map(({ fact }) => fact)).not.toContain("premises");
    expect(one.against.map(({ fact }) => fact)).not.toContain("premises");
  });
});

describe("what is done about an RCD that is there and dead", () => {
  test("neither a further RCD nor a smaller breaker is a remedy on TT: the dead one is replaced", () => {
    const { one } = farmhouse(on("h1", "zs-over-limit", { unaccounted: false }), deadRcds);
    const words = one.remedies.map(({ remedy }) => remedy.words);
    expect(words).toContain("Replace the RCD that did not pass its test, and test the new one.");
    expect(words.join("\n")).not.toMatch(/Fit an RCD|smaller rating/);
  });
});

describe("an unfused spur of 2.5 mm² to four twins, heavy loads, ring on B32", () => {
  test("what the cable of the ring carries says nothing of the spur: C2", () => {
    const facts = { outlets: "several", fused: false, load: "heavy", heat: "none" };
    const { one } = farmhouse(on("h1", "spur-overloaded", facts));
    expect(answers(one)).toEqual({});
    expect(one.reasoning.open).toEqual(["cable-carries"]);
    const known = farmhouse(on("h1", "spur-overloaded", { ...facts, "cable-carries": false })).one;
    expect(known.reasoning.classification).toBe("C2");
  });
});

describe("1.0 mm² doubled into a 32 A breaker", () => {
  const small = (farm: Farm) => {
    for (const circuit of farm.boards[0]?.circuits ?? [])
      if (circuit.id === "h1")
        Object.assign(circuit, {
          shape: "radial",
          cable: { ...(circuit as { cable?: object }).cable, line: "1.0 mm²" },
        });
  };

  test("how far the breaker is above the cable is reckoned, and not asked: C2", () => {
    const { one } = farmhouse(on("h1", "overload-device-oversize", { load: "stays-under", heat: "none" }), small);
    expect(answers(one)).toEqual({ "within-cable": "no", excess: "large" });
    expect(one.reasoning.classification).toBe("C2");
  });
});

describe("metal of a stall, livestock; the pool likewise", () => {
  test.each([
    ["farm-protection", { livestock: true, "rcd-socket": true, "rcd-fire": true, damage: "sound" }],
    ["pool-equipment", { zone: "outside", protection: "selv", ip: true }],
  ])("%s: the main bonds of water and oil say nothing of it", (topic, facts) => {
    const { one } = farmhouse({ topic, facts });
    expect(answers(one)).toEqual({});
    expect(one.reasoning.open).toEqual(["bonding"]);
  });

  test("not even where the bonds are named", () => {
    const facts = { livestock: true, "rcd-socket": true, "rcd-fire": true, damage: "sound" };
    const { one } = farmhouse({
      topic: "farm-protection",
      facts,
      answers: [{ check: "bonding-continuity", part: "water" }],
    });
    expect(answers(one)).toEqual({});
  });
});

describe("a battery store outdoors, fixed as its maker asks", () => {
  const outdoors = { place: "outside", "as-maker-asks": true, detection: true };

  test.each([
    ["swollen or leaking, and cool", { condition: "damaged", heat: "none" }, "C2"],
    ["swollen, nobody felt for heat", { condition: "damaged" }, null],
    ["sound, and hot or smoking now", { condition: "sound", heat: "now" }, "C1"],
    ["venting", { condition: "venting" }, "C1"],
  ])("%s", (_, facts, classification) => {
    const { one } = farmhouse({ topic: "battery-place", facts: { ...outdoors, ...facts } });
    expect(one.reasoning.classification).toBe(classification);
    for (const severity of one.reasoning.possible) expect(["C1", "C2"]).toContain(severity);
    for (const words of Object.values(one.client)) expect(words).not.toContain("sound");
  });
});

describe("metal of a stall with livestock, and metal round a pool, that nothing bonds", () => {
  test.each([
    ["farm-protection", { livestock: true, bonding: false, "rcd-socket": true, "rcd-fire": true, damage: "sound" }],
    ["pool-equipment", { zone: "outside", protection: "selv", bonding: false, ip: true }],
  ])("%s: C2, whatever the main bonds of water and oil read", (topic, facts) => {
    const { one } = farmhouse({ topic, facts, answers: [{ check: "bonding-continuity", part: "water" }] });
    expect(one.against).toEqual([]);
    expect(one.reasoning.classification).toBe("C2");
  });
});

describe("what is recorded of the RCD and the earthing of a charging point is not asked", () => {
  test("in a house on TT whose RCDs are dead", () => {
    const { one } = farmhouse(on("h1", "ev-direct-current", { "direct-current": "dealt" }), deadRcds);
    expect(one.recorded.map(({ fact, value }) => [fact, value])).toEqual([
      ["point-rcd", "none"],
      ["fault-protection-by-rcd", "yes"],
    ]);
    expect(one.reasoning.classification).toBe("C2");
  });
});

describe("what the file of a farmhouse on TT says of its board is not asked", () => {
  const at = (topic: string, facts: Record<string, unknown>, edit?: (board: Record<string, unknown>) => void) =>
    farmhouse({ board: "house", topic, facts }, ({ boards: [house] }) => {
      if (house !== undefined) edit?.(house as unknown as Record<string, unknown>);
    }).one;
  const recorded = ({ recorded: all }: ReturnType<typeof at>) =>
    Object.fromEntries(all.map(({ fact, value }) => [fact, value]));

  test("poles of the main switch, phases and earthing", () => {
    const one = at("main-switch-poles", {});
    expect(recorded(one)).toEqual({ poles: "both", phases: "one", "earthing-system": "tt" });
    expect(one.reasoning.classification).toBe("none");
  });

  test("one pole on TT: C2 wherever it is the line that opens, and the file's two poles against it are a contradiction", () => {
    const onePole = (board: Record<string, unknown>) => {
      board.mainSwitch = { poles: 1 };
    };
    expect(at("main-switch-poles", { poles: "line-only" }, onePole).reasoning.classification).toBe("C2");
    const against = at("main-switch-poles", { poles: "line-only" });
    expect(against.against.map(({ fact, value }) => [fact, value])).toEqual([["poles", "both"]]);
    expect([against.reasoning.classification, against.least]).toEqual([null, "C2"]);
  });

  test("a metal enclosure", () => {
    const one = at("board-combustible", { premises: "home", "asked-when-fitted": false, "heat-or-loose": "loose" });
    expect(recorded(one)).toEqual({ combustible: "no" });
    expect(one.reasoning.classification).toBe("C2");
  });

  test("whether a surge protective device is fitted", () => {
    const one = at("surge-protection-absent", { "what-hangs-on-it": "goods", "asked-when-made": true });
    expect(recorded(one).state).toMatch(/declined/);
    expect(one.reasoning.possible).toEqual(["none", "C3"]);
  });
});

describe("bonding that the place asks for", () => {
  const LIVESTOCK = { "asked-by-place": true, bonded: false };

  test("the metal of a stall not joined, while water and oil are bonded: C2, and no bond of the file answers", () => {
    const { one } = farmhouse({ topic: "supplementary-bonding-needed", facts: LIVESTOCK });
    expect(answers(one)).not.toHaveProperty("bonded");
    expect(one.reasoning.possible).toEqual(["C2"]);
  });

  test("whether it is joined is asked, whatever the main bonds read", () => {
    const { one } = farmhouse({
      topic: "supplementary-bonding-needed",
      facts: { "asked-by-place": true },
      answers: [{ check: "bonding-continuity", part: "water" }],
    });
    expect(answers(one)).not.toHaveProperty("bonded");
    expect(one.reasoning.open).toContain("bonded");
  });

  test("a pipe without a main bond: the bonds of other pipes answer nothing", () => {
    const { one } = farmhouse({
      topic: "main-bonding-absent",
      facts: { lightning: false, bond: "none", heat: "none" },
    });
    expect([answers(one), one.recorded]).toEqual([{}, []]);
    expect(one.reasoning.open).toEqual(["extraneous"]);
  });
});

describe("the origin of a farmhouse on TT", () => {
  test("whether it is TT is not asked of its electrode, nor how it measures", () => {
    const { one } = farmhouse({ topic: "electrode-resistance", facts: {} });
    expect(one.recorded.map(({ fact }) => fact)).toEqual(["earthing-system", "above-200"]);
    expect(one.reasoning.open).not.toContain("earthing-system");
  });

  test("PME is no question there", () => {
    const bond = farmhouse({ topic: "main-bonding-undersized", facts: { "table-size": false, heat: "none" } }).one;
    expect(bond.recorded.find(({ fact }) => fact === "pme")?.value).toBe("no");
    const exported = farmhouse({ topic: "pme-exported", facts: {} }).one;
    expect([exported.reasoning.classification, exported.reasoning.open]).toEqual(["none", []]);
  });

  test("the conductor off the electrode: C2; an extra electrode on TN, C3", () => {
    const off = { topic: "electrode-condition", facts: { connected: "off" } };
    expect(farmhouse(off).one.reasoning.classification).toBe("C2");
    const onTn = farmhouse(off, (farm: Farm) => {
      farm.supply.earthing = "TN-S";
    });
    expect(onTn.one.reasoning.possible).toEqual(["C3"]);
  });
});

describe("danger at the origin that no other answer takes back", () => {
  const classOf = (topic: string, facts: Record<string, unknown>) => farmhouse({ topic, facts }).one.reasoning.possible;

  test.each([
    ["distributor-equipment-damaged", { "gets-in": "nothing", "cover-fixing": "whole", fixed: true, reported: true }],
    ["meter-tails-size", { "fuse-within": true, load: "limited" }],
    ["meter-tails-exposed", { "live-covering": "sheathed" }],
    ["supply-device-unknown", { shown: "sealed-marked" }],
    ["intake-hot", { "gets-in": "nothing", "cover-fixing": "whole", warmer: false }],
  ])("%s: what smokes is C1", (topic, facts) => {
    expect(classOf(topic, { ...facts, heat: "now" })).toEqual(["C1"]);
  });

  test.each([
    ["supply-polarity-reversed", { correct: true }],
    ["supply-voltage-out-of-limits", { within: true, swings: "steady" }],
    ["looped-supply", { shared: "nothing", "earth-from": "own", heat: "none" }],
    ["earth-neutral-joined", { joined: "by-distributor" }],
    ["external-impedance-high", { usual: true, disconnects: true }],
  ])("%s: metal that is live is C1", (topic, facts) => {
    expect(classOf(topic, { ...facts, "metal-live": true })).toEqual(["C1"]);
  });

  test("a main bond of the right size, browned and stiff: C2", () => {
    expect(classOf("main-bonding-undersized", { "table-size": true, heat: "marks" })).toEqual(["C2"]);
  });

  test("no isolator, and it is scorched: cannot both be so", () => {
    const { one } = farmhouse({
      topic: "origin-isolator",
      facts: { present: false, "main-switch": true, heat: "marks" },
    });
    expect(one.reasoning.contradictions).toHaveLength(1);
    // Heat is danger whichever of the two is taken back.
    expect(one.reasoning.possible).toContain("C2");
    expect(one.least).toBe("C2");
  });

  test("a usual external loop: no cause is asked for", () => {
    const { one } = farmhouse({
      topic: "external-impedance-high",
      facts: { usual: true, disconnects: true, "metal-live": false },
    });
    expect([one.reasoning.classification, one.reasoning.open]).toEqual(["none", []]);
  });
});

describe("a flex of 1.5 mm² that extends a circuit of 32 A", () => {
  const flex = { "used-as-fixed": true, "live-covering": "sheathed", wears: "nothing", ends: "held", heat: "none" };
  const about = (facts: Record<string, unknown>) =>
    farmhouse(on("h1", "flexible-cord-as-fixed-wiring", { ...flex, ...facts }));

  test("that the cable of the circuit carries its device says nothing of the flex", () => {
    const { one, weighing } = about({});
    const verdicts = weighing.circuits.flatMap((findings) =>
      findings.flatMap(({ check, judgement, path }) =>
        check === "cable-capacity" && path?.join("/") === "boards/0/circuits/0" ? [judgement.verdict] : [],
      ),
    );
    expect(verdicts).toContain("met");
    expect(answers(one)).toEqual({});
    expect([...one.reasoning.open].sort()).toEqual(["cable-load", "excess", "within-cable"]);
    expect(one.reasoning.possible).toEqual(["C3", "C2"]);
  });

  test("too thin for the breaker: C2", () => {
    const thin = { "within-cable": false, excess: "large", "cable-load": "can-exceed" };
    expect(about(thin).one.reasoning.classification).toBe("C2");
    expect(about({ "within-cable": false }).one.reasoning.possible).toContain("C2");
  });
});

describe("single-insulated cores behind a door that shuts, prams rub them", () => {
  const behind = { "live-covering": "basic-sound", "gets-in": "nothing", "cover-opens": "hand", joint: "none" };

  test.each([
    ["a door that anyone opens", "anyone", "moved", "C2"],
    ["a cupboard that one keeper locks", "named-keeper", "moved", "C2"],
    ["the same door, nothing stored there", "anyone", "nothing", "C3"],
  ])("%s", (_, who, wears, expected) => {
    const { one } = farmhouse(on("h1", "sheath-missing", { ...behind, "who-comes": who, wears }));
    expect(one.reasoning.classification).toBe(expected);
  });
});

describe("what an earlier file says of cables and accessories", () => {
  test.each([
    ["cable-damaged", { damage: "bare-metal", reach: "in-reach" }, ["C1"]],
    ["cable-damaged", { damage: "bare-metal", reach: "closed" }, ["C2"]],
    ["cable-damaged", { damage: "sheath", reach: "in-reach", "goes-on": false }, ["C3"]],
    ["sheath-missing", { cores: "whole", place: "closed", joint: "none" }, ["C3"]],
    ["sheath-missing", { cores: "whole", place: "disturbed", joint: "none" }, ["C2"]],
    ["sheath-missing", { cores: "live-bare", place: "disturbed" }, ["C1"]],
    ["trunking-or-conduit-open", { cover: "open", contents: "cores", place: "in-reach", metal: "not-metal" }, ["C2"]],
    ["trunking-or-conduit-open", { cover: "open", contents: "cores", place: "away", metal: "not-metal" }, ["C3"]],
    ["joint-not-enclosed", { enclosure: "cover-off", terminals: "bare", place: "in-reach" }, ["C1"]],
    ["overhead-cable", { height: "clear", carried: true, sheath: "weatherproof", ends: "held" }, ["none"]],
    ["overhead-cable", { sheath: "bare", height: "in-reach" }, ["C1"]],
    ["rubber-or-lead-cable", { insulation: "bare", enclosure: "open" }, ["C1"]],
    ["rubber-or-lead-cable", { insulation: "crumbles", enclosure: "closed", "metal-sheath": "not-metal" }, ["C2"]],
    ["flexible-cord-as-fixed-wiring", { "used-as-fixed": true, exposure: "exposed", state: "live-bare" }, ["C1"]],
    ["accessory-broken", { "finger-touches-live": false, damage: "cracked-through" }, ["C2"]],
    ["accessory-broken", { "finger-touches-live": true, damage: "cracked-through" }, ["C1"]],
    ["accessory-loose", { fixing: "loose", "live-in-reach": false, strain: false }, ["C3"]],
    ["accessory-overheated", { marks: "burnt-open" }, ["C1"]],
    ["accessory-overheated", { marks: "browned", "cause-removed": true, "hot-now": false }, ["C3"]],
    ["adaptors-as-fixed-wiring", { condition: "bare" }, ["C1"]],
    ["equipment-connection-open", { joint: "bare" }, ["C1"]],
    ["lampholder-or-rose-open", { state: "live-open" }, ["C1"]],
    ["lampholder-or-rose-open", { state: "cores-show" }, ["C3"]],
    ["luminaire-heat", { damage: "burnt-open" }, ["C1"]],
    ["luminaire-heat", { lamp: "over", "near-fuel": "clear", damage: "none" }, ["C3"]],
  ])("%s %j", (topic, facts, possible) => {
    const { one } = farmhouse({ topic, facts });
    expect(one.issues).toEqual([]);
    expect(one.reasoning.possible).toEqual(possible);
  });
});
