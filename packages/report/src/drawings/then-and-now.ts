import type { Projected, ReadingChange, Trend } from "@good-grounds/core";
import { drawing, element, line, rect, text } from "./svg.ts";
import { TOKENS } from "./tokens.ts";

const WIDTH = 150;
const HEIGHT = 58;
const LEFT = 6;
const RIGHT = 6;
const TOP = 6;
/** Room below for the years. */
const BOTTOM = 14;
/** The scale shows no more than so many decades beyond readings, line and limit: a band without an end leaves the drawing. */
const ROOM = Math.log(10) / 2;

/** What a small drawing of a trend needs. */
export type DrawnTrend = Pick<Trend, "points" | "projected" | "worse"> & {
  /** Ω; null where no limit is known. */
  readonly limit: number | null;
  /** What it says, for readers who do not see it. */
  readonly words: string;
};

/**
 * Readings over the years on a logarithmic scale, the line carried on to the next inspection within its band, and the
 * limit. Read without colour: readings are dots (an arrow head where the display ended), the band is shaded, the limit
 * a broken line with its wrong side hatched.
 */
export function trendSparkline({ points, projected, limit: stated, worse, words }: DrawnTrend): string {
  const limit = stated !== null && stated > 0 && Number.isFinite(stated) ? stated : null;
  const sound = points.filter(({ value }) => value > 0 && Number.isFinite(value));
  const shown = projected.filter(({ on }) => !Number.isNaN(Date.parse(on)));
  if (sound.length === 0) return drawing(WIDTH, HEIGHT, words, words, "");
  const days = [...sound, ...shown].map(({ on }) => Date.parse(on));
  const [from, to] = [Math.min(...days), Math.max(...days)];
  const through = shown.map(({ value }) => value).filter((value) => value > 0 && Number.isFinite(value));
  const levels = [...sound.map(({ value }) => value), ...through, ...(limit === null ? [] : [limit])].map(Math.log);
  const [low, high] = [Math.min(...levels) - ROOM, Math.max(...levels) + ROOM];
  const x = (on: string) => LEFT + (to === from ? 0.5 : (Date.parse(on) - from) / (to - from)) * (WIDTH - LEFT - RIGHT);
  const y = (value: number) => {
    const part = (Math.log(Math.max(value, Number.MIN_VALUE)) - low) / (high - low);
    return HEIGHT - BOTTOM - Math.max(0, Math.min(1, part)) * (HEIGHT - BOTTOM - TOP);
  };
  const [first, last] = [[...sound, ...shown][0]?.on ?? "", [...shown].at(-1)?.on ?? [...sound].at(-1)?.on ?? ""];
  const years = { "font-size": 7, fill: TOKENS.ink };
  return drawing(
    WIDTH,
    HEIGHT,
    words,
    words,
    [
      limit === null ? "" : limitLine(y(limit), worse),
      bandOf(shown, x, y),
      lineThrough(shown, x, y),
      line(LEFT, HEIGHT - BOTTOM, WIDTH - RIGHT, HEIGHT - BOTTOM, { stroke: TOKENS.rule, "stroke-width": 0.6 }),
      ...sound.map(({ on, value, bound }) => mark(x(on), y(value), bound)),
      text(LEFT, HEIGHT - 3, first.slice(0, 4), years),
      text(WIDTH - RIGHT, HEIGHT - 3, last.slice(0, 4), { ...years, "text-anchor": "end" }),
    ].join(""),
  );
}

type Across = (on: string) => number;
type Up = (value: number) => number;

function limitLine(at: number, worse: Trend["worse"]): string {
  const side = worse === "falling" ? 3.5 : -3.5;
  const strokes: string[] = [];
  for (let x = LEFT + 2; x < WIDTH - RIGHT - 2; x += 5) {
    strokes.push(
      line(x, at, x + 2, Math.max(1, Math.min(HEIGHT - 1, at + side)), { stroke: TOKENS.copper, "stroke-width": 0.5 }),
    );
  }
  return (
    strokes.join("") +
    line(LEFT, at, WIDTH - RIGHT, at, { stroke: TOKENS.copper, "stroke-width": 1, "stroke-dasharray": "4 2" })
  );
}

function bandOf(projected: readonly Projected[], x: Across, y: Up): string {
  if (projected.length < 2) return "";
  const low = projected.map((one) => `${round(x(one.on))} ${round(y(one.low))}`);
  const high = [...projected].reverse().map((one) => `${round(x(one.on))} ${round(y(one.high))}`);
  return element("path", { d: `M${[...low, ...high].join("L")}Z`, fill: TOKENS.faint, "fill-opacity": 0.35 });
}

function lineThrough(projected: readonly Projected[], x: Across, y: Up): string {
  const on = projected.map(({ on: day, value }) => `${round(x(day))} ${round(y(value))}`);
  if (on.length < 2) return "";
  return element("path", {
    d: `M${on.join("L")}`,
    fill: "none",
    stroke: TOKENS.ink,
    "stroke-width": 0.9,
    "stroke-dasharray": "2 1.5",
  });
}

function mark(x: number, y: number, bound: Trend["points"][number]["bound"]): string {
  if (bound === "exact") return element("circle", { cx: x, cy: y, r: 2.4, fill: TOKENS.ink });
  const tip = bound === "above" ? -3 : 3;
  return element("path", {
    d: `M${round(x - 2.8)} ${round(y)}L${round(x + 2.8)} ${round(y)}L${round(x)} ${round(y + tip)}Z`,
    fill: TOKENS.paper,
    stroke: TOKENS.ink,
    "stroke-width": 1,
  });
}

const STEP_WIDTH = 64;
const STEP_HEIGHT = 24;

/** What a small drawing of one change needs, in the same unit or as logarithms. */
export type DrawnChange = Pick<ReadingChange, "amount" | "standard" | "change"> & { readonly words: string };

/**
 * Then (open) and now (solid), with what repeating the test may give as a shaded strip about the earlier reading: a
 * reading outside the strip has changed.
 */
export function changeStep({ amount, standard, change, words }: DrawnChange): string {
  const spread = 2 * standard;
  const scale = Math.max(Math.abs(amount), spread) * 1.15;
  if (!(standard > 0 && Number.isFinite(scale))) return drawing(STEP_WIDTH, STEP_HEIGHT, words, words, "");
  const middle = STEP_HEIGHT / 2;
  const y = (value: number) => middle - (value / scale) * (middle - 4);
  const [from, to] = [10, STEP_WIDTH - 10];
  const strip = rect(2, y(spread), STEP_WIDTH - 4, y(-spread) - y(spread), {
    fill: TOKENS.faint,
    "fill-opacity": 0.35,
  });
  const moved = change === "up" || change === "down";
  return drawing(
    STEP_WIDTH,
    STEP_HEIGHT,
    words,
    words,
    strip +
      line(from, y(0), to, y(amount), {
        stroke: moved ? TOKENS.copper : TOKENS.ink,
        "stroke-width": moved ? 1.4 : 0.8,
      }) +
      element("circle", { cx: from, cy: y(0), r: 2.6, fill: TOKENS.paper, stroke: TOKENS.ink, "stroke-width": 1.1 }) +
      element("circle", { cx: to, cy: y(amount), r: 2.6, fill: TOKENS.ink }),
  );
}

function round(value: number): number {
  return Math.round(value * 100) / 100;
}
