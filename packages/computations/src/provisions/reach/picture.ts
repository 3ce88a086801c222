import type { Verdict } from "@good-grounds/core";
import type { ReachFinding } from "./conclude.ts";
import type { Place, ReachScene, Shape, Spot } from "./scene.ts";
import { type Cut, reachOutline } from "./section.ts";

/** How a part is shown in a drawing of reach. */
const SHOWN: Readonly<Record<Verdict, "out" | "within" | "too-near" | "not-known">> = Object.freeze({
  met: "out",
  "not-met": "within",
  "too-near": "too-near",
  "not-known": "not-known",
  "not-applicable": "out",
});

/**
 * A cut through a scene as plain data for a drawing, m. In elevation parts, surfaces and barriers are seen from the side,
 * in front of the cut and behind it alike; the outline of the volume is that of the cut itself.
 */
export function reachPicture(scene: ReachScene, finding: ReachFinding, cut: Cut, title: string) {
  const flat = (place: Place): Spot => {
    if (cut.kind === "plan") return [place[0], place[1]];
    const [dx, dy] = [cut.to[0] - cut.from[0], cut.to[1] - cut.from[1]];
    const length = Math.sqrt(dx * dx + dy * dy) || 1;
    return [((place[0] - cut.from[0]) * dx + (place[1] - cut.from[1]) * dy) / length, place[2]];
  };
  const [low, high] = frame(cut);
  return {
    title,
    view: cut.kind,
    low,
    high,
    reach: reachOutline(scene, cut),
    surfaces: scene.surfaces.map(({ name, height, outline }) => {
      const spots = outline.map(([x, y]) => flat([x, y, height]));
      return { name: `${name}, ${height} m`, corners: cut.kind === "plan" ? spots : ends(spots) };
    }),
    barriers: scene.barriers.map(({ name, from, to, bottom, top, protection }) => {
      const [under, over] = [bottom === "structure" ? low[1] : bottom, top === "structure" ? high[1] : top];
      const closes = protection === "ip2x";
      const [start, end] = [flat([from[0], from[1], under]), flat([to[0], to[1], over])];
      if (cut.kind === "plan" || Math.abs(start[0] - end[0]) < THIN) return { name, corners: [start, end], closes };
      const corners: readonly Spot[] = [start, [end[0], start[1]], end, [start[0], end[1]]];
      return { name, corners, closes };
    }),
    parts: finding.parts.map(({ part, least, judgement }) => ({
      name: part.name,
      corners: cornersOf(part.shape).map(flat),
      state: SHOWN[judgement.verdict],
      clearance: least.value,
    })),
    dimensions: [] as readonly { readonly from: Spot; readonly to: Spot; readonly words: string }[],
  };
}

/** A barrier seen end on, narrower than this, is a line, m. */
const THIN = 0.02;

function frame(cut: Cut): readonly [Spot, Spot] {
  if (cut.kind === "plan") return [cut.low, cut.high];
  const [dx, dy] = [cut.to[0] - cut.from[0], cut.to[1] - cut.from[1]];
  return [
    [0, cut.low],
    [Math.sqrt(dx * dx + dy * dy), cut.high],
  ];
}

function ends(spots: readonly Spot[]): readonly Spot[] {
  const along = spots.map(([x]) => x);
  const height = spots[0]?.[1] ?? 0;
  return [
    [Math.min(...along), height],
    [Math.max(...along), height],
  ];
}

function cornersOf(shape: Shape): readonly Place[] {
  switch (shape.kind) {
    case "point":
      return [shape.at];
    case "segment":
      return [shape.from, shape.to];
    case "box": {
      const { low, high } = shape;
      // The four corners round it as seen from above and, with the heights, from the side.
      return [low, [high[0], low[1], low[2]], high, [low[0], high[1], high[2]]];
    }
  }
}
