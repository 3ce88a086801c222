import type { Spot } from "./scene.ts";

/** Least x and y, greatest x and y. */
export type Bounds = readonly [number, number, number, number];

export function boundsOf(spots: readonly Spot[]): Bounds {
  const bounds: [number, number, number, number] = [Infinity, Infinity, -Infinity, -Infinity];
  for (const [x, y] of spots) {
    bounds[0] = Math.min(bounds[0], x);
    bounds[1] = Math.min(bounds[1], y);
    bounds[2] = Math.max(bounds[2], x);
    bounds[3] = Math.max(bounds[3], y);
  }
  return bounds;
}

/** Whether a line comes within a distance of bounds, each way along the axes: enough to look closer. */
export function isNear(bounds: Bounds, from: Spot, to: Spot, near: number): boolean {
  return (
    Math.max(from[0], to[0]) >= bounds[0] - near &&
    Math.min(from[0], to[0]) <= bounds[2] + near &&
    Math.max(from[1], to[1]) >= bounds[1] - near &&
    Math.min(from[1], to[1]) <= bounds[3] + near
  );
}
