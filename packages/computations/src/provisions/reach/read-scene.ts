import type { Issue, Path } from "@good-grounds/core";
import { Fields } from "./fields.ts";
import { lengthOf, toPiece } from "./plane.ts";
import { convexPieces, outlineFault } from "./polygon.ts";
import {
  ATTENDANCES,
  type Barrier,
  type Opening,
  type Place,
  type ReachPart,
  type ReachScene,
  type Shape,
  type Spot,
  type StandingSurface,
} from "./scene.ts";

/** How large a scene may be: far above what one place needs, low enough that none takes long. */
export const SCENE_LIMITS = Object.freeze({
  metres: 500,
  surfaces: 60,
  corners: 200,
  entries: 20,
  parts: 200,
  barriers: 60,
  openings: 12,
  /** Surfaces times parts times barriers. */
  together: 30_000,
  tolerance: 1,
  objects: 20,
});

export type SceneRead =
  | { readonly ok: true; readonly scene: ReachScene }
  | { readonly ok: false; readonly issues: readonly Issue[] };

/**
 * Reads a scene from plain data, such as parsed JSON. Every field has to be stated; what is not known is `null`. Lengths
 * are numbers of metres. Gives the scene, or everything that is wrong with the data and where.
 */
export function readScene(data: unknown): SceneRead {
  const fields = new Fields();
  const root = fields.object(data, [], ["tolerance", "objects", "attendance", "surfaces", "parts", "barriers"]);
  if (root === undefined) return { ok: false, issues: fields.issues };
  const scene = {
    tolerance: fields.number(root.tolerance, ["tolerance"], 0, SCENE_LIMITS.tolerance) ?? 0,
    objects: root.objects === null ? null : (fields.number(root.objects, ["objects"], 0, SCENE_LIMITS.objects) ?? null),
    attendance: root.attendance === null ? null : (fields.word(root.attendance, ["attendance"], ATTENDANCES) ?? null),
    surfaces: fields.list(root.surfaces, ["surfaces"], [1, SCENE_LIMITS.surfaces], (one, at) =>
      surface(fields, one, at),
    ),
    parts: fields.list(root.parts, ["parts"], [1, SCENE_LIMITS.parts], (one, at) => part(fields, one, at)),
    barriers: fields.list(root.barriers, ["barriers"], [0, SCENE_LIMITS.barriers], (one, at) =>
      barrier(fields, one, at),
    ),
  };
  if (fields.issues.length === 0)
    for (const list of ["surfaces", "parts", "barriers"] as const) once(fields, list, scene[list]);
  const together = scene.surfaces.length * scene.parts.length * scene.barriers.length;
  if (together > SCENE_LIMITS.together) {
    const found = `${together} surfaces × parts × barriers`;
    fields.note("scene-too-large", [], found, `at most ${SCENE_LIMITS.together}`, "divide the scene");
  }
  return fields.issues.length > 0 ? { ok: false, issues: fields.issues } : { ok: true, scene };
}

function once(fields: Fields, list: string, named: readonly { readonly name: string }[]): void {
  const names = new Set<string>();
  for (const [i, { name }] of named.entries()) {
    if (names.has(name)) fields.note("named-twice", [list, i, "name"], name, "a name of its own", "give another name");
    names.add(name);
  }
}

function surface(fields: Fields, data: unknown, path: Path): StandingSurface | undefined {
  const at = fields.object(data, path, ["name", "height", "outline", "solid", "entries"]);
  if (at === undefined) return undefined;
  const name = fields.name(at.name, [...path, "name"]);
  const height = metres(fields, at.height, [...path, "height"]);
  const solid = fields.flag(at.solid, [...path, "solid"]);
  const before = fields.issues.length;
  const outline = fields.list(at.outline, [...path, "outline"], [3, SCENE_LIMITS.corners], (one, to) =>
    spot(fields, one, to),
  );
  const entries = fields.list(at.entries, [...path, "entries"], [0, SCENE_LIMITS.entries], (one, to) =>
    spot(fields, one, to),
  );
  if (name === undefined || height === undefined || solid === undefined) return undefined;
  if (fields.issues.length > before || at.outline === undefined || at.entries === undefined) return undefined;
  const fault = outlineFault(outline);
  if (fault !== undefined) {
    const [found, expected, advice] = OUTLINE_FAULT[fault];
    return fields.note(`outline-${fault}`, [...path, "outline"], found, expected, advice);
  }
  const pieces = convexPieces(outline);
  for (const [i, entry] of entries.entries()) {
    if (pieces.some((piece) => toPiece(piece, entry) <= 0.01)) continue;
    fields.note(
      "entry-outside",
      [...path, "entries", i],
      entry.join(", "),
      "a place on the surface",
      "move it on to it",
    );
  }
  return { name, height, outline, solid, entries };
}

const OUTLINE_FAULT = {
  repeated: ["two corners in one place", "corners apart from each other", "leave the repeated corner out"],
  crossing: ["sides that cross or touch", "an outline that does not meet itself", "put the corners in order"],
  "no-area": ["an outline without area", "a surface to stand on", "check the corners"],
} as const;

function part(fields: Fields, data: unknown, path: Path): ReachPart | undefined {
  const at = fields.object(data, path, ["name", "potential", "live", "shape"]);
  if (at === undefined) return undefined;
  const name = fields.name(at.name, [...path, "name"]);
  const potential = fields.name(at.potential, [...path, "potential"]);
  const live = fields.flag(at.live, [...path, "live"]);
  const form = at.shape === undefined ? undefined : shape(fields, at.shape, [...path, "shape"]);
  if (name === undefined || potential === undefined || live === undefined || form === undefined) return undefined;
  return { name, potential, live, shape: form };
}

const SHAPE_KEYS = { point: ["kind", "at"], segment: ["kind", "from", "to"], box: ["kind", "low", "high"] } as const;

function shape(fields: Fields, data: unknown, path: Path): Shape | undefined {
  const stated = typeof data === "object" && data !== null && "kind" in data ? data.kind : null;
  const kind = fields.word(stated, [...path, "kind"], ["point", "segment", "box"]);
  if (kind === undefined) return undefined;
  const at = fields.object(data, path, SHAPE_KEYS[kind]);
  const [first, second] = SHAPE_KEYS[kind].slice(1).map((key) => place(fields, at?.[key], [...path, key]));
  if (first === undefined) return undefined;
  if (kind === "point") return { kind, at: first };
  if (second === undefined) return undefined;
  if (kind === "segment") return { kind, from: first, to: second };
  if (first.some((low, axis) => low > (second[axis] as number))) {
    return fields.note(
      "box-inverted",
      path,
      `${first} to ${second}`,
      "low at most high in each coordinate",
      "swap them",
    );
  }
  return { kind, low: first, high: second };
}

function barrier(fields: Fields, data: unknown, path: Path): Barrier | undefined {
  const keys = ["name", "from", "to", "bottom", "top", "protection", "keepsBack", "platform", "openings"];
  const at = fields.object(data, path, keys);
  if (at === undefined) return undefined;
  const name = fields.name(at.name, [...path, "name"]);
  const [from, to] = [spot(fields, at.from, [...path, "from"]), spot(fields, at.to, [...path, "to"])];
  const [bottom, top] = [border(fields, at.bottom, [...path, "bottom"]), border(fields, at.top, [...path, "top"])];
  const protection = fields.word(at.protection, [...path, "protection"], ["ip2x", "less"]);
  const keepsBack = fields.flag(at.keepsBack, [...path, "keepsBack"]);
  const platform = fields.flag(at.platform, [...path, "platform"]);
  if (name === undefined || from === undefined || to === undefined || bottom === undefined || top === undefined)
    return undefined;
  if (protection === undefined || keepsBack === undefined || platform === undefined) return undefined;
  const size = lengthOf(from, to);
  if (size < 0.001)
    return fields.note("no-length", [...path, "to"], to.join(", "), "an end apart from the start", "move it");
  if (typeof bottom === "number" && typeof top === "number" && bottom >= top) {
    return fields.note("upside-down", [...path, "top"], top, `more than the lower border, ${bottom}`, "swap them");
  }
  const openings = fields.list(at.openings, [...path, "openings"], [0, SCENE_LIMITS.openings], (one, to) =>
    opening(fields, one, to, size),
  );
  return { name, from, to, bottom, top, protection, keepsBack, platform, openings };
}

function opening(fields: Fields, data: unknown, path: Path, size: number): Opening | undefined {
  const at = fields.object(data, path, ["from", "to", "bottom", "top"]);
  if (at === undefined) return undefined;
  const from = fields.number(at.from, [...path, "from"], 0, size);
  const to = fields.number(at.to, [...path, "to"], 0, size);
  const [bottom, top] = [metres(fields, at.bottom, [...path, "bottom"]), metres(fields, at.top, [...path, "top"])];
  if (from === undefined || to === undefined || bottom === undefined || top === undefined) return undefined;
  if (from >= to || bottom >= top) {
    return fields.note(
      "opening-inverted",
      path,
      `${from} to ${to}, ${bottom} to ${top}`,
      "from less than to, bottom less than top",
      "swap them",
    );
  }
  return { from, to, bottom, top };
}

function border(fields: Fields, value: unknown, path: Path): number | "structure" | undefined {
  return value === "structure" ? value : metres(fields, value, path);
}

function metres(fields: Fields, value: unknown, path: Path): number | undefined {
  return fields.number(value, path, -SCENE_LIMITS.metres, SCENE_LIMITS.metres);
}

function spot(fields: Fields, value: unknown, path: Path): Spot | undefined {
  const found = coordinates(fields, value, path, 2);
  return found === undefined ? undefined : [found[0] as number, found[1] as number];
}

function place(fields: Fields, value: unknown, path: Path): Place | undefined {
  const found = coordinates(fields, value, path, 3);
  return found === undefined ? undefined : [found[0] as number, found[1] as number, found[2] as number];
}

function coordinates(fields: Fields, value: unknown, path: Path, count: number): readonly number[] | undefined {
  if (value === undefined) return undefined;
  if (!Array.isArray(value) || value.length !== count) {
    return fields.note("not-a-place", path, value, `${count} coordinates`, "write a list of numbers of metres");
  }
  const found = [...value].map((one, i) => metres(fields, one ?? null, [...path, i]));
  return found.every((one) => one !== undefined) ? found : undefined;
}
