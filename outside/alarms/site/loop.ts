import { returned } from "../house/draw-circuit.ts";
import {
  atTemperature,
  type Board,
  type Circuit,
  type Conductor,
  type House,
  type Part,
  place,
} from "../house/house.ts";
import { resistanceBetween } from "../network.ts";

/** °C of what a part belongs to. */
export type Temperatures = (of: string) => number;

/** Parts at a temperature each. */
export function warmed(parts: readonly Part[], celsius: Temperatures): readonly Part[] {
  return parts.map((part) => (part.warms ? { ...part, ohms: part.ohms * atTemperature(celsius(part.of)) } : part));
}

function boardOf({ boards }: Pick<House, "boards">, id: string): Board {
  const found = boards.find((board) => board.id === id);
  if (found === undefined) throw new Error(`there is no board ${id}`);
  return found;
}

/** Circuits that feed a board, from it back to the origin. */
function feedersOf(house: Pick<House, "boards">, board: string): readonly string[] {
  const { fedFrom } = boardOf(house, board);
  return fedFrom === "supply" ? [] : [fedFrom.circuit, ...feedersOf(house, fedFrom.board)];
}

/** The parts that bear on what is measured at a board, and on a circuit of it. */
export function live(house: House, board: string, circuit?: string): readonly Part[] {
  const ids = [...feedersOf(house, board), ...(circuit === undefined ? [] : [circuit])];
  const wanted = new Set(["supply", ...ids, ...ids.map(returned)]);
  return house.parts.filter(({ of }) => wanted.has(of));
}

/** Loop between line and another conductor at a point of a circuit, Ω, seen from there with the source at both. */
export function loopAtPoint(
  house: House,
  circuit: Circuit,
  point: number,
  to: "N" | "E",
  celsius: Temperatures,
): number {
  const parts = warmed(live(house, circuit.board, circuit.id), celsius);
  return resistanceBetween(parts, place.at(circuit.id, "L", point), place.at(circuit.id, to, point));
}

/** The greatest loop among the points of a circuit, Ω. */
export function greatestLoop(house: House, circuit: Circuit, celsius: Temperatures): number {
  return Math.max(...circuit.points.map((_, point) => loopAtPoint(house, circuit, point, "E", celsius)));
}

export function loopAtBoard(house: House, board: string, to: Exclude<Conductor, "L">, celsius: Temperatures): number {
  return resistanceBetween(warmed(live(house, board), celsius), place.bar(board, "L"), place.bar(board, to));
}

/** At the origin, with the earthing conductor off where it is the earth that is measured. */
export function loopAtOrigin(house: House, to: "N" | "E", celsius: Temperatures): number {
  const parts = warmed(live(house, "main"), celsius).filter(({ a, b }) => ![a, b].includes(place.mainEarth));
  return resistanceBetween(parts, place.origin("L"), to === "N" ? place.origin("N") : place.earthTerminal);
}
