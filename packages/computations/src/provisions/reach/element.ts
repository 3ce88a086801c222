import { along, type Line, lengthOf, type Piece, pieceToPiece, sidesOf, toLine, toPiece, turn } from "./plane.ts";
import type { Spot } from "./scene.ts";
import type { Standing, Volume } from "./volume.ts";

/**
 * A convex part of the volume: upright, with a convex shape in plan between two heights. `outside` is how far outside
 * that shape a spot lies in plan, m, negative inside; `outsideOf` is the same for the nearest spot of a convex piece.
 */
export interface Element {
  readonly zone: "above" | "below";
  /** Which of the distances of reach bounds it in plan. */
  readonly limit: "sideways" | "below";
  readonly low: number;
  readonly high: number;
  readonly outside: (spot: Spot) => number;
  readonly outsideOf: (piece: Piece) => number;
}

/** The convex parts of one standing surface. The first ones are those above it. */
export function elementsOf({ reach }: Volume, { pieces, edges, height, solid }: Standing): readonly Element[] {
  const [top, bottom] = [height + reach.upward, height - reach.below];
  const above = pieces.map((piece) => aroundPiece("above", piece, reach.sideways, height, top));
  if (!solid) return [...above, ...pieces.map((piece) => aroundPiece("below", piece, reach.sideways, bottom, height))];
  return [
    ...above,
    ...edges.flatMap(({ line, beyond }) => [
      beyondEdge(line, beyond, bottom, height),
      underEdge(line, reach.below, bottom, height),
    ]),
  ];
}

function aroundPiece(zone: Element["zone"], piece: Piece, reach: number, low: number, high: number): Element {
  return {
    zone,
    limit: "sideways",
    low,
    high,
    outside: (spot) => toPiece(piece, spot) - reach,
    outsideOf: (other) => pieceToPiece(piece, other) - reach,
  };
}

/** Below the surface, on the far side of its edge: the half of a stadium round the edge. */
function beyondEdge(edge: Line, reach: number, low: number, high: number): Element {
  const size = lengthOf(edge[0], edge[1]);
  const under = (spot: Spot) => turn(edge[0], edge[1], spot) / size;
  return {
    zone: "below",
    limit: "sideways",
    low,
    high,
    outside: (spot) => Math.max(toLine(edge, spot) - reach, under(spot)),
    outsideOf: (piece) => {
      const beyond = beyondOf(piece, under);
      const nearest = pieceToPiece(piece, edge) - reach;
      if (beyond.length === 0) return Math.max(nearest, Math.min(...piece.map(under)));
      const direct = pieceToPiece(beyond, edge) - reach;
      return direct <= 0 ? direct : Math.min(direct, Math.max(nearest, 0));
    },
  };
}

function underEdge(edge: Line, reach: number, low: number, high: number): Element {
  return {
    zone: "below",
    limit: "below",
    low,
    high,
    outside: (spot) => toLine(edge, spot) - reach,
    outsideOf: (piece) => pieceToPiece(piece, edge) - reach,
  };
}

/** What of a convex piece lies on the far side of an edge. */
function beyondOf(piece: Piece, under: (spot: Spot) => number): Piece {
  const kept: Spot[] = [];
  for (const side of sidesOf(piece)) {
    const [start, end] = [under(side[0]), under(side[1])];
    if (start <= 0) kept.push(side[0]);
    if ((start < 0 && end > 0) || (start > 0 && end < 0)) kept.push(along(side, start / (start - end)));
  }
  return kept;
}
