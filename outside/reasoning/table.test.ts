import type { Recorded } from "@good-grounds/core";
import { reasonAbout } from "@good-grounds/judgement";
import { diagnoseInstallation } from "@good-grounds/readings";
import { reasoningParts } from "@good-grounds/report";
import { type Topic, topicById } from "@good-grounds/topics";
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
      "exception-recorded": false,
    };
    const { one } = farmhouse(on("h1", "sockets-no-rcd", facts), deadRcds);
    expect(answers(one)).toEqual({ "rcd-30ma": "no" });
    expect(one.reasoning.classification).toBe("C2");
  });

  test("a loop too high: nothing disconnects, C2 whatever else is open", () => {
    const { one } = farmhouse(on("h1", "zs-over-limit", {}), deadRcds);
    expect(answers(one)).toMatchObject({ disconnects: "not-in-time", by: "rcd-only", "rcd-tested": "no" });
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
    for (const { id, readings: own } of house.circuits) {
      if (id === "h2") Object.assign(own, { zs: { shown: "3.10 Ω" }, r1r2: { shown: "0.37 Ω" } });
      else delete own.zs;
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
      "the reading is well above what the cable accounts for, by calculation (zs-agreement)",
    );
  });

  test("is what the diagnosis of the circuit names as well", () => {
    const { installation } = farmhouse(at, raised);
    const [misfit] = diagnoseInstallation(installation).filter(({ path }) => path.join("/") === "boards/0/circuits/1");
    expect(misfit?.explanations[0]?.id).toBe("resistance-in-loop-test-only");
  });

  test("said to be no more than the cable accounts for: a contradiction, and the joint stays possible", () => {
    const { one } = farmhouse(on("h2", "zs-over-limit", { unaccounted: false }), raised);
    expect(one.against.map(({ fact, value }) => [fact, value])).toEqual([["unaccounted", "yes"]]);
    expect(one.reasoning.possible).toContain("C2");
    expect(one.reasoning.classification).toBeNull();
  });
});

describe("what the file of a farmhouse on TT says is not asked", () => {
  const system: Recorded = { property: "earthing-system", gives: { tt: "tt", "tn-s": "tn", "tn-c-s": "tn" } };
  const base = topicById("rcd-none-tt");
  const asked = base?.facts.system;
  if (base === undefined || asked === undefined) throw new Error("no such topic");
  const topic: Topic = { ...base, facts: { ...base.facts, system: { ...asked, recorded: system } } };
  const { installation, weighing } = farmhouse(on("h1", "rcd-none-tt", {}));
  const about = (said: Record<string, string>) =>
    reasonAbout({
      topic,
      edition: "2018+A4",
      said,
      at: { installation, weighing, board: "house", circuit: "h1" },
    });

  test("whether it is TT", () => {
    const one = about({});
    expect(one.recorded.map(({ fact, value }) => [fact, value])).toEqual([["system", "tt"]]);
    expect(one.reasoning.open).not.toContain("system");
  });

  test("the answer tn is a contradiction, and not accepted", () => {
    const one = about({ system: "tn" });
    expect(one.against.map(({ fact, value, stated }) => [fact, value, stated])).toEqual([["system", "tt", "tn"]]);
    expect(reasoningParts(one)[0]?.lines[0]?.words).toMatch(/system earthing: TT.*the system is TN.*Settle/);
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
