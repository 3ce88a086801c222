import type { RingDrawingMark, RingDrawingPoint } from "./ring-drawing.ts";
import { RING_FOOT, RING_TOP, WIDTH, x } from "./ring-layout.ts";
import { element, fitted, line, text, textWidth } from "./svg.ts";
import { TOKENS } from "./tokens.ts";

const COPPER = { stroke: TOKENS.copper, "stroke-width": 1.8, fill: "none" } as const;
/** Each mark has a row of its own for its label above the ring, the first one nearest to it. */
export function markPart(mark: RingDrawingMark, points: readonly RingDrawingPoint[], row: number): string {
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

function n(value: number): string {
  return String(Math.round(value * 100) / 100);
}
