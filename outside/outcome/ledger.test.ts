import { readFileSync } from "node:fs";
import type { OpenPoint } from "@good-grounds/core";
import { describe, expect, test } from "vitest";
import { Chance } from "../../examples/simulate/chance.ts";
import { randomInstallation, writtenFile } from "../diagnosis/random-installation.ts";
import { complete, outcomeOfData } from "./complete.ts";

interface Observation {
  id: string;
  board?: string;
  circuit?: string;
  topic?: string;
  facts?: Record<string, unknown>;
  choice?: { classification: string; reason: string; by: string };
  answers?: object[];
  [name: string]: unknown;
}

interface Editable {
  supply: { readings: Record<string, unknown>; bonding: Record<string, unknown>[] };
  boards: {
    id: string;
    rcds: { id: string; readings: Record<string, unknown> }[];
    circuits: { id: string; rcd: unknown; readings: Record<string, unknown> }[];
  }[];
  inspected: { item: string; outcome: string; reason?: string }[];
  observations: Observation[];
  [name: string]: unknown;
}

const SOUND = complete(writtenFile(randomInstallation(4001, new Chance(4001))));

/** The outcome of a finished inspection of a sound installation with something changed. */
function outcomeWith(edit: (file: Editable) => void) {
  const data = structuredClone(SOUND) as unknown as Editable;
  edit(data);
  return outcomeOfData(JSON.parse(JSON.stringify(data)));
}

const kinds = (points: readonly OpenPoint[]) => points.map(({ kind }) => kind);
type More = { readonly [member in keyof Observation]?: Observation[member] | undefined };
const at = (circuit: string | undefined, more: More = {}) =>
  ({
    id: "o1",
    board: "cu",
    ...(circuit === undefined ? {} : { circuit }),
    place: "hall",
    what: "Seen.",
    choice: { classification: "C3", reason: "Not within reach and of no consequence.", by: "inspector" },
    ...more,
  }) as Observation;
const wrongPolarity = (file: Editable, i = 2) =>
  Object.assign(file.boards[0]?.circuits[i]?.readings as object, { polarity: "incorrect" });
/** The item of the inspection at which an observation was made. */
const nameAt = ({ inspected }: Editable, item: string, observation: string) =>
  Object.assign(inspected.find((one) => one.item === item) as object, {
    outcome: "observed",
    observations: [observation],
  });
const isReading = (value: unknown) => typeof value === "object" && value !== null && "shown" in value;
const idOf = (file: Editable, i: number) => file.boards[0]?.circuits[i]?.id ?? "";

describe("nothing reads as a pass because nobody wrote it down", () => {
  test("a sound installation, tested and answered in full, is satisfactory", () => {
    expect(outcomeWith(() => undefined)).toMatchObject({ outcome: "satisfactory", points: [] });
  });

  test("every item not verified and nothing measured: not determined, by a few points", () => {
    const { outcome, points } = outcomeWith((file) => {
      file.supply.readings = {};
      for (const board of file.boards) {
        for (const circuit of board.circuits) Object.assign(circuit, { rcd: "none", readings: {} });
        Object.assign(board, { rcds: [], readings: {} });
      }
      for (const one of file.inspected) Object.assign(one, { outcome: "not-verified", reason: "no time for it" });
    });
    expect(outcome).toBe("not-determined");
    // What the file shows by itself, such as circuits without RCD, is told as well.
    const isShown = (kind: string) => ["not-met", "opened", "misfit"].includes(kind);
    expect(kinds(points).filter((kind) => !isShown(kind))).toEqual(["nothing-tested", "nothing-inspected"]);
    expect(points.length).toBeLessThan(8);
  });

  const limited = { notTaken: "limited", reason: "no time for it" };

  test("every reading limited and one polarity ticked: nothing was tested", () => {
    const { outcome, points } = outcomeWith((file) => {
      for (const { circuits, rcds } of file.boards) {
        for (const { readings } of [...circuits, ...rcds])
          for (const name of Object.keys(readings))
            if (isReading(readings[name])) readings[name] = limited;
            else if (Array.isArray(readings[name])) delete readings[name];
      }
    });
    expect(outcome).toBe("not-determined");
    expect(kinds(points)).toContain("nothing-tested");
  });

  test("on TT a limitation is no answer to the time of an RCD that alone could disconnect", () => {
    const file = JSON.parse(readFileSync(new URL("../../examples/farmhouse.json", import.meta.url), "utf8"));
    const open = () => outcomeOfData(structuredClone(file)).points.flatMap((one) => ("tests" in one ? one.tests : []));
    expect(open()).toEqual([]);
    for (const { rcds } of file.boards as Editable["boards"])
      for (const { readings } of rcds) readings.atRated = limited;
    expect(open()).toEqual(["rcd-time"]);
  });

  test("more items limited than looked at: not determined", () => {
    const { outcome, points } = outcomeWith((file) => {
      for (const one of file.inspected.slice(1)) Object.assign(one, { outcome: "limited", reason: "no time for it" });
    });
    expect(outcome).toBe("not-determined");
    expect(points).toMatchObject([{ kind: "not-inspected", answered: "limited" }]);
  });

  test("supply polarity, every polarity and every insulation resistance wrong: one point each, polarity first", () => {
    const { outcome, points } = outcomeWith((file) => {
      file.supply.readings.polarity = "incorrect";
      for (const { circuits } of file.boards)
        for (const { readings } of circuits)
          Object.assign(readings, { polarity: "incorrect", insulationLiveEarth: { shown: "0.10 MΩ" } });
    });
    expect(outcome).toBe("not-determined");
    expect(points.map((point) => ("check" in point ? point.check : point.kind))).toEqual([
      "supply-polarity",
      "polarity",
      "insulation-resistance",
    ]);
  });

  test("everything limited with a reason, and nothing looked at, is no pass either", () => {
    const { outcome, points } = outcomeWith((file) => {
      const not = { notTaken: "limited", reason: "the client allows no test" };
      for (const { circuits } of file.boards)
        for (const { readings } of circuits)
          Object.assign(readings, {
            r1r2: not,
            r2: not,
            crossLineCpc: undefined,
            insulationLiveEarth: not,
            zs: not,
            polarity: { notKnown: "limited", reason: "the client allows no test" },
          });
      for (const one of file.inspected) Object.assign(one, { outcome: "limited", reason: "the client allows no look" });
    });
    expect(outcome).toBe("not-determined");
    expect(kinds(points)).toContain("nothing-tested");
    expect(kinds(points)).toContain("nothing-inspected");
  });

  test("an earthing conductor that by the record is still off comes before all else", () => {
    const { points } = outcomeWith((file) => {
      wrongPolarity(file);
      file.earthingOff = [{ off: { at: "2026-10-06T09:20:00+01:00" } }];
    });
    expect(kinds(points)).toEqual(["earthing-off", "not-met"]);
  });

  test("a chosen C2 makes it unsatisfactory whatever stands open, and that is told beside it", () => {
    const { outcome, points } = outcomeWith((file) => {
      file.observations = [at(idOf(file, 2), { choice: { classification: "C2", reason: "Loose.", by: "inspector" } })];
      nameAt(file, "accessories.condition", "o1");
      wrongPolarity(file, 1);
    });
    expect([outcome, kinds(points)]).toEqual(["unsatisfactory", ["not-met"]]);
  });
});

describe("essential tests", () => {
  test.each([
    ["polarity", ["polarity"]],
    ["zs", ["zs"]],
    ["insulationLiveEarth", ["insulation"]],
  ])(
    "%s that is not recorded is open at its circuit, and answered where it is limited with a reason",
    (reading, tests) => {
      const with_ = (value: unknown) =>
        outcomeWith((file) => {
          Object.assign(file.boards[0]?.circuits[2]?.readings as object, { [reading]: value });
        });
      const limited = reading === "polarity" ? "notKnown" : "notTaken";
      expect(with_(undefined).points).toEqual([{ kind: "not-tested", tests, places: [["boards", 0, "circuits", 2]] }]);
      expect(with_({ [limited]: "limited", reason: "boxed in" }).outcome).toBe("satisfactory");
      expect(with_({ [limited]: "limited", reason: "–" }).outcome).toBe("not-determined");
      expect(with_({ [limited]: "not-verified", reason: "no time left" }).outcome).toBe("not-determined");
    },
  );

  test("Ze and the time of an RCD", () => {
    const { points } = outcomeWith((file) => {
      delete file.supply.readings.ze;
      delete file.supply.readings.ra;
      delete file.boards[0]?.rcds[0]?.readings.atRated;
    });
    expect(points.map((point) => ("tests" in point ? point.tests : []))).toEqual([["rcd-time"], ["ze"]]);
  });
});

describe("items of the inspection", () => {
  const withItem = (change: object | undefined) =>
    outcomeWith((file) => {
      const [first, ...rest] = file.inspected;
      file.inspected = change === undefined ? rest : [{ ...first, ...change } as Editable["inspected"][0], ...rest];
    });

  test.each([
    ["without an answer", undefined, "not-determined"],
    ["not verified", { outcome: "not-verified", reason: "no time left" }, "not-determined"],
    ["limited for no reason", { outcome: "limited", reason: "n/a" }, "not-determined"],
    ["limited with a reason", { outcome: "limited", reason: "sealed by the distributor" }, "satisfactory"],
    ["not applicable although it arises everywhere", { outcome: "not-applicable" }, "not-determined"],
  ])("%s", (_, change, outcome) => {
    expect(withItem(change).outcome).toBe(outcome);
  });
});

describe("an observation answers a finding only where it speaks of it", () => {
  test("one about something else on the same circuit does not", () => {
    const { outcome, points } = outcomeWith((file) => {
      wrongPolarity(file);
      file.observations = [
        at(idOf(file, 2), { topic: "accessory-broken", facts: {}, what: "The faceplate is cracked." }),
      ];
    });
    expect([outcome, kinds(points)]).toEqual(["not-determined", ["not-met"]]);
  });

  test.each([
    ["names the check", {}, "satisfactory"],
    [
      "names the check without a written reason",
      { choice: { classification: "C3", reason: "–", by: "inspector" } },
      "not-determined",
    ],
    ["names the check and is not classified", { choice: undefined }, "not-determined"],
    ["names the check at another circuit", { answers: [{ check: "polarity", circuit: "c1" }] }, "not-determined"],
    ["names another check", { answers: [{ check: "maximum-zs" }] }, "not-determined"],
  ])("one that %s", (_, more, outcome) => {
    const found = outcomeWith((file) => {
      wrongPolarity(file);
      file.observations = [at(idOf(file, 2), { answers: [{ check: "polarity" }], ...more })];
    });
    expect(found.outcome).toBe(outcome);
  });

  test("one of the board answers for its circuits only by naming them", () => {
    const withAnswers = (answers: (file: Editable) => object[]) =>
      outcomeWith((file) => {
        wrongPolarity(file, 1);
        wrongPolarity(file, 2);
        file.observations = [at(undefined, { answers: answers(file) })];
      });
    expect(withAnswers(() => [{ check: "polarity" }]).points).toMatchObject([
      { places: [{ length: 4 }, { length: 4 }] },
    ]);
    expect(withAnswers((file) => [{ check: "polarity", circuit: idOf(file, 1) }]).points).toMatchObject([
      { places: [["boards", 0, "circuits", 2]] },
    ]);
    const both = withAnswers((file) => [1, 2].map((i) => ({ check: "polarity", circuit: idOf(file, i) })));
    expect(both.outcome).toBe("satisfactory");
  });

  test("its topic answers where the fact stands as the check has it, and not where the fact is stated otherwise", () => {
    const house = JSON.parse(readFileSync(new URL("../../examples/terraced-house.json", import.meta.url), "utf8"));
    const open = (facts: object) => {
      const data = structuredClone(house);
      const o3 = data.observations.find(({ id }: Observation) => id === "o3");
      delete o3.answers;
      Object.assign(o3.facts, facts);
      // As the check that is not met, or as the subject that the file opens by itself.
      return outcomeOfData(data)
        .points.filter((one) =>
          one.kind === "opened" ? /-no-rcd$/.test(one.topic) : "check" in one && one.check === "additional-protection",
        )
        .flatMap(({ places }) => places.map((path) => path[3]))
        .sort();
    };
    expect(open({})).toEqual([5]);
    expect(open({ "rcd-30ma": true })).toEqual([4, 5]);
  });
});

describe("a reason that is no reason answers nothing", () => {
  const answered = (classification: string, reason: string) =>
    outcomeWith((file) => {
      wrongPolarity(file);
      file.observations = [
        at(idOf(file, 2), {
          answers: [{ check: "polarity" }],
          choice: { classification, reason, by: "inspector" },
        }),
      ];
    });

  test.each([".", "see above", "As above.", "see note 3", "ok", "n/a", "Fine for now", "not needed"])(
    "%j for a polarity that is wrong",
    (reason) => {
      for (const chosen of ["C3", "none", "FI"]) {
        const { outcome, points, dismissed } = answered(chosen, reason);
        expect([outcome, kinds(points), dismissed]).toEqual(["not-determined", ["not-met"], []]);
      }
    },
  );

  const reason = "Lamp holder of the porch only, switched in both poles and marked so.";
  test.each(["C3", "none"])("one that stands by itself does, and whoever reads the outcome reads it: %s", (chosen) => {
    const { outcome, dismissed } = answered(chosen, reason);
    expect(outcome).toBe("satisfactory");
    expect(dismissed).toEqual([{ observation: "o1", path: ["observations", 0], chosen, checks: ["polarity"], reason }]);
  });

  test("what has to be investigated is no dismissal, and is named beside a satisfactory outcome", () => {
    const { outcome, dismissed, investigate } = answered("FI", reason);
    expect([outcome, dismissed, investigate]).toEqual(["satisfactory", [], ["o1"]]);
  });
});

describe("danger", () => {
  const danger = (more: More) =>
    outcomeWith((file) => {
      file.observations = [
        at(idOf(file, 2), { choice: { classification: "C1", reason: "Live metal.", by: "inspector" }, ...more }),
      ];
      nameAt(file, "accessories.condition", "o1");
    }).points;
  const madeSafe = { done: "Isolated and locked off.", told: "the owner", at: "2026-10-06T11:00:00+01:00" };

  test.each([
    ["neither made safe nor anybody told", {}, ["danger-untold"]],
    ["made safe, and somebody told", { madeSafe }, []],
    ["a reason why nobody could be told", { untold: "The house is empty and no number is known." }, []],
    ["a dash for a reason", { untold: "–" }, ["danger-untold"]],
  ] as const)("%s", (_, more, wanted) => {
    expect(kinds(danger(more))).toEqual(wanted);
  });
});

describe("samples", () => {
  const withSample = (answers: object[] | undefined, reason = "Loose cord grips, put right on the day.") =>
    outcomeWith((file) => {
      const row = { what: "accessories opened", population: 40, inspected: 10, defective: 0 };
      file.extent = { covered: "the whole house", sampling: [row, { ...row, defective: 2 }] };
      if (answers !== undefined)
        file.observations = [at(undefined, { answers, choice: { classification: "C3", reason, by: "inspector" } })];
    }).points;

  test.each([
    ["of which no observation speaks", undefined, ["defective-sample"]],
    ["named", [{ check: "defective-sample" }], []],
    ["named by its number", [{ check: "defective-sample-2" }], []],
    ["another named", [{ check: "defective-sample-1" }], ["defective-sample"]],
  ] as const)("with defective parts, %s", (_, answers, wanted) => {
    expect(kinds(withSample(answers as object[] | undefined))).toEqual(wanted);
  });
});

describe("a reading that nobody can hold against its limit", () => {
  test("is a point, and answered by an observation that names the check", () => {
    const open = (answers?: object[]) =>
      outcomeWith((file) => {
        const circuit = file.boards[0]?.circuits[2] as Record<string, unknown>;
        circuit.rcd = undefined;
        file.boards[0]?.rcds.splice(0);
        circuit.device = { standard: "BS EN 60898", rated: "6 A" };
        if (answers !== undefined) file.observations = [at(idOf(file, 2), { answers })];
      }).points.flatMap((point) => (point.kind === "not-known" ? [point.check] : []));
    expect(open()).toContain("maximum-zs");
    expect(open([{ check: "maximum-zs" }])).not.toContain("maximum-zs");
  });
});

describe("what shares a cause is one point", () => {
  /** The board's RCD alone before every circuit. */
  const behindOne = (rcd: object, more: (file: Editable) => void = () => undefined) =>
    outcomeWith((file) => {
      const [board] = file.boards;
      Object.assign(board?.rcds[0] as object, { delay: "general", residual: "30 mA", ...rcd });
      for (const circuit of board?.circuits ?? []) circuit.rcd = undefined;
      for (const one of ["boards.rcd", "circuits.additional-protection", "circuits.protection"])
        nameAt(file, one, "o1");
      const what = "Seen, and in good order.";
      file.observations = [at(undefined, { what })];
      more(file);
    });
  const dead = { readings: { atRated: { shown: ">300 ms" }, button: "does-not-trip" } };

  test("an RCD that does not open, with the circuits that it leaves", () => {
    const { points } = behindOne(dead);
    expect(points).toMatchObject([{ kind: "not-met", check: "rcd-time", places: [["boards", 0, "rcds", 0]] }]);
    const follow = points[0]?.follow ?? [];
    const told = follow.map((one) => ("check" in one ? one.check : "topic" in one ? one.topic : one.kind));
    expect(told.sort()).toEqual([
      "bath-rcd-and-bonding",
      "electrode-resistance",
      "lighting-no-rcd",
      "maximum-zs",
      "sockets-no-rcd",
    ]);
    const circuits = new Set(follow.flatMap(({ places }) => places.map((path) => path[3])));
    expect([...circuits].filter((one) => one !== undefined).length).toBeGreaterThan(5);
  });

  test("an observation of danger that names the RCD answers for its circuits, and one of no danger does not", () => {
    const named = (classification: string) =>
      behindOne(dead, (file) => {
        const reason = "The owner was told and has it changed this week.";
        file.observations = [
          at(undefined, { answers: [{ check: "rcd-time" }], choice: { classification, reason, by: "inspector" } }),
        ];
      });
    expect([named("C2").outcome, kinds(named("C2").points)]).toEqual(["unsatisfactory", []]);
    const left = named("C3");
    expect(left.outcome).toBe("not-determined");
    const open = left.points.flatMap((point) => [point, ...(point.follow ?? [])]);
    expect(open.flatMap((point) => ("check" in point ? [point.check] : []))).toContain("maximum-zs");
  });

  test("a length written wrongly, with the drop worked out from it", () => {
    const { points } = outcomeWith((file) => {
      for (const { cable } of (file.boards[0]?.circuits ?? []).slice(0, 1) as unknown as {
        cable: { length: string };
      }[])
        cable.length = `${Number.parseFloat(cable.length) * 12} m`;
    });
    expect(points).toHaveLength(1);
    expect(points[0]?.kind).toBe("misfit");
  });

  test("an item in order beside a check that is open stands with the check", () => {
    const { points } = outcomeWith((file) => Object.assign(file.supply.readings, { polarity: "incorrect" }));
    expect(points).toMatchObject([{ kind: "not-met", check: "supply-polarity" }]);
    expect(points[0]?.follow?.map((one) => (one.kind === "contradiction" ? one.about : one.kind))).toEqual([
      "polarity-beside-readings",
      "in-order-beside-failed-check",
    ]);
  });
});

describe("a choice below what the stated facts give", () => {
  const broken = (classification: string, reason: string) => {
    const data = JSON.parse(readFileSync(new URL("../../examples/terraced-house.json", import.meta.url), "utf8"));
    const o6 = data.observations.find(({ id }: Observation) => id === "o6");
    o6.choice = { ...o6.choice, classification, reason };
    return outcomeOfData(data);
  };

  test.each(["C2", "C3", "FI", "none"])(
    "%s where C1 follows is told, and is a point without a written reason",
    (chosen) => {
      const told = broken(chosen, "Covered before leaving, and nobody comes there.");
      expect(told.below).toMatchObject(
        [{ observation: "o6", follows: "C1", chosen, reason: /Covered/ }].map((one) => ({
          ...one,
          reason: "Covered before leaving, and nobody comes there.",
        })),
      );
      expect(kinds(told.points)).not.toContain("below-the-facts");
      for (const reason of ["–", "...", "N/A", "tbc"]) {
        const open = broken(chosen, reason);
        expect(open.below).toMatchObject([{ reason: null }]);
        expect(open.points[0]).toMatchObject({ kind: "below-the-facts", follows: "C1", chosen });
      }
    },
  );

  test("the classification that follows is told nowhere", () => {
    expect(broken("C1", "–").below).toEqual([]);
  });
});
