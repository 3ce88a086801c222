import { line, rect, text, textWidth } from "./svg.ts";
import { TOKENS } from "./tokens.ts";

type At = readonly [number, number];
type Box = readonly [left: number, top: number, right: number, bottom: number];

function doOverlap(a: Box, b: Box): boolean {
  return a[0] < b[2] && b[0] < a[2] && a[1] < b[3] && b[1] < a[3];
}

/** A free place for words near a spot, or `over` it where that is free, inside the frame and clear of what is taken; undefined where there is none. */
export function place(
  [x, y]: At,
  width: number,
  high: number,
  frame: Box,
  taken: readonly Box[],
  over = false,
): Box | undefined {
  for (let ring = 0; ring < 16; ring++) {
    const away = 8 + ring * 9;
    const spots: At[] = [
      ...(over && ring === 0 ? [[x - width / 2, y - high / 2] as const] : []),
      [x + away, y - high / 2],
      [x - away - width, y - high / 2],
      [x - width / 2, y - away - high],
      [x - width / 2, y + away],
      [x + away, y - away - high],
      [x + away, y + away],
      [x - away - width, y - away - high],
      [x - away - width, y + away],
    ];
    for (const [left, top] of spots) {
      const box: Box = [left, top, left + width, top + high];
      if (box[0] < frame[0] || box[1] < frame[1] || box[2] > frame[2] || box[3] > frame[3]) continue;
      if (!taken.some((other) => doOverlap(box, other))) return box;
    }
  }
  return undefined;
}

/** A dimension line with end strokes and its words in the middle, on paper so that they read across lines. */
export function dimension(from: At, to: At, words: string): { readonly svg: string; readonly box: Box } {
  const [dx, dy] = [to[0] - from[0], to[1] - from[1]];
  const size = Math.hypot(dx, dy) || 1;
  const [nx, ny] = [(-dy / size) * 4, (dx / size) * 4];
  const pen = { stroke: TOKENS.ink, "stroke-width": 0.7 };
  const [x, y] = [(from[0] + to[0]) / 2, (from[1] + to[1]) / 2];
  const width = textWidth(words, TOKENS.small) + 6;
  const box: Box = [x - width / 2, y - 6, x + width / 2, y + 6];
  return {
    svg:
      line(from[0], from[1], to[0], to[1], pen) +
      [from, to].map(([a, b]) => line(a - nx, b - ny, a + nx, b + ny, pen)).join("") +
      rect(box[0], box[1], width, 12, { fill: TOKENS.paper }) +
      text(x, y + 3, words, { "font-size": TOKENS.small, "text-anchor": "middle" }),
    box,
  };
}

/** A bar of one metre or a round multiple or part of it, with its length beside. */
export function scaleBar(x: number, y: number, scale: number): string {
  const metres = [0.1, 0.25, 0.5, 1, 2, 5, 10, 20, 50, 100].find((one) => one * scale >= 40) ?? 200;
  const length = metres * scale;
  return (
    rect(x, y - 2, length / 2, 4, { fill: TOKENS.ink }) +
    rect(x, y - 2, length, 4, { fill: "none", stroke: TOKENS.ink, "stroke-width": 0.8 }) +
    text(x + length + 6, y + 3, `${metres} m`, { "font-size": TOKENS.small })
  );
}
