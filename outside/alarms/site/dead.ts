import { type Circuit, type Conductor, type House, type Part, place } from "../house/house.ts";
import { type Piece, resistanceBetween } from "../network.ts";
import { live, type Temperatures, warmed } from "./loop.ts";

/** The circuit alone: its ends off the board. */
function apart(house: House, { id, board }: Circuit, celsius: Temperatures): readonly Part[] {
  const bars = ["L", "N", "E"].map((conductor) => place.bar(board, conductor as Conductor));
  return warmed(
    house.parts.filter(({ of, a, b }) => of === id && !bars.includes(a) && !bars.includes(b)),
    celsius,
  );
}

const link = (a: string, b: string): Piece => ({ a, b, ohms: 0 });

/** End to end of one conductor of a ring, Ω. */
export function endToEnd(house: House, circuit: Circuit, conductor: Conductor, celsius: Temperatures): number {
  const { id } = circuit;
  return resistanceBetween(
    apart(house, circuit, celsius),
    place.end(id, conductor, "out"),
    place.end(id, conductor, "back"),
  );
}

/** Between two conductors at a point of a ring whose opposite ends are joined, Ω. */
export function crossConnected(
  house: House,
  circuit: Circuit,
  other: "N" | "E",
  point: number,
  celsius: Temperatures,
): number {
  const { id } = circuit;
  const joined = [
    link(place.end(id, "L", "out"), place.end(id, other, "back")),
    link(place.end(id, "L", "back"), place.end(id, other, "out")),
  ];
  return resistanceBetween(
    [...apart(house, circuit, celsius), ...joined],
    place.at(id, "L", point),
    place.at(id, other, point),
  );
}

/** The protective conductors of the whole installation as they hang together with its supply switched off. */
function earthed(house: House, circuit: Circuit): readonly Part[] {
  const dead = (end: string) => /bar\.[LN]$|^origin/.test(end);
  return live(house, circuit.board, circuit.id).filter(({ a, b }) => !dead(a) && !dead(b));
}

/**
 * Line and protective conductor joined at the board and read between them at a point, Ω; the protective conductor in its
 * bar, where other ways to it count, or out of it.
 */
export function lineAndCpc(
  house: House,
  circuit: Circuit,
  point: number,
  inBar: boolean,
  celsius: Temperatures,
): number {
  const { id, board } = circuit;
  const parts = inBar ? warmed(earthed(house, circuit), celsius) : apart(house, circuit, celsius);
  const at = inBar ? place.bar(board, "E") : place.end(id, "E", "out");
  return resistanceBetween(
    [...parts, link(place.end(id, "L", "out"), at)],
    place.at(id, "L", point),
    place.at(id, "E", point),
  );
}

/** The protective conductor from the board to a point by a long lead, Ω. */
export function cpcAlone(house: House, circuit: Circuit, point: number, inBar: boolean, celsius: Temperatures): number {
  const { id, board } = circuit;
  const parts = inBar ? warmed(earthed(house, circuit), celsius) : apart(house, circuit, celsius);
  return resistanceBetween(parts, inBar ? place.bar(board, "E") : place.end(id, "E", "out"), place.at(id, "E", point));
}
