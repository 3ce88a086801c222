import type { Draws } from "../draws.ts";
import { between } from "../house/draw-circuit.ts";
import { type Circuit, type Conductor, type House, type Part, place } from "../house/house.ts";

/** One of the circuits that fit; null where none does. */
export function oneOf(house: House, draws: Draws, fits: (circuit: Circuit) => boolean): Circuit | null {
  const found = house.circuits.filter(fits);
  return found.length === 0 ? null : draws.one("circuit", found);
}

export const isRing = ({ shape }: Circuit) => shape === "ring";
export const isRadial = ({ shape }: Circuit) => shape === "radial";

/** Whether the protective conductor is a core whose size is written down. */
export const hasCore = ({ cable }: Circuit) => cable.arrangement === "in-cable" || cable.arrangement === "separate";

/** The house with every leg of a conductor of a circuit changed; null takes it out. */
export function withLegs(
  house: House,
  circuit: Circuit,
  conductor: Conductor,
  change: (ohms: number, leg: number) => number | null,
): House {
  const count = circuit.shape === "ring" ? circuit.points.length + 1 : circuit.points.length;
  const legs = Array.from({ length: count }, (_, leg) => between(circuit, conductor, leg));
  const parts = house.parts.flatMap((part): readonly Part[] => {
    // A leg that passes over a spur begins elsewhere; its end tells which it is.
    const leg = part.of === circuit.id && part.warms ? legs.findIndex(({ b }) => b === part.b) : -1;
    if (leg < 0) return [part];
    const ohms = change(part.ohms, leg);
    return ohms === null ? [] : [{ ...part, ohms }];
  });
  return { ...house, parts };
}

export function withLeg(
  house: House,
  circuit: Circuit,
  conductor: Conductor,
  at: number,
  change: (ohms: number) => number | null,
): House {
  return withLegs(house, circuit, conductor, (ohms, leg) => (leg === at ? change(ohms) : ohms));
}

/** The house with something else said of a circuit, its conductors as they were. */
export function withCircuit(house: House, id: string, change: (circuit: Circuit) => Circuit): House {
  return { ...house, circuits: house.circuits.map((circuit) => (circuit.id === id ? change(circuit) : circuit)) };
}

/** The house with something in series between two places. */
export function withOhms(house: House, a: string, b: string, more: number): House {
  return {
    ...house,
    parts: house.parts.map((part) => (part.a === a && part.b === b ? { ...part, ohms: part.ohms + more } : part)),
  };
}

export function without(house: House, a: string, b: string): House {
  return { ...house, parts: house.parts.filter((part) => part.a !== a || part.b !== b) };
}

/** Another way from the protective conductor at the last point of a circuit to the main terminal. */
export function withPath(house: House, { id, points }: Circuit, ohms: number): House {
  const part: Part = { a: place.at(id, "E", points.length - 1), b: place.mainEarth, ohms, of: id, warms: false };
  return { ...house, parts: [...house.parts, part] };
}

/** Everything of a board: it and its circuits. */
function ofBoard({ circuits }: House, board: string): readonly string[] {
  return [board, ...circuits.filter((circuit) => circuit.board === board).map(({ id }) => id)];
}

/** The origin and everything behind it. */
export function everywhere({ boards, circuits }: House): readonly string[] {
  return ["supply", ...boards.map(({ id }) => id), ...circuits.map(({ id }) => id)];
}

/** What is fed through a circuit, itself included. */
export function through(house: House, { id }: Circuit): readonly string[] {
  const fed = house.boards.filter(({ fedFrom }) => fedFrom !== "supply" && fedFrom.circuit === id);
  return [id, ...fed.flatMap((board) => ofBoard(house, board.id))];
}
