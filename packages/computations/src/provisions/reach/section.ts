import { leastOutside, reachableFrom } from "./clearance.ts";
import type { ReachScene, Spot } from "./scene.ts";
import { spanOf } from "./span.ts";
import { volumeOf } from "./volume.ts";

/** A cut through a scene: level at a height, or upright along a line in plan, between two heights. */
export type Cut =
  | { readonly kind: "plan"; readonly height: number; readonly low: Spot; readonly high: Spot }
  | { readonly kind: "elevation"; readonly from: Spot; readonly to: Spot; readonly low: number; readonly high: number };

/**
 * The outline of the reach volume in a cut, as short lines in the cut's own coordinates, m: x and y in plan, distance
 * along the line and height in elevation. Made on a grid of the given step and straight between its points; accurate to
 * a tenth of the step away from corners. Nothing where the grid would have more than 40,000 points.
 */
export function reachOutline(scene: ReachScene, cut: Cut, step = 0.05): readonly (readonly [Spot, Spot])[] {
  const [[left, bottom], [right, top]] = frameOf(cut);
  const [columns, rows] = [Math.ceil((right - left) / step) + 1, Math.ceil((top - bottom) / step) + 1];
  if (!(columns * rows <= 40_000)) return [];
  const volume = volumeOf(scene, scene.objects ?? 0);
  const reachable = reachableFrom(volume);
  const at = (i: number, k: number): Spot => [left + i * step, bottom + k * step];
  const outside = (spot: Spot): number => {
    const [x, y, z] = placeIn(cut, spot);
    const span = spanOf({ kind: "point", at: [x, y, z] });
    return reachable.reduce(
      (least, from) => Math.min(least, leastOutside(volume, from, span, 0).value),
      Number.POSITIVE_INFINITY,
    );
  };
  const values = Array.from({ length: columns * rows }, (_, n) => outside(at(n % columns, Math.floor(n / columns))));
  const lines: (readonly [Spot, Spot])[] = [];
  for (let k = 0; k + 1 < rows; k++) {
    for (let i = 0; i + 1 < columns; i++) {
      const corners = [at(i, k), at(i + 1, k), at(i + 1, k + 1), at(i, k + 1)] as const;
      const value = [
        [0, 0],
        [1, 0],
        [1, 1],
        [0, 1],
      ].map(([a, b]) => values[(k + (b as number)) * columns + i + (a as number)] as number);
      const crossings: Spot[] = [];
      for (let side = 0; side < 4; side++) {
        const [one, other] = [value[side] as number, value[(side + 1) % 4] as number];
        if (one < 0 === other < 0) continue;
        const part = one / (one - other);
        const [a, b] = [corners[side] as Spot, corners[(side + 1) % 4] as Spot];
        crossings.push([a[0] + (b[0] - a[0]) * part, a[1] + (b[1] - a[1]) * part]);
      }
      for (let n = 0; n + 1 < crossings.length; n += 2) lines.push([crossings[n] as Spot, crossings[n + 1] as Spot]);
    }
  }
  return lines;
}

function frameOf(cut: Cut): readonly [Spot, Spot] {
  if (cut.kind === "plan") return [cut.low, cut.high];
  const length = Math.hypot(cut.to[0] - cut.from[0], cut.to[1] - cut.from[1]);
  return [
    [0, cut.low],
    [length, cut.high],
  ];
}

function placeIn(cut: Cut, [a, b]: Spot): readonly [number, number, number] {
  if (cut.kind === "plan") return [a, b, cut.height];
  const length = Math.hypot(cut.to[0] - cut.from[0], cut.to[1] - cut.from[1]) || 1;
  return [
    cut.from[0] + ((cut.to[0] - cut.from[0]) * a) / length,
    cut.from[1] + ((cut.to[1] - cut.from[1]) * a) / length,
    b,
  ];
}
