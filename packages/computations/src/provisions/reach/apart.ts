import type { Place, Shape } from "./scene.ts";

/** Distance between two shapes, m; 0 where they touch. */
export function apart(one: Shape, other: Shape): number {
  const [a, b] = [extentOf(one), extentOf(other)];
  if (a.kind === "box" && b.kind === "box") return boxToBox(a, b);
  if (a.kind === "box" && b.kind === "line") return lineToBox(b, a);
  if (a.kind === "line" && b.kind === "box") return lineToBox(a, b);
  if (a.kind === "line" && b.kind === "line") return lineToLine(a, b);
  throw new RangeError("two shapes are lines or boxes");
}

interface Box {
  readonly kind: "box";
  readonly low: Place;
  readonly high: Place;
}
interface Straight {
  readonly kind: "line";
  readonly from: Place;
  readonly to: Place;
}

function extentOf(shape: Shape): Box | Straight {
  if (shape.kind === "segment") return { kind: "line", from: shape.from, to: shape.to };
  return shape.kind === "point" ? { kind: "box", low: shape.at, high: shape.at } : shape;
}

const AXES = [0, 1, 2] as const;

function boxToBox(a: Box, b: Box): number {
  return root(AXES.map((axis) => Math.max(0, a.low[axis] - b.high[axis], b.low[axis] - a.high[axis])));
}

/** The distance from a box is a convex function along a straight line; its least is found by narrowing down. */
function lineToBox({ from, to }: Straight, box: Box): number {
  const at = (part: number) => {
    const place = AXES.map((axis) => from[axis] + (to[axis] - from[axis]) * part) as unknown as Place;
    return boxToBox({ kind: "box", low: place, high: place }, box);
  };
  let [low, high] = [0, 1];
  for (let i = 0; i < 80; i++) {
    const third = (high - low) / 3;
    if (at(low + third) <= at(high - third)) high -= third;
    else low += third;
  }
  return Math.min(at(0), at((low + high) / 2), at(1));
}

/** The nearest places of two lines lie at an end of one of them, or where both are square to the shortest way. */
function lineToLine(one: Straight, other: Straight): number {
  const ends = [
    lineToBox(one, { kind: "box", low: other.from, high: other.from }),
    lineToBox(one, { kind: "box", low: other.to, high: other.to }),
    lineToBox(other, { kind: "box", low: one.from, high: one.from }),
    lineToBox(other, { kind: "box", low: one.to, high: one.to }),
  ];
  const [u, v, w] = [minus(one.to, one.from), minus(other.to, other.from), minus(one.from, other.from)];
  const [uu, uv, vv, uw, vw] = [dot(u, u), dot(u, v), dot(v, v), dot(u, w), dot(v, w)];
  const determinant = uu * vv - uv * uv;
  if (determinant > 1e-12 * uu * vv) {
    const [s, t] = [(uv * vw - vv * uw) / determinant, (uu * vw - uv * uw) / determinant];
    if (s >= 0 && s <= 1 && t >= 0 && t <= 1) ends.push(root(AXES.map((axis) => w[axis] + u[axis] * s - v[axis] * t)));
  }
  return Math.min(...ends);
}

function minus(a: Place, b: Place): Place {
  return [a[0] - b[0], a[1] - b[1], a[2] - b[2]];
}
function dot(a: Place, b: Place): number {
  return a[0] * b[0] + a[1] * b[1] + a[2] * b[2];
}
function root(parts: readonly number[]): number {
  return Math.sqrt(parts.reduce((sum, part) => sum + part * part, 0));
}
