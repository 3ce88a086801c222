import { type Bounds, boundsOf } from "./bounds.ts";
import { type Line, type Piece, pieceToPiece, sidesOf } from "./plane.ts";
import { anticlockwise } from "./polygon.ts";
import { type Reach, reachWith } from "./reach-figures.ts";
import type { Barrier, ReachScene, StandingSurface } from "./scene.ts";
import { occupied } from "./standing.ts";

/** What of a surface is walked on, and where reach goes from there. */
export interface Standing {
  readonly name: string;
  /** Index of the surface in the scene; undefined for the top of a barrier on which people can stand. */
  readonly index: number | undefined;
  readonly height: number;
  /** Convex pieces, corners anticlockwise. */
  readonly pieces: readonly Piece[];
  /** Bounds of the pieces in plan. */
  readonly bounds: Bounds;
  /** Edges of the surface round which a hand reaches below, and what is left of the reach beyond each, m. */
  readonly edges: readonly { readonly line: Line; readonly beyond: number }[];
  readonly solid: boolean;
  readonly outline: StandingSurface["outline"];
}

/**
 * Arm's reach in a scene, the union over all standing surfaces of two solids. With h the height of the surface, K what of
 * it is occupied, and a handled length added to each of the distances:
 *
 * - above: everything whose plan distance from K is at most 1.25 m, from h to h + 2.5 m. The sides are upright, corners
 *   in plan are rounded, and the upper limit is level right out to the side (417.3.1, Part 2, Figure 417).
 * - below: from h − 0.75 m to h, what lies outside the surface within 1.25 m of its occupied edge, and what lies under it
 *   within 0.75 m of an edge. Under a surface that is not solid, everything within 1.25 m of K.
 *
 * The distances and the figure are recalled, not read. Where the recollection leaves the shape open the larger one is
 * taken: the upper limit is not rounded off outwards, and the space below the edge is a box, not a quarter circle. If
 * the standard lets a hand go further below than 0.75 m, this volume is too small there. Floors, ceilings and lids limit
 * nothing: a hand is taken to pass wherever an upright barrier does not stop it. See `wayRound` for the barriers.
 */
export interface Volume {
  readonly reach: Reach;
  readonly standing: readonly Standing[];
  readonly barriers: readonly Barrier[];
  /** Steps a long part is taken in at most where barriers are near: fewer in large scenes, on the safe side. */
  readonly samples: number;
}

/** Steps of all parts, from all surfaces, past all barriers. */
const WORK = 1_000_000;

/** The volume of a scene with a length handled, m. */
export function volumeOf(scene: ReachScene, objects: number): Volume {
  const reach = reachWith(objects);
  const { barriers } = scene;
  const standing = scene.surfaces.map((surface, index): Standing => {
    const pieces = occupied(surface, barriers);
    const edges = sidesOf(anticlockwise(surface.outline)).flatMap((line) => {
      const away = pieces.reduce(
        (least, piece) => Math.min(least, pieceToPiece(piece, line)),
        Number.POSITIVE_INFINITY,
      );
      return away <= reach.sideways ? [{ line, beyond: reach.sideways - away }] : [];
    });
    const { name, height, solid, outline } = surface;
    return { name, index, height, pieces, bounds: boundsOf(pieces.flat()), edges, solid, outline };
  });
  const work = scene.surfaces.length * scene.parts.length * Math.max(1, barriers.length);
  const samples = Math.min(200, Math.max(8, Math.floor(WORK / work)));
  return { reach, standing: [...standing, ...barriers.flatMap(topOf)], barriers, samples };
}

/** The top of a barrier on which people can stand, as a line to stand on. */
function topOf({ name, platform, top, from, to }: Barrier): readonly Standing[] {
  if (!platform || top === "structure") return [];
  const pieces = [[from, to]];
  const bounds = boundsOf([from, to]);
  return [{ name, index: undefined, height: top, pieces, bounds, edges: [], solid: false, outline: [] }];
}
