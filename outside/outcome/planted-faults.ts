import { Chance } from "../../examples/simulate/chance.ts";
import { type Sound, type WrittenFile, writtenFile } from "../diagnosis/random-installation.ts";
import { complete, type Data } from "./complete.ts";

type Editable = {
  supply: { readings: Record<string, unknown>; bonding: object[] };
  boards: {
    id: string;
    rcds: { readings: Record<string, unknown> }[];
    circuits: {
      id: string;
      rcd: unknown;
      load: string;
      cable: { length?: unknown };
      readings: Record<string, unknown>;
      device: Record<string, unknown>;
    }[];
  }[];
  inspected: object[];
  extent?: object;
  limitations?: object[];
  observations?: object[];
  conclusion?: object;
  things?: object;
};

const someCircuit = (file: Editable, chance: Chance) => {
  const finals = (file.boards[0]?.circuits ?? []).filter(({ load }) => load !== "board");
  return finals[Math.floor(chance.uniform() * finals.length)] as Editable["boards"][0]["circuits"][0];
};

/** Ways in which a finished inspection of an installation shows that it is not sound, or is not finished. */
const FAULTS: readonly (readonly [name: string, plant: (file: Editable, chance: Chance) => void])[] = [
  [
    "polarity of a circuit",
    (file, chance) => Object.assign(someCircuit(file, chance).readings, { polarity: "incorrect" }),
  ],
  ["polarity of the supply", (file) => Object.assign(file.supply.readings, { polarity: "incorrect" })],
  [
    "insulation",
    (file, chance) =>
      Object.assign(someCircuit(file, chance).readings, {
        insulationLiveEarth: { shown: `${chance.between(0.05, 0.8).toFixed(2)} MΩ` },
      }),
  ],
  [
    "loop far past its limit",
    (file, chance) => {
      const circuit = someCircuit(file, chance);
      circuit.rcd = "none";
      for (const board of file.boards) board.rcds = [];
      circuit.readings.zs = { shown: `${chance.between(12, 40).toFixed(1)} Ω` };
    },
  ],
  [
    "an RCD that is slow",
    (file, chance) =>
      Object.assign(file.boards[0]?.rcds[0]?.readings as object, {
        atRated: { shown: `${Math.round(chance.between(520, 900))} ms` },
      }),
  ],
  [
    "an RCD whose button does nothing",
    (file) => Object.assign(file.boards[0]?.rcds[0]?.readings as object, { button: "does-not-trip" }),
  ],
  [
    "main bonding of half the size",
    (file) => {
      Object.assign(file.supply, {
        tails: { size: "25 mm²", material: "copper" },
        neutral: { size: "25 mm²", material: "copper" },
        earthingConductor: { size: "16 mm²", material: "copper", arrangement: "separate" },
      });
      file.supply.bonding.push({
        id: "water",
        to: "water",
        extraneous: true,
        connected: true,
        size: "2.5 mm²",
        material: "copper",
        resistance: { shown: "0.04 Ω" },
      });
    },
  ],
  [
    "sockets without an RCD",
    (file, chance) => Object.assign(someSockets(file, chance), { rcd: "none", load: "socket-outlets" }),
  ],
  ["a test that is not recorded", (file, chance) => (someCircuit(file, chance).readings.zs = undefined)],
  [
    "an RCD that does not open, though its button trips it",
    (file) =>
      Object.assign(file.boards[0]?.rcds[0]?.readings as object, { atRated: { shown: ">1999 ms" }, button: "trips" }),
  ],
  [
    "a delayed RCD in time whose button is dead",
    (file) =>
      Object.assign(file.boards[0]?.rcds[0] as object, {
        standard: "BS EN 61008",
        delay: "S",
        residual: "100 mA",
        readings: { atRated: { shown: "220 ms" }, button: "does-not-trip" },
      }),
  ],
  [
    "a length written twenty times too large",
    (file) => {
      for (const { cable } of file.boards[0]?.circuits ?? []) {
        if (typeof cable.length !== "string") continue;
        cable.length = `${Math.round(Number.parseFloat(cable.length) * 20 + 60)} m`;
        return;
      }
    },
  ],
  [
    "parts found defective in a sample",
    (file) => {
      const row = { what: "accessories opened", population: 40, inspected: 10, defective: 3 };
      file.extent = { covered: "the whole house", sampling: [row] };
    },
  ],
  [
    "a polarity that an observation waves away by pointing elsewhere",
    (file, chance) => wavedAway(file, chance, "See above."),
  ],
  ["a polarity that an observation waves away by a dot", (file, chance) => wavedAway(file, chance, ".")],
  [
    "danger of which nobody was told",
    (file) => {
      file.observations = [
        { id: "o1", place: "hall", what: "Live metal in reach.", choice: choice("C1", "A finger reaches it.") },
      ];
    },
  ],
  [
    "satisfactory stated over a danger",
    (file) => {
      file.conclusion = { outcome: "satisfactory" };
      file.observations = [
        { id: "o1", place: "hall", what: "A socket is cracked.", choice: choice("C2", "One knock from live metal.") },
      ];
    },
  ],
  [
    "surge protection in order and fitted nowhere",
    (file) => {
      file.things = { surgeDevices: [{ id: "s1", board: file.boards[0]?.id, fitted: false }] };
    },
  ],
  [
    "an RCD that cannot be tested and has a time",
    (file) =>
      Object.assign(file.boards[0]?.rcds[0] as object, {
        testability: "cannot-be-tested",
        whyNotTested: "the freezer on it may not be switched off",
      }),
  ],
  [
    "a test left out of the whole that has readings",
    (file) => {
      const what = "Insulation resistance not tested";
      file.limitations = [{ id: "l1", kind: "agreed", what, why: "As agreed.", agreedWith: "the client" }];
    },
  ],
  [
    "a test that nobody verified",
    (file, chance) => {
      someCircuit(file, chance).readings.insulationLiveEarth = { notTaken: "not-verified", reason: "no time left" };
    },
  ],
  [
    "an item without an answer",
    (file, chance) => void file.inspected.splice(Math.floor(chance.uniform() * file.inspected.length), 1),
  ],
];

const choice = (classification: string, reason: string) => ({ classification, reason, by: "inspector" });

function wavedAway(file: Editable, chance: Chance, reason: string): void {
  const circuit = someCircuit(file, chance);
  Object.assign(circuit.readings, { polarity: "incorrect" });
  const at = { board: file.boards[0]?.id, circuit: circuit.id, place: "hall", what: "Polarity." };
  file.observations = [{ id: "o1", ...at, answers: [{ check: "polarity" }], choice: choice("none", reason) }];
}

function someSockets(file: Editable, chance: Chance) {
  for (const board of file.boards) board.rcds = [];
  return someCircuit(file, chance);
}

/** A finished inspection with one fault that no observation speaks of, and what the fault is. */
export function faulty(sound: Sound, n: number): { readonly name: string; readonly data: Data } {
  const chance = new Chance(9000 + n);
  const data = complete(writtenFile(sound) satisfies WrittenFile);
  const [name, plant] = FAULTS[n % FAULTS.length] as (typeof FAULTS)[number];
  plant(data as unknown as Editable, chance);
  return { name, data: JSON.parse(JSON.stringify(data)) as Data };
}

/** How many kinds of fault there are. */
export const KINDS_OF_FAULT = FAULTS.length;
