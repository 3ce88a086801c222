import { VERDICT } from "../locales/labels.ts";
import { dimension, place, scaleBar } from "./reach-marks.ts";
import { drawing, element, fitted, line, rect, text, textWidth } from "./svg.ts";
import { TOKENS } from "./tokens.ts";

type At = readonly [x: number, y: number];

/** How a part stands to the reach volume. */
export type ReachState = "out" | "within" | "too-near" | "not-known";

/** What a drawing of arm's reach shows: one cut, in metres, y upwards. Plain data, worked out elsewhere. */
export interface ReachDrawing {
  readonly title: string;
  readonly view: "plan" | "elevation";
  /** What is drawn, in the cut's coordinates. */
  readonly low: At;
  readonly high: At;
  /** Outline of the reach volume, as short lines. */
  readonly reach: readonly (readonly [At, At])[];
  /** Standing surfaces: outlines in plan, level lines in elevation. */
  readonly surfaces: readonly { readonly name: string; readonly corners: readonly At[] }[];
  /** Barriers: the two ends of a line, or the corners of a rectangle seen from the side. */
  readonly barriers: readonly { readonly name: string; readonly corners: readonly At[]; readonly closes: boolean }[];
  readonly parts: readonly {
    readonly name: string;
    /** A point, the two ends of a line, or the corners of a box. */
    readonly corners: readonly At[];
    readonly state: ReachState;
    /** Distance outside the volume, m; negative inside. */
    readonly clearance: number;
  }[];
  readonly dimensions: readonly { readonly from: At; readonly to: At; readonly words: string }[];
}

const WIDTH = 520;
const MARGIN = 26;
const TOP = 30;
const FOOT = 62;
const KEY_ROW = 13;
const KEY_COLUMN = (520 - 2 * 26) / 2;
const MOST_HEIGHT = 460;

const STATE_WORDS: Readonly<Record<ReachState, string>> = Object.freeze({
  out: "out of reach",
  within: "within reach",
  "too-near": VERDICT["too-near"],
  "not-known": VERDICT["not-known"],
});

/** The words of a part in the key: name, state, and the distance where it tells something. */
function partWords({ name, state, clearance }: ReachDrawing["parts"][number]): string {
  const size = `${Math.abs(clearance).toFixed(2)} m`;
  const how = state === "not-known" ? "" : clearance < 0 ? `, ${size} inside` : `, ${size} outside`;
  return `${name}: ${STATE_WORDS[state]}${how}`;
}

/**
 * Arm's reach in plan or elevation, to scale: the volume as a broken copper outline, surfaces hatched, barriers as heavy
 * lines (solid where they close the way of a hand, open where they do not), parts as numbered marks whose shape tells how
 * they stand to the volume. The key below says the same in words; the drawing reads without colour.
 */
export function armsReachDrawing(data: ReachDrawing): string {
  const [across, up] = [Math.max(data.high[0] - data.low[0], 0.1), Math.max(data.high[1] - data.low[1], 0.1)];
  const scale = Math.min((WIDTH - 2 * MARGIN) / across, MOST_HEIGHT / up);
  const left = (WIDTH - across * scale) / 2;
  const bottom = TOP + up * scale;
  const rows = Math.ceil(data.parts.length / 2);
  const height = bottom + FOOT + rows * KEY_ROW;
  const to = ([x, y]: At): At => [
    left + (Math.min(Math.max(x, data.low[0]), data.high[0]) - data.low[0]) * scale,
    bottom - (Math.min(Math.max(y, data.low[1]), data.high[1]) - data.low[1]) * scale,
  ];
  const taken: Box[] = [];
  const frame: Box = [4, TOP - 6, WIDTH - 4, bottom + 4];
  for (const { corners } of data.parts) {
    const [x, y] = middle(corners.map(to));
    taken.push([x - 6, y - 6, x + 6, y + 6]);
  }
  const parts = data.parts.map((part) => {
    const at = corners(part.corners.map(to));
    return at + mark(part.state, middle(part.corners.map(to)));
  });
  const dimensions = data.dimensions.map(({ from, to: end, words }) => {
    const drawn = dimension(to(from), to(end), words);
    taken.push(drawn.box);
    return drawn.svg;
  });
  if (data.view === "elevation") for (const { corners: all } of data.surfaces) taken.push(...alongLine(all.map(to)));
  for (const { corners: all } of data.barriers) taken.push(...alongLine(all.map(to)));
  const labels = named(data, to).map(({ at, words, bold, over }) => label(at, words, { bold, over }, frame, taken));
  const inner = [
    rect(0, 0, WIDTH, height, { fill: TOKENS.paper }),
    text(MARGIN, 18, fitted(`${data.title}, ${data.view}`, WIDTH - 2 * MARGIN, 12), {
      "font-size": 12,
      "font-weight": 700,
    }),
    ...data.surfaces.map(({ corners: all }) => surface(all.map(to), data.view)),
    outline(data.reach.map(([a, b]) => [to(a), to(b)] as const)),
    ...data.barriers.map(({ corners: all, closes }) => barrier(all.map(to), closes)),
    ...dimensions,
    ...parts,
    ...labels,
    scaleBar(MARGIN, bottom + 22, scale),
    legend(bottom + 44),
    ...data.parts.map((part, i) => keyRow(part, i, rows, bottom + FOOT)),
  ].join("");
  return drawing(WIDTH, height, `${data.title}, ${data.view}`, describedIn(data, across, up), inner);
}

/** What is written into the drawing, and where each belongs; `over` may lie over its spot where that is free. */
function named(data: ReachDrawing, to: (at: At) => At) {
  return [
    ...data.parts.map((part, i) => ({
      at: middle(part.corners.map(to)),
      words: String(i + 1),
      bold: true,
      over: false,
    })),
    ...data.surfaces.map(({ name, corners: all }) => {
      const [x, y] = middle(all.map(to));
      const words = fitted(name, 110, TOKENS.small);
      // In plan over the middle of the surface, from the side just below its line.
      const drop = data.view === "plan" ? 0 : 16;
      return { at: [x, y + drop] as const, words, bold: false, over: true };
    }),
    ...data.barriers.map(({ name, corners: all, closes }) => ({
      at: middle(all.map(to)),
      words: `${fitted(name, 90, TOKENS.small)}${closes ? "" : ", below IP2X"}`,
      bold: false,
      over: all.length > 2,
    })),
  ];
}

/** The drawing in words. */
function describedIn(data: ReachDrawing, across: number, up: number): string {
  return [
    `${data.view === "plan" ? "Seen from above" : "Seen from the side"}, ${across.toFixed(1)} m by ${up.toFixed(1)} m`,
    ...data.parts.map(partWords),
    ...data.surfaces.map(({ name }) => `Standing surface ${name}`),
    ...data.barriers.map(({ name, closes }) => `Barrier ${name}, ${closes ? "IP2X or better" : "less than IP2X"}`),
    ...data.dimensions.map(({ words }) => words),
  ].join(". ");
}

type Box = readonly [left: number, top: number, right: number, bottom: number];

function middle(spots: readonly At[]): At {
  const count = Math.max(1, spots.length);
  return [spots.reduce((sum, [x]) => sum + x, 0) / count, spots.reduce((sum, [, y]) => sum + y, 0) / count];
}

function path(spots: readonly At[], close: boolean): string {
  return `M${spots.map(([x, y]) => `${x.toFixed(1)} ${y.toFixed(1)}`).join("L")}${close ? "Z" : ""}`;
}

function corners(spots: readonly At[]): string {
  if (spots.length < 2) return "";
  return element("path", { d: path(spots, spots.length > 2), fill: "none", stroke: TOKENS.ink, "stroke-width": 1.8 });
}

/** The outline in one path, broken, so that it is told from edges without its colour. */
function outline(lines: readonly (readonly [At, At])[]): string {
  if (lines.length === 0) return "";
  return chained(lines)
    .map((spots) =>
      element("path", {
        d: path(spots, false),
        fill: "none",
        stroke: TOKENS.copper,
        "stroke-width": 1.5,
        "stroke-dasharray": "6 3",
      }),
    )
    .join("");
}

/** Short lines joined end to end where they meet. */
function chained(lines: readonly (readonly [At, At])[]): readonly (readonly At[])[] {
  const key = ([x, y]: At) => `${Math.round(x * 20)},${Math.round(y * 20)}`;
  const ends = new Map<string, Set<number>>();
  for (const [i, pair] of lines.entries())
    for (const end of pair) ends.set(key(end), (ends.get(key(end)) ?? new Set()).add(i));
  const left = new Set(lines.keys());
  const chains: At[][] = [];
  for (const first of lines.keys()) {
    if (!left.delete(first)) continue;
    const chain = [...(lines[first] as readonly [At, At])];
    for (const front of [false, true]) {
      for (;;) {
        const end = (front ? chain[0] : chain.at(-1)) as At;
        const next = [...(ends.get(key(end)) ?? [])].find((i) => left.has(i));
        if (next === undefined) break;
        left.delete(next);
        const [a, b] = lines[next] as readonly [At, At];
        const on = key(a) === key(end) ? b : a;
        if (front) chain.unshift(on);
        else chain.push(on);
      }
    }
    chains.push(chain);
  }
  return chains;
}

function surface(spots: readonly At[], view: ReachDrawing["view"]): string {
  if (view === "plan")
    return element("path", {
      d: path(spots, true),
      fill: TOKENS.rule,
      "fill-opacity": 0.35,
      stroke: TOKENS.ink,
      "stroke-width": 1.2,
    });
  const [from, end] = [spots[0], spots.at(-1)];
  if (from === undefined || end === undefined) return "";
  const strokes: string[] = [line(from[0], from[1], end[0], end[1], { "stroke-width": 2 })];
  const [left, right] = [Math.min(from[0], end[0]), Math.max(from[0], end[0])];
  for (let x = left + 6; x <= right; x += 7)
    strokes.push(line(x, from[1] + 1, x - 4, from[1] + 6, { stroke: TOKENS.faint, "stroke-width": 0.7 }));
  return strokes.join("");
}

/** A barrier as a heavy line; from the side as a frame, with strokes across it where it closes the way. */
function barrier(spots: readonly At[], closes: boolean): string {
  const [from, end] = [spots[0], spots[1]];
  if (from === undefined || end === undefined) return "";
  if (spots.length > 2) {
    const dash = closes ? {} : { "stroke-dasharray": "3 2" };
    return element("path", {
      d: path(spots, true),
      fill: TOKENS.ink,
      "fill-opacity": closes ? 0.18 : 0,
      stroke: TOKENS.ink,
      "stroke-width": 1.4,
      ...dash,
    });
  }
  const heavy = line(from[0], from[1], end[0], end[1], { "stroke-width": 4 });
  const gaps = { stroke: TOKENS.paper, "stroke-width": 2, "stroke-dasharray": "3 2" };
  return closes ? heavy : heavy + line(from[0], from[1], end[0], end[1], gaps);
}

/** Small boxes along a line, so that words keep off it. */
function alongLine(spots: readonly At[]): readonly Box[] {
  const [from, end] = [spots[0], spots[1]];
  if (from === undefined || end === undefined || spots.length > 2) return [];
  const count = Math.max(1, Math.ceil(Math.hypot(end[0] - from[0], end[1] - from[1]) / 8));
  return Array.from({ length: count + 1 }, (_, i): Box => {
    const [x, y] = [from[0] + ((end[0] - from[0]) * i) / count, from[1] + ((end[1] - from[1]) * i) / count];
    return [x - 3, y - 3, x + 3, y + 3];
  });
}

/** One part in the key: its mark, its number and how it stands to the volume. */
function keyRow(part: ReachDrawing["parts"][number], i: number, rows: number, top: number): string {
  const [x, y] = [MARGIN + Math.floor(i / rows) * KEY_COLUMN, top + (i % rows) * KEY_ROW];
  const words = partWords({ ...part, name: fitted(part.name, 76, TOKENS.small) });
  return (
    text(x + 10, y + 3, String(i + 1), { "font-size": TOKENS.small, "font-weight": 700, "text-anchor": "end" }) +
    mark(part.state, [x + 20, y]) +
    text(x + 29, y + 3, fitted(words, KEY_COLUMN - 34, TOKENS.small), { "font-size": TOKENS.small })
  );
}

/** Out: an open circle. Within: a solid square with a cross bar through it. Too near: a half filled diamond. */
function mark(state: ReachState, [x, y]: At): string {
  const pen = { stroke: TOKENS.ink, "stroke-width": 1.4 };
  switch (state) {
    case "out":
      return element("circle", { cx: x, cy: y, r: 4.5, fill: TOKENS.paper, ...pen });
    case "within":
      return (
        rect(x - 4.5, y - 4.5, 9, 9, { fill: TOKENS.ink, ...pen }) +
        line(x - 3, y - 3, x + 3, y + 3, { stroke: TOKENS.paper }) +
        line(x - 3, y + 3, x + 3, y - 3, { stroke: TOKENS.paper })
      );
    case "too-near":
      return (
        element("path", {
          d: path(
            [
              [x, y - 5.5],
              [x + 5.5, y],
              [x, y + 5.5],
              [x - 5.5, y],
            ],
            true,
          ),
          fill: TOKENS.paper,
          ...pen,
        }) +
        element("path", {
          d: path(
            [
              [x, y - 5.5],
              [x, y + 5.5],
              [x - 5.5, y],
            ],
            true,
          ),
          fill: TOKENS.ink,
        })
      );
    case "not-known":
      return element("circle", { cx: x, cy: y, r: 4.5, fill: TOKENS.paper, ...pen, "stroke-dasharray": "2 1.5" });
  }
}

/** Words in the first free place round a spot; with a fine line back to it where that is further off. */
function label(
  [x, y]: At,
  words: string,
  { bold, over }: { readonly bold: boolean; readonly over: boolean },
  frame: Box,
  taken: Box[],
): string {
  const width = textWidth(words, TOKENS.small) * (bold ? 1.08 : 1) + 4;
  const high = TOKENS.small + 3;
  const found = place([x, y], width, high, frame, taken, over);
  if (found === undefined) return "";
  taken.push(found);
  const [left, top, right] = found;
  const nearest: At = [Math.min(Math.max(x, left), right), Math.min(Math.max(y, top), top + high)];
  const far = Math.hypot(nearest[0] - x, nearest[1] - y) > 14;
  const lead = far ? line(x, y, nearest[0], nearest[1], { stroke: TOKENS.faint, "stroke-width": 0.6 }) : "";
  return (
    lead +
    rect(left, top, right - left, high, { fill: TOKENS.paper, "fill-opacity": 0.85 }) +
    text(left + 2, top + high - 3.5, words, { "font-size": TOKENS.small, ...(bold ? { "font-weight": 700 } : {}) })
  );
}

function legend(y: number): string {
  const marks = (["out", "within", "too-near", "not-known"] as const).map(
    (state, i) =>
      mark(state, [MARGIN + 5 + i * 98, y]) +
      text(MARGIN + 14 + i * 98, y + 3, STATE_WORDS[state], { "font-size": TOKENS.small }),
  );
  const x = MARGIN + 4 * 98;
  return (
    marks.join("") +
    line(x, y, x + 22, y, { stroke: TOKENS.copper, "stroke-width": 1.5, "stroke-dasharray": "6 3" }) +
    text(x + 26, y + 3, "limit of reach", { "font-size": TOKENS.small })
  );
}
