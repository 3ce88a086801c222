import type { Piece } from "./plane.ts";
import type { Shape } from "./scene.ts";

/** A part as it is measured: its shape in plan, and its lowest and highest place. */
export interface Span {
  readonly plan: Piece;
  readonly low: number;
  readonly high: number;
  /** Whether the height changes along it; then the heights of the ends of `plan` are these. */
  readonly slope: readonly [number, number] | undefined;
}

/** The span of a shape. Everything but a sloping line is upright: each place in plan has all its heights. */
export function spanOf(shape: Shape): Span {
  switch (shape.kind) {
    case "point":
      return { plan: [[shape.at[0], shape.at[1]]], low: shape.at[2], high: shape.at[2], slope: undefined };
    case "box":
      return boxSpan(shape);
    case "segment": {
      const { from, to } = shape;
      const [low, high] = [Math.min(from[2], to[2]), Math.max(from[2], to[2])];
      if (from[0] === to[0] && from[1] === to[1]) return { plan: [[from[0], from[1]]], low, high, slope: undefined };
      const plan: Piece = [
        [from[0], from[1]],
        [to[0], to[1]],
      ];
      return { plan, low, high, slope: low === high ? undefined : [from[2], to[2]] };
    }
  }
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
  return { plan, low: low[2], high: high[2], slope: undefined };
}
