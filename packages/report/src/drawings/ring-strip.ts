import type { RingDrawingPoint, RingDrawingReading } from "./ring-drawing.ts";
import { EDGE, STRIP_FOOT, STRIP_TOP, WIDTH, x } from "./ring-layout.ts";
import { element, line, text, textWidth } from "./svg.ts";
import { TOKENS } from "./tokens.ts";

const KINDS = [
  { key: "lineNeutral", words: "line to neutral", dash: {}, solid: true },
  { key: "lineCpc", words: "line to cpc", dash: { "stroke-dasharray": "4 2" }, solid: false },
] as const;

/** The strip: dots for what was read, with two deviations either way, and lines for what is expected. */
export function readings(points: readonly RingDrawingPoint[]): readonly string[] {
  const finite = points
    .flatMap(({ lineNeutral, lineCpc }) => [lineNeutral.shown, lineNeutral.expected, lineCpc.shown, lineCpc.expected])
    .filter((value) => Number.isFinite(value) && value >= 0);
  const top = finite.length === 0 ? 1 : Math.max(0.1, ...finite) * 1.08;
  const y = (value: number) =>
    Number.isFinite(value) ? STRIP_FOOT - Math.min(1, Math.max(0, value / top)) * (STRIP_FOOT - STRIP_TOP) : OPEN_AT;
  const found = [
    line(EDGE, STRIP_FOOT, WIDTH - EDGE, STRIP_FOOT, { stroke: TOKENS.rule, "stroke-width": 0.8 }),
    line(EDGE, STRIP_TOP, EDGE, STRIP_FOOT, { stroke: TOKENS.rule, "stroke-width": 0.8 }),
    ...scale(top, y),
    ...legend(),
  ];
  if (points.some(({ lineNeutral, lineCpc }) => lineNeutral.shown === OPEN || lineCpc.shown === OPEN)) {
    found.push(text(EDGE - 4, OPEN_AT + 3, "open", { "font-size": TOKENS.small, "text-anchor": "end" }));
  }
  for (const { key, dash, solid } of KINDS) {
    const course = points.filter((point) => Number.isFinite(point[key].expected));
    course.slice(1).forEach((point, i) => {
      const before = course[i] as RingDrawingPoint;
      found.push(
        line(x(before.at), y(before[key].expected), x(point.at), y(point[key].expected), {
          "stroke-width": 0.9,
          stroke: TOKENS.faint,
          ...dash,
        }),
      );
    });
    for (const point of points) found.push(...readingPart(point[key], x(point.at), y, solid));
  }
  return found;
}

const OPEN = Number.POSITIVE_INFINITY;
const OPEN_AT = STRIP_TOP - 9;
/** A reading further from what is expected than this many deviations stands out. */
const STANDS_OUT = 3;

function readingPart(
  reading: RingDrawingReading,
  at: number,
  y: (value: number) => number,
  solid: boolean,
): readonly string[] {
  const { shown, expected, deviation } = reading;
  if (Number.isNaN(shown)) return [];
  const isOff = Math.abs(shown - expected) > STANDS_OUT * deviation || (shown === OPEN) !== (expected === OPEN);
  const stroke = isOff ? TOKENS.copper : TOKENS.ink;
  const whisker =
    Number.isFinite(shown) && deviation > 0
      ? [line(at, y(shown - 2 * deviation), at, y(shown + 2 * deviation), { stroke, "stroke-width": 0.7 })]
      : [];
  const look = { fill: solid ? stroke : TOKENS.paper, stroke, "stroke-width": 1.1 };
  return [...whisker, element("circle", { cx: at, cy: y(shown), r: isOff ? 3.4 : 2.5, ...look })];
}

function scale(top: number, y: (value: number) => number): readonly string[] {
  const step = [0.05, 0.1, 0.2, 0.5, 1, 2, 5, 10, 20, 50, 100, 200, 500].find((one) => top / one <= 5) ?? top / 2;
  const found: string[] = [];
  for (let k = 0; k * step <= top && k <= 5; k++) {
    const words = k * step < 10 ? (k * step).toFixed(2) : String(Math.round(k * step));
    found.push(text(EDGE - 5, y(k * step) + 3, words, { "font-size": TOKENS.small, "text-anchor": "end" }));
    if (k > 0) found.push(line(EDGE - 2, y(k * step), EDGE + 2, y(k * step), { "stroke-width": 0.8 }));
  }
  return found;
}

function legend(): readonly string[] {
  const y = STRIP_FOOT + 22;
  let at = EDGE;
  const found: string[] = [];
  for (const { words, dash, solid } of KINDS) {
    found.push(line(at, y - 3, at + 22, y - 3, { "stroke-width": 0.9, stroke: TOKENS.faint, ...dash }));
    found.push(
      element("circle", {
        cx: at + 11,
        cy: y - 3,
        r: 2.5,
        fill: solid ? TOKENS.ink : TOKENS.paper,
        stroke: TOKENS.ink,
        "stroke-width": 1.1,
      }),
    );
    found.push(text(at + 28, y, words, { "font-size": TOKENS.small }));
    at += 28 + textWidth(words, TOKENS.small) + 18;
  }
  found.push(text(at, y, "dots: read, in Ω; lines: expected", { "font-size": TOKENS.small }));
  return found;
}
