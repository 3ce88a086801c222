import {
  type Compared,
  type Evidence,
  type Ground,
  isKnown,
  type Measured,
  parseAccuracy,
  rangeOf,
  type Unit,
} from "@good-grounds/core";
import type { Chance } from "../../examples/simulate/chance.ts";

/** What the draws take of instruments, written apart from the analytic way. */
export interface Assumptions {
  readonly commonPart: number;
  /** What nulling may leave, Ω either way; every continuity reading of one instrument has the same. */
  readonly leads: number;
}

/** What usual instruments are out by where nothing is stated: of the reading, and in digits of a display of three figures. */
const USUAL: Readonly<Record<string, readonly [part: number, digits: number]>> = {
  continuity: [0.02, 3],
  insulation: [0.05, 3],
  loop: [0.05, 5],
  electrode: [0.05, 5],
  "fault-current": [0.1, 5],
  "rcd-time": [0.03, 2],
  voltage: [0.01, 2],
};

/** What contacts may add, Ω. */
const CONTACTS: Readonly<Record<string, number>> = { continuity: 0.01, loop: 0.02 };

/** Shared errors of one draw, each uniform from −1 to 1, by what they belong to. */
type Draw = Map<unknown, number>;

/** How often the comparison holds when every error is drawn anew, and the spread of what is in hand. */
export function drawn(
  compared: Compared,
  chance: Chance,
  draws: number,
  assumptions: Assumptions,
): { readonly holds: number; readonly mean: number; readonly deviation: number } {
  const [left, right] = compared.from as readonly [Evidence<Unit>, Evidence<Unit>];
  let [holds, sum, squares] = [0, 0, 0];
  for (let i = 0; i < draws; i++) {
    const draw: Draw = new Map();
    const values = new Map<Ground, number>();
    const a = drawnValue(left, draw, values, chance, assumptions);
    const b = drawnValue(right, draw, values, chance, assumptions);
    const inHand = compared.relation === "at-most" ? b - a : a - b;
    if (inHand >= 0) holds++;
    sum += inHand;
    squares += inHand * inHand;
  }
  const mean = sum / draws;
  return { holds: holds / draws, mean, deviation: Math.sqrt(Math.max(0, squares / draws - mean * mean)) };
}

function drawnValue(
  node: Evidence<Unit>,
  draw: Draw,
  values: Map<Ground, number>,
  chance: Chance,
  assumptions: Assumptions,
): number {
  const held = values.get(node);
  if (held !== undefined) return held;
  const value = fresh(node, draw, values, chance, assumptions);
  values.set(node, value);
  return value;
}

function fresh(
  node: Evidence<Unit>,
  draw: Draw,
  values: Map<Ground, number>,
  chance: Chance,
  assumptions: Assumptions,
): number {
  if (!isKnown(node)) throw new Error("nothing can be drawn of what is not known");
  if (node.kind === "measured") return truthOf(node, draw, chance, assumptions);
  if (node.kind !== "computed") {
    return node.term.id === "operating-uncertainty" ? node.value : chance.between(node.low, node.high);
  }
  if (node.detail === "one-of" || node.detail === "at-most-of" || node.detail === "between")
    return chance.between(node.low, node.high);
  const parts = node.from
    .filter((part): part is Evidence<Unit> => "term" in part && "value" in part)
    .map((part) => drawnValue(part, draw, values, chance, assumptions));
  const [a = Number.NaN, b = Number.NaN] = parts;
  switch (node.detail) {
    case "sum":
      return parts.reduce((total, part) => total + part, 0);
    case "difference":
      return a - b;
    case "product":
      return a * b;
    case "quotient":
      return a / b;
    case "less-one":
      return a - 1;
    case "square":
      return a * a;
    case "square-root":
      return Math.sqrt(a);
    case "let-through":
      return a * a * b;
    case "in-parallel":
      return 1 / parts.reduce((total, part) => total + 1 / part, 0);
    case "largest":
      return Math.max(...parts);
    case "smallest":
      return Math.min(...parts);
    default:
      return a;
  }
}

/** A reading less its error: gain and leads are drawn once for all readings they belong to, the rest for each. */
function truthOf({ value, term, detail }: Measured<Unit>, draw: Draw, chance: Chance, assumptions: Assumptions) {
  const shared = (key: string): number => {
    const held = draw.get(key) ?? chance.between(-1, 1);
    draw.set(key, held);
    return held;
  };
  const range = rangeOf(term) ?? term.id;
  if (range === "temperature" && detail.accuracy === null) return value;
  const stated = parseAccuracy(detail.accuracy ?? "");
  const [part, counts] = stated === undefined ? (USUAL[range] ?? [0, 0]) : [stated.ofReading, stated.digits];
  const ohms = range === "continuity" || range === "loop";
  const figure = 10 ** (Math.floor(Math.log10(Math.abs(value))) - 2);
  const digit =
    stated === undefined ? Math.min(detail.resolution, ohms ? Math.max(0.01, figure) : figure) : detail.resolution;
  const percentage = part * Math.abs(value);
  const limit = percentage + counts * digit;
  const common = Math.sqrt(assumptions.commonPart) * percentage;
  const own = Math.sqrt(limit ** 2 - common ** 2);
  const who = detail.taken.instrument ?? "";
  let truth = value - common * shared(`gain ${who} ${range}`) - own * chance.between(-1, 1);
  if (counts === 0 || digit < detail.resolution) truth -= (detail.resolution / 2) * chance.between(-1, 1);
  truth -= (CONTACTS[range] ?? 0) * chance.between(-1, 1);
  if (range === "continuity" && detail.bound === "exact")
    truth -=
      (detail.taken.leads?.half ?? assumptions.leads) * shared(`leads ${who} ${detail.taken.leads?.since ?? ""}`);
  return truth;
}
