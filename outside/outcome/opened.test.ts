import { readFileSync } from "node:fs";
import type { OpenPoint } from "@good-grounds/core";
import { describe, expect, test } from "vitest";
import { Chance } from "../../examples/simulate/chance.ts";
import { OPENED_ROWS } from "../../packages/judgement/src/outcome/opened/rows.ts";
import { recordedProperty } from "../../packages/judgement/src/reasoning/recorded/index.ts";
import { OWN_TOPICS } from "../../packages/topics/src/index.ts";
import { adaptCase } from "../cases/adapt.ts";
import { randomInstallation, writtenFile } from "../diagnosis/random-installation.ts";
import { complete, outcomeOfData } from "./complete.ts";

interface Circuit extends Record<string, unknown> {
  readonly id: string;
}

interface Editable extends Record<string, unknown> {
  readonly supply: Record<string, unknown> & { readonly bonding: Record<string, unknown>[] };
  readonly boards: (Record<string, unknown> & { readonly circuits: Circuit[] })[];
  readonly observations: Record<string, unknown>[];
}

const SOUND = complete(writtenFile(randomInstallation(4001, new Chance(4001))));

function openedIn(edit: (file: Editable) => void) {
  const data = structuredClone(SOUND) as unknown as Editable;
  edit(data);
  const { points } = outcomeOfData(JSON.parse(JSON.stringify(data)));
  return points.filter((point): point is OpenPoint & { kind: "opened" } => point.kind === "opened");
}

const circuit = (file: Editable, i = 2) => file.boards[0]?.circuits[i] as Circuit;
const ac = (state: string) => ({
  own: {
    standard: "BS EN 61008",
    type: state,
    delay: "general",
    residual: "30 mA",
    readings: { atRated: { shown: "24.3 ms" }, button: "trips" },
  },
});

/** What is recorded, the topic it opens, and what has to be possible then at the least. */
const CASES: readonly (readonly [name: string, edit: (file: Editable) => void, topic: string, least: string])[] = [
  [
    "a charging point behind an RCD of type AC",
    (file) => Object.assign(circuit(file), { load: "vehicle-charging", rcd: ac("AC") }),
    "rcd-type-ac",
    "C3",
  ],
  [
    "a second source without notice",
    (file) => Object.assign(file.supply, { otherSources: [{ id: "s1", kind: "battery", notice: false }] }),
    "notice-missing",
    "C3",
  ],
  [
    "a board without main switch",
    (file) => Object.assign(file.boards[0] as object, { mainSwitch: { fitted: false } }),
    "main-switch-missing-or-faulty",
    "C2",
  ],
  [
    "a shower without RCD",
    (file) => Object.assign(circuit(file), { load: "shower", rcd: "none" }),
    "bath-rcd-and-bonding",
    "C3",
  ],
  [
    "sockets of a home without RCD",
    (file) => Object.assign(circuit(file), { load: "socket-outlets", rcd: "none" }),
    "sockets-no-rcd",
    "C3",
  ],
  [
    "lights of a home without RCD",
    (file) => Object.assign(circuit(file), { load: "lighting", rcd: "none" }),
    "lighting-no-rcd",
    "C3",
  ],
  [
    "a circuit on TT without RCD",
    (file) => {
      file.supply.earthing = "TT";
      for (const board of file.boards) {
        board.rcds = [];
        for (const one of board.circuits) one.rcd = "none";
      }
    },
    "rcd-none-tt",
    "C3",
  ],
  [
    "an electrode beyond what its RCDs allow",
    (file) => {
      file.supply.earthing = "TT";
      file.supply.readings = { ra: { shown: "4200 Ω" } };
    },
    "electrode-resistance",
    "C2",
  ],
  [
    "a main bond too small",
    (file) => {
      const { supply } = file;
      Object.assign(supply, { earthing: "TN-C-S", neutral: { size: "25 mm²" } });
      supply.bonding.push({
        id: "b9",
        to: "gas",
        size: "6 mm²",
        material: "copper",
        extraneous: true,
        connected: true,
      });
    },
    "main-bonding-undersized",
    "C3",
  ],
  [
    "an earthing conductor too small for its fault",
    (file) =>
      Object.assign(file.supply, {
        earthing: "TN-S",
        device: { standard: "BS 88-2", type: "gG", rated: "63 A" },
        readings: { ze: { shown: "0.60 Ω" } },
        earthingConductor: { size: "1 mm²", material: "copper", arrangement: "separate" },
      }),
    "earthing-conductor-undersized",
    "C2",
  ],
];

describe("the schedule asks by itself", () => {
  test("nothing on a sound installation", () => {
    expect(openedIn(() => undefined)).toEqual([]);
  });

  test.each(CASES)("%s", (_, edit, topic, least) => {
    const opened = openedIn(edit).filter((point) => point.topic === topic);
    expect(opened.map(({ possible }) => possible[0])).toContain(least);
    expect(opened[0]?.places.length).toBeGreaterThan(0);
  });

  test.each(CASES)("an observation speaks of it, and it is asked no more: %s", (_, edit, topic) => {
    const opened = openedIn((file) => {
      edit(file);
      const speaks = { id: "o1", place: "intake", what: "Seen.", topic };
      (file as Record<string, unknown>).observations = [speaks];
    });
    expect(opened.filter((point) => point.topic === topic)).toEqual([]);
  });

  test("an observation of the same topic at another circuit says nothing of this one", () => {
    const opened = openedIn((file) => {
      Object.assign(circuit(file), { load: "shower", rcd: "none" });
      const other = { id: "o1", board: file.boards[0]?.id, circuit: circuit(file, 1).id, place: "hall", what: "Seen." };
      (file as Record<string, unknown>).observations = [{ ...other, topic: "bath-rcd-and-bonding" }];
    });
    expect(opened.map(({ topic }) => topic)).toContain("bath-rcd-and-bonding");
  });

  test("what is told by an opened subject is not told again as a check that is not met", () => {
    const data = structuredClone(SOUND) as unknown as Editable;
    Object.assign(circuit(data), { load: "socket-outlets", rcd: "none" });
    const { points } = outcomeOfData(data);
    expect(points.filter((point) => point.kind === "not-met" && point.check === "additional-protection")).toEqual([]);
  });

  test("what is not known opens nothing", () => {
    const opened = openedIn((file) => {
      const { mainSwitch: _, ...board } = file.boards[0] as Record<string, unknown>;
      (file.boards as unknown[])[0] = board;
      Object.assign(file.supply, { otherSources: [{ id: "s1", kind: "battery" }] });
      Object.assign(circuit(file), { load: "vehicle-charging" });
    });
    expect(opened).toEqual([]);
  });

  test("every row names a topic, its facts and recorded properties with their values", () => {
    for (const { id, topic: name, when, says } of OPENED_ROWS) {
      const topic = OWN_TOPICS.byId(name);
      expect(topic, id).toBeDefined();
      for (const [property, values] of Object.entries(when))
        for (const value of values) expect(recordedProperty(property)?.values, `${id} ${property}`).toContain(value);
      for (const [fact, said] of Object.entries(says)) {
        const about = topic?.facts[fact];
        if (about?.kind !== "choice") throw new Error(`${id}: no fact of several values called ${fact}`);
        for (const value of said.split(" | ")) expect(Object.keys(about.values), `${id} ${fact}`).toContain(value);
      }
    }
  });
});

describe("on the installations of the examples and of the cases", () => {
  const read = (name: string) => JSON.parse(readFileSync(new URL(name, import.meta.url), "utf8"));
  const files = [
    ...["terraced-house", "farmhouse", "workshop"].map(
      (name) => [name, () => read(`../../examples/${name}.json`), []] as const,
    ),
    // Planted there: a bond of 6 mm² on PME, and lights in a home without RCD.
    ["case-1", () => adaptCase(read("../cases/data/case-1.json")), ["main-bonding-undersized C3 C2 C1"]] as const,
    ["case-2", () => adaptCase(read("../cases/data/case-2.json")), ["lighting-no-rcd C3"]] as const,
  ];

  test.each(files)("%s", (_, file, wanted) => {
    const { points } = outcomeOfData(file());
    const opened = points.flatMap((point) =>
      point.kind === "opened" ? [`${point.topic} ${point.possible.join(" ")}`] : [],
    );
    expect(opened).toEqual(wanted);
  });
});
