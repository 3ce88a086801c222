import { type Compared, type Evidence, type Ground, isKnown, type Operation, type Unit } from "@good-grounds/core";
import { Errors, type Spread } from "./errors.ts";

/** One step of a computation laid out in order: a leaf with its errors, or an operation on earlier steps. */
interface Step {
  readonly leaf: Spread | null;
  readonly operation: Operation | null;
  readonly of: readonly number[];
}

/**
 * A comparison laid out so that it can be worked out again for other values of what it rests on, with the first
 * derivative of what is in hand by every cause of doubt. Deviations are in units of their standard deviation.
 */
export class Tape {
  readonly errors: Errors;
  readonly #steps: Step[] = [];
  readonly #numbers = new Map<Ground, number>();
  readonly #values: Float64Array;
  readonly #slopes: Float64Array;
  /** Steps that choose one of several values. */
  readonly #choices: readonly number[];
  readonly #left: number;
  readonly #right: number;
  readonly #sign: number;
  /** What is in hand, and its derivative by every cause, after `run`. */
  difference = Number.NaN;
  readonly gradient: Float64Array;

  constructor(compared: Compared) {
    this.errors = new Errors();
    const [left, right] = compared.from as readonly [Evidence<Unit>, Evidence<Unit>];
    this.#left = this.#lay(left);
    this.#right = this.#lay(right);
    this.#sign = compared.relation === "at-most" ? -1 : 1;
    this.#choices = this.#steps.flatMap(({ operation }, i) =>
      operation === "largest" || operation === "smallest" ? [i] : [],
    );
    this.#values = new Float64Array(this.#steps.length);
    this.#slopes = new Float64Array(this.#steps.length);
    this.gradient = new Float64Array(this.errors.causes.length);
  }

  /** How many values with errors the comparison rests on. */
  get uncertain(): number {
    return this.#steps.filter(({ leaf }) => leaf !== null && leaf.causes.length > 0).length;
  }

  /** Leaves that are open at one end: whether what is in hand grows (1) or shrinks (−1) towards it. After `run`. */
  openness(): readonly number[] {
    return this.#steps.flatMap(({ leaf }, i) =>
      leaf === null || leaf.open === 0 ? [] : [Math.sign((this.#slopes[i] as number) * leaf.open)],
    );
  }

  /** Works the comparison out with every cause at its deviation. */
  run(at: Float64Array): void {
    for (let i = 0; i < this.#steps.length; i++) this.#values[i] = this.#valueOf(this.#steps[i] as Step, at);
    this.difference = this.#sign * ((this.#values[this.#left] as number) - (this.#values[this.#right] as number));
    this.#differentiate(this.#left, this.#right, this.#sign);
  }

  /**
   * Whether a largest or smallest value could be another one within so many standard deviations of their distance. The
   * gradient is spoilt. After `run`.
   */
  contested(within: number): boolean {
    return this.#choices.some((i) => {
      const { operation, of } = this.#steps[i] as Step;
      const best = of[this.#chosen(operation, of)] as number;
      return of.some((rival) => {
        this.#differentiate(best, rival, 1);
        const distance = Math.abs((this.#values[best] as number) - (this.#values[rival] as number));
        const spread = Math.hypot(...this.gradient);
        return spread > 0 && distance < within * spread;
      });
    });
  }

  /** The derivative of one step less another by every cause. */
  #differentiate(plus: number, minus: number, sign: number): void {
    this.#slopes.fill(0);
    this.gradient.fill(0);
    (this.#slopes[plus] as number) += sign;
    (this.#slopes[minus] as number) -= sign;
    for (let i = Math.max(plus, minus); i >= 0; i--) this.#pass(this.#steps[i] as Step, i);
  }

  #lay(root: Evidence<Unit>): number {
    // Depth is that of a check's own arithmetic, never of an input.
    const held = this.#numbers.get(root);
    if (held !== undefined) return held;
    const step = this.#stepOf(root);
    const number = this.#steps.push(step) - 1;
    this.#numbers.set(root, number);
    return number;
  }

  #stepOf(node: Evidence<Unit>): Step {
    if (!isKnown(node)) throw new Error("a comparison of what is not known has no doubt to work out");
    if (node.kind !== "computed") return { leaf: this.errors.ofLeaf(node), operation: null, of: NO_STEPS };
    switch (node.detail) {
      case "one-of":
      case "at-most-of":
      case "between":
        // Which of several, or how far up to a limit: a range of its own.
        return {
          leaf: this.errors.ofRange(node, node.low, node.high, node.value, node.term, null),
          operation: null,
          of: NO_STEPS,
        };
      case "looked-up":
        return { leaf: null, operation: "same", of: [this.#lay(node.from[0] as Evidence<Unit>)] };
      default:
        return {
          leaf: null,
          operation: node.detail,
          of: node.from.map((part) => this.#lay(part as Evidence<Unit>)),
        };
    }
  }

  #valueOf({ leaf, operation, of }: Step, at: Float64Array): number {
    if (leaf !== null) {
      let value = leaf.expected;
      for (let k = 0; k < leaf.causes.length; k++)
        value += (leaf.deviations[k] as number) * (at[leaf.causes[k] as number] as number);
      return value;
    }
    const value = (k: number) => this.#values[of[k] as number] as number;
    switch (operation) {
      case "sum": {
        let sum = 0;
        for (const step of of) sum += this.#values[step] as number;
        return sum;
      }
      case "difference":
        return value(0) - value(1);
      case "product":
        return value(0) * value(1);
      case "quotient":
        // Below nothing a divisor has no meaning here; what is no number is never drawn a line through.
        return value(1) > 0 ? value(0) / value(1) : Number.NaN;
      case "less-one":
        return value(0) - 1;
      case "square":
        return value(0) ** 2;
      case "square-root":
        // An energy anywhere from nothing up may come out a hair below nothing.
        return Math.sqrt(Math.max(0, value(0)));
      case "let-through":
        return value(0) ** 2 * value(1);
      case "in-parallel": {
        let sum = 0;
        for (const step of of) {
          const part = this.#values[step] as number;
          sum += part > 0 ? 1 / part : Number.NaN;
        }
        return 1 / sum;
      }
      case "largest":
      case "smallest":
        // What is no number is neither larger nor smaller, and must not be lost.
        return of.some((step) => Number.isNaN(this.#values[step])) ? Number.NaN : value(this.#chosen(operation, of));
      default:
        return value(0);
    }
  }

  /** Hands the derivative of a step on to what it was worked out from. */
  #pass({ leaf, operation, of }: Step, i: number): void {
    const slope = this.#slopes[i] as number;
    if (slope === 0) return;
    if (leaf !== null) {
      for (let k = 0; k < leaf.causes.length; k++)
        (this.gradient[leaf.causes[k] as number] as number) += slope * (leaf.deviations[k] as number);
      return;
    }
    const value = (k: number) => this.#values[of[k] as number] as number;
    const hand = (k: number, by: number) => {
      (this.#slopes[of[k] as number] as number) += slope * by;
    };
    switch (operation) {
      case "sum":
        for (let k = 0; k < of.length; k++) hand(k, 1);
        break;
      case "difference":
        hand(0, 1);
        hand(1, -1);
        break;
      case "product":
        hand(0, value(1));
        hand(1, value(0));
        break;
      case "quotient":
        hand(0, 1 / value(1));
        hand(1, -value(0) / value(1) ** 2);
        break;
      case "square":
        hand(0, 2 * value(0));
        break;
      case "square-root":
        hand(0, 0.5 / Math.sqrt(Math.max(0, value(0))));
        break;
      case "let-through":
        hand(0, 2 * value(0) * value(1));
        hand(1, value(0) ** 2);
        break;
      case "in-parallel":
        for (let k = 0; k < of.length; k++) hand(k, ((this.#values[i] as number) / value(k)) ** 2);
        break;
      case "largest":
      case "smallest":
        hand(this.#chosen(operation, of), 1);
        break;
      default:
        hand(0, 1);
    }
  }

  #chosen(operation: Operation | null, of: readonly number[]): number {
    let chosen = 0;
    for (let k = 1; k < of.length; k++) {
      const [one, best] = [this.#values[of[k] as number] as number, this.#values[of[chosen] as number] as number];
      if (operation === "largest" ? one > best : one < best) chosen = k;
    }
    return chosen;
  }
}

const NO_STEPS: readonly number[] = Object.freeze([]);
