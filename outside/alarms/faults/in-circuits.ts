import { type Circuit, type Conductor, type House, permittedPerMetre } from "../house/house.ts";
import { hasCore, isRadial, oneOf, through, withLeg, withLegs, withPath } from "./edit.ts";
import type { Fault, Planted } from "./fault.ts";

const SIZES = [1, 1.5, 2.5, 4, 6, 10, 16];

/** A loose joint may be anything from what nobody can see to what smoulders, Ω. */
export const JOINT = [0.03, 3] as const;

function oneLess(size: number): number | undefined {
  return SIZES[SIZES.indexOf(size) - 1];
}

const notRing = ({ shape }: Circuit) => shape !== "ring";

function jointIn(conductor: Conductor, id: string, says: string, named: RegExp, hidden?: true): Fault {
  return {
    id,
    says,
    unit: "Ω",
    ...(hidden === undefined ? {} : { hidden }),
    named,
    plant(house, draws) {
      const circuit = oneOf(house, draws, notRing);
      if (circuit === null) return null;
      const size = draws.acrossDecades("size", ...JOINT);
      const leg = draws.whole("leg", 0, circuit.points.length - 1);
      return {
        house: withLeg(house, circuit, conductor, leg, (ohms) => ohms + size),
        at: through(house, circuit),
        size,
      };
    },
  };
}

/** Conductors one size smaller than written. */
function smaller(house: House, circuit: Circuit | null, conductors: readonly Conductor[]): Planted | null {
  if (circuit === null) return null;
  const { cable } = circuit;
  const size = conductors.includes("E") ? cable.cpc : cable.line;
  const less = oneLess(size);
  if (less === undefined) return null;
  const factor = permittedPerMetre(less) / permittedPerMetre(size);
  const changed = conductors.reduce((left, one) => withLegs(left, circuit, one, (ohms) => ohms * factor), house);
  return { house: changed, at: through(house, circuit) };
}

/** Faults of conductors anywhere but in a ring. */
export const IN_CIRCUITS: readonly Fault[] = [
  {
    id: "aluminium",
    says: "aluminium taken for copper",
    named: /material|aluminium/,
    plant(house, draws) {
      const circuit = oneOf(house, draws, (one) => notRing(one) && hasCore(one));
      if (circuit === null) return null;
      const changed = (["L", "N", "E"] as const).reduce(
        (left, one) => withLegs(left, circuit, one, (ohms) => ohms * 1.64),
        house,
      );
      return { house: changed, at: through(house, circuit) };
    },
  },
  {
    id: "cpc-size",
    says: "protective conductor one size smaller than written, radial or ring",
    named: /protective-conductor-size|cpc-of/,
    plant: (house, draws) =>
      smaller(
        house,
        oneOf(house, draws, (one) => hasCore(one) && one.cable.cpc > 1),
        ["E"],
      ),
  },
  {
    id: "line-size",
    says: "line and neutral one size smaller than written, radial or ring",
    named: /(line|live)[a-z-]*size|(^|-)line-of-[0-9]/,
    plant: (house, draws) =>
      smaller(
        house,
        oneOf(house, draws, (one) => hasCore(one) && one.cable.line > 1),
        ["L", "N"],
      ),
  },
  jointIn("L", "radial-joint-line", "loose joint in the line of a radial or a feeder", /joint/),
  jointIn("E", "radial-joint-cpc", "loose joint in the protective conductor of a radial or a feeder", /joint/),
  jointIn("N", "radial-joint-neutral", "loose joint in the neutral of a radial", /joint/, true),
  {
    id: "cpc-absent",
    says: "protective conductor open at the board, nothing else earths the circuit",
    named: /open|absent|missing/,
    plant(house, draws) {
      const paths = (id: string) => house.parts.some(({ of, b }) => of === id && b === "main-earth");
      const circuit = oneOf(house, draws, (one) => isRadial(one) && !paths(one.id));
      if (circuit === null) return null;
      return { house: withLeg(house, circuit, "E", 0, () => null), at: through(house, circuit) };
    },
  },
  {
    id: "cpc-open-earthed",
    says: "protective conductor open, the circuit earthed by pipes",
    unit: "Ω",
    named: /open|absent|missing/,
    plant(house, draws) {
      const circuit = oneOf(house, draws, isRadial);
      if (circuit === null) return null;
      const size = draws.acrossDecades("size", 0.05, 5);
      const open = withLeg(house, circuit, "E", draws.whole("leg", 0, circuit.points.length - 1), () => null);
      return { house: withPath(open, circuit, size), at: through(house, circuit), size };
    },
  },
  {
    id: "parallel-path",
    says: "metal pipes beside the protective conductor",
    unit: "Ω",
    innocent: true,
    named: /parallel|other-earth/,
    plant(house, draws) {
      const circuit = oneOf(house, draws, isRadial);
      if (circuit === null) return null;
      const size = draws.acrossDecades("size", 0.02, 3);
      return { house: withPath(house, circuit, size), at: through(house, circuit), size };
    },
  },
];
