import { type House, place } from "../house/house.ts";
import type { Written } from "../site/write.ts";
import { everywhere, isRadial, oneOf, withCircuit, withOhms, without } from "./edit.ts";
import type { Fault } from "./fault.ts";
import { JOINT } from "./in-circuits.ts";

const lineTails = (house: House, size: number) => withOhms(house, place.origin("L"), place.bar("main", "L"), size);

/** The test between neutrals that shows it; not every job has it. */
function betweenNeutrals({ boards }: Written, id: string, megohms: number): void {
  for (const { circuits } of boards)
    for (const circuit of circuits)
      if (circuit.id === id)
        circuit.readings.insulationBetweenNeutrals = { shown: `${megohms.toFixed(3)} MΩ`, with: "mft" };
}

/** Faults of the origin, of the main earth and of insulation. */
export const AT_ORIGIN: readonly Fault[] = [
  {
    id: "joint-earthing",
    says: "loose joint in the earthing conductor",
    unit: "Ω",
    named: /joint-in-earthing-conductor|earthing-conductor-off|joint-before-circuits/,
    plant(house, draws) {
      const size = draws.acrossDecades("size", ...JOINT);
      return { house: withOhms(house, place.earthTerminal, place.mainEarth, size), at: everywhere(house), size };
    },
  },
  {
    id: "joint-main-switch",
    says: "loose joint in the line at the main switch",
    unit: "Ω",
    named: /joint-before-circuits|main-switch|tails/,
    plant(house, draws) {
      const size = draws.acrossDecades("size", ...JOINT);
      return { house: lineTails(house, size), at: everywhere(house), size };
    },
  },
  {
    id: "ze-high",
    says: "external loop above what distributors declare",
    unit: "Ω",
    named: /distributor-earth|supply-neutral/,
    plant(house, draws) {
      if (house.earthing === "TT") return null;
      const shared = house.earthing === "TN-C-S";
      const size = draws.acrossDecades("size", shared ? 0.36 : 0.81, 4);
      const [from, to] = [place.source, shared ? place.origin("N") : place.earthTerminal];
      const line = house.parts.find(({ a, b }) => a === from && b === place.origin("L"))?.ohms ?? 0;
      const before = house.parts.find(({ a, b }) => a === from && b === to)?.ohms ?? 0;
      return { house: withOhms(house, from, to, size - line - before), at: everywhere(house), size };
    },
  },
  {
    id: "pme-lost",
    says: "earth terminal of a TN-C-S supply off",
    named: /distributor-earth|earth-lost|open/,
    plant(house) {
      if (house.earthing !== "TN-C-S") return null;
      return { house: without(house, place.origin("N"), place.earthTerminal), at: everywhere(house) };
    },
  },
  {
    id: "electrode-high",
    says: "electrode above what the RCD allows",
    unit: "Ω",
    named: /electrode|earth/,
    plant(house, draws) {
      if (house.earthing !== "TT") return null;
      const size = draws.acrossDecades("size", 1700, 5000);
      return { house: withOhms(house, place.soil, place.earthTerminal, size), at: everywhere(house), size };
    },
  },
  {
    id: "bond-joint",
    says: "poor clamp in a main bond",
    unit: "Ω",
    named: /bond|joint/,
    plant(house, draws) {
      const [bond] = house.bonds;
      if (bond === undefined) return null;
      const size = draws.acrossDecades("size", 0.03, 10);
      return {
        slip: ({ supply }) => {
          const entry = supply.bonding.find(({ id }) => id === bond.id);
          if (entry !== undefined)
            entry.resistance = { shown: `${(0.00183 * bond.metres + size).toFixed(2)} Ω`, with: "mft" };
        },
        at: ["supply"],
        size,
      };
    },
  },
  {
    id: "insulation-circuit",
    says: "insulation of one circuit below 1 MΩ",
    unit: "MΩ",
    named: /damp|touch|equipment/,
    plant(house, draws) {
      const circuit = oneOf(house, draws, () => true);
      if (circuit === null) return null;
      const size = draws.acrossDecades("size", 0.005, 0.97);
      const changed = withCircuit(house, circuit.id, (one) => ({
        ...one,
        insulation: { ...one.insulation, earth: size },
      }));
      return { house: changed, at: [circuit.id, circuit.board], size };
    },
  },
  {
    id: "insulation-board",
    says: "insulation of a whole board low through something on no list",
    unit: "MΩ",
    named: /.*/,
    plant(house, draws) {
      const size = draws.acrossDecades("size", 0.01, 0.9);
      const boards = house.boards.map((board) => (board.id === "main" ? { ...board, besides: size } : board));
      const circuits = house.circuits.filter(({ board }) => board === "main");
      const all = 1 / circuits.reduce((sum, { insulation }) => sum + 1 / insulation.earth, 1 / size);
      const slip = (file: Written) => {
        const main = file.boards.find(({ id }) => id === "main");
        if (main !== undefined) main.readings.insulationLiveEarth = { shown: `${all.toFixed(2)} MΩ`, with: "mft" };
      };
      return { house: { ...house, boards }, slip, at: ["main"], size };
    },
  },
  {
    id: "neutral-borrowed",
    says: "two lighting circuits share a neutral, both tested against the others",
    named: /neutral|borrowed|shared/,
    plant(house) {
      const lights = house.circuits.filter(({ load, board }) => load === "lighting" && board === "main");
      const [one, two] = lights;
      if (one === undefined || two === undefined) return null;
      const slip = (file: Written) => {
        for (const { id } of [one, two]) betweenNeutrals(file, id, 0);
      };
      return { slip, at: [one.id, two.id, "main"] };
    },
  },
  {
    id: "neutral-of-another",
    says: "neutral of one circuit touches that of another",
    unit: "MΩ",
    named: /damp-between|borrowed-neutral/,
    plant(house, draws) {
      const circuit = oneOf(house, draws, isRadial);
      if (circuit === null) return null;
      const size = draws.acrossDecades("size", 0.001, 0.9);
      return { slip: (file) => betweenNeutrals(file, circuit.id, size), at: [circuit.id, circuit.board], size };
    },
  },
  {
    id: "polarity-seen",
    says: "polarity of a circuit written as incorrect",
    named: /polarity/,
    plant(house, draws) {
      const circuit = oneOf(house, draws, () => true);
      return (
        circuit && { house: withCircuit(house, circuit.id, (one) => ({ ...one, polarity: false })), at: [circuit.id] }
      );
    },
  },
];
