import type { Draws } from "../draws.ts";
import { withSpur } from "../house/draw-circuit.ts";
import { type Circuit, type Conductor, type House, type Part, permittedPerMetre, place } from "../house/house.ts";
import { isRing, oneOf, withLeg } from "./edit.ts";
import type { Fault } from "./fault.ts";
import { JOINT } from "./in-circuits.ts";

const SAYS = { L: "line", N: "neutral", E: "protective conductor" } as const;
const NAME = { L: "line", N: "neutral", E: "cpc" } as const;

const anyLeg = ({ points }: Circuit, draws: Draws) => draws.whole("leg", 0, points.length);

function joint(conductor: Conductor): Fault {
  return {
    id: `ring-joint-${NAME[conductor]}`,
    says: `loose joint in the ${SAYS[conductor]} of a ring`,
    unit: "Ω",
    named: new RegExp(`joint-in-${NAME[conductor]}|poor-${NAME[conductor]}`),
    plant(house, draws) {
      const ring = oneOf(house, draws, isRing);
      if (ring === null) return null;
      const size = draws.acrossDecades("size", ...JOINT);
      return {
        house: withLeg(house, ring, conductor, anyLeg(ring, draws), (ohms) => ohms + size),
        at: [ring.id],
        size,
      };
    },
  };
}

function open(conductor: Conductor): Fault {
  return {
    id: `ring-open-${NAME[conductor]}`,
    says: `${SAYS[conductor]} of a ring open`,
    named: new RegExp(`(^|-)${NAME[conductor]}(-[a-z]+)*-open|${NAME[conductor]}-open`),
    plant(house, draws) {
      const ring = oneOf(house, draws, isRing);
      return ring === null
        ? null
        : { house: withLeg(house, ring, conductor, anyLeg(ring, draws), () => null), at: [ring.id] };
    },
  };
}

/** A cable between two points of a ring that are not neighbours. */
function bridged(house: House, ring: Circuit, draws: Draws): House {
  const from = draws.whole("from", 0, ring.points.length - 3);
  const to = draws.whole("to", from + 2, ring.points.length - 1);
  const metres = draws.between("bridge", 2, 15);
  const parts = (["L", "N", "E"] as const).map((conductor): Part => {
    const size = conductor === "E" ? ring.cable.cpc : ring.cable.line;
    const ohms = permittedPerMetre(size) * metres * 0.98;
    return {
      a: place.at(ring.id, conductor, from),
      b: place.at(ring.id, conductor, to),
      ohms,
      of: ring.id,
      warms: true,
    };
  });
  return { ...house, parts: [...house.parts, ...parts] };
}

/** Line and neutral at each other's terminals of a point. */
function swappedAt(house: House, { id }: Circuit, point: number): House {
  const [line, neutral] = [place.at(id, "L", point), place.at(id, "N", point)];
  const other = (at: string) => (at === line ? neutral : at === neutral ? line : at);
  return { ...house, parts: house.parts.map((part) => ({ ...part, a: other(part.a), b: other(part.b) })) };
}

/** The returning ends of two rings changed at the board. */
function endsChanged(house: House, one: Circuit, two: Circuit): House {
  const names = new Map<string, string>();
  for (const conductor of ["L", "N", "E"] as const) {
    const [a, b] = [place.end(one.id, conductor, "back"), place.end(two.id, conductor, "back")];
    names.set(a, b);
    names.set(b, a);
  }
  const parts = house.parts.map((part) => (part.warms ? { ...part, b: names.get(part.b) ?? part.b } : part));
  return { ...house, parts };
}

/** Faults of rings. */
export const IN_RINGS: readonly Fault[] = [
  ...(["L", "N", "E"] as const).map(joint),
  ...(["L", "N", "E"] as const).map(open),
  {
    id: "ring-bridged",
    says: "ring bridged by a cable between two of its points",
    named: /bridged/,
    plant(house, draws) {
      const ring = oneOf(house, draws, (one) => isRing(one) && one.points.length > 3);
      return ring === null ? null : { house: bridged(house, ring, draws), at: [ring.id] };
    },
  },
  {
    id: "spur-on-spur",
    says: "two sockets on one spur of a ring",
    named: /spur/,
    plant(house, draws) {
      const ring = oneOf(house, draws, (one) => isRing(one) && one.points.length > 5);
      if (ring === null) return null;
      const first = draws.whole("first", 1, ring.points.length - 3);
      return { house: { ...house, parts: withSpur(house.parts, ring, first, 2) }, at: [ring.id] };
    },
  },
  {
    id: "rings-crossed",
    says: "returning ends of two rings changed at the board",
    named: /crossed-rings/,
    plant(house, draws) {
      const one = oneOf(house, draws, isRing);
      const two =
        one && oneOf(house, draws, (other) => isRing(other) && other.board === one.board && other.id !== one.id);
      return one === null || two === null ? null : { house: endsChanged(house, one, two), at: [one.id, two.id] };
    },
  },
  {
    id: "ring-cpc-absent",
    says: "protective conductor of a ring off at both ends",
    named: /cpc.*open|open|absent/,
    plant(house, draws) {
      const ring = oneOf(house, draws, isRing);
      if (ring === null) return null;
      const off = withLeg(house, ring, "E", 0, () => null);
      return { house: withLeg(off, ring, "E", ring.points.length, () => null), at: [ring.id] };
    },
  },
  {
    id: "polarity-unseen",
    says: "line and neutral reversed at a point of a ring, polarity written as correct",
    named: /line-neutral-swapped|polarity|swapped/,
    plant(house, draws) {
      const ring = oneOf(house, draws, isRing);
      if (ring === null) return null;
      return { house: swappedAt(house, ring, draws.whole("point", 0, ring.points.length - 1)), at: [ring.id] };
    },
  },
  {
    id: "ring-two-joints",
    says: "two faults in one ring: a joint in the line and another in the protective conductor",
    unit: "Ω",
    named: /(?=.*joint-in-line|.*poor-line)(?=.*joint-in-cpc|.*poor-cpc)/,
    plant(house, draws) {
      const ring = oneOf(house, draws, isRing);
      if (ring === null) return null;
      const size = draws.acrossDecades("size", 0.1, 3);
      const line = withLeg(house, ring, "L", anyLeg(ring, draws.of("line")), (ohms) => ohms + size);
      return {
        house: withLeg(line, ring, "E", anyLeg(ring, draws.of("cpc")), (ohms) => ohms + size),
        at: [ring.id],
        size,
      };
    },
  },
  {
    id: "ring-open-and-joint",
    says: "two faults in one ring: the neutral open and a joint in the protective conductor",
    unit: "Ω",
    named: /(?=.*neutral-open)(?=.*joint-in-cpc|.*poor-cpc)/,
    plant(house, draws) {
      const ring = oneOf(house, draws, isRing);
      if (ring === null) return null;
      const size = draws.acrossDecades("size", 0.1, 3);
      const neutral = withLeg(house, ring, "N", anyLeg(ring, draws.of("neutral")), () => null);
      return {
        house: withLeg(neutral, ring, "E", anyLeg(ring, draws.of("cpc")), (ohms) => ohms + size),
        at: [ring.id],
        size,
      };
    },
  },
];
