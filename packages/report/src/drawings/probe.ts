import type { Verdict } from "@good-grounds/core";
import { drawing, element, fitted, line, rect, text } from "./svg.ts";
import { TOKENS } from "./tokens.ts";

/** A probe in an opening and a live part behind it; lengths in mm. */
export interface ProbeDrawing {
  /** Width of the opening in the plane of the drawing. */
  readonly opening: number;
  readonly depth: number;
  /** Sideways from the edge of the opening; 0 behind it. */
  readonly offset: number;
  readonly probe: {
    readonly name: string;
    readonly diameter: number;
    /** Lengths of its links from the stop to the tip; one for a straight probe. */
    readonly links: readonly number[];
    /** The face that stops it: its width and its thickness; null for none. */
    readonly stop: readonly [width: number, thickness: number] | null;
  };
  /** How it stands: length behind the wall and the bends at its joints, degrees; null where it does not enter. */
  readonly posture: { readonly inserted: number; readonly bends: readonly number[] } | null;
  /** The limit of what it reaches, as offset and depth, from the edge of the opening outwards; may be empty. */
  readonly limit: readonly (readonly [offset: number, depth: number])[];
  /** A barrier between the opening and the live part. */
  readonly barrier: boolean;
  readonly verdict: Verdict;
  /** What the drawing says, for the line below it and for readers who do not see it. */
  readonly words: string;
}

const WIDTH = 360;
const HEIGHT = 236;
const TOP = 14;
/** Lowest line of the section; dimensions stand below. */
const FLOOR = 172;
const LEFT = 70;
const RIGHT = 16;
/** How much of the probe is shown in front of the wall, mm. */
const BEFORE = 34;
const WALL = 3;
const LIVE = 7;

/**
 * Section through an opening: wall hatched, the probe coming from the left, bent as far as it has to, the live part in
 * copper, and the limit of what the probe reaches as a broken line. Depth, offset and width of the opening are
 * dimensioned. Shapes tell the parts apart without colour: hatching, outline, solid square.
 */
export function probeDrawing(input: ProbeDrawing): string {
  const { opening, depth, offset, words } = input;
  const [deepEnd, asideEnd] = extent(input);
  const deepest = Math.max(depth, ...input.limit.map(([, deep]) => deep).filter(Number.isFinite), deepEnd, 40);
  const farthest = Math.max(offset, ...input.limit.map(([aside]) => aside).filter(Number.isFinite), asideEnd, 20);
  const gap = Math.min(opening, 3 * deepest);
  const scale = Math.min((WIDTH - LEFT - RIGHT - 12) / (BEFORE + deepest), (FLOOR - TOP - 16) / (farthest + gap + 24));
  const place: Place = {
    scale,
    x: (deep) => LEFT + (BEFORE + deep) * scale,
    // Offsets count upwards from the upper edge of the opening.
    y: (aside) => TOP + 12 + (farthest - aside) * scale,
  };
  const lower = place.y(-gap);
  const parts = [
    wall(place, gap),
    limitLine(input, place, gap),
    probe(input, place),
    live(input, place, gap),
    dimensions(input, place, gap, lower),
    text(10, HEIGHT - 10, fitted(words, WIDTH - 20), { "font-size": TOKENS.size }),
  ];
  return drawing(WIDTH, HEIGHT, `${input.probe.name} at an opening`, describe(input), parts.join(""));
}

interface Place {
  readonly scale: number;
  readonly x: (deep: number) => number;
  readonly y: (aside: number) => number;
}

/** How deep and how far aside the probe can stand at most, so that there is room for it. */
function extent({ probe: { diameter, links }, posture }: ProbeDrawing): readonly [deep: number, aside: number] {
  if (posture === null) return [0, 0];
  let angle = 0;
  let aside = 0;
  posture.bends.forEach((bend, i) => {
    angle += bend;
    aside += (links[i + 1] ?? 0) * Math.max(0, Math.sin((angle * Math.PI) / 180));
  });
  return [posture.inserted + diameter, aside + diameter];
}

/** The wall above and below the opening, hatched. */
function wall({ x, y, scale }: Place, gap: number): string {
  const thick = WALL * scale;
  const left = x(0) - thick;
  const pieces: readonly (readonly [number, number])[] = [
    [TOP, y(0)],
    [y(-gap), FLOOR],
  ];
  return pieces
    .filter(([from, to]) => to - from > 1)
    .map(([from, to]) => {
      const strokes: string[] = [];
      for (let at = from + 3; at + thick < to; at += 4.5) {
        strokes.push(line(left, at + thick, left + thick, at, { "stroke-width": 0.7 }));
      }
      return (
        rect(left, from, thick, to - from, { fill: "none", stroke: TOKENS.ink, "stroke-width": 1.2 }) + strokes.join("")
      );
    })
    .join("");
}

function limitLine({ limit, opening }: ProbeDrawing, { x, y }: Place, gap: number): string {
  const finite = limit.filter(([aside, deep]) => Number.isFinite(aside) && Number.isFinite(deep));
  const [first] = finite;
  if (first === undefined) return "";
  const behind = [
    [x(first[1]), Math.min(FLOOR, y(-Math.min(gap, opening)))],
    [x(first[1]), y(0)],
  ] as const;
  const points = [...behind, ...finite.map(([aside, deep]) => [x(deep), y(aside)] as const)];
  const curve = element("path", {
    d: `M${points.map(([a, b]) => `${near(a)} ${near(b)}`).join("L")}`,
    fill: "none",
    stroke: TOKENS.faint,
    "stroke-width": 1,
    "stroke-dasharray": "4 3",
  });
  const at = Math.min(x(first[1]), WIDTH - RIGHT - 32);
  const label = text(at, Math.min(FLOOR - 2, y(-gap) + 11), `reach ${figure(first[1])} mm`, {
    "font-size": TOKENS.small,
    "text-anchor": "middle",
  });
  return curve + label;
}

/** The probe as a chain: an outline with an open inside, joints marked. */
function probe({ probe: { diameter, links, stop }, posture, opening }: ProbeDrawing, { x, y, scale }: Place): string {
  const body = Math.max(2.2, diameter * scale);
  const whole = links.reduce((sum, link) => sum + link, 0);
  const inserted = posture?.inserted ?? 0;
  const bends = posture?.bends ?? [];
  const axis = posture === null ? -opening / 2 : -Math.min(diameter, opening) / 2;
  // From the tip end back to the wall: the corners of the chain in order from outside.
  let deep = inserted - whole;
  let aside = axis;
  let angle = 0;
  const corners: (readonly [number, number])[] = [[deep, aside]];
  links.forEach((link, i) => {
    const last = i === links.length - 1 ? Math.max(0, link - diameter / 2) : link;
    angle += i === 0 ? 0 : (bends[i - 1] ?? 0);
    deep += last * Math.cos((angle * Math.PI) / 180);
    aside += last * Math.sin((angle * Math.PI) / 180);
    corners.push([deep, aside]);
  });
  const shown = shortened(corners, -BEFORE + diameter / 2 + 1);
  const d = `M${shown.map(([at, off]) => `${near(x(at))} ${near(y(off))}`).join("L")}`;
  const stroke = { fill: "none", "stroke-linecap": "round", "stroke-linejoin": "round" } as const;
  const joints = shown
    .slice(1, -1)
    .map(([at, off]) => element("circle", { cx: x(at), cy: y(off), r: Math.min(2, body / 4), fill: TOKENS.ink }))
    .join("");
  const [start] = shown;
  const cut = start === undefined || start[0] > (corners[0]?.[0] ?? 0) ? broken(x(-BEFORE), y(axis), body) : "";
  return (
    element("path", { d, ...stroke, stroke: TOKENS.ink, "stroke-width": body }) +
    element("path", { d, ...stroke, stroke: TOKENS.paper, "stroke-width": Math.max(0.8, body - 2.4) }) +
    joints +
    (cut === "" ? stopFace(stop, corners[0]?.[0] ?? 0, axis, { x, y, scale }) : cut)
  );
}

/** Two strokes that say the probe goes on to the left. */
function broken(left: number, middle: number, body: number): string {
  const half = body / 2 + 1;
  return (
    rect(left, middle - half, 5, 2 * half, { fill: TOKENS.paper }) +
    line(left + 3.5, middle + half, left + 6.5, middle - half, { "stroke-width": 0.9 })
  );
}

/** The face that holds the probe at the wall, and what of its handle is in the drawing. */
function stopFace(stop: readonly [number, number] | null, deep: number, axis: number, { x, y, scale }: Place): string {
  if (stop === null) return "";
  const [face, thickness] = stop;
  const right = x(deep) - WALL * scale * (deep > -WALL ? 1 : 0);
  const left = Math.max(x(-BEFORE), right - thickness * scale);
  if (right - left < 2) return "";
  const top = Math.max(TOP, y(axis + face / 2));
  const bottom = Math.min(FLOOR, y(axis - face / 2));
  return rect(left, top, right - left, bottom - top, { fill: TOKENS.paper, stroke: TOKENS.ink, "stroke-width": 1.2 });
}

/** The chain cut where it comes from beyond the left edge. */
function shortened(
  corners: readonly (readonly [number, number])[],
  from: number,
): readonly (readonly [number, number])[] {
  const after = corners.findIndex(([deep]) => deep >= from);
  if (after <= 0) return corners.map(([deep, aside]) => [Math.max(deep, from), aside] as const);
  const next = corners[after] as readonly [number, number];
  return [[from, next[1]] as const, ...corners.slice(after)];
}

function live({ depth, offset, barrier }: ProbeDrawing, { x, y }: Place, gap: number): string {
  const middle = y(offset > 0 ? offset : -Math.min(gap / 2, 6));
  const left = x(depth);
  const shield = barrier
    ? line(left - 5, Math.max(TOP, middle - 16), left - 5, Math.min(FLOOR, middle + 16), { "stroke-width": 2.4 })
    : "";
  const top = offset > 0 ? middle - LIVE : middle - LIVE / 2;
  return (
    shield +
    rect(left, top, LIVE, LIVE, { fill: TOKENS.copper, stroke: TOKENS.ink, "stroke-width": 0.8 }) +
    text(Math.min(left, WIDTH - RIGHT - 14), top - 3, "live", { "font-size": TOKENS.small, fill: TOKENS.copper })
  );
}

function dimensions({ opening, depth, offset }: ProbeDrawing, { x, y }: Place, gap: number, lower: number): string {
  const small = { "font-size": TOKENS.small } as const;
  const below = FLOOR + 16;
  const parts = [
    ticked(x(0), below, x(depth), below),
    text((x(0) + x(depth)) / 2, below + 13, `depth ${figure(depth)} mm`, { ...small, "text-anchor": "middle" }),
    line(x(depth), y(offset > 0 ? offset : -Math.min(gap / 2, 6)) + LIVE, x(depth), below, FINE),
  ];
  const bottom = Math.min(lower, FLOOR);
  const at = 58;
  parts.push(
    ticked(at, y(0), at, bottom),
    text(at - 5, (y(0) + bottom) / 2 + 1, "opening", { ...small, "text-anchor": "end" }),
  );
  parts.push(text(at - 5, (y(0) + bottom) / 2 + 11, `${figure(opening)} mm`, { ...small, "text-anchor": "end" }));
  if (offset > 0) {
    parts.push(line(x(0) - 14, y(offset), x(depth), y(offset), FINE), line(at, y(0), x(0), y(0), FINE));
    parts.push(ticked(at, y(offset), at, y(0)));
    parts.push(text(at - 5, (y(offset) + y(0)) / 2 - 3, "offset", { ...small, "text-anchor": "end" }));
    parts.push(text(at - 5, (y(offset) + y(0)) / 2 + 7, `${figure(offset)} mm`, { ...small, "text-anchor": "end" }));
  }
  return parts.join("");
}

const FINE = { stroke: TOKENS.rule, "stroke-width": 0.7 } as const;

/** A dimension line with strokes across its ends. */
function ticked(x1: number, y1: number, x2: number, y2: number): string {
  const tick = (a: number, b: number) => line(a - 2.5, b + 2.5, a + 2.5, b - 2.5, { "stroke-width": 1 });
  return line(x1, y1, x2, y2, { "stroke-width": 0.8 }) + tick(x1, y1) + tick(x2, y2);
}

function figure(millimetres: number): string {
  return String(Math.round(millimetres * 10) / 10);
}

function near(value: number): number {
  return Math.round(value * 100) / 100;
}

function describe({ probe: { name }, opening, depth, offset, barrier, words }: ProbeDrawing): string {
  const aside = offset > 0 ? `, ${figure(offset)} mm sideways from its edge` : ", straight behind it";
  const shield = barrier ? " A barrier stands before it." : "";
  return `${name}; opening ${figure(opening)} mm; live part ${figure(depth)} mm deep${aside}.${shield} ${words}`;
}
