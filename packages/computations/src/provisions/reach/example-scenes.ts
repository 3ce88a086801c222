import type { Barrier, Place, ReachPart, ReachScene, Spot, StandingSurface } from "./scene.ts";

/** Makers of small invented scenes for tests. */
export function rectangle(x: number, y: number, width: number, depth: number): readonly Spot[] {
  return [
    [x, y],
    [x + width, y],
    [x + width, y + depth],
    [x, y + depth],
  ];
}

export const floor: StandingSurface = {
  name: "floor",
  height: 0,
  outline: rectangle(0, 0, 3, 2),
  solid: true,
  entries: [],
};

export function pointPart(name: string, at: Place, potential = "L1", live = true): ReachPart {
  return { name, potential, live, shape: { kind: "point", at } };
}

export function wall(name: string, from: Spot, to: Spot, more: Partial<Barrier> = {}): Barrier {
  return {
    name,
    from,
    to,
    bottom: "structure",
    top: "structure",
    protection: "ip2x",
    keepsBack: false,
    platform: false,
    openings: [],
    ...more,
  };
}

export function sceneWith(more: Partial<ReachScene>): ReachScene {
  return {
    tolerance: 0,
    objects: 0,
    attendance: "skilled-control",
    surfaces: [floor],
    parts: [],
    barriers: [],
    ...more,
  };
}

/** A scene as large as anybody draws: 20 surfaces, 50 parts, 20 barriers. */
export function largeScene(): ReachScene {
  return {
    tolerance: 0.01,
    objects: 0,
    attendance: "skilled-control",
    surfaces: Array.from({ length: 20 }, (_, i) => ({
      name: `s${i}`,
      height: (i % 3) * 1.1,
      outline: rectangle((i % 5) * 3, Math.floor(i / 5) * 3, 2, 2),
      solid: i % 2 === 0,
      entries: [],
    })),
    parts: Array.from({ length: 50 }, (_, i) =>
      pointPart(`p${i}`, [(i % 10) * 1.5, Math.floor(i / 10) * 2.3, (i % 7) * 0.8], `L${i % 4}`),
    ),
    barriers: Array.from({ length: 20 }, (_, i) =>
      wall(`b${i}`, [(i % 5) * 3 + 2.2, Math.floor(i / 5) * 3], [(i % 5) * 3 + 2.2, Math.floor(i / 5) * 3 + 1.8]),
    ),
  };
}
