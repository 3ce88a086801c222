import type { ProductUnit, QuotientUnit } from "../quantity/algebra.ts";
import type { Unit } from "../quantity/unit.ts";
import type { Matter, Term } from "../terms/term.ts";
import { bothOf, eitherOf, type Verdict } from "../verdict/verdict.ts";
import {
  type Combined,
  type Compared,
  type Computed,
  type Evidence,
  type Fact,
  type Ground,
  isKnown,
  isKnownFact,
  type Judgement,
  type Lacking,
  type Operation,
  type Settled,
} from "./evidence.ts";
import { notKnown } from "./leaves.ts";

const NONE: readonly Ground[] = Object.freeze([]);
const NO_JUDGEMENTS: readonly Judgement[] = Object.freeze([]);

/** Relative slack of a comparison, so that decimals as typed meet their limit when they equal it. */
export const TIE_SLACK = 1e-9;

/**
 * The arithmetic of the engine. Each operation takes evidence and gives evidence: a value, its band, and the lines it
 * came from. Bands are worst case: each input anywhere in its own band, independent of the others; every band holds its
 * value. An unknown input makes the result lacking, whatever it is multiplied or divided by, with the same lines kept. With `keep` false the lines are dropped and nothing is frozen;
 * values, bands and verdicts are the same.
 */
export class Reckoner {
  readonly #keep: boolean;

  constructor(keep: boolean) {
    this.#keep = keep;
  }

  sum<U extends Unit>(term: Term<U>, ...parts: readonly Evidence<NoInfer<U>>[]): Evidence<U> {
    let value = 0;
    let low = 0;
    let high = 0;
    for (const part of parts) {
      value += part.value;
      low += part.low;
      high += part.high;
    }
    return this.#line(term, "sum", value, low, high, this.#keep ? parts : NONE);
  }

  difference<U extends Unit>(term: Term<U>, a: Evidence<NoInfer<U>>, b: Evidence<NoInfer<U>>): Evidence<U> {
    return this.#line(term, "difference", a.value - b.value, a.low - b.high, a.high - b.low, this.#pair(a, b));
  }

  product<A extends Unit, B extends Unit>(
    term: Term<ProductUnit<A, B>>,
    a: Evidence<A>,
    b: Evidence<B>,
  ): Evidence<ProductUnit<A, B>> {
    const value = times(a.value, b.value);
    if (a.low >= 0 && b.low >= 0)
      return this.#line(term, "product", value, times(a.low, b.low), times(a.high, b.high), this.#pair(a, b));
    const corners = [times(a.low, b.low), times(a.low, b.high), times(a.high, b.low), times(a.high, b.high)];
    return this.#line(term, "product", value, Math.min(...corners), Math.max(...corners), this.#pair(a, b));
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
    return this.#line(term, "quotient", value, low, high, this.#pair(a, b));
  }

  /** `a − 1`: what a factor adds to the quantity it multiplies. */
  lessOne(term: Term<"ratio">, a: Evidence<"ratio">): Evidence<"ratio"> {
    return this.#line(term, "less-one", a.value - 1, a.low - 1, a.high - 1, this.#keep ? [a] : NONE);
  }

  /** √ of an energy let through, on the way to the adiabatic equation. */
  root(term: Term<"ampere-root-second">, a: Evidence<"ampere-squared-second">): Evidence<"ampere-root-second"> {
    return this.#line(
      term,
      "square-root",
      Math.sqrt(notBelowZero(a.value)),
      Math.sqrt(notBelowZero(a.low)),
      Math.sqrt(notBelowZero(a.high)),
      this.#keep ? [a] : NONE,
    );
  }

  /** The energy a conductor withstands, (k·S)². */
  square(term: Term<"ampere-squared-second">, a: Evidence<"ampere-root-second">): Evidence<"ampere-squared-second"> {
    const [low, high] = squared(a);
    return this.#line(term, "square", a.value ** 2, low, high, this.#keep ? [a] : NONE);
  }

  /** I²t for a constant current over a time. */
  letThrough(
    term: Term<"ampere-squared-second">,
    current: Evidence<"ampere">,
    time: Evidence<"second">,
  ): Evidence<"ampere-squared-second"> {
    const [low, high] = squared(current);
    return this.#line(
      term,
      "let-through",
      times(current.value ** 2, notBelowZero(time.value)),
      times(low, notBelowZero(time.low)),
      times(high, notBelowZero(time.high)),
      this.#pair(current, time),
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
    return this.#line(term, "largest", value, low, high, this.#keep ? parts : NONE);
  }

  smallest<U extends Unit>(term: Term<U>, ...parts: readonly Evidence<NoInfer<U>>[]): Evidence<U> {
    let [value, low, high] = [Number.POSITIVE_INFINITY, Number.POSITIVE_INFINITY, Number.POSITIVE_INFINITY];
    for (const part of parts) {
      value = Math.min(value, part.value);
      low = Math.min(low, part.low);
      high = Math.min(high, part.high);
    }
    if (parts.length === 0) value = Number.NaN;
    return this.#line(term, "smallest", value, low, high, this.#keep ? parts : NONE);
  }

  /** Resistances in parallel, 1 ÷ Σ(1/R); none is below zero. */
  inParallel(term: Term<"ohm">, parts: readonly Evidence<"ohm">[]): Evidence<"ohm"> {
    let [value, low, high] = [0, 0, 0];
    for (const part of parts) {
      value += 1 / notBelowZero(part.value);
      low += 1 / notBelowZero(part.low);
      high += 1 / notBelowZero(part.high);
    }
    return this.#line(term, "in-parallel", 1 / value, 1 / low, 1 / high, this.#keep ? parts : NONE);
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
      const from = this.#keep ? (by.some(isUnsettled) ? by : [...by, rangeOnly(term)]) : NONE;
      return this.#line(term, "looked-up", Number.NaN, Number.NaN, Number.NaN, from);
    }
    if (!this.#keep) return figure;
    return this.#line(term, "looked-up", figure.value, figure.low, figure.high, [figure, ...by]);
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
    return this.#line(term, "one-of", value, low, high, this.#keep ? parts : NONE);
  }

  /** Anything up to an upper limit: the limit stays the value, the band reaches down to nothing. */
  atMostOf<U extends Unit>(term: Term<U>, limit: Evidence<U>): Evidence<U> {
    return this.#line(term, "at-most-of", limit.value, Math.min(0, limit.low), limit.high, this.#keep ? [limit] : NONE);
  }

  /** Anything from a lower to an upper limit; the upper one is the value, and never less than the lower. */
  between<U extends Unit>(term: Term<U>, lower: Evidence<NoInfer<U>>, upper: Evidence<NoInfer<U>>): Evidence<U> {
    const value = Math.max(lower.value, upper.value);
    const high = Math.max(lower.high, upper.high);
    return this.#line(term, "between", value, lower.low, high, this.#pair(lower, upper));
  }

  /** The same value under another name, where an argument passes from one idea to another. */
  same<U extends Unit>(term: Term<U>, a: Evidence<U>): Evidence<U> {
    return this.#line(term, "same", a.value, a.low, a.high, this.#keep ? [a] : NONE);
  }

  /** `left` must not be more than `limit`. */
  atMost<U extends Unit>(matter: Matter, left: Evidence<U>, limit: Evidence<NoInfer<U>>): Compared {
    const known = isKnown(left) && isKnown(limit);
    return this.#compare(
      matter,
      "at-most",
      known ? rank(left.value, limit.value, left.value, limit.value) : "not-known",
      known ? rank(left.high, limit.low, left.low, limit.high) : "not-known",
      known && limit.value > 0 ? 1 - left.value / limit.value : Number.NaN,
      left,
      limit,
    );
  }

  /** `left` must not be less than `limit`. */
  atLeast<U extends Unit>(matter: Matter, left: Evidence<U>, limit: Evidence<NoInfer<U>>): Compared {
    const known = isKnown(left) && isKnown(limit);
    return this.#compare(
      matter,
      "at-least",
      known ? rank(limit.value, left.value, limit.value, left.value) : "not-known",
      known ? rank(limit.high, left.low, limit.low, left.high) : "not-known",
      known && limit.value > 0 ? atLeastMargin(left.value, limit.value) : Number.NaN,
      left,
      limit,
    );
  }

  /**
   * Whether two accounts of the same quantity can both be true: their bands meet. The margin is the part of the joint
   * width of the bands that the distance of the values leaves. Meeting is agreement. Where the bands are those of usual
   * instruments and `atWorst` gives the widest there may be, accounts whose bands meet only then are too near to call.
   */
  agrees<U extends Unit>(
    matter: Matter,
    account: Evidence<U>,
    other: Evidence<NoInfer<U>>,
    relation: "agrees-with" | "not-below" | "not-above" = "agrees-with",
    atWorst?: () => readonly [account: Evidence<NoInfer<U>>, other: Evidence<NoInfer<U>>],
  ): Compared {
    if (!isKnown(account) || !isKnown(other)) {
      return this.#compare(matter, relation, "not-known", "not-known", Number.NaN, account, other);
    }
    const found = this.#meets(matter, account, other, relation);
    if (found.verdict === "met" || atWorst === undefined) return found;
    const [widest, widestOther] = atWorst();
    const atMost = this.#meets(matter, widest, widestOther, relation);
    if (atMost.verdict === "not-met") return atMost;
    return this.#compare(matter, relation, "not-met", "too-near", atMost.margin, widest, widestOther);
  }

  #meets<U extends Unit>(
    matter: Matter,
    account: Evidence<U>,
    other: Evidence<U>,
    relation: "agrees-with" | "not-below" | "not-above",
  ): Compared {
    const below = relation !== "not-above" && account.high < other.low - slack(other.low);
    const above = relation !== "not-below" && account.low > other.high + slack(other.high);
    const verdict = below || above ? "not-met" : "met";
    const width = (account.high - account.low + other.high - other.low) / 2;
    const apart =
      relation === "not-below"
        ? other.value - account.value
        : relation === "not-above"
          ? account.value - other.value
          : Math.abs(account.value - other.value);
    const margin = apart <= 0 ? 1 : 1 - over(apart, width);
    return this.#compare(matter, relation, verdict, verdict, margin, account, other);
  }

  /** Judgements to be shown beside one that decides. They are worked out only where grounds are kept. */
  beside(work: () => readonly Judgement[]): readonly Judgement[] {
    return this.#keep ? work() : NO_JUDGEMENTS;
  }

  /** Every part has to be met; the margin is that of the tightest part. */
  all(matter: Matter, ...parts: readonly Judgement[]): Combined {
    return this.#combine(matter, "all", parts);
  }

  /** One part met is enough; parts stand in order of preference, and the margin is that of the first that bears the verdict. */
  any(matter: Matter, ...parts: readonly Judgement[]): Combined {
    return this.#combine(matter, "any", parts);
  }

  /** A verdict that follows from facts. An unknown fact among them has to be answered by `verdict` "not-known". */
  settled(matter: Matter, verdict: Verdict, why: string, ...from: readonly Ground[]): Settled {
    const node: Settled = {
      kind: "settled",
      matter,
      verdict,
      asRead: verdict,
      margin: Number.NaN,
      why,
      from: this.#keep ? from : NONE,
    };
    return this.#seal(node);
  }

  /** The verdict a single fact gives, by its word; unknown stays unknown. */
  byWord<W extends string | boolean>(
    matter: Matter,
    subject: Fact<W>,
    verdictOf: (word: W) => Verdict,
    why = "",
  ): Settled {
    return this.settled(matter, isKnownFact(subject) ? verdictOf(subject.word) : "not-known", why, subject);
  }

  #pair(a: Ground, b: Ground): readonly Ground[] {
    return this.#keep ? [a, b] : NONE;
  }

  #line<U extends Unit>(
    term: Term<U>,
    detail: Operation,
    value: number,
    low: number,
    high: number,
    from: readonly Ground[],
  ): Computed<U> | Lacking<U> {
    // One limitless thing less another has no value: then nothing is known on that side.
    const known = !Number.isNaN(value);
    const node = {
      kind: known ? "computed" : "lacking",
      term,
      value,
      low: known ? (Number.isNaN(low) ? Number.NEGATIVE_INFINITY : low) : value,
      high: known ? (Number.isNaN(high) ? Number.POSITIVE_INFINITY : high) : value,
      detail,
      from,
    } as Computed<U> | Lacking<U>;
    return this.#seal(node);
  }

  #compare(
    matter: Matter,
    relation: Compared["relation"],
    asRead: Verdict,
    verdict: Verdict,
    margin: number,
    left: Ground,
    limit: Ground,
  ): Compared {
    return this.#seal({ kind: "compared", matter, relation, verdict, asRead, margin, from: this.#pair(left, limit) });
  }

  #combine(matter: Matter, rule: Combined["rule"], parts: readonly Judgement[]): Combined {
    const join = rule === "all" ? bothOf : eitherOf;
    let verdict: Verdict = "not-applicable";
    let asRead: Verdict = "not-applicable";
    for (const part of parts) {
      verdict = join(verdict, part.verdict);
      asRead = join(asRead, part.asRead);
    }
    let margin = Number.NaN;
    for (const part of parts) {
      if (part.verdict === "not-applicable" || (rule === "any" && part.verdict !== verdict)) continue;
      if (rule === "any") {
        margin = part.margin;
        break;
      }
      if (Number.isNaN(margin) || part.margin < margin) margin = part.margin;
    }
    return this.#seal({ kind: "combined", matter, rule, verdict, asRead, margin, from: this.#keep ? parts : NONE });
  }

  #seal<T extends { readonly from: readonly Ground[] }>(node: T): T {
    if (!this.#keep) return node;
    Object.freeze(node.from);
    return Object.freeze(node);
  }
}

function isUnsettled({ kind }: Ground): boolean {
  return kind === "not-known" || kind === "lacking" || kind === "fact-not-known";
}

/** The leaf that stands for a row that cannot be chosen because what it is chosen by is a range. */
function rangeOnly<U extends Unit>(term: Term<U>): Ground {
  return notKnown(term, [], "not-tabulated", "what it is looked up by is known only as a range");
}

/** What lies above a lower limit as a part of the value, up to 1; what is short of it as a part of the limit. */
function atLeastMargin(value: number, limit: number): number {
  return value >= limit ? 1 - limit / value : value / limit - 1;
}

/** 0 × ∞ is 0 here: nothing flows, however long. An unknown times nothing stays unknown. */
function times(a: number, b: number): number {
  if (a === 0) return Number.isNaN(b) ? b : 0;
  return b === 0 && !Number.isNaN(a) ? 0 : a * b;
}

/** Nothing over nothing is nothing; an unknown over nothing stays unknown. */
function over(a: number, b: number): number {
  if (b !== 0) return a / b;
  return a === 0 ? 0 : a * Number.POSITIVE_INFINITY;
}

/** A resistance, a time or an energy as a magnitude; an unknown stays unknown. */
function notBelowZero(value: number): number {
  return Math.max(value, 0);
}

/** The least and the greatest square of anything in a band. */
function squared({ low, high }: Evidence<Unit>): readonly [number, number] {
  if (low >= 0) return [low ** 2, high ** 2];
  return [high <= 0 ? high ** 2 : 0, Math.max(low ** 2, high ** 2)];
}

/**
 * The verdict on "a is at most b" when a lies between `worst` and `best` and the limit between `tight` and `loose`.
 */
function rank(worst: number, tight: number, best: number, loose: number): Verdict {
  if (worst <= tight + slack(tight)) return "met";
  if (best > loose + slack(loose)) return "not-met";
  return "too-near";
}

function slack(limit: number): number {
  return Number.isFinite(limit) ? Math.abs(limit) * TIE_SLACK : 0;
}
