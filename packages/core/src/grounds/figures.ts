import type { ProductUnit, QuotientUnit } from "../quantity/algebra.ts";
import type { Unit } from "../quantity/unit.ts";
import type { Term } from "../terms/term.ts";
import { notBelowZero, over, squared, times } from "./arithmetic.ts";
import type { Evidence, Ground } from "./evidence.ts";
import { notKnown } from "./leaves.ts";
import { Lines, NONE } from "./lines.ts";

/** Arithmetic with evidence; see `Reckoner`, which judges what comes of it. */
export class Figures extends Lines {
  sum<U extends Unit>(term: Term<U>, ...parts: readonly Evidence<NoInfer<U>>[]): Evidence<U> {
    let value = 0;
    let low = 0;
    let high = 0;
    for (const part of parts) {
      value += part.value;
      low += part.low;
      high += part.high;
    }
    return this.line(term, "sum", value, low, high, this.keep ? parts : NONE);
  }

  difference<U extends Unit>(term: Term<U>, a: Evidence<NoInfer<U>>, b: Evidence<NoInfer<U>>): Evidence<U> {
    return this.line(term, "difference", a.value - b.value, a.low - b.high, a.high - b.low, this.pair(a, b));
  }

  product<A extends Unit, B extends Unit>(
    term: Term<ProductUnit<A, B>>,
    a: Evidence<A>,
    b: Evidence<B>,
  ): Evidence<ProductUnit<A, B>> {
    const value = times(a.value, b.value);
    if (a.low >= 0 && b.low >= 0)
      return this.line(term, "product", value, times(a.low, b.low), times(a.high, b.high), this.pair(a, b));
    const corners = [times(a.low, b.low), times(a.low, b.high), times(a.high, b.low), times(a.high, b.high)];
    return this.line(term, "product", value, Math.min(...corners), Math.max(...corners), this.pair(a, b));
  }

  /**
   * `a ÷ b` for a divisor that is not negative: of a band that reaches below zero, as a difference may leave one, the part
   * below does not count. A divisor whose band reaches zero leaves the result without limit on that side.
   */
  quotient<A extends Unit, B extends Unit>(
    term: Term<QuotientUnit<A, B>>,
    a: Evidence<A>,
    b: Evidence<B>,
  ): Evidence<QuotientUnit<A, B>> {
    const value = over(a.value, notBelowZero(b.value));
    const [least, most] = [notBelowZero(b.low), notBelowZero(b.high)];
    const low = a.low >= 0 ? over(a.low, most) : over(a.low, least);
    const high = a.high >= 0 ? over(a.high, least) : over(a.high, most);
    return this.line(term, "quotient", value, low, high, this.pair(a, b));
  }

  /** `a − 1`: what a factor adds to the quantity it multiplies. */
  lessOne(term: Term<"ratio">, a: Evidence<"ratio">): Evidence<"ratio"> {
    return this.line(term, "less-one", a.value - 1, a.low - 1, a.high - 1, this.keep ? [a] : NONE);
  }

  /** √ of an energy let through, on the way to the adiabatic equation. */
  root(term: Term<"ampere-root-second">, a: Evidence<"ampere-squared-second">): Evidence<"ampere-root-second"> {
    return this.line(
      term,
      "square-root",
      Math.sqrt(notBelowZero(a.value)),
      Math.sqrt(notBelowZero(a.low)),
      Math.sqrt(notBelowZero(a.high)),
      this.keep ? [a] : NONE,
    );
  }

  /** The energy a conductor withstands, (k·S)². */
  square(term: Term<"ampere-squared-second">, a: Evidence<"ampere-root-second">): Evidence<"ampere-squared-second"> {
    const [low, high] = squared(a);
    return this.line(term, "square", a.value ** 2, low, high, this.keep ? [a] : NONE);
  }

  /** I²t for a constant current over a time. */
  letThrough(
    term: Term<"ampere-squared-second">,
    current: Evidence<"ampere">,
    time: Evidence<"second">,
  ): Evidence<"ampere-squared-second"> {
    const [low, high] = squared(current);
    return this.line(
      term,
      "let-through",
      times(current.value ** 2, notBelowZero(time.value)),
      times(low, notBelowZero(time.low)),
      times(high, notBelowZero(time.high)),
      this.pair(current, time),
    );
  }

  largest<U extends Unit>(term: Term<U>, ...parts: readonly Evidence<NoInfer<U>>[]): Evidence<U> {
    let [value, low, high] = [Number.NEGATIVE_INFINITY, Number.NEGATIVE_INFINITY, Number.NEGATIVE_INFINITY];
    for (const part of parts) {
      value = Math.max(value, part.value);
      low = Math.max(low, part.low);
      high = Math.max(high, part.high);
    }
    if (parts.length === 0) value = Number.NaN;
    return this.line(term, "largest", value, low, high, this.keep ? parts : NONE);
  }

  smallest<U extends Unit>(term: Term<U>, ...parts: readonly Evidence<NoInfer<U>>[]): Evidence<U> {
    let [value, low, high] = [Number.POSITIVE_INFINITY, Number.POSITIVE_INFINITY, Number.POSITIVE_INFINITY];
    for (const part of parts) {
      value = Math.min(value, part.value);
      low = Math.min(low, part.low);
      high = Math.min(high, part.high);
    }
    if (parts.length === 0) value = Number.NaN;
    return this.line(term, "smallest", value, low, high, this.keep ? parts : NONE);
  }

  /** Resistances in parallel, 1 ÷ Σ(1/R); none is below zero. */
  inParallel(term: Term<"ohm">, parts: readonly Evidence<"ohm">[]): Evidence<"ohm"> {
    let [value, low, high] = [0, 0, 0];
    for (const part of parts) {
      value += 1 / notBelowZero(part.value);
      low += 1 / notBelowZero(part.low);
      high += 1 / notBelowZero(part.high);
    }
    return this.line(term, "in-parallel", 1 / value, 1 / low, 1 / high, this.keep ? parts : NONE);
  }

  /**
   * A figure found in a table by what stands in `by`. Without a figure, because something in `by` is not known, or is
   * known only as a range, or the table has no row, the result is lacking and names it.
   */
  lookedUp<U extends Unit>(
    term: Term<U>,
    figure: Evidence<NoInfer<U>> | undefined,
    ...by: readonly Ground[]
  ): Evidence<U> {
    if (figure === undefined) {
      const from = this.keep ? (by.some(isUnsettled) ? by : [...by, rangeOnly(term)]) : NONE;
      return this.line(term, "looked-up", Number.NaN, Number.NaN, Number.NaN, from);
    }
    if (!this.keep) return figure;
    return this.line(term, "looked-up", figure.value, figure.low, figure.high, [figure, ...by]);
  }

  /**
   * A quantity that has one of several values, not known which: an unseen cable route, say. The band spans all of them;
   * the value taken for comparison as read is the smallest.
   */
  oneOf<U extends Unit>(term: Term<U>, parts: readonly Evidence<NoInfer<U>>[]): Evidence<U> {
    let [value, low, high] = [Number.POSITIVE_INFINITY, Number.POSITIVE_INFINITY, Number.NEGATIVE_INFINITY];
    for (const part of parts) {
      value = Math.min(value, part.value);
      low = Math.min(low, part.low);
      high = Math.max(high, part.high);
    }
    if (parts.length === 0) value = Number.NaN;
    return this.line(term, "one-of", value, low, high, this.keep ? parts : NONE);
  }

  /** Anything up to an upper limit: the limit stays the value, the band reaches down to nothing. */
  atMostOf<U extends Unit>(term: Term<U>, limit: Evidence<U>): Evidence<U> {
    return this.line(term, "at-most-of", limit.value, Math.min(0, limit.low), limit.high, this.keep ? [limit] : NONE);
  }

  /** Anything from a lower to an upper limit; the upper one is the value, and never less than the lower. */
  between<U extends Unit>(term: Term<U>, lower: Evidence<NoInfer<U>>, upper: Evidence<NoInfer<U>>): Evidence<U> {
    const value = Math.max(lower.value, upper.value);
    const high = Math.max(lower.high, upper.high);
    return this.line(term, "between", value, lower.low, high, this.pair(lower, upper));
  }

  /** The same value under another name, where an argument passes from one idea to another. */
  same<U extends Unit>(term: Term<U>, a: Evidence<U>): Evidence<U> {
    return this.line(term, "same", a.value, a.low, a.high, this.keep ? [a] : NONE);
  }
}

function isUnsettled({ kind }: Ground): boolean {
  return kind === "not-known" || kind === "lacking" || kind === "fact-not-known";
}

/** The leaf that stands for a row that cannot be chosen because what it is chosen by is a range. */
function rangeOnly<U extends Unit>(term: Term<U>): Ground {
  return notKnown(term, [], "not-tabulated", "what it is looked up by is known only as a range");
}
