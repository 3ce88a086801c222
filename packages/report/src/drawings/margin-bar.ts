import type { Verdict } from "@good-grounds/core";
import { drawing, element, line, rect } from "./svg.ts";
import { TOKENS } from "./tokens.ts";

/** What a margin bar shows. All values in the same unit. */
export interface MarginBar {
  readonly value: number;
  readonly low: number;
  readonly high: number;
  readonly limit: number;
  /** Ends of the limit's own band; the same as the limit where it is one figure. */
  readonly limitLow: number;
  readonly limitHigh: number;
  readonly relation: "at-most" | "at-least" | "agrees-with" | "not-below" | "not-above";
  readonly verdict: Verdict;
  /** What the bar says, for readers who do not see it. */
  readonly words: string;
}

const WIDTH = 120;
const HEIGHT = 14;
/** Room at both ends, so that a mark at the end of the scale is still whole. */
const EDGE = 5;
/** The scale ends at this multiple of the limit; what lies beyond points out of the drawing. */
const SCALE_END = 1.6;

/**
 * Reading and limit, each with its band, on one scale from nothing. The forbidden side of the limit is hatched by fine strokes, so that
 * the drawing reads without colour; the reading is solid when met, open when the verdict is.
 */
export function marginBar(bar: MarginBar): string {
  const { value, low, high, limit, limitLow, limitHigh, relation, verdict, words } = bar;
  if (!(limit > 0) || !Number.isFinite(limit)) return drawing(WIDTH, HEIGHT, words, words, "");
  const end = limit * SCALE_END;
  const at = (quantity: number) => EDGE + Math.min(1, Math.max(0, quantity / end)) * (WIDTH - 2 * EDGE);
  const middle = HEIGHT / 2;
  const mark = at(limit);
  const forbidden =
    relation === "at-least" || relation === "not-below" ? ([EDGE, mark] as const) : ([mark, WIDTH - EDGE] as const);
  const strokes: string[] = [];
  if (relation !== "agrees-with") {
    for (let x = forbidden[0] + 2; x < forbidden[1]; x += 4) {
      strokes.push(line(x, middle + 4, x + 2, middle - 4, { stroke: TOKENS.rule, "stroke-width": 0.6 }));
    }
  }
  const base = line(EDGE, middle, WIDTH - EDGE, middle, { stroke: TOKENS.rule, "stroke-width": 0.8 });
  const band =
    high > low
      ? rect(at(low), middle - 2, Math.max(1, at(high) - at(low)), 4, { fill: TOKENS.faint, "fill-opacity": 0.55 })
      : "";
  const limitBand =
    limitHigh > limitLow
      ? rect(at(limitLow), middle - 5, Math.max(1, at(limitHigh) - at(limitLow)), 10, {
          fill: TOKENS.copper,
          "fill-opacity": 0.22,
        })
      : "";
  const limitLine = line(mark, 1, mark, HEIGHT - 1, { stroke: TOKENS.copper, "stroke-width": 1.6 });
  const solid = verdict === "met" || verdict === "not-met";
  const dot =
    value > end
      ? element("path", {
          d: `M${WIDTH - 8} ${middle - 4}L${WIDTH - 1} ${middle}L${WIDTH - 8} ${middle + 4}Z`,
          fill: TOKENS.ink,
        })
      : element("circle", {
          cx: at(value),
          cy: middle,
          r: 3,
          fill: solid ? TOKENS.ink : TOKENS.paper,
          stroke: TOKENS.ink,
          "stroke-width": 1.2,
        });
  return drawing(WIDTH, HEIGHT, words, words, strokes.join("") + limitBand + base + band + limitLine + dot);
}
