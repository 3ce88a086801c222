import { type Crossing, type Evidence, isKnown, type Projected, type Trend, type TrendPoint } from "@good-grounds/core";
import { predictionBand, slopeBand } from "./band.ts";
import { dayAfter, daysBetween } from "./days.ts";
import { fitLine, type Line, type Sample } from "./line.ts";
import { studentWithin } from "./student.ts";

/**
 * What is taken to be known of the scatter before the readings are looked at, in degrees of freedom. The scatter of a
 * fit is the assumed one and that of the readings taken together, (6 + Σz²)/(6 + n − 2): a few readings that happen to
 * lie on a line do not make it certain.
 */
const FREEDOM_ASSUMED = 6;

/** Assurance of the bands. */
export const ASSURANCE = 0.95;

/** Readings on so many days, displays that ended not counted, make a trend; two are a change. */
const LEAST_DATES = 3;

/** Days of the projection between the present inspection and the next, both included. */
const STEPS = 6;

/** Where bounds leave the line open. */
const OPEN = [Number.NEGATIVE_INFINITY, Number.POSITIVE_INFINITY] as const;

export interface Series {
  readonly path: Trend["path"];
  readonly reading: Trend["reading"];
  readonly term: Trend["term"];
  readonly limit: Evidence<"ohm">;
  readonly worse: Trend["worse"];
  /** Oldest first; `deviation` is the standard deviation of ln R with the surroundings of the visit. */
  readonly points: readonly (TrendPoint & { readonly deviation: number })[];
}

/**
 * The line through a series, and from three dated readings on where it leads until the next inspection. Undefined with
 * fewer than two readings.
 */
export function trendOf(series: Series, today: string, nextOn: string | null): Trend | undefined {
  const { points } = series;
  if (points.length < 2 || new Set(points.map(({ on }) => on)).size < 2 || points.some(({ value }) => !(value > 0)))
    return undefined;
  const samples = points.map(
    ({ on, value, deviation, bound }): Sample => ({
      time: daysBetween(today, on) / 365.25,
      level: Math.log(value),
      deviation,
      bound,
    }),
  );
  const exact = points.filter(({ bound }) => bound === "exact").length;
  const freedom = FREEDOM_ASSUMED + Math.max(0, exact - 2);
  const { line, scaled } = scattered(samples, freedom);
  const reach = studentWithin(ASSURANCE, freedom);
  const [low, high] = line.settled ? slopeBand(scaled, line, reach) : OPEN;
  const newest = Math.max(...scaled.map(({ deviation }) => deviation));
  const at = (time: number): Omit<Projected, "on"> => {
    const [from, to] = predictionBand(scaled, line, time, newest, reach);
    return {
      value: Math.exp(line.start + line.slope * time),
      low: Math.exp(from),
      high: Math.exp(to),
    };
  };
  const days = nextOn === null ? 0 : daysBetween(today, nextOn);
  // Two readings show a change between two days; where it leads nobody has seen.
  const forecast = line.settled && datesOf(points) >= LEAST_DATES;
  const ahead =
    days <= 0 || !forecast ? [] : Array.from({ length: STEPS + 1 }, (_, k) => Math.round((days * k) / STEPS));
  const projected = ahead.map((day) => ({ on: dayAfter(today, day), ...at(day / 365.25) }));
  return {
    path: series.path,
    reading: series.reading,
    term: series.term,
    points: points.map(({ deviation: _, ...point }) => point),
    perYear: line.settled ? { value: Math.exp(line.slope), low: Math.exp(low), high: Math.exp(high) } : null,
    direction: high < 0 ? "falling" : low > 0 ? "rising" : "not-told",
    twoPoints: datesOf(points) < LEAST_DATES,
    projected,
    limit: series.limit,
    worse: series.worse,
    // Where bounds leave the line open, every day would be "not ruled out": that says nothing.
    crossing: forecast && isKnown(series.limit) ? crossingOf(series.limit.value, series.worse, projected) : null,
  };
}

/** On how many days a value was read. */
function datesOf(points: Series["points"]): number {
  return new Set(points.filter(({ bound }) => bound === "exact").map(({ on }) => on)).size;
}

/** The line, and the samples with the deviations that the readings themselves and the assumption come to together. */
function scattered(
  samples: readonly Sample[],
  freedom: number,
): { readonly line: Line; readonly scaled: readonly Sample[] } {
  let scaled = samples;
  let line = fitLine(samples);
  for (let turn = 0; turn < 20; turn++) {
    const misfit = samples.reduce(
      (sum, { time, level, deviation, bound }) =>
        bound === "exact" ? sum + ((level - line.start - line.slope * time) / deviation) ** 2 : sum,
      0,
    );
    const scale = Math.sqrt((FREEDOM_ASSUMED + (line.settled ? misfit : 0)) / freedom);
    scaled = samples.map((one) => ({ ...one, deviation: one.deviation * scale }));
    // Only bounds can move the line when all deviations change alike.
    if (samples.every(({ bound }) => bound === "exact")) break;
    const next = fitLine(scaled);
    const moved = Math.abs(next.slope - line.slope) + Math.abs(next.start - line.start);
    line = next;
    if (moved < 1e-9) break;
  }
  return { line: fitLine(scaled), scaled };
}

/** Days on which the limit is reached before the next inspection, by the nearer end of the band, the line, the farther end. */
function crossingOf(limit: number, worse: Trend["worse"], projected: readonly Projected[]): Crossing | null {
  const [near, far] = worse === "falling" ? (["low", "high"] as const) : (["high", "low"] as const);
  const earliest = firstBeyond(limit, worse, projected, near);
  if (earliest === null) return null;
  const expected = firstBeyond(limit, worse, projected, "value");
  return { limit, earliest, expected, latest: firstBeyond(limit, worse, projected, far) };
}

/** The first day beyond a limit, between the days of the projection by ln R; null where the last one is not beyond. */
function firstBeyond(
  limit: number,
  worse: Trend["worse"],
  projected: readonly Projected[],
  which: "low" | "high" | "value",
): string | null {
  // How far beyond, above 0 on the wrong side.
  const beyond = projected.map((one) => (worse === "falling" ? -1 : 1) * Math.log(one[which] / limit));
  if (!((beyond.at(-1) ?? 0) > 0)) return null;
  const k = beyond.findIndex((part) => part > 0);
  const [before, after] = [projected[k - 1], projected[k] as Projected];
  if (before === undefined) return after.on;
  const [a, b] = [beyond[k - 1] as number, beyond[k] as number];
  const part = Number.isFinite(a) && Number.isFinite(b) ? -a / (b - a) : 1;
  return dayAfter(before.on, Math.ceil(part * daysBetween(before.on, after.on)));
}
