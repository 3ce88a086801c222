import type { RingDrawing, RingDrawingPoint, RingDrawingReading } from "./ring-drawing.ts";
import { CLOSING, EDGE, HEADING, HEIGHT, NAMES, RING_FOOT, WIDTH, within, x } from "./ring-layout.ts";
import { markPart } from "./ring-marks.ts";
import { readings } from "./ring-strip.ts";
import { drawing, element, fitted, line, text, textWidth } from "./svg.ts";
import { TOKENS } from "./tokens.ts";

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

const MOST_MARKS = 3;

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
