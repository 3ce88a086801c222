import {
  type Compared,
  type Evidence,
  fact,
  factNotKnown,
  type Judgement,
  type Known,
  matter,
  type Reckoner,
  TERM,
} from "@good-grounds/core";
import { apart } from "./apart.ts";
import type { Bounds } from "./bounds.ts";
import { atLeastOutside, type Least, leastOutside, reachableFrom } from "./clearance.ts";
import { fromScene } from "./leaf.ts";
import { BARE_HAND, FIGURES, handledLength } from "./reach-figures.ts";
import type { Attendance, ReachPart, ReachScene } from "./scene.ts";
import { type Span, spanOf } from "./span.ts";
import { volumeOf } from "./volume.ts";

/** The questions the lines of this provision answer. */
export const REACH_QUESTION = Object.freeze({
  provision: matter("out-of-reach-provision", "placing out of reach counts as basic protection"),
  skilled: matter("skilled-control", "controlled or supervised by skilled persons"),
  arrangement: matter("out-of-reach", "the live parts are out of reach"),
  part: matter("part-out-of-reach", "the part is out of reach"),
  surface: matter("out-of-reach-of-surface", "out of reach from the surface"),
  aside: matter("out-of-reach-sideways", "horizontal distance beyond the limit of reach"),
  upright: matter("out-of-reach-upright", "height or depth beyond the limit of reach"),
  pair: matter("not-touched-together", "two parts at different potentials cannot be touched at once"),
  apart: matter("parts-apart", "parts further apart than both hands reach"),
});

/** What is found about one part. */
export interface PartFinding {
  readonly part: ReachPart;
  readonly index: number;
  /** The surface that decides, with the distance outside its reach volume, m. */
  readonly least: Least;
  /** Distance outside the limit of reach in the direction that decides, as evidence. */
  readonly clearance: Evidence<"metre">;
  readonly judgement: Judgement;
}

/** What is found about two parts at different potentials, where they are not further apart than both hands reach. */
export interface PairFinding {
  readonly parts: readonly [number, number];
  /** Distance between them, m. */
  readonly apart: number;
  readonly judgement: Judgement;
}

export interface ReachFinding {
  readonly parts: readonly PartFinding[];
  readonly pairs: readonly PairFinding[];
  /** Whether the live parts are out of reach and no pair can be touched at once, whoever is there. */
  readonly arrangement: Judgement;
  /** Whether the provision counts: the arrangement, and control or supervision by skilled persons (417.1). */
  readonly provision: Judgement;
}

/**
 * Placing out of reach (417.3) in a scene. A part is out of reach where it lies outside the volume of every standing
 * surface; live parts have to be, and of two parts at different potentials that are not more than 2.5 m apart at least
 * one. Where the length of what is handled is not known, what lies within bare arm's reach is not met and the rest is
 * not known. The arrangement and whether it counts are told apart: without skilled control or supervision it never does.
 */
export function placingOutOfReach(scene: ReachScene, reckon: Reckoner): ReachFinding {
  const volume = volumeOf(scene, scene.objects ?? 0);
  const reachable = reachableFrom(volume);
  const handled = handledLength(scene.objects);
  const spans = scene.parts.map(({ shape }) => spanOf(shape));
  const parts = scene.parts.map((part, index): PartFinding => {
    const span = spans[index] as Span;
    const near = reachable
      .map((from) => ({ from, bound: atLeastOutside(volume, from, span) }))
      .sort((a, b) => a.bound - b.bound);
    const found: Least[] = [];
    let least = Number.POSITIVE_INFINITY;
    for (const { from, bound } of near) {
      if (bound > least && bound > 4 * scene.tolerance) break;
      const one = leastOutside(volume, from, span, scene.tolerance);
      found.push(one);
      least = Math.min(least, one.value);
    }
    const decides = found.reduce((a, b) => (b.value < a.value ? b : a));
    const counted = found.filter((one) => one === decides || one.low < 0);
    const judged = counted.map((one) => fromSurface(one, index, handled, reckon));
    return {
      part,
      index,
      least: decides,
      clearance: (judged[counted.indexOf(decides)] as Judged).clearance,
      judgement: reckon.all(REACH_QUESTION.part, ...judged.map(({ judgement }) => judgement)),
    };
  });
  const pairs = pairsOf(scene, parts, spans, handled, reckon);
  const arrangement = reckon.all(
    REACH_QUESTION.arrangement,
    ...parts.filter(({ part }) => part.live).map(({ judgement }) => judgement),
    ...pairs.map(({ judgement }) => judgement),
  );
  const skilled = reckon.byWord(
    REACH_QUESTION.skilled,
    attendanceFact(scene.attendance),
    (word) => (word === "skilled-control" ? "met" : "not-met"),
    "417.1 leaves placing out of reach to places controlled or supervised by skilled persons",
  );
  return { parts, pairs, arrangement, provision: reckon.all(REACH_QUESTION.provision, skilled, arrangement) };
}

function attendanceFact(attendance: Attendance | null) {
  const path = ["attendance"];
  return attendance === null
    ? factNotKnown(REACH_QUESTION.skilled, path)
    : fact(REACH_QUESTION.skilled, attendance, path);
}

interface Judged {
  readonly judgement: Judgement;
  readonly clearance: Evidence<"metre">;
}

/** A part against one surface: beyond the limit of reach in plan or in height is enough. */
function fromSurface(least: Least, index: number, handled: Evidence<"metre">, reckon: Reckoner): Judged {
  const length = handled.kind === "not-known" && least.high < 0 ? BARE_HAND : handled;
  const path = ["parts", index, "shape"];
  const aside = against(least.aside, FIGURES[least.limit], TERM.distanceFromEdge, path, length, reckon);
  const upward = least.z >= least.standing.height;
  const term = upward ? TERM.heightAboveSurface : TERM.depthBelowEdge;
  const figure = upward ? least.zone === "above" && FIGURES.upward : least.zone === "below" && FIGURES.below;
  const upright = against(least.upright, figure || undefined, term, path, length, reckon);
  return {
    judgement: reckon.any(
      REACH_QUESTION.surface,
      reckon.atLeast(REACH_QUESTION.aside, aside.distance, aside.limit),
      reckon.atLeast(REACH_QUESTION.upright, upright.distance, upright.limit),
    ),
    clearance: reckon.largest(
      TERM.reachClearance,
      reckon.difference(TERM.reachClearance, aside.distance, aside.limit),
      reckon.difference(TERM.reachClearance, upright.distance, upright.limit),
    ),
  };
}

/** A distance and the limit it is held against; without a figure, a hand reaches nothing that way. */
function against(
  [value, low, high]: Least["aside"],
  figure: Known<"metre"> | undefined,
  term: typeof TERM.distanceFromEdge,
  path: readonly (string | number)[],
  handled: Evidence<"metre">,
  reckon: Reckoner,
): { readonly distance: Known<"metre">; readonly limit: Evidence<"metre"> } {
  const limit = figure === undefined ? NONE_BELOW : reckon.sum(TERM.reachLimit, figure, handled);
  const from = figure === undefined ? 0 : figure.value + (handled.kind === "not-known" ? 0 : handled.value);
  return { distance: fromScene(term, value + from, low + from, high + from, path), limit };
}

/** Under a solid surface a hand reaches round its edge only. */
const NONE_BELOW = fromScene(TERM.reachLimit, 0, 0, 0, ["surfaces"]);

function pairsOf(
  scene: ReachScene,
  parts: readonly PartFinding[],
  spans: readonly Span[],
  handled: Evidence<"metre">,
  reckon: Reckoner,
): readonly PairFinding[] {
  const band = 2 * Math.sqrt(3) * scene.tolerance;
  const most = FIGURES.between.value + (scene.objects ?? 0) + band;
  const limit = reckon.sum(TERM.reachLimit, FIGURES.between, handled);
  const pairs: PairFinding[] = [];
  for (const [i, one] of parts.entries()) {
    for (let j = i + 1; j < parts.length; j++) {
      const other = parts[j] as PartFinding;
      if (one.part.potential === other.part.potential) continue;
      const [a, b] = [spans[i]?.bounds as Bounds, spans[j]?.bounds as Bounds];
      if (handled.kind !== "not-known" && Math.max(a[0] - b[2], b[0] - a[2], a[1] - b[3], b[1] - a[3]) > most) continue;
      const distance = apart(one.part.shape, other.part.shape);
      if (handled.kind !== "not-known" && distance > most) continue;
      const between = fromScene(
        TERM.distanceApart,
        distance - TIE,
        Math.max(0, distance - band) - TIE,
        distance + band - TIE,
        ["parts", j, "shape"],
      );
      pairs.push({
        parts: [i, j],
        apart: distance,
        judgement: reckon.any(
          REACH_QUESTION.pair,
          beyondBoth(between, limit, distance + band, reckon),
          one.judgement,
          other.judgement,
        ),
      });
    }
  }
  return pairs;
}

/** Parts just as far apart as both hands reach can still be touched at once: a micrometre less tells that. */
const TIE = 1e-6;

/** Two parts are touched at once up to and with 2.5 m; an unknown length handled only makes that more. */
function beyondBoth(between: Known<"metre">, limit: Evidence<"metre">, greatest: number, reckon: Reckoner): Compared {
  const bare = greatest < FIGURES.between.value ? FIGURES.between : limit;
  return reckon.atLeast(REACH_QUESTION.apart, between, bare);
}
