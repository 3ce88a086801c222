import { LAYERS } from "../locales/layers-en.ts";
import { drawing, element, fitted, line, rect, text } from "./svg.ts";
import { TOKENS } from "./tokens.ts";

/** How a layer stands: it holds, it holds until one event, it is gone, or nobody knows. */
export type LayerStanding = "holds" | "one-event" | "gone" | "not-known";

/** Layers from a live part outwards, and what they come to. */
export interface LayersDrawing {
  readonly state: LayerStanding;
  /** What the whole comes to, as a clause. */
  readonly words: string;
  /** Why several layers come to no more than one; empty where there is nothing to say. */
  readonly because: string;
  readonly layers: readonly {
    /** What it is: "what is around it". */
    readonly name: string;
    readonly state: LayerStanding;
    /** What it does, as a clause; empty where nothing is known of it. */
    readonly words: string;
  }[];
}

const WIDTH = 420;
const LIVE_X = 26;
const FIRST = 22;
const STEP = 17;
const LABEL_X = 164;
const ROW = 25;
const TOP = 46;
const FOOT = 8;
/** Half the angle that a layer is drawn over, as seen from the live part. */
const HALF_ANGLE = (42 * Math.PI) / 180;

/**
 * A live part in copper, the layers around it as nested lines, and a person outside. A layer that holds is a double line,
 * one that holds until one event a single one, one that is gone a broken faint line with a gap, and one of which nothing
 * is known a dotted line with a question mark. Words stand beside each.
 */
export function protectionLayers({ state, words, because, layers }: LayersDrawing): string {
  const shown = layers.slice(0, MOST);
  const outermost = FIRST + Math.max(0, shown.length - 1) * STEP;
  const height = TOP + Math.max(shown.length * ROW, 2 * (outermost * Math.sin(HALF_ANGLE) + 12), 50) + FOOT;
  const middle = TOP + (height - TOP - FOOT) / 2;
  const whole = [words, because].filter((one) => one !== "").join(": ");
  const parts = [
    text(12, 16, LAYERS.standing[state], { "font-weight": 600 }),
    text(12, 28, fitted(whole, WIDTH - 24, TOKENS.small), { "font-size": TOKENS.small }),
    rect(LIVE_X - 5, middle - 5, 10, 10, { fill: TOKENS.copper, stroke: TOKENS.ink, "stroke-width": 0.8 }),
    ...shown.map((layer, i) => arc(layer.state, FIRST + i * STEP, middle)),
    person(LIVE_X + outermost + 26, middle),
    ...shown.flatMap((layer, i) => label(layer, i)),
  ];
  const spoken = layers
    .map((layer) =>
      [`${layer.name}: ${LAYERS.word[layer.state]}`, layer.words].filter((part) => part !== "").join(", "),
    )
    .join("; ");
  return drawing(WIDTH, height, LAYERS.title(LAYERS.standing[state]), LAYERS.outwards(spoken, because), parts.join(""));
}

/** More layers than anything has. */
const MOST = 5;

/** One layer as part of a circle round the live part, by how it stands. */
function arc(state: LayerStanding, radius: number, middle: number): string {
  const solid = { stroke: TOKENS.ink, "stroke-width": 1.4 } as const;
  switch (state) {
    case "holds":
      return marked(state, part(radius - 1.8, middle, 1, solid) + part(radius + 1.8, middle, 1, solid));
    case "one-event":
      return marked(state, part(radius, middle, 1, solid));
    case "gone": {
      const broken = { stroke: TOKENS.faint, "stroke-width": 1, "stroke-dasharray": "4 3" } as const;
      return marked(state, part(radius, middle, 1, broken, 0.35) + part(radius, middle, -1, broken, 0.35));
    }
    default: {
      const dotted = { stroke: TOKENS.faint, "stroke-width": 1.2, "stroke-dasharray": "1 3" } as const;
      return marked(state, part(radius, middle, 1, dotted));
    }
  }
}

function marked(state: LayerStanding, inner: string): string {
  return element("g", { "data-state": state }, inner);
}

/** From one end of the layer to the other; or, with a gap, the part of it on one side. */
function part(radius: number, middle: number, side: 1 | -1, look: Readonly<Record<string, string | number>>, gap = 0) {
  const [from, to] = gap === 0 ? [-HALF_ANGLE, HALF_ANGLE] : [side * gap * HALF_ANGLE, side * HALF_ANGLE];
  const points = Array.from({ length: CHORDS + 1 }, (_, i) => {
    const angle = from + ((to - from) * i) / CHORDS;
    return `${near(LIVE_X + radius * Math.cos(angle))} ${near(middle + radius * Math.sin(angle))}`;
  });
  return element("path", { d: `M${points.join("L")}`, fill: "none", ...look });
}

/** Straight pieces that a bend is drawn with. */
const CHORDS = 16;

/** A person, plainly: head, body, and a hand reaching out. */
function person(x: number, middle: number): string {
  const stroke = { "stroke-width": 1.3 } as const;
  return (
    element("circle", { cx: x, cy: middle - 14, r: 4, fill: TOKENS.paper, stroke: TOKENS.ink, ...stroke }) +
    line(x, middle - 10, x, middle + 4, stroke) +
    line(x, middle + 4, x - 4, middle + 14, stroke) +
    line(x, middle + 4, x + 4, middle + 14, stroke) +
    line(x, middle - 5, x - 9, middle, stroke)
  );
}

function label({ name, state, words }: LayersDrawing["layers"][number], i: number): readonly string[] {
  const at = TOP + i * ROW + 9;
  const room = WIDTH - LABEL_X - 8;
  const ending = `: ${LAYERS.word[state]}`;
  const heading = `${i + 1} ${fitted(name, room - ending.length * TOKENS.size * 0.56 - 14)}${ending}`;
  return [
    text(LABEL_X, at, heading, { "font-weight": 600 }),
    text(LABEL_X, at + 10, fitted(words, room, TOKENS.small), { "font-size": TOKENS.small }),
  ];
}

function near(value: number): number {
  return Math.round(value * 100) / 100;
}
