import { Chance } from "../../examples/simulate/chance.ts";
import { type Sound, type WrittenFile, writtenFile } from "../diagnosis/random-installation.ts";
import { complete, type Data } from "./complete.ts";

type Editable = {
  supply: { readings: Record<string, unknown>; bonding: object[] };
  boards: {
    rcds: { readings: Record<string, unknown> }[];
    circuits: { rcd: unknown; load: string; readings: Record<string, unknown>; device: Record<string, unknown> }[];
  }[];
  inspected: object[];
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
