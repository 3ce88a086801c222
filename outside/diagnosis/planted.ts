import type { MisfitKind } from "@good-grounds/core";
import type { Chance } from "../../examples/simulate/chance.ts";
import { METER_ID } from "../../examples/simulate/inspect.ts";
import type { TrueCircuit, TrueInstallation } from "../../examples/simulate/installation.ts";
import { type Shown, type Sound, type WrittenCircuit, type WrittenFile, writtenFile } from "./random-installation.ts";

/** A file with one fault in it. */
export interface Planted {
  readonly file: WrittenFile;
  /** Which misfit is to be found, at which places: board and circuit, or empty for the origin. */
  readonly kind: MisfitKind;
  readonly at: string;
  /** Explanations any of which is right: they are the same thing to every reading there is. */
  readonly right: readonly string[];
  /** Whether the fault is large enough to show, by the threshold stated in the results. */
  readonly detectable: boolean;
}

export interface PlantedKind {
  readonly name: string;
  /** From which size on it is counted among those that should be found, in words. */
  readonly threshold: string;
  /** Undefined where the installation has no place for it. */
  readonly plant: (sound: Sound, chance: Chance) => Planted | undefined;
}

const ohmsOf = ({ shown }: Shown): number => Number.parseFloat(shown);
/** By the simulated meter, whose accuracy the file states. */
const read = (value: number) => ({ shown: `${Math.max(0, value).toFixed(2)} Ω`, with: METER_ID });

const between = (chance: Chance, low: number, high: number) => low * (high / low) ** chance.uniform();

/** A radial circuit of the first board. */
function someRadial(sound: Sound, chance: Chance): TrueCircuit | undefined {
  const radials = sound.truth.boards[0]?.circuits.filter(({ shape }) => shape === "radial") ?? [];
  return radials[Math.floor(chance.uniform() * radials.length)];
}

function withCircuit(sound: Sound, id: string, change: Partial<TrueCircuit>): Sound {
  return {
    ...sound,
    truth: {
      ...sound.truth,
      boards: sound.truth.boards.map((board) => ({
        ...board,
        circuits: board.circuits.map((one) => (one.id === id ? { ...one, ...change } : one)),
      })),
    },
  };
}

function circuitOf(file: WrittenFile, id: string): WrittenCircuit {
  const found = file.boards[0]?.circuits.find((one) => one.id === id);
  if (found === undefined) throw new Error(`no circuit ${id}`);
  return found;
}

const reading = (file: WrittenFile, id: string, key: string): Shown => circuitOf(file, id).readings[key] as Shown;

/** Rough resistances of a circuit, to say from which size on a fault shows. */
const METRE: Readonly<Record<number, number>> = { 1: 18.1, 1.5: 12.1, 2.5: 7.41, 4: 4.61, 6: 3.08, 10: 1.83 };
const r2Of = ({ cable }: TrueCircuit) => ((METRE[cable.cpc] ?? 0) / 1000) * cable.length;
const r12Of = (circuit: TrueCircuit) =>
  r2Of(circuit) + ((METRE[circuit.cable.line] ?? 0) / 1000) * circuit.cable.length;

/** How much R1+R2 can be out before the cable contradicts it: tolerance of cable and length, and the meter. */
const shows = (circuit: TrueCircuit, change: number) =>
  Math.abs(change) >= (circuit.cable.lengthKnown === false ? 0.45 : 0.25) * r12Of(circuit) + 0.08;

/** How much Zs can be out before Zdb and R1+R2 contradict it. */
const showsInLoop = (circuit: TrueCircuit, sound: Sound, change: number) =>
  Math.abs(change) >= 0.15 * (sound.truth.ze + r12Of(circuit)) + 0.15;

/** Every live reading behind the first board's own, as read in another state of the installation. */
const scaleTo = (file: WrittenFile, other: WrittenFile) => {
  for (const [i, board] of file.boards.entries()) {
    const behind = other.boards[i]?.readings.zdb;
    if (i > 0 && behind !== undefined) board.readings.zdb = behind;
    for (const [j, circuit] of board.circuits.entries()) {
      const zs = other.boards[i]?.circuits[j]?.readings.zs;
      if (zs !== undefined) circuit.readings.zs = zs;
    }
  }
};

const withLoop = (sound: Sound, ze: number): WrittenFile =>
  writtenFile({ ...sound, truth: { ...sound.truth, ze } as TrueInstallation });

export const PLANTED: readonly PlantedKind[] = [
  {
    name: "joint in the protective conductor",
    threshold: "joint ≥ 25 % of R1+R2 (45 % where the length is a range) + 0.08 Ω",
    plant(sound, chance) {
      const circuit = someRadial(sound, chance);
      if (circuit === undefined) return undefined;
      const joint = between(chance, 0.08, 4);
      return {
        file: writtenFile(withCircuit(sound, circuit.id, { joint })),
        kind: "circuit-readings",
        at: `cu ${circuit.id}`,
        right: ["joint-in-protective-conductor"],
        detectable: shows(circuit, joint),
      };
    },
  },
  {
    name: "the same, R2 read by a long lead as well",
    threshold: "joint ≥ 25 % of R1+R2 (45 % where the length is a range) + 0.08 Ω",
    plant(sound, chance) {
      const circuit = someRadial(sound, chance);
      if (circuit === undefined) return undefined;
      const joint = between(chance, 0.08, 4);
      const file = writtenFile(withCircuit(sound, circuit.id, { joint }));
      // A real conductor lies 3 % below the greatest resistance; the meter is good to two digits.
      const r2 = 0.97 * r2Of(circuit) * (1 + 0.004 * (sound.truth.celsius - 20)) + joint;
      circuitOf(file, circuit.id).readings.r2Only = read(r2 * chance.between(0.985, 1.015));
      return {
        file,
        kind: "circuit-readings",
        at: `cu ${circuit.id}`,
        right: ["joint-in-protective-conductor"],
        detectable: shows(circuit, joint),
      };
    },
  },
  {
    name: "length written wrongly",
    threshold: "change of R1+R2 ≥ 25 % + 0.08 Ω, length stated as one figure",
    plant(sound, chance) {
      const circuit = someRadial(sound, chance);
      if (circuit === undefined || circuit.cable.lengthKnown === false) return undefined;
      const factor = chance.uniform() < 0.5 ? between(chance, 0.45, 0.75) : between(chance, 1.35, 2.2);
      const length = Math.round(circuit.cable.length * factor);
      const file = writtenFile(sound);
      circuitOf(file, circuit.id).cable.length = `${length} m`;
      const expected = r12Of({ ...circuit, cable: { ...circuit.cable, length } });
      return {
        file,
        kind: "circuit-readings",
        at: `cu ${circuit.id}`,
        right: ["length-wrong"],
        detectable: Math.abs(r12Of(circuit) - expected) >= 0.25 * expected + 0.08,
      };
    },
  },
  {
    name: "protective conductor smaller than written",
    threshold: "change of R1+R2 ≥ 25 % (45 %) + 0.08 Ω",
    plant(sound, chance) {
      const circuit = someRadial(sound, chance);
      if (circuit === undefined) return undefined;
      const sizes = [1.5, 2.5, 4, 6, 10].filter((one) => one > circuit.cable.cpc && one <= circuit.cable.line);
      const larger = sizes[Math.floor(chance.uniform() * sizes.length)];
      if (larger === undefined) return undefined;
      const file = writtenFile(sound);
      circuitOf(file, circuit.id).cable.cpc = `${larger} mm²`;
      const expected = r12Of({ ...circuit, cable: { ...circuit.cable, cpc: larger } });
      return {
        file,
        kind: "circuit-readings",
        at: `cu ${circuit.id}`,
        right: ["protective-conductor-size-wrong"],
        detectable: shows({ ...circuit, cable: { ...circuit.cable, cpc: larger } }, r12Of(circuit) - expected),
      };
    },
  },
  {
    name: "leads not nulled for one circuit",
    threshold: "change ≥ 25 % of R1+R2 (45 %) + 0.08 Ω and ≥ 15 % of Zs + 0.15 Ω",
    plant(sound, chance) {
      const circuit = someRadial(sound, chance);
      if (circuit === undefined) return undefined;
      const leads = between(chance, 0.1, 0.5);
      const file = writtenFile(sound);
      const readings = circuitOf(file, circuit.id).readings;
      readings.r1r2 = read(ohmsOf(readings.r1r2 as Shown) + leads);
      return {
        file,
        kind: "circuit-readings",
        at: `cu ${circuit.id}`,
        right: ["leads-not-nulled-here", "r1r2-not-of-this-circuit"],
        detectable: shows(circuit, leads) && showsInLoop(circuit, sound, leads),
      };
    },
  },
  {
    name: "leads not nulled for the whole job",
    threshold: "≥ 0.12 Ω",
    plant(sound, chance) {
      const leads = between(chance, 0.06, 0.5);
      const file = writtenFile(sound);
      for (const { circuits } of file.boards) {
        for (const { readings } of circuits) {
          for (const key of ["r1", "rn", "r2", "r1r2"]) {
            if (readings[key] !== undefined) readings[key] = read(ohmsOf(readings[key] as Shown) + leads);
          }
        }
      }
      return { file, kind: "leads-not-nulled", at: "cu", right: ["leads-not-nulled"], detectable: leads >= 0.12 };
    },
  },
  {
    name: "R1+R2 of another circuit",
    threshold: "change ≥ 25 % of R1+R2 (45 %) + 0.08 Ω",
    plant(sound, chance) {
      const circuit = someRadial(sound, chance);
      if (circuit === undefined) return undefined;
      const file = writtenFile(sound);
      const others = (file.boards[0]?.circuits ?? []).filter((one) => one.id !== circuit.id && one.readings.r1r2);
      const from = others[Math.floor(chance.uniform() * others.length)];
      if (from === undefined) return undefined;
      const change = ohmsOf(from.readings.r1r2 as Shown) - ohmsOf(reading(file, circuit.id, "r1r2"));
      circuitOf(file, circuit.id).readings.r1r2 = from.readings.r1r2 as Shown;
      return {
        file,
        kind: "circuit-readings",
        at: `cu ${circuit.id}`,
        right: ["r1r2-not-of-this-circuit"],
        detectable: shows(circuit, change),
      };
    },
  },
  {
    name: "Zs of another circuit",
    threshold: "change ≥ 15 % of Zs + 0.15 Ω",
    plant(sound, chance) {
      const circuit = someRadial(sound, chance);
      if (circuit === undefined) return undefined;
      const file = writtenFile(sound);
      const others = (file.boards[0]?.circuits ?? []).filter((one) => one.id !== circuit.id);
      const from = others[Math.floor(chance.uniform() * others.length)];
      if (from === undefined) return undefined;
      const change = ohmsOf(from.readings.zs as Shown) - ohmsOf(reading(file, circuit.id, "zs"));
      circuitOf(file, circuit.id).readings.zs = from.readings.zs as Shown;
      return {
        file,
        kind: "circuit-readings",
        at: `cu ${circuit.id}`,
        right: ["zs-not-of-this-circuit"],
        detectable: showsInLoop(circuit, sound, change),
      };
    },
  },
  {
    name: "resistance in the loop test only",
    threshold: "≥ 15 % of Zs + 0.15 Ω",
    plant(sound, chance) {
      const circuit = someRadial(sound, chance);
      if (circuit === undefined) return undefined;
      const extra = between(chance, 0.15, 5);
      const file = writtenFile(sound);
      circuitOf(file, circuit.id).readings.zs = read(ohmsOf(reading(file, circuit.id, "zs")) + extra);
      return {
        file,
        kind: "circuit-readings",
        at: `cu ${circuit.id}`,
        right: ["resistance-in-loop-test-only"],
        detectable: showsInLoop(circuit, sound, extra),
      };
    },
  },
  {
    name: "parallel path to the main earthing terminal",
    threshold: "takes ≥ 15 % of Zs + 0.15 Ω away",
    plant(sound, chance) {
      const circuit = someRadial(sound, chance);
      if (circuit === undefined) return undefined;
      const r2 = r2Of(circuit);
      const parallelPath = between(chance, 0.05, 1) * r2;
      return {
        file: writtenFile(withCircuit(sound, circuit.id, { parallelPath })),
        kind: "circuit-readings",
        at: `cu ${circuit.id}`,
        right: ["parallel-path"],
        detectable: showsInLoop(circuit, sound, r2 - (r2 * parallelPath) / (r2 + parallelPath)),
      };
    },
  },
  {
    name: "another earth at the far end of a circuit (TT)",
    threshold: "further than a third from what line to neutral reads",
    plant(sound, chance) {
      const circuit = someRadial(sound, chance);
      if (circuit === undefined || sound.system !== "TT") return undefined;
      const file = writtenFile(sound);
      const r1 = r12Of(circuit) - r2Of(circuit);
      const zs = r1 + between(chance, 0.2, 6);
      circuitOf(file, circuit.id).readings.zs = read(zs);
      const toNeutral = sound.truth.lineNeutral + 2 * r1;
      return {
        file,
        kind: "circuit-readings",
        at: `cu ${circuit.id}`,
        right: ["other-earth"],
        detectable: Math.abs(Math.log(zs / toNeutral)) > 0.3,
      };
    },
  },
  {
    name: "Zs read line to neutral (TT)",
    threshold: "all",
    plant(sound, chance) {
      const circuit = someRadial(sound, chance);
      if (circuit === undefined || sound.system !== "TT") return undefined;
      const file = writtenFile(sound);
      const r1 = r12Of(circuit) - r2Of(circuit);
      circuitOf(file, circuit.id).readings.zs = read((sound.truth.lineNeutral + 2 * r1) * chance.between(0.97, 1.03));
      return {
        file,
        kind: "circuit-readings",
        at: `cu ${circuit.id}`,
        right: ["loop-line-to-neutral"],
        detectable: true,
      };
    },
  },
  {
    name: "ring bridged",
    threshold: "ends read 70 % of their length or less",
    plant(sound, chance) {
      const ring = sound.truth.boards[0]?.circuits.find(({ shape }) => shape === "ring");
      if (ring === undefined) return undefined;
      const part = chance.between(0.4, 0.95);
      const file = writtenFile(sound);
      const { readings } = circuitOf(file, ring.id);
      for (const key of ["r1", "rn", "r2"]) readings[key] = read(ohmsOf(readings[key] as Shown) * part);
      return {
        file,
        kind: "circuit-readings",
        at: `cu ${ring.id}`,
        right: ["ring-bridged"],
        detectable: part <= 0.7,
      };
    },
  },
  {
    name: "earthing conductor off while the circuits were tested",
    threshold: "≥ 2 Ω (TN)",
    plant(sound, chance) {
      if (sound.system === "TT") return undefined;
      const more = between(chance, 2, 150);
      const file = writtenFile(sound);
      scaleTo(file, withLoop(sound, sound.truth.ze + more));
      return { file, kind: "board-loop", at: "cu", right: ["earthing-conductor-off"], detectable: true };
    },
  },
  {
    name: "joint between the board's reading and its circuits",
    threshold: "≥ 0.2 Ω (TN)",
    plant(sound, chance) {
      if (sound.system === "TT") return undefined;
      const more = between(chance, 0.06, 1);
      const file = writtenFile(sound);
      scaleTo(file, withLoop(sound, sound.truth.ze + more));
      return { file, kind: "board-loop", at: "cu", right: ["joint-before-circuits"], detectable: more >= 0.2 };
    },
  },
  {
    name: "joint in the earthing conductor",
    threshold: "≥ 20 % of Ze + 0.2 Ω (TN)",
    plant(sound, chance) {
      if (sound.system === "TT") return undefined;
      const more = between(chance, 0.08, 1);
      const file = withLoop(sound, sound.truth.ze + more);
      file.supply.readings.ze = writtenFile(sound).supply.readings.ze as Shown;
      return {
        file,
        kind: "supply-loop",
        at: "cu",
        right: ["joint-in-earthing-conductor"],
        detectable: more >= 0.2 + 0.2 * sound.truth.ze,
      };
    },
  },
  {
    name: "bonding in parallel in every loop test but at the origin",
    threshold: "≥ 0.2 Ω less (TN-S)",
    plant(sound, chance) {
      if (sound.system !== "TN-S") return undefined;
      const less = between(chance, 0.05, 0.9 * sound.truth.ze);
      const file = writtenFile(sound);
      scaleTo(file, withLoop(sound, sound.truth.ze - less));
      return { file, kind: "board-loop", at: "cu", right: ["bonding-in-parallel"], detectable: less >= 0.2 };
    },
  },
  {
    name: "three-phase value for a single-phase fault current",
    threshold: "line to neutral loop ≥ 0.2 Ω",
    plant(sound) {
      const file = writtenFile(sound);
      const was = file.supply.readings.faultCurrent as Shown;
      file.supply.readings.faultCurrent = { shown: `${(2 * Number.parseFloat(was.shown)).toFixed(2)} kA` };
      return {
        file,
        kind: "fault-current",
        at: "",
        right: ["method-taken-for-another"],
        detectable: sound.truth.lineNeutral >= 0.2,
      };
    },
  },
  {
    name: "decimal slipped in the fault current",
    threshold: "all",
    plant(sound) {
      const file = writtenFile(sound);
      const was = file.supply.readings.faultCurrent as Shown;
      file.supply.readings.faultCurrent = { shown: `${(10 * Number.parseFloat(was.shown)).toFixed(1)} kA` };
      return { file, kind: "fault-current", at: "", right: ["decimal-slipped"], detectable: true };
    },
  },
  {
    name: "TT written as TN-C-S",
    threshold: "all",
    plant(sound) {
      if (sound.system !== "TT") return undefined;
      const file = writtenFile(sound);
      file.supply.earthing = "TN-C-S";
      return { file, kind: "earthing-system", at: "", right: ["system-is-TT"], detectable: true };
    },
  },
  {
    name: "TN-C-S written as TT",
    threshold: "all",
    plant(sound) {
      if (sound.system !== "TN-C-S") return undefined;
      const file = writtenFile(sound);
      file.supply.earthing = "TT";
      return { file, kind: "earthing-system", at: "", right: ["system-is-TN-C-S"], detectable: true };
    },
  },
  {
    name: "one low insulation resistance",
    threshold: "≤ 5 MΩ",
    plant(sound, chance) {
      const circuit = someRadial(sound, chance);
      if (circuit === undefined) return undefined;
      const insulation = between(chance, 0.05e6, 20e6);
      return {
        file: writtenFile(withCircuit(sound, circuit.id, { insulation })),
        kind: "insulation",
        at: `cu ${circuit.id}`,
        right: ["damp-or-damaged", "equipment-connected"],
        detectable: insulation <= 5e6,
      };
    },
  },
  {
    name: "circuit left out of, or something more in, the reading of all circuits together",
    threshold: "a quarter or four times of what the circuits give",
    plant(sound, chance) {
      const file = writtenFile(sound);
      const [board] = file.boards;
      if (board === undefined) return undefined;
      const factor = chance.uniform() < 0.5 ? between(chance, 0.02, 0.8) : between(chance, 1.25, 20);
      // Displays beyond the end of the range leave open how much higher the circuits together are.
      const parts = board.circuits.map(({ readings }) => (readings.insulationLiveEarth as Shown).shown);
      const together = 1 / parts.reduce((sum, text) => sum + 1 / Number.parseFloat(text.replace(">", "")), 0);
      if (parts.some((text) => text.startsWith(">"))) return undefined;
      board.readings.insulationLiveEarth = { shown: `${(together * factor).toFixed(1)} MΩ` };
      return {
        file,
        kind: "insulation",
        at: "cu",
        right: factor < 1 ? ["more-on-the-board", "circuit-not-as-read", "equipment-connected"] : ["not-all-connected"],
        detectable: factor <= 1 / 4 || factor >= 4,
      };
    },
  },
  {
    name: "two circuits that share a neutral",
    threshold: "all",
    plant(sound, chance) {
      const file = writtenFile(sound);
      const [board] = file.boards;
      if (board === undefined) return undefined;
      const from = Math.floor(chance.uniform() * (board.circuits.length - 1));
      for (const [i, { readings }] of board.circuits.entries()) {
        const joined = i === from || i === from + 1;
        readings.insulationBetweenNeutrals = {
          shown: joined ? "0.00 MΩ" : `${Math.round(between(chance, 50, 900))} MΩ`,
        };
      }
      return { file, kind: "between-neutrals", at: "cu", right: ["borrowed-neutral"], detectable: true };
    },
  },
  {
    name: "RCD without delay written as S, or its time read behind another",
    threshold: "time ≤ 120 ms",
    plant(sound, chance) {
      const file = writtenFile(sound);
      const rcd = file.boards[0]?.rcds[0];
      if (rcd === undefined) return undefined;
      rcd.readings.atRated = { shown: `${chance.between(18, 40).toFixed(1)} ms` };
      return {
        file,
        kind: "residual-device",
        at: "cu rcd",
        right: ["delay-is-another", "another-device-tripped"],
        detectable: true,
      };
    },
  },
  {
    name: "circuit with an RCBO written as without RCD",
    threshold: "all",
    plant(sound, chance) {
      const circuit = someRadial(sound, chance);
      if (circuit === undefined) return undefined;
      const file = writtenFile(sound);
      circuitOf(file, circuit.id).device.standard = "BS EN 60898";
      return {
        file,
        kind: "residual-device",
        at: `cu ${circuit.id}`,
        right: ["rcd-written-wrongly", "device-written-wrongly"],
        detectable: true,
      };
    },
  },
  {
    name: "polarity wrong at the origin, right behind",
    threshold: "all",
    plant(sound) {
      const file = writtenFile(sound);
      file.supply.readings.polarity = "incorrect";
      return { file, kind: "polarity", at: "", right: ["behind-by-dead-tests"], detectable: true };
    },
  },
];
