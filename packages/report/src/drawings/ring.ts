import { drawing, element, fitted, line, text, textWidth } from "./svg.ts";
import { TOKENS } from "./tokens.ts";

/** One reading at a point of a ring beside what the explanation leads to expect, Ω; infinite for open, NaN where not taken. */
interface RingDrawingReading {
  readonly shown: number;
  readonly expected: number;
  /** Standard deviation of the reading's error, Ω. */
  readonly deviation: number;
}

/** A point of the ring in its order. */
export interface RingDrawingPoint {
  readonly name: string;
  /** Place by parts of the ring's length, 0 to 1. */
  readonly at: number;
  readonly lineNeutral: RingDrawingReading;
  readonly lineCpc: RingDrawingReading;
}

/** A mark on the ring. */
export type RingDrawingMark =
  /** A break, a joint or a crossing that lies somewhere between two places. */
  | {
      readonly kind: "break" | "joint" | "crossed";
      readonly low: number;
      readonly value: number;
      readonly high: number;
      readonly label: string;
    }
  /** A cable from one place to another. */
  | { readonly kind: "bridge"; readonly from: number; readonly to: number; readonly label: string }
  /** Something at one point, by its number from 0: a spur, or connections that are not right. */
  | { readonly kind: "spur" | "point"; readonly point: number; readonly label: string };

/** A ring with its readings and what explains them. */
export interface RingDrawing {
  readonly circuit: string;
  readonly points: readonly RingDrawingPoint[];
  readonly marks: readonly RingDrawingMark[];
  /** The explanation in a few words, and how sure it is. */
  readonly words: string;
  /** Length of the ring, m; NaN where it is not known. */
  readonly metres: number;
}

const WIDTH = 460;
const EDGE = 46;
const SPAN = WIDTH - 2 * EDGE;
const HEADING = 16;
/** The ring stands above the strip of readings; both share one scale of length. */
const RING_TOP = 74;
const RING_FOOT = 110;
const NAMES = 127;
/** The board closes the ring below the names. */
const CLOSING = 139;
const STRIP_TOP = 168;
const STRIP_FOOT = 260;
const HEIGHT = 294;
const MOST_DRAWN = 60;

/**
 * The ring with its points in order, opened out along its length with the board at both ends; what is found is marked in
 * copper where it lies, with the stretch it may lie in. Below, on the same scale, every reading as a dot beside the line
 * of what is expected, line to neutral solid and line to cpc broken, so that one picture shows fault and evidence.
 */
export function ringDrawing(ring: RingDrawing): string {
  const points = ring.points.slice(0, MOST_DRAWN).map((point) => ({ ...point, at: within(point.at) }));
  const parts = [
    text(EDGE - 34, HEADING, fitted(ring.circuit, WIDTH - 104), { "font-weight": 600 }),
    text(EDGE - 34, HEADING + 14, fitted(ring.words, WIDTH - 24, TOKENS.small), { "font-size": TOKENS.small }),
    ...cable(ring),
    ...ring.marks.slice(0, MOST_MARKS).map((mark, i) => markPart(mark, points, i)),
    ...points.map(({ at }) => socket(x(at))),
    ...names(points),
    ...readings(points),
  ];
  const left = ring.points.length - points.length;
  const described = ring.points.map(
    ({ name, lineNeutral, lineCpc }) => `${name}: line to neutral ${said(lineNeutral)}, line to cpc ${said(lineCpc)}`,
  );
  const more = left > 0 ? ` ${left} further points are not drawn.` : "";
  return drawing(
    WIDTH,
    HEIGHT,
    `Ring of ${ring.circuit}: ${ring.words}`,
    `${described.join("; ")}.${more}`,
    parts.join(""),
  );
}

const COPPER = { stroke: TOKENS.copper, "stroke-width": 1.8, fill: "none" } as const;
const MOST_MARKS = 3;

function within(at: number): number {
  return Number.isFinite(at) ? Math.min(1, Math.max(0, at)) : 0;
}

function x(at: number): number {
  return EDGE + within(at) * SPAN;
}

function said({ shown, expected }: RingDrawingReading): string {
  if (Number.isNaN(shown)) return "not taken";
  return `${ohms(shown)} read, ${ohms(expected)} expected`;
}

function ohms(value: number): string {
  return Number.isFinite(value) ? `${value.toFixed(2)} Ω` : "open";
}

/** The cable opened out, outgoing end left and returning end right, and the board that closes it. */
function cable({ metres }: RingDrawing): readonly string[] {
  const [left, right] = [EDGE, WIDTH - EDGE];
  const end = (at: number) =>
    element("rect", { x: at - 7, y: RING_FOOT - 11, width: 14, height: 22, fill: TOKENS.ink });
  const small = { "font-size": TOKENS.small } as const;
  const half = textWidth("board", TOKENS.small) / 2 + 5;
  const closing = (from: number, to: number) => line(from, CLOSING, to, CLOSING, { "stroke-width": 1 });
  const found = [
    line(left, RING_FOOT, right, RING_FOOT, { "stroke-width": 2.4 }),
    end(left - 7),
    end(right + 7),
    line(left - 7, RING_FOOT, left - 7, CLOSING),
    line(right + 7, RING_FOOT, right + 7, CLOSING),
    closing(left - 7, WIDTH / 2 - half),
    closing(WIDTH / 2 + half, right + 7),
    text(WIDTH / 2, CLOSING + 3, "board", { ...small, "text-anchor": "middle" }),
    text(left - 17, RING_FOOT + 3, "out", { ...small, "text-anchor": "end" }),
    text(right + 17, RING_FOOT + 3, "back", small),
  ];
  if (Number.isFinite(metres) && metres > 0) {
    found.push(
      text(WIDTH - 12, HEADING, fitted(`about ${Math.round(metres)} m`, 72, TOKENS.small), {
        ...small,
        "text-anchor": "end",
      }),
    );
  }
  return found;
}

function socket(at: number): string {
  return element("circle", {
    cx: at,
    cy: RING_FOOT,
    r: 3.6,
    fill: TOKENS.paper,
    stroke: TOKENS.ink,
    "stroke-width": 1.4,
  });
}

/** Names under the points, as many as stand clear of each other. */
function names(points: readonly RingDrawingPoint[]): readonly string[] {
  const found: string[] = [];
  let free = EDGE + 4;
  const end = WIDTH - EDGE - 4;
  points.forEach(({ name, at }, i) => {
    // Where names are long or close, the number of the point stands for it.
    const words = textWidth(name, TOKENS.small) <= 34 ? name : String(i + 1);
    const half = textWidth(words, TOKENS.small) / 2;
    const middle = Math.min(Math.max(x(at), EDGE + 4 + half), end - half);
    if (middle - half < free) return;
    free = middle + half + 3;
    found.push(text(middle, NAMES, words, { "font-size": TOKENS.small, "text-anchor": "middle" }));
  });
  return found;
}

/** Each mark has a row of its own for its label above the ring, the first one nearest to it. */
function markPart(mark: RingDrawingMark, points: readonly RingDrawingPoint[], row: number): string {
  const y = RING_TOP - row * 13;
  if (mark.kind === "bridge") {
    const [a, b] = [x(Math.min(mark.from, mark.to)), x(Math.max(mark.from, mark.to))];
    const top = y + 6;
    const path = element("path", {
      d: `M${n(a)} ${RING_FOOT}L${n(a)} ${n(top)}L${n(b)} ${n(top)}L${n(b)} ${RING_FOOT}`,
      ...COPPER,
    });
    return path + dot(a) + dot(b) + label(mark.label, (a + b) / 2, y);
  }
  if ("low" in mark) return stretch(mark, y);
  const at = x(points[mark.point]?.at ?? 0);
  const top = y + 6;
  const stem = line(at, RING_FOOT, at, top, {
    ...COPPER,
    ...(mark.kind === "point" ? { "stroke-dasharray": "2 2" } : {}),
  });
  const end = mark.kind === "spur" ? element("circle", { cx: at, cy: top, r: 3, fill: TOKENS.copper }) : "";
  const around = mark.kind === "point" ? element("circle", { cx: at, cy: RING_FOOT, r: 7, ...COPPER }) : "";
  return stem + end + around + label(mark.label, at, y - (mark.kind === "spur" ? 2 : 0));
}

function stretch(mark: Extract<RingDrawingMark, { low: number }>, y: number): string {
  const [low, at, high] = [x(Math.min(mark.low, mark.high)), x(mark.value), x(Math.max(mark.low, mark.high))];
  const band = element("rect", {
    x: low,
    y: RING_FOOT - 9,
    width: Math.max(0.5, high - low),
    height: 18,
    fill: TOKENS.copper,
    "fill-opacity": 0.18,
    stroke: TOKENS.copper,
    "stroke-width": 0.8,
    "stroke-dasharray": "3 2",
  });
  return (
    band +
    symbol(mark.kind, at) +
    line(at, RING_FOOT - 11, at, y + 5, { ...COPPER, "stroke-width": 0.8 }) +
    label(mark.label, at, y)
  );
}

/** Break: the cable is cut by two slanting strokes. Joint: a resistor's box. Crossing: a cross. */
function symbol(kind: "break" | "joint" | "crossed", at: number): string {
  const stroke = { stroke: TOKENS.copper, "stroke-width": 2 } as const;
  if (kind === "joint") {
    return element("rect", {
      x: at - 6,
      y: RING_FOOT - 4,
      width: 12,
      height: 8,
      fill: TOKENS.paper,
      stroke: TOKENS.copper,
      "stroke-width": 1.8,
    });
  }
  if (kind === "crossed") {
    return (
      line(at - 5, RING_FOOT - 6, at + 5, RING_FOOT + 6, stroke) +
      line(at - 5, RING_FOOT + 6, at + 5, RING_FOOT - 6, stroke)
    );
  }
  const gap = element("rect", { x: at - 3, y: RING_FOOT - 3, width: 6, height: 6, fill: TOKENS.paper });
  return (
    gap +
    line(at - 5, RING_FOOT + 7, at - 1, RING_FOOT - 7, stroke) +
    line(at + 1, RING_FOOT + 7, at + 5, RING_FOOT - 7, stroke)
  );
}

function dot(at: number): string {
  return element("circle", { cx: at, cy: RING_FOOT, r: 2.4, fill: TOKENS.copper });
}

/** A label centred on a place, moved as far as the frame asks. */
function label(words: string, at: number, y: number): string {
  const shown = fitted(words, WIDTH - 24, TOKENS.small);
  const half = textWidth(shown, TOKENS.small) / 2;
  const middle = Math.min(Math.max(at, 8 + half), WIDTH - 8 - half);
  return text(middle, y, shown, {
    "font-size": TOKENS.small,
    "text-anchor": "middle",
    fill: TOKENS.copper,
    "font-weight": 600,
  });
}

const KINDS = [
  { key: "lineNeutral", words: "line to neutral", dash: {}, solid: true },
  { key: "lineCpc", words: "line to cpc", dash: { "stroke-dasharray": "4 2" }, solid: false },
] as const;

/** The strip: dots for what was read, with two deviations either way, and lines for what is expected. */
function readings(points: readonly RingDrawingPoint[]): readonly string[] {
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

function n(value: number): string {
  return String(Math.round(value * 100) / 100);
}
