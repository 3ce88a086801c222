import { type ChoiceComparison, CLASSIFICATIONS, type Classification } from "@good-grounds/core";
import type { InspectionFile } from "@good-grounds/inspection";
import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { ChoiceCollection } from "./choice-collection.ts";
import { factKey } from "./fact-key.ts";

type Observation = InspectionFile["observations"][number];
type Facts = NonNullable<Observation["facts"]>;

interface Judged {
  readonly topic?: string;
  readonly facts?: Facts;
  readonly positions?: Record<string, string>;
  readonly chosen?: Classification;
}

/** An invented inspection by one person. */
function inspection(
  id: string,
  name: string,
  judged: readonly Judged[],
  more: Partial<InspectionFile> = {},
): InspectionFile {
  return {
    format: "good-grounds-inspection",
    version: 3,
    id,
    edition: "2018+A4",
    inspectedOn: "2026-10-20",
    brief: {
      client: { name: "Client" },
      premises: { address: ["1 Lane"] },
      use: "dwelling",
      tenure: "owner-occupied",
      nation: "england",
      purpose: "test",
      records: [],
    },
    visits: [{ date: "2026-10-20" }],
    people: [{ id: "p", name }],
    instruments: [],
    extent: { covered: "all", sampling: [] },
    limitations: [],
    supply: { bonding: [] },
    boards: [{ id: "b", name: "Board", fedFrom: "supply", circuits: [] }],
    inspected: [],
    observations: judged.map(({ topic = "socket", facts, positions, chosen = "C2" }, i) => ({
      id: `o${i + 1}`,
      place: "hall",
      what: "Seen.",
      topic,
      ...(facts === undefined ? {} : { facts }),
      positions: Object.fromEntries(Object.entries(positions ?? {}).map(([point, position]) => [point, { position }])),
      choice: { classification: chosen, reason: `Reason of ${name}.`, by: "p" },
    })),
    photographs: [],
    signatures: [],
    ...more,
  };
}

function compared(files: readonly InspectionFile[], by: "person" | "file" = "person"): ChoiceComparison {
  const collection = new ChoiceCollection();
  for (const [i, file] of files.entries()) collection.add(file, `${file.id}-${i}.json`);
  return collection.compare(by);
}

/** A difference by what it is about, with the classifications in it. */
function differencesOf({ differences, sets }: ChoiceComparison) {
  return differences.map((set) => sets[set]);
}

describe("the same facts", () => {
  test("are found whatever their order and units, and shown where the choices differ", () => {
    const comparison = compared([
      inspection("A", "Ann Example", [{ facts: { reach: true, gap: "17.5 mm" }, chosen: "C1" }]),
      inspection("B", "Ben Sample", [{ facts: { gap: "1.75 cm", reach: "Yes" }, chosen: "C2" }]),
    ]);
    const [difference, ...more] = differencesOf(comparison);
    expect(more).toEqual([]);
    expect(difference).toMatchObject({
      topic: "socket",
      facts: [
        { name: "gap", value: "1.75 cm" },
        { name: "reach", value: true },
      ],
      choices: [
        { classification: "C1", by: "Ann Example", file: "A", observation: "o1", date: "2026-10-20" },
        { classification: "C2", by: "Ben Sample", file: "B", reason: "Reason of Ben Sample." },
      ],
    });
    expect(comparison.near).toEqual([]);
    expect(comparison.agreement).toMatchObject({ all: { pairs: 1, agreed: 0 }, between: { pairs: 1, agreed: 0 } });
  });

  test.each<readonly [string, Judged, Judged]>([
    ["another topic", { facts: { a: true } }, { topic: "board", facts: { a: true } }],
    [
      "not known is not no",
      { facts: { a: false, b: true } },
      { facts: { a: { notKnown: "limited", reason: "x" }, b: true } },
    ],
    [
      "another position",
      { facts: { a: true }, positions: { p: "strict" } },
      { facts: { a: true }, positions: { p: "mild" } },
    ],
    ["a fact more", { facts: { a: true } }, { facts: { a: true, b: true } }],
  ])("are others with %s", (_, one, other) => {
    const comparison = compared([
      inspection("A", "Ann", [{ ...one, chosen: "C1" }]),
      inspection("B", "Ben", [{ ...other, chosen: "C3" }]),
    ]);
    expect(comparison.differences).toEqual([]);
    expect(comparison.agreement.all.pairs).toBe(0);
  });

  test("are not compared where nobody chose, named a topic or recorded facts", () => {
    const file = inspection("A", "Ann", [
      { facts: { a: true } },
      {},
      { facts: {} },
      { facts: { a: true } },
      { facts: { a: true } },
    ]);
    delete file.observations[3]?.choice;
    delete file.observations[4]?.topic;
    expect(compared([file]).count).toMatchObject({
      observations: 5,
      compared: 1,
      withoutFacts: 2,
      withoutChoice: 1,
      withoutTopic: 1,
    });
  });

  test("hold the firm's standing view where an observation states no position of its own", () => {
    const standingViews = [
      { topic: "socket", point: "p", position: "strict", reason: "agreed" },
      { topic: "board", point: "q", position: "mild", reason: "agreed" },
    ];
    const facts = { a: true };
    const comparison = compared([
      inspection("A", "Ann", [{ facts, chosen: "C1" }], { standingViews }),
      inspection("B", "Ben", [{ facts, positions: { p: "strict" }, chosen: "C2" }]),
      inspection("C", "Cem", [{ facts, positions: { p: "mild" }, chosen: "C3" }], { standingViews }),
    ]);
    expect(differencesOf(comparison)).toMatchObject([
      { positions: [{ point: "p", position: "strict" }], choices: [{ by: "Ann" }, { by: "Ben" }] },
    ]);
    expect(comparison.near).toMatchObject([{ differs: { kind: "position", name: "p" } }]);
  });

  test("said again in a copy count once, in an amended copy twice", () => {
    const file = inspection("A", "Ann", [{ facts: { a: true } }]);
    const amended = inspection("A", "Ann", [{ facts: { a: true }, chosen: "C3" }]);
    expect(compared([file, file]).count).toMatchObject({ compared: 1, copies: 1, judgedAgain: 0 });
    expect(compared([file, amended, file]).count).toMatchObject({ compared: 2, copies: 1, judgedAgain: 1 });
  });
});

describe("one fact apart", () => {
  test("with another value, or with a fact more, is shown as one family with the fact named", () => {
    const comparison = compared([
      inspection("A", "Ann", [{ facts: { reach: true, gap: "12 mm" }, chosen: "C1" }]),
      inspection("B", "Ben", [{ facts: { reach: true, gap: "3 mm" }, chosen: "C3" }]),
      inspection("C", "Cem", [{ facts: { reach: true }, chosen: "C3" }]),
    ]);
    expect(comparison.near).toHaveLength(1);
    const [family] = comparison.near;
    expect(family?.differs).toEqual({ kind: "fact", name: "gap" });
    const members = family?.members.map(({ set, value }) => [value, comparison.sets[set]?.choices[0]?.by]);
    expect(members).toEqual(
      expect.arrayContaining([
        ["12 mm", "Ann"],
        ["3 mm", "Ben"],
        [null, "Cem"],
      ]),
    );
    expect(members).toHaveLength(3);
  });

  test("is shown where the only choice that differs stands in one of the sets", () => {
    const mixed: Judged[] = [
      { facts: { reach: true, gap: "12 mm" }, chosen: "C2" },
      { facts: { reach: true, gap: "12 mm" }, chosen: "C3" },
    ];
    const comparison = compared([
      inspection("A", "Ann", mixed),
      inspection("B", "Ben", [{ facts: { reach: true, gap: "3 mm" }, chosen: "C2" }]),
    ]);
    expect(comparison.near).toHaveLength(1);
  });

  test("is not shown where the choices are the same, nor two facts apart", () => {
    const same = compared([
      inspection("A", "Ann", [{ facts: { reach: true, gap: "12 mm" } }]),
      inspection("B", "Ben", [{ facts: { reach: true, gap: "3 mm" } }]),
      inspection("C", "Cem", [{ facts: { reach: false, gap: "4 mm" }, chosen: "C3" }]),
    ]);
    expect(same.near).toEqual([]);
    expect(same.sets).toEqual([]);
  });
});

describe("agreement", () => {
  const sets = Array.from({ length: 12 }, (_, i) => ({ facts: { number: `set ${i}` } }));
  const chosenBy = (name: string, id: string, of: (i: number) => Classification) =>
    inspection(
      id,
      name,
      sets.map((set, i) => ({ ...set, chosen: of(i) })),
    );

  test("of two persons with enough in common, matched by name", () => {
    const files = [
      chosenBy("Ann Example", "A", (i) => (i % 2 === 0 ? "C2" : "C3")),
      chosenBy("BEN SAMPLE", "B", (i) => (i % 2 === 0 ? "C2" : i === 1 ? "C2" : "C3")),
    ];
    const { agreement } = compared(files);
    expect(agreement).toMatchObject({ all: { pairs: 12, agreed: 11 }, within: { pairs: 0 }, several: { judges: 2 } });
    expect(agreement.two).toMatchObject([
      { judges: ["Ann Example", "BEN SAMPLE"], common: 12, kappa: { defined: true } },
    ]);
    // p_o = 11/12; Ann 6 and 6, Ben 7 and 5: p_e = 1/2; kappa = (11/12 − 1/2) / (1/2) = 5/6.
    expect(agreement.two[0]?.kappa).toMatchObject({
      value: expect.closeTo(5 / 6, 9),
      expected: expect.closeTo(0.5, 9),
    });
    const again = compared([...files, chosenBy("ben  sample", "C", () => "C2")]).agreement;
    expect(again.several.judges).toBe(2);
    expect(again.within).toEqual({ pairs: 12, agreed: 7 });
    // Ben chose both C2 and C3 on five sets, once each.
    expect(again.tied).toBe(5);
    expect(compared(files, "file").agreement.two).toMatchObject([{ judges: ["A", "B"] }]);
  });

  test("of two persons with fewer sets in common is not given, however many each shares with others", () => {
    const some = (name: string, id: string, from: number, to: number) => inspection(id, name, many.slice(from, to));
    const many = Array.from({ length: 24 }, (_, i) => ({ facts: { number: `set ${i}` } }));
    expect(compared([some("Ann", "A", 0, 9), some("Ben", "B", 0, 9)]).agreement.two).toEqual([]);
    const chain = compared([some("Ann", "A", 0, 12), some("Ben", "B", 0, 21), some("Cem", "C", 11, 24)]).agreement.two;
    expect(chain.map(({ judges, common }) => [...judges, common])).toEqual([
      ["Ann", "Ben", 12],
      ["Ben", "Cem", 10],
    ]);
  });

  test("counts a judge once on a set of facts, with the usual choice", () => {
    const facts = { a: true };
    const ann = inspection("A", "Ann", [
      { facts, chosen: "C2" },
      { facts, chosen: "C2" },
      { facts, chosen: "FI" },
    ]);
    const ben = inspection("B", "Ben", [
      { facts, chosen: "C2" },
      { facts: { a: false }, chosen: "C3" },
    ]);
    const cem = inspection("C", "Cem", [{ facts: { a: false }, chosen: "C3" }]);
    // What only one judged, even twice, says nothing of agreement between judges.
    const dan = inspection("D", "Dan", [
      { topic: "board", facts, chosen: "C1" },
      { topic: "board", facts, chosen: "C1" },
    ]);
    const { agreement } = compared([ann, ben, cem, dan]);
    expect(agreement).toMatchObject({
      varied: 1,
      tied: 0,
      several: { judges: 3, kappa: { value: 1, items: 2, ratedOnce: 0 } },
    });
    expect(agreement).toMatchObject({ all: { pairs: 8, agreed: 5 }, within: { pairs: 4, agreed: 2 } });
    expect(agreement.between).toEqual({ pairs: 4, agreed: 3 });
  });
});

const fact = fc.constantFrom<Facts[string]>(true, false, "12 mm", "1.2 cm", { notKnown: "limited", reason: "locked" });
const judged = fc.record({
  topic: fc.constantFrom("socket", "board"),
  facts: fc.dictionary(fc.constantFrom("a", "b", "constructor"), fact, { maxKeys: 3 }),
  chosen: fc.constantFrom(...CLASSIFICATIONS),
});
const files = fc
  .array(fc.tuple(fc.constantFrom("Ann", "ann", "Ben"), fc.array(judged, { maxLength: 6 })), { maxLength: 6 })
  .map((all) => all.map(([name, observations], i) => inspection(`F${i}`, name, observations)));

/** What is told of a difference, without the choices: what another file must not take away. */
function identities(comparison: ChoiceComparison): string[] {
  const own = (set: number) => {
    const { topic, facts } = comparison.sets[set] ?? { topic: "", facts: [] };
    return JSON.stringify([
      topic,
      facts.map(({ name, value }) => [name, typeof value === "object" ? value : factKey(value)]),
    ]);
  };
  const near = comparison.near.map(({ differs, members }) => {
    const recorded = members.filter(({ value }) => value !== null).map(({ set }) => own(set));
    return { differs, recorded };
  });
  return [
    ...comparison.differences.map((set) => `same ${own(set)}`),
    ...near.flatMap(({ differs, recorded }) => recorded.map((set) => `near ${JSON.stringify(differs)} ${set}`)),
  ];
}

describe("laws", () => {
  test("the order of files plays no part", () => {
    fc.assert(
      fc.property(files, fc.constantFrom("person" as const, "file" as const), (all, by) => {
        const collect = (list: readonly InspectionFile[]) => {
          const collection = new ChoiceCollection();
          for (const file of list) collection.add(file, `${file.id}.json`);
          return collection.compare(by);
        };
        expect(collect([...all].reverse())).toEqual(collect(all));
      }),
    );
  });

  test("a file more takes no difference away", () => {
    fc.assert(
      fc.property(files, (all) => {
        const fewer = identities(compared(all.slice(0, -1)));
        const more = new Set(identities(compared(all)));
        expect(fewer.filter((one) => !more.has(one))).toEqual([]);
      }),
    );
  });

  test("pairs and differences are those found by holding every two choices against each other", () => {
    fc.assert(
      fc.property(files, (all) => {
        const every = all.flatMap((file) =>
          file.observations.flatMap(({ topic, facts, choice }) => {
            const entries = Object.entries(facts ?? {}).map(([name, value]) => [name, factKey(value)]);
            return entries.length === 0
              ? []
              : [{ key: JSON.stringify([topic, entries.sort()]), chosen: choice?.classification }];
          }),
        );
        const same = every.flatMap((a, i) =>
          every
            .slice(i + 1)
            .filter((b) => a.key === b.key)
            .map((b) => [a, b] as const),
        );
        const { agreement, differences } = compared(all);
        expect(agreement.all.pairs).toBe(same.length);
        expect(agreement.all.agreed).toBe(same.filter(([a, b]) => a.chosen === b.chosen).length);
        expect(differences).toHaveLength(
          new Set(same.filter(([a, b]) => a.chosen !== b.chosen).map(([a]) => a.key)).size,
        );
      }),
    );
  });
});

test("a set of very many facts is compared, and said not to be searched for near ones", () => {
  const facts = Object.fromEntries(Array.from({ length: 20_000 }, (_, i) => [`f${i}`, true]));
  const comparison = compared([
    inspection("A", "Ann", [{ facts, chosen: "C1" }]),
    inspection("B", "Ben", [
      { facts, chosen: "C2" },
      { facts: { ...facts, f0: false }, chosen: "C3" },
    ]),
  ]);
  expect(comparison.differences).toHaveLength(1);
  expect(comparison.near).toEqual([]);
  expect(comparison.count.tooManyFacts).toBe(2);
});

test("thousands of values of one fact make one family, not every pair of them", () => {
  const many = Array.from({ length: 5000 }, (_, i) => ({
    facts: { a: true, depth: `${i} mm` },
    chosen: CLASSIFICATIONS[i % 5] as Classification,
  }));
  const comparison = compared([inspection("A", "Ann", many)]);
  expect(comparison.near).toHaveLength(1);
  expect(comparison.near[0]?.members).toHaveLength(5000);
});
