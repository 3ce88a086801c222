import { type Bounds, boundsOf, isNear } from "./bounds.ts";
import { type Element, elementsOf } from "./element.ts";
import { along, type Line, lengthOf, meeting, type Piece, pieceToPiece, sidesOf } from "./plane.ts";
import { GAP } from "./reach-figures.ts";
import type { Spot } from "./scene.ts";
import type { Span } from "./span.ts";
import type { Standing, Volume } from "./volume.ts";
import { closingLines, type Ways, waysRound, wayTo } from "./way-round.ts";

/** How far outside the volume of one standing surface a part lies, at the place where that is least. All in metres. */
export interface Least {
  readonly standing: Standing;
  /** Which solid of the volume decides, and which distance bounds it in plan. */
  readonly zone: Element["zone"];
  readonly limit: Element["limit"];
  /** Which border is nearest: "sideways", "upward", or "below" where it is the one under the surface. */
  readonly direction: "sideways" | "upward" | "below";
  /** Distance outside; negative inside, by no more than the true depth. With the band of the tolerance. */
  readonly value: number;
  readonly low: number;
  readonly high: number;
  /** Height of that place, m. */
  readonly z: number;
  /** How far outside in plan, and in height, at that place; and the same for the least and greatest of the band. */
  readonly aside: readonly [value: number, low: number, high: number];
  readonly upright: readonly [value: number, low: number, high: number];
  /** Whether a barrier lengthens the way of the hand. */
  readonly barred: boolean;
}

/** What both excesses come to: the distance outside, or where neither is outside, the depth under the nearest border. */
function excess(aside: number, upright: number): number {
  if (aside <= 0 && upright <= 0) return Math.max(aside, upright);
  const [a, b] = [Math.max(aside, 0), Math.max(upright, 0)];
  return Math.sqrt(a * a + b * b);
}

interface Found {
  readonly element: Element;
  /** The height of the place. */
  readonly z: number;
  readonly aside: number;
  readonly upright: number;
  readonly value: number;
}

/** Sampling step along a part where barriers are near, m; half of it is taken off, on the safe side. */
const STEP = 0.025;

/** What is as little as this off a surface lies on it, m. */
const EDGE = 1e-9;

/** A standing surface with its convex parts, made once. */
export interface Reachable {
  readonly standing: Standing;
  readonly elements: readonly Element[];
  /** Bounds in plan: least and greatest x and y. */
  readonly bounds: Bounds;
  /** Ways round closing lines, by the lines: many parts meet the same ones. */
  readonly ways: Map<string, Ways>;
}

export function reachableFrom(volume: Volume): readonly Reachable[] {
  return volume.standing
    .filter(({ pieces }) => pieces.length > 0)
    .map((standing) => ({
      standing,
      elements: elementsOf(volume, standing),
      bounds: boundsOf([...standing.pieces.flat(), ...standing.edges.flatMap(({ line }) => line)]),
      ways: new Map(),
    }));
}

/** A distance the part is at least outside the volume of a surface, cheap to work out. */
export function atLeastOutside({ reach }: Volume, { standing, bounds }: Reachable, span: Span): number {
  const { bounds: plan } = span;
  const x = Math.max(bounds[0] - plan[2], plan[0] - bounds[2], 0);
  const y = Math.max(bounds[1] - plan[3], plan[1] - bounds[3], 0);
  const sideways = Math.sqrt(x * x + y * y) - Math.max(reach.sideways, reach.below);
  const { height } = standing;
  const all = { low: height - reach.below, high: height + reach.upward };
  return excess(sideways, uprightOf(all, deepest(all, span.low, span.high)));
}

/**
 * How far a part lies outside the reach from one surface. Places in the scene may be off by the tolerance in each
 * coordinate, so a distance in plan by 2√2 of it and one in height by twice as much: both ends may be off. Which side of
 * a barrier a part is on is taken as drawn.
 */
export function leastOutside(volume: Volume, from: Reachable, span: Span, tolerance: number): Least {
  const { standing, elements } = from;
  const [plan, height] = [2 * Math.SQRT2 * tolerance, 2 * tolerance];
  let found = leastOf(elements, span, 0, 0);
  let low = tolerance === 0 ? found : leastOf(elements, span, -plan, -height);
  let high = shifted(found, plan, height);
  const plain = found.value;
  if (low.value < 0) {
    found = barred(volume, from, span, found, 0, 0, 0);
    low = tolerance === 0 ? found : barred(volume, from, span, low, -plan, -height, tolerance);
    if (low.value > found.value) low = found;
    high = tolerance === 0 ? found : barred(volume, from, span, shifted(found, plan, height), plan, height, -tolerance);
  }
  const { element, z, aside, upright, value } = found;
  return {
    standing,
    zone: element.zone,
    limit: element.limit,
    direction: aside >= upright ? "sideways" : z >= standing.height ? "upward" : "below",
    value,
    low: Math.min(low.value, value),
    high: Math.max(high.value, value),
    z,
    aside: [aside, Math.min(low.aside, aside), Math.max(high.aside, aside)],
    upright: [upright, Math.min(low.upright, upright), Math.max(high.upright, upright)],
    barred: found.value > plain,
  };
}

function shifted({ element, z, aside, upright }: Found, plan: number, height: number): Found {
  return { element, z, aside: aside + plan, upright: upright + height, value: excess(aside + plan, upright + height) };
}

function leastOf(elements: readonly Element[], span: Span, plan: number, height: number): Found {
  let least: Found | undefined;
  for (const element of elements) {
    const z = deepest(element, span.low, span.high);
    if (least !== undefined && uprightOf(element, z) + height > Math.max(0, least.value)) continue;
    const found =
      span.slope === undefined
        ? placed(element, z, asideOf(element, span.plan) + plan, height)
        : sloping(element, span.plan, span.slope, plan, height);
    if (least === undefined || found.value < least.value) least = found;
  }
  return least as Found;
}

/** Every place in plan of an upright part has all its heights, so what is least in plan and in height meets. */
function asideOf(element: Element, plan: Piece): number {
  return plan.length === 1 ? element.outside(plan[0] as Spot) : element.outsideOf(plan);
}

/**
 * The surface itself is no way out of the volume, above and below join there: what stands on it or above is measured to
 * the upper border only, what lies below to the lower one.
 */
function placed(element: Element, z: number, aside: number, shift: number): Found {
  const { zone, low, high } = element;
  const within = zone === "above" ? z >= low - EDGE && z <= high : z <= high + EDGE && z >= low;
  const upright = (within ? (zone === "above" ? z - high : low - z) : uprightOf(element, z)) + shift;
  return { element, z, aside, upright, value: excess(aside, upright) };
}

/** Along a sloping line the distance from a convex solid is a convex function; its least is found by narrowing down. */
function sloping(
  element: Element,
  plan: Piece,
  [start, end]: readonly [number, number],
  planShift: number,
  heightShift: number,
): Found {
  const line = plan as unknown as Line;
  const heightAt = (part: number) => start + (end - start) * part;
  const asideAt = (part: number) => element.outside(along(line, part)) + planShift;
  const outside = (part: number) => excess(asideAt(part), uprightOf(element, heightAt(part)) + heightShift);
  const at = (part: number) => placed(element, heightAt(part), asideAt(part), heightShift);
  let [from, to] = [0, 1];
  for (let i = 0; i < 60; i++) {
    const third = (to - from) / 3;
    if (outside(from + third) <= outside(to - third)) to -= third;
    else from += third;
  }
  const [middle, first, last] = [at((from + to) / 2), at(0), at(1)];
  return [first, last].reduce((least, one) => (one.value < least.value ? one : least), middle);
}

/** Of a range of heights the one deepest inside an element's own, or nearest to it. */
function deepest({ low, high }: Pick<Element, "low" | "high">, from: number, to: number): number {
  return Math.min(Math.max((low + high) / 2, from), to);
}

/** How far a height lies outside an element's own; negative inside, by the depth. */
function uprightOf({ low, high }: Pick<Element, "low" | "high">, z: number): number {
  return Math.max(low - z, z - high);
}

/**
 * The same with barriers that close the way: the distance in plan is that of the way round them. The part is taken in
 * steps, each standing for what lies half a step to its sides.
 */
function barred(
  volume: Volume,
  { standing, elements, ways }: Reachable,
  span: Span,
  plain: Found,
  planShift: number,
  heightShift: number,
  tolerance: number,
): Found {
  if (plain.value >= 0 || standing.pieces.some((piece) => pieceToPiece(piece, span.plan) === 0)) return plain;
  const { sideways } = volume.reach;
  const near = sideways + Math.abs(planShift) + GAP;
  if (!volume.barriers.some((one) => one.protection === "ip2x" && isNear(span.bounds, one.from, one.to, near)))
    return plain;
  const lines = closingLines(volume, standing, span.low, span.high, tolerance);
  if (lines.every((line) => pieceToPiece(span.plan, line) > near)) return plain;
  const key = lines.join(";");
  const held = ways.get(key) ?? waysRound(standing.pieces, lines, sideways);
  ways.set(key, held);
  let least: Found | undefined;
  const { samples, half } = samplesOf(span, lines, volume.samples);
  for (const { spot, low, high } of samples) {
    const way = wayTo(held, spot) - half - sideways + planShift;
    for (const element of elements) {
      const aside = Math.max(element.outside(spot) - half + planShift, way);
      const one = placed(element, deepest(element, low, high), aside, heightShift);
      if (least === undefined || one.value < least.value) least = one;
    }
  }
  return least === undefined || least.value < plain.value ? plain : least;
}

interface Sample {
  readonly spot: Spot;
  readonly low: number;
  readonly high: number;
}

function samplesOf(
  { plan, low, high, slope }: Span,
  lines: readonly Line[],
  most: number,
): { samples: readonly Sample[]; half: number } {
  if (plan.length === 1) return { samples: [{ spot: plan[0] as Spot, low, high }], half: 0 };
  const sides = sidesOf(plan);
  const length = sides.reduce((sum, [a, b]) => sum + lengthOf(a, b), 0);
  const step = Math.max(STEP, length / most);
  const rise = slope === undefined ? 0 : Math.abs(slope[1] - slope[0]) / length;
  const samples = sides.flatMap((side) => {
    const size = lengthOf(side[0], side[1]);
    const count = Math.max(1, Math.ceil(size / step));
    const parts = Array.from({ length: count + 1 }, (_, i) => i / count);
    for (const line of lines) {
      const at = meeting(side, line);
      if (at !== undefined && at[1] >= 0 && at[1] <= 1) parts.push(at[0] - 1e-5 / size, at[0] + 1e-5 / size);
    }
    return parts
      .filter((part) => part >= 0 && part <= 1)
      .map((part): Sample => {
        if (slope === undefined) return { spot: along(side, part), low, high };
        // A step of a sloping line has all the heights of its half steps to either side.
        const [z, reach] = [slope[0] + (slope[1] - slope[0]) * part, (rise * step) / 2];
        return { spot: along(side, part), low: Math.max(low, z - reach), high: Math.min(high, z + reach) };
      });
  });
  return { samples, half: step / 2 };
}
