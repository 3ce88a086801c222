import type { Recorded } from "@good-grounds/core";
import { RECORDED_PROPERTIES, reasonAbout, recordedProperty } from "@good-grounds/judgement";
import { reasoningParts } from "@good-grounds/report";
import { TOPICS, type Topic, topicById } from "@good-grounds/topics";
import { describe, expect, test } from "vitest";
import { type House, type RcdState, rcd, weighedHouse } from "./rcd-house.ts";

/** A topic of today of which facts are answered by what the inspection records. */
function linked(id: string, links: Readonly<Record<string, Recorded>>): Topic {
  const topic = topicById(id);
  if (topic === undefined) throw new Error(`no topic ${id}`);
  const facts = Object.fromEntries(
    Object.entries(topic.facts).map(([name, fact]) => {
      const recorded = links[name];
      return [name, recorded === undefined ? fact : { ...fact, recorded }];
    }),
  );
  return { ...topic, facts };
}

const SYSTEM: Recorded = { property: "earthing-system", gives: { tt: "tt", "tn-s": "tn-s", "tn-c-s": "tn-c-s" } };
const noRcd = linked("rcd-none-tt", { "earthing-system": SYSTEM });
const typeOfRcd = linked("rcd-type-ac", {
  "rcd-type": { property: "rcd-type", gives: { ac: "ac", a: "a", f: "a", b: "b" } },
});
const smallBond = linked("main-bonding-undersized", {
  size: { property: "bond-size", gives: {} },
  pme: { property: "earthing-system", gives: { "tn-s": "no", tt: "no" } },
});

const WORKS: House = { rcds: { circuit: rcd("30 mA", "works") } };

function about(topic: Topic, house: House, said: Parameters<typeof reasonAbout>[0]["said"] = {}, place = {}) {
  const at = { ...weighedHouse(house), board: "b", circuit: "c", ...place };
  return reasonAbout({ topic, said, at });
}

describe("a fact that the file records", () => {
  test("is answered with its place and not asked again", () => {
    const one = about(noRcd, WORKS);
    expect(one.recorded.map(({ fact, value, words }) => [fact, value, words])).toEqual([
      ["earthing-system", "tt", "system earthing: TT"],
    ]);
    expect(one.reasoning.grounds.get("earthing-system")).toMatchObject({
      kind: "fact",
      how: "seen",
      detail: { path: ["supply", "earthing"] },
    });
    expect(one.reasoning.open).not.toContain("earthing-system");
    expect(one.reasoning.next?.fact).not.toBe("earthing-system");
  });

  test.each([
    ["left out", { earthing: undefined }],
    ["limited", { earthing: { notKnown: "limited", reason: "the intake is locked" } }],
    ["of a value that says nothing of it", { earthing: "IT" }],
  ])("%s: it is asked", (_, supply) => {
    const one = about(noRcd, { ...WORKS, supply });
    expect(one.recorded).toEqual([]);
    expect(one.reasoning.grounds.has("earthing-system")).toBe(false);
  });

  test("stated otherwise: a contradiction to settle, in the possible set and in words", () => {
    const dead: House = { rcds: { circuit: rcd("30 mA", "dead") } };
    const one = about(noRcd, dead, { "earthing-system": "tn-s" });
    expect(one.against.map(({ fact, value, stated }) => [fact, value, stated])).toEqual([
      ["earthing-system", "tt", "tn-s"],
    ]);
    const possible = (system: string) =>
      reasonAbout({
        topic: noRcd,
        said: { "earthing-system": system, rcd: "none", "breaker-disconnects": false },
      }).reasoning.possible;
    expect(new Set(one.reasoning.possible)).toEqual(new Set([...possible("tt"), ...possible("tn-s")]));
    expect(one.least).toBe(possible("tt")[0]);
    const [first] = reasoningParts(one);
    expect(first?.heading).toBe("To settle first");
    expect(first?.lines.map(({ words }) => words)).toEqual([
      "The inspection file (system earthing: TT) says that it is TT, with an electrode of the consumer's own. The observation says that it is TN-S, with an earth of the distributor's own. Settle which is so.",
    ]);
  });

  test("that the inspector could not settle stays so, with the record beside it", () => {
    const limited = { notKnown: "limited", reason: "not opened" } as const;
    const one = about(noRcd, WORKS, { "earthing-system": limited });
    expect(one.recorded).toEqual([]);
    expect(one.reasoning.grounds.get("earthing-system")?.kind).toBe("fact-not-known");
    expect(one.against.map(({ fact, value, stated }) => [fact, value, stated])).toEqual([
      ["earthing-system", "tt", null],
    ]);
  });

  test("stated as one of several: the record says which", () => {
    const one = about(noRcd, WORKS, { "earthing-system": "tt | tn-s" });
    expect(one.recorded.map(({ value }) => value)).toEqual(["tt"]);
    expect(one.against).toEqual([]);
  });
});

describe("a quantity that the file records", () => {
  const house: House = {
    ...WORKS,
    supply: {
      bonding: [
        { id: "water", to: "water", extraneous: true, connected: true, size: "4 mm²", material: "copper" },
        { id: "oil", to: "oil", extraneous: true, connected: true, size: "10 mm²", material: "copper" },
      ],
    },
  };
  const bond = (id?: string, said: Record<string, string> = {}) =>
    about(smallBond, house, said, { board: undefined, circuit: undefined, parts: id === undefined ? [] : [{ id }] });

  test("answers for the bond that is named", () => {
    expect(bond("water").recorded.map(({ fact, value }) => [fact, value])).toEqual([
      ["size", "4 mm²"],
      ["pme", "no"],
    ]);
    expect(bond("water").reasoning.grounds.get("size")).toMatchObject({ kind: "seen", value: 4 });
    expect(bond("oil").recorded.map(({ value }) => value)).toEqual(["10 mm²", "no"]);
  });

  test("stated on the other side of a limit of the rules: a contradiction; on the same side, it is the same", () => {
    const one = bond("water", { size: "16 mm²" });
    expect(one.against.map(({ fact, value, stated }) => [fact, value, stated])).toEqual([
      ["size", "4 mm²", "6 mm² or more"],
    ]);
    expect(reasoningParts(one)[0]?.lines[0]?.words).toMatch(
      /size of the bonding conductor: 4 mm².*6 mm² or more.*Settle/,
    );
    expect(bond("water", { size: "2.5 mm²" }).against).toEqual([]);
  });

  test("is open and shown where two differ and none is named", () => {
    const one = bond();
    expect(one.recorded.map(({ fact }) => fact)).toEqual(["pme"]);
    expect(one.differing.map(({ fact }) => fact)).toContain("size");
    expect(one.reasoning.grounds.has("size")).toBe(false);
  });
});

describe("RCDs of a board", () => {
  const typed = (type: string) => ({ ...rcd("30 mA", "works"), type });
  const place = { circuit: undefined };
  test("of one type: answered; of two: open, and both are told", () => {
    const same = { rcds: { circuit: typed("AC"), board: typed("AC") } } as House;
    expect(about(typeOfRcd, same, {}, place).recorded.map(({ value }) => value)).toEqual(["ac"]);
    const two = about(typeOfRcd, { rcds: { circuit: typed("AC"), board: typed("A") } } as House, {}, place);
    expect(two.recorded).toEqual([]);
    expect(two.differing[0]?.answers.map(({ value }) => value).sort()).toEqual(["a", "ac"]);
    expect(reasoningParts(two)[0]?.lines[0]?.words).toContain("Settle which of them is meant.");
  });
  test("one whose type was not read leaves it open", () => {
    const { type: _, ...unread } = typed("AC");
    const house = { rcds: { circuit: typed("AC"), board: unread } } as unknown as House;
    expect(about(typeOfRcd, house, {}, place).recorded).toEqual([]);
  });
});

describe("the state of an RCD", () => {
  const gives = { works: "yes", slow: "no", dead: "no" };
  const topic = linked("rcd-does-not-trip", { "rcd-operates": { property: "rcd-state", gives } });
  // Only what is recorded of this fact is looked at here.
  const bare: Topic = {
    ...topic,
    facts: Object.fromEntries(
      Object.entries(topic.facts).map(([name, { worked: _, recorded, ...fact }]) => [
        name,
        (name === "rcd-operates" ? { ...fact, recorded } : fact) as Topic["facts"][string],
      ]),
    ),
  };
  test.each([
    ["works", "yes", "works (24.3 ms)"],
    ["works, button dead", "yes", "works (24.3 ms, button dead)"],
    ["slow", "no", "slow (612 ms)"],
    ["dead", "no", "dead (>1999 ms, button dead)"],
  ] as const)("%s: %s", (state, value, words) => {
    const [found] = about(bare, { rcds: { circuit: rcd("30 mA", state) } }).recorded;
    expect([found?.value, found?.words]).toEqual([value, `state of the RCD: ${words}`]);
  });
  test("a display that ended early leaves two states, and both have to answer", () => {
    const readings = { atRated: { shown: ">300 ms" }, button: "trips" };
    const house = { rcds: { circuit: { ...rcd("30 mA", "works"), readings } } } as unknown as House;
    const with_ = (answers: Readonly<Record<string, string>>): Topic => {
      const { "rcd-operates": operates, ...others } = bare.facts;
      if (operates === undefined) throw new Error("no such fact");
      return {
        ...bare,
        facts: { ...others, "rcd-operates": { ...operates, recorded: { property: "rcd-state", gives: answers } } },
      };
    };
    expect(about(with_(gives), house).recorded.map(({ value }) => value)).toEqual(["no"]);
    expect(about(with_({ slow: "no" }), house).recorded).toEqual([]);
    expect(about(with_({ slow: "no", dead: "yes" }), house).recorded).toEqual([]);
  });
  test.each(["untested", "limited", "button dead, no time"] as readonly RcdState[])("%s: open", (state) => {
    expect(about(bare, { rcds: { circuit: rcd("30 mA", state) } }).recorded).toEqual([]);
  });
});

describe("every property", () => {
  const nothing = weighedHouse({
    rcds: {},
    supply: { earthing: undefined, phases: undefined, device: undefined, readings: undefined },
    circuit: { shape: undefined, load: undefined, device: undefined, rcd: undefined, cable: undefined },
  });
  const spoken = (place: object, { installation, weighing } = nothing) => ({
    installation,
    weighing,
    place,
    board: installation.boards[1],
    circuit: installation.boards[1]?.circuits[0],
    rcds: installation.boards.flatMap(({ rcds }) => rcds),
    bonds: installation.supply.bonding,
    things: installation.things.all,
  });
  // What the brief says, and how the house is laid out.
  const STILL_RECORDED = ["premises-use", "tenure", "nation", "let-dwelling", "board-rcds", "board-fed-from"];

  test("has a name of its own and values that differ", () => {
    expect(new Set(RECORDED_PROPERTIES.map(({ id }) => id)).size).toBe(RECORDED_PROPERTIES.length);
    for (const { id, name, values, unit } of RECORDED_PROPERTIES) {
      expect(name, id).not.toBe("");
      expect(new Set(values).size, id).toBe(values.length);
      expect(values.length > 1 || unit !== undefined, id).toBe(true);
    }
  });

  test.each(RECORDED_PROPERTIES.filter(({ id }) => !STILL_RECORDED.includes(id)).map((one) => [one.id, one] as const))(
    "%s gives nothing where nothing is recorded",
    (_, property) => {
      for (const { values } of property.read(spoken({ board: "b", circuit: "c" }))) expect(values).toEqual([]);
    },
  );

  test.each(RECORDED_PROPERTIES.map((one) => [one.id, one] as const))("%s gives values that it has", (_, property) => {
    const house = weighedHouse({
      rcds: { circuit: rcd("30 mA", "works"), board: rcd("100 mA", "slow") },
      supply: { bonding: [{ id: "water", to: "water", connected: true, extraneous: true, size: "10 mm²" }] },
    });
    for (const { values } of property.read(spoken({ board: "b", circuit: "c" }, house)))
      for (const value of values) expect(property.values).toContain(value);
  });
});

test("every link to a property names one that is there, its values and those of the fact", () => {
  for (const { id, facts } of [...TOPICS, noRcd, typeOfRcd, smallBond])
    for (const [name, fact] of Object.entries(facts)) {
      if (fact.recorded === undefined) continue;
      const property = recordedProperty(fact.recorded.property);
      expect(property, `${id} ${name}`).toBeDefined();
      for (const [value, answer] of Object.entries(fact.recorded.gives)) {
        expect(property?.values, `${id} ${name}`).toContain(value);
        const allowed = fact.kind === "yes-no" ? ["yes", "no"] : fact.kind === "choice" ? Object.keys(fact.values) : [];
        for (const one of answer.split("|")) expect(allowed, `${id} ${name}`).toContain(one.trim());
      }
    }
});
