import type { ReachScene, Shape, StandingSurface } from "@good-grounds/computations";
import Module, { type Manifold } from "manifold-3d";

const library = await Module();
library.setup();
const { CrossSection, Manifold: Solid } = library;

/** Sides of a full circle: at 2.25 m the chord lies 0.2 mm inside the arc. */
const ROUND = 256;
/** Half the width of the solid that stands for a point or a line, m. */
const THIN = 2e-5;

type Corners = [number, number][];

/** Arm's reach from surfaces without barriers, built as solids by the library from the words of the definition. */
export function reachSolid({ surfaces }: ReachScene, objects: number): Manifold {
  return Solid.union(surfaces.map((surface) => fromSurface(surface, objects)));
}

function fromSurface({ outline, height, solid }: StandingSurface, objects: number): Manifold {
  const [upward, sideways, below] = [2.5 + objects, 1.25 + objects, 0.75 + objects];
  const corners: Corners = outline.map(([x, y]) => [x, y]);
  const floor = CrossSection.ofPolygons([corners], "NonZero");
  const around = floor.offset(sideways, "Round", 2, ROUND);
  const above = around.extrude(upward).translate([0, 0, height]);
  const deep = floor.offset(-below, "Round", 2, ROUND);
  const lip = (solid ? around.subtract(deep) : around).extrude(below).translate([0, 0, height - below]);
  return Solid.union(above, lip);
}

/** A part as a solid; a point or a line is given a hair's width. */
export function partSolid(shape: Shape): Manifold {
  const grain = (at: readonly [number, number, number]) => Solid.cube(2 * THIN, true).translate([...at]);
  switch (shape.kind) {
    case "point":
      return grain(shape.at);
    case "segment":
      return Solid.hull([grain(shape.from), grain(shape.to)]);
    case "box":
      return Solid.hull(
        [shape.low[0], shape.high[0]].flatMap((x) =>
          [shape.low[1], shape.high[1]].flatMap((y) => [shape.low[2], shape.high[2]].map((z) => grain([x, y, z]))),
        ),
      );
  }
}

/** Distance between two solids, m; 0 where they meet, `search` where they are further apart than that. */
export function gap(one: Manifold, other: Manifold, search: number): number {
  if (!Solid.intersection(one, other).isEmpty()) return 0;
  return one.minGap(other, search);
}
