import {
  type Compared,
  type Evidence,
  type Ground,
  isKnown,
  type Measured,
  parseAccuracy,
  type Unit,
} from "@good-grounds/core";
import { rangeOf } from "@good-grounds/readings";
import type { Chance } from "../../examples/simulate/chance.ts";

/** What the draws take of instruments, written apart from the analytic way. */
export interface Assumptions {
  readonly commonPart: number;
  /** What nulling may leave, Ω either way; every continuity reading of one instrument has the same. */
  readonly leads: number;
}

/** The greatest operating uncertainty of the instrument standard, by range. */
const CEILING: Readonly<Record<string, number>> = {
  continuity: 0.3,
  insulation: 0.3,
  loop: 0.3,
  electrode: 0.3,
  "fault-current": 0.3,
  "rcd-time": 0.1,
};

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
  const { ofReading, digits } = parseAccuracy(detail.accuracy ?? "") ?? { ofReading: CEILING[range] ?? 0, digits: 0 };
  const percentage = ofReading * Math.abs(value);
  const limit = percentage + digits * detail.resolution;
  const common = Math.sqrt(assumptions.commonPart) * percentage;
  const own = Math.sqrt(limit ** 2 - common ** 2);
  const who = detail.taken.instrument ?? "";
  let truth = value - common * shared(`gain ${who} ${range}`) - own * chance.between(-1, 1);
  truth -= (detail.resolution / 2) * chance.between(-1, 1);
  if (range === "continuity" && detail.bound === "exact") truth -= assumptions.leads * shared(`leads ${who}`);
  return truth;
}
