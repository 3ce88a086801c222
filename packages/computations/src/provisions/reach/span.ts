import { type Bounds, boundsOf } from "./bounds.ts";
import type { Piece } from "./plane.ts";
import type { Shape } from "./scene.ts";

/** A part as it is measured: its shape in plan, and its lowest and highest place. */
export interface Span {
  readonly plan: Piece;
  readonly bounds: Bounds;
  readonly low: number;
  readonly high: number;
  /** Whether the height changes along it; then the heights of the ends of `plan` are these. */
  readonly slope: readonly [number, number] | undefined;
}

/** The span of a shape. Everything but a sloping line is upright: each place in plan has all its heights. */
export function spanOf(shape: Shape): Span {
  switch (shape.kind) {
    case "point":
      return spanned([[shape.at[0], shape.at[1]]], shape.at[2], shape.at[2]);
    case "box":
      return boxSpan(shape);
    case "segment": {
      const { from, to } = shape;
      const [low, high] = [Math.min(from[2], to[2]), Math.max(from[2], to[2])];
      if (from[0] === to[0] && from[1] === to[1]) return spanned([[from[0], from[1]]], low, high);
      const plan: Piece = [
        [from[0], from[1]],
        [to[0], to[1]],
      ];
      return spanned(plan, low, high, low === high ? undefined : [from[2], to[2]]);
    }
  }
}

function spanned(plan: Piece, low: number, high: number, slope?: Span["slope"]): Span {
  return { plan, bounds: boundsOf(plan), low, high, slope };
}

function boxSpan({ low, high }: Extract<Shape, { kind: "box" }>): Span {
  const [x, y] = [low[0] < high[0], low[1] < high[1]];
  const corner = ([a, b]: readonly number[]) => [a as number, b as number] as const;
  const plan: Piece =
    x && y
      ? [corner(low), [high[0], low[1]], corner(high), [low[0], high[1]]]
      : x || y
        ? [corner(low), corner(high)]
        : [corner(low)];
  return spanned(plan, low[2], high[2]);
}
