/** A piece of conductor, a joint or a connection between two places. Ω; 0 joins them. */
export interface Piece {
  readonly a: string;
  readonly b: string;
  readonly ohms: number;
}

/**
 * The resistance between two places of a network, Ω; infinite where nothing connects them. Places between are taken out one
 * by one, each replaced by the conductances that it gave between its neighbours (star to mesh), until the two are left.
 */
export function resistanceBetween(pieces: readonly Piece[], from: string, to: string): number {
  const names = joined(pieces);
  const [a, b] = [names(from), names(to)];
  if (a === b) return 0;
  const net = conductances(pieces, names);
  const inner = new Set([...net.keys()].filter((place) => place !== a && place !== b));
  takeOutSimple(net, inner);
  while (inner.size > 0) takeOut(net, fewestNeighbours(net, inner), inner);
  const left = net.get(a)?.get(b);
  return left === undefined ? Number.POSITIVE_INFINITY : 1 / left;
}

type Net = Map<string, Map<string, number>>;

/** The name of what is joined to a place without resistance. */
function joined(pieces: readonly Piece[]): (place: string) => string {
  const parent = new Map<string, string>();
  const root = (place: string): string => {
    const above = parent.get(place);
    return above === undefined ? place : root(above);
  };
  for (const { a, b, ohms } of pieces) {
    const [one, other] = [root(a), root(b)];
    if (ohms === 0 && one !== other) parent.set(one, other);
  }
  return root;
}

function conductances(pieces: readonly Piece[], names: (place: string) => string): Net {
  const net: Net = new Map();
  for (const { a, b, ohms } of pieces) {
    if (ohms > 0 && Number.isFinite(ohms)) connect(net, names(a), names(b), 1 / ohms);
  }
  return net;
}

function connect(net: Net, a: string, b: string, conductance: number): void {
  if (a === b) return;
  for (const [here, there] of [
    [a, b],
    [b, a],
  ] as const) {
    const neighbours = net.get(here) ?? new Map<string, number>();
    neighbours.set(there, (neighbours.get(there) ?? 0) + conductance);
    net.set(here, neighbours);
  }
}

/** Dead ends and places on the way between two others, which make up most of an installation. */
function takeOutSimple(net: Net, inner: Set<string>): void {
  const waiting = [...inner];
  for (let place = waiting.pop(); place !== undefined; place = waiting.pop()) {
    const neighbours = net.get(place);
    if (!inner.has(place) || neighbours === undefined || neighbours.size > 2) continue;
    waiting.push(...neighbours.keys());
    takeOut(net, place, inner);
  }
}

function fewestNeighbours(net: Net, inner: ReadonlySet<string>): string {
  let found = "";
  let fewest = Number.POSITIVE_INFINITY;
  for (const place of inner) {
    const count = net.get(place)?.size ?? 0;
    if (count >= fewest) continue;
    [found, fewest] = [place, count];
    if (count < 2) break;
  }
  return found;
}

function takeOut(net: Net, place: string, inner: Set<string>): void {
  const neighbours = [...(net.get(place) ?? [])];
  const total = neighbours.reduce((sum, [, conductance]) => sum + conductance, 0);
  for (const [neighbour] of neighbours) net.get(neighbour)?.delete(place);
  neighbours.forEach(([one, g], i) => {
    for (const [other, h] of neighbours.slice(i + 1)) connect(net, one, other, (g * h) / total);
  });
  net.delete(place);
  inner.delete(place);
}
