import {
  type CableDrawing,
  cableSection,
  type DrawnLayer,
  type SectionCore,
  type SectionRing,
} from "./cable-section.ts";
import { drawing, element, fitted, line, text } from "./svg.ts";
import { TOKENS } from "./tokens.ts";

const WIDTH = 390;
const CENTRE_X = 92;
const HALF = 76;
const LABEL_X = 212;
const ROW = 25;
const TOP = 30;
const MOST_ENLARGED = 2;
const FOOT = 8;
const BELOW = 10;

/** A tint of the ink on paper, opaque so that what lies below does not show through. */
const TINT = "#d5d3d2";
const GONE = { fill: TOKENS.paper, stroke: TOKENS.faint, "stroke-width": 1, "stroke-dasharray": "4 3" } as const;
const OUTLINE = { stroke: TOKENS.ink, "stroke-width": 1 } as const;

/**
 * Section of a cable with every layer named. Each kind of layer has its own stroke as well as its tint, so that it reads
 * in black and white: conductors solid, those of protection with a bar, insulation tinted, bedding with a dotted edge,
 * armour and concentric wires as rings of circles, screens as a double line, sheaths dark. Layers that are gone are
 * broken outlines.
 */
export function cableLayers(cable: CableDrawing): string {
  const { name, shape, layers } = cable;
  const { cores, rings } = cableSection(cable, HALF, MOST_ENLARGED);
  const outer = [...rings].reverse();
  const high = halfHeight(shape, outer[0], cores);
  // Below the cable the protective conductor is led out.
  const height = TOP + Math.max(layers.length * ROW, 2 * (high + BELOW)) + FOOT;
  const centreY = TOP + (height - TOP - FOOT) / 2;
  const parts = [
    text(12, 16, fitted(name, WIDTH - 24), { "font-weight": 600 }),
    ...outer.map((ring) => ringPart(ring, shape, centreY)),
    ...cores.map((core) => corePart(core, layers, centreY)),
    ...labels(layers, outer, cores, centreY),
  ];
  const words = layers.map(({ role, of, gone }) => `${role}: ${of}${gone === true ? " (gone)" : ""}`).join("; ");
  return drawing(WIDTH, height, `Section of ${name}`, `From the conductor outwards: ${words}`, parts.join(""));
}

/** From the middle of the section to its upper edge: a round ring is as high as it is wide. */
function halfHeight(shape: Shape, outermost: SectionRing | undefined, cores: readonly SectionCore[]): number {
  if (outermost !== undefined) return shape === "round" ? outermost.wide : outermost.high;
  return Math.max(HALF / 2, ...cores.map(({ y, covered }) => Math.abs(y) + covered));
}

type Shape = CableDrawing["shape"];
type Look = Readonly<Record<string, string | number>>;

function ringPart(ring: SectionRing, shape: Shape, y: number): string {
  const { layer, wide, high } = ring;
  if (layer.gone === true) return oblong(shape, wide, high, y, GONE);
  if (layer.tube === true) return oblong(shape, wide, high, y, { fill: TOKENS.copper, ...OUTLINE });
  switch (layer.role) {
    case "sheath":
      return oblong(shape, wide, high, y, { fill: TOKENS.ink, ...OUTLINE });
    case "armour":
    case "concentric":
      return oblong(shape, wide, high, y, { fill: TOKENS.paper, ...OUTLINE }) + wires(ring, shape, y);
    case "screen":
      return (
        oblong(shape, wide, high, y, { fill: TOKENS.paper, ...OUTLINE }) +
        oblong(shape, wide - 2, high - 2, y, { fill: "none", stroke: TOKENS.ink, "stroke-width": 0.6 })
      );
    case "bedding":
      return oblong(shape, wide, high, y, { fill: TOKENS.paper, ...OUTLINE, "stroke-dasharray": "1 2" });
    default:
      return oblong(shape, wide, high, y, { fill: TINT, ...OUTLINE });
  }
}

function oblong(shape: Shape, wide: number, high: number, y: number, look: Look): string {
  if (shape === "round") return element("circle", { cx: CENTRE_X, cy: y, r: wide, ...look });
  const box = { x: CENTRE_X - wide, y: y - high, width: 2 * wide, height: 2 * high };
  return element("rect", { ...box, rx: high, ry: high, ...look });
}

/** A ring of wires that fills the thickness of its layer, along the outline of the cable. */
function wires({ layer, wide, high, thick }: SectionRing, shape: Shape, middle: number): string {
  const r = thick / 2 - 0.5;
  const bend = (shape === "round" ? wide : high) - thick / 2;
  const straight = shape === "round" ? 0 : 2 * (wide - high);
  const around = 2 * Math.PI * bend + 2 * straight;
  const count = Math.max(6, Math.floor(around / (2 * r + 0.9)));
  return Array.from({ length: count }, (_, i) => {
    const [x, y] = onOutline((i / count) * around, bend, straight);
    return element("circle", {
      cx: CENTRE_X + x,
      cy: middle + y,
      r,
      fill: layer.role === "armour" ? TOKENS.rule : TOKENS.copper,
      stroke: TOKENS.ink,
      "stroke-width": 0.5,
    });
  }).join("");
}

/** A point on two half circles joined by straight sides, so far along from the middle of the right half circle. */
function onOutline(along: number, bend: number, straight: number): readonly [x: number, y: number] {
  const quarter = (Math.PI / 2) * bend;
  if (along < quarter) return bent(1, along / bend);
  if (along < quarter + straight) return [straight / 2 - (along - quarter), bend];
  const left = along - quarter - straight;
  if (left < 2 * quarter) return bent(-1, Math.PI / 2 + left / bend);
  if (left < 2 * quarter + straight) return [left - 2 * quarter - straight / 2, -bend];
  return bent(1, -Math.PI / 2 + (left - 2 * quarter - straight) / bend);

  function bent(side: 1 | -1, angle: number): readonly [number, number] {
    return [(side * straight) / 2 + bend * Math.cos(angle), bend * Math.sin(angle)];
  }
}

function corePart(core: SectionCore, layers: readonly DrawnLayer[], middle: number): string {
  const around = core.live ? "live cores" : "protective conductor";
  const [cx, cy] = [CENTRE_X + core.x, middle + core.y];
  const covering = layers
    .filter((one) => one.around === around && one.role !== "conductor")
    .map(({ role, gone }) => {
      const look = role === "insulation" ? { fill: TINT, ...OUTLINE } : SLEEVE;
      return element("circle", { cx, cy, r: core.covered, ...(gone === true ? GONE : look) });
    });
  const copper = element("circle", { cx, cy, r: core.conductor, fill: TOKENS.copper, ...OUTLINE });
  const half = core.conductor * 0.6;
  const bar = core.live ? "" : line(cx - half, cy, cx + half, cy, { stroke: TOKENS.paper, "stroke-width": 1.6 });
  return covering.join("") + copper + bar;
}

const SLEEVE = { fill: TOKENS.paper, stroke: TOKENS.ink, "stroke-width": 0.9, "stroke-dasharray": "2 2" } as const;

/** One label for each layer, outermost at the top, those of the protective conductor last, each led to its place. */
function labels(
  layers: readonly DrawnLayer[],
  outer: readonly SectionRing[],
  cores: readonly SectionCore[],
  middle: number,
): readonly string[] {
  const inner = [...layers].reverse();
  const ordered = [
    ...outer.map(({ layer }) => layer),
    ...inner.filter(({ around }) => around === "live cores"),
    ...inner.filter(({ around }) => around === "protective conductor"),
  ];
  const live = cores.filter((one) => one.live).sort((a, b) => b.x - a.x)[0];
  const protective = cores.find((one) => !one.live);
  // The protective conductor is led out below the cable, so that its line crosses no core.
  const below = middle + (outer[0]?.high ?? 0) + 5;
  return ordered.map((layer, i) => {
    const at = TOP + i * ROW + 8;
    const way =
      layer.around === "protective conductor" && live !== undefined
        ? underneath(layer, protective, middle, below)
        : [targetOf(layer, outer, layer.around === "protective conductor" ? protective : live, middle)];
    return lead([...way, [LABEL_X - 16, at], [LABEL_X - 5, at]]) + label(layer, at);
  });
}

type Point = readonly [x: number, y: number];

function lead(points: readonly Point[]): string {
  const [from = [0, 0] as const] = points;
  const strokes = points.slice(1).map(([x, y], i) => {
    const [a, b] = points[i] ?? from;
    // A rim of paper keeps the line to be seen where it crosses what is dark.
    return line(a, b, x, y, { stroke: TOKENS.paper, "stroke-width": 2 }) + line(a, b, x, y, { "stroke-width": 0.7 });
  });
  const dot = { r: 1.4, fill: TOKENS.paper, stroke: TOKENS.ink, "stroke-width": 0.7 };
  return strokes.join("") + element("circle", { cx: from[0], cy: from[1], ...dot });
}

function label(layer: DrawnLayer, at: number): string {
  const isEarth = layer.around === "protective conductor" && layer.role === "conductor";
  const heading = `${isEarth ? "protective conductor" : layer.role}${layer.gone === true ? ", gone" : ""}`;
  return (
    text(LABEL_X, at + 1, heading, { "font-weight": 600 }) +
    text(LABEL_X, at + 11, fitted(layer.of, WIDTH - LABEL_X - 6, TOKENS.small), { "font-size": TOKENS.small })
  );
}

function underneath(layer: DrawnLayer, core: SectionCore | undefined, middle: number, below: number): readonly Point[] {
  if (core === undefined) return [[CENTRE_X, middle]];
  const isConductor = layer.role === "conductor";
  const x = CENTRE_X + core.x + (isConductor ? -2.5 : 2.5);
  const from = middle + core.y + (isConductor ? core.conductor * 0.55 : (core.conductor + core.covered) / 2);
  return [
    [x, from],
    [x, below + (isConductor ? 4 : 0)],
  ];
}

function targetOf(
  layer: DrawnLayer,
  outer: readonly SectionRing[],
  core: SectionCore | undefined,
  middle: number,
): Point {
  const at = outer.findIndex((ring) => ring.layer === layer);
  const ring = outer[at];
  if (ring !== undefined) {
    const angle = ((-62 + at * 12) * Math.PI) / 180;
    const radius = ring.high - ring.thick / 2;
    return [CENTRE_X + ring.wide - ring.high + radius * Math.cos(angle), middle + radius * Math.sin(angle)];
  }
  if (core === undefined) return [CENTRE_X, middle];
  const [x, y] = [CENTRE_X + core.x, middle + core.y];
  if (layer.role === "conductor") return [x + core.conductor * 0.3, y + core.conductor * 0.35];
  const edge = (core.conductor + core.covered) / 2;
  return [x + edge * 0.9, y - edge * 0.44];
}
