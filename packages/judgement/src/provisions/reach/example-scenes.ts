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
