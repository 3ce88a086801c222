import type { ReachPart, Shape, Spot, StandingSurface } from "@good-grounds/computations";

/** A small generator with a fixed start, so that a failure can be repeated. */
export function generator(seed: number): () => number {
  let state = seed;
  return () => {
    state = (Math.imul(state, 1664525) + 1013904223) >>> 0;
    return state / 2 ** 32;
  };
}

/** A convex outline: corners on an ellipse, in order. */
export function convexOutline(random: () => number): readonly Spot[] {
  const count = 3 + Math.floor(random() * 6);
  const [x, y, width, depth] = [random() * 4 - 2, random() * 4 - 2, 0.3 + random() * 2.5, 0.3 + random() * 2.5];
  const start = random() * 6;
  return Array.from({ length: count }, (_, i) => {
    const angle = start + ((i + random() * 0.6) / count) * 2 * Math.PI;
    return [x + width * Math.cos(angle), y + depth * Math.sin(angle)];
  });
}

/** A star-shaped outline, in general not convex. */
export function starOutline(random: () => number): readonly Spot[] {
  const count = 4 + Math.floor(random() * 8);
  const [x, y] = [random() * 4 - 2, random() * 4 - 2];
  return Array.from({ length: count }, (_, i) => {
    const [angle, far] = [(i / count) * 2 * Math.PI, 0.6 + random() * 2.4];
    return [x + far * Math.cos(angle), y + far * Math.sin(angle)];
  });
}

export function surfaceOf(random: () => number, i: number, outline: readonly Spot[]): StandingSurface {
  const turned = random() < 0.5 ? outline : [...outline].reverse();
  return { name: `s${i}`, height: random() * 3 - 0.5, outline: turned, solid: random() < 0.6, entries: [] };
}

function shapeOf(random: () => number): Shape {
  const at = () => [random() * 10 - 5, random() * 10 - 5, random() * 9 - 3] as const;
  const kind = random();
  if (kind < 0.34) return { kind: "point", at: at() };
  const [a, b] = [at(), at()];
  if (kind < 0.67)
    return {
      kind: "segment",
      from: a,
      to: [a[0] + (b[0] - a[0]) * 0.4, a[1] + (b[1] - a[1]) * 0.4, random() < 0.3 ? a[2] : b[2]],
    };
  return { kind: "box", low: a, high: [a[0] + random(), a[1] + random(), a[2] + random()] };
}

export function partsOf(random: () => number, count: number): readonly ReachPart[] {
  return Array.from({ length: count }, (_, i) => ({
    name: `p${i}`,
    potential: `L${i}`,
    live: true,
    shape: shapeOf(random),
  }));
}
