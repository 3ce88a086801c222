import type { Unit } from "../quantity/unit.ts";
import type { Matter } from "../terms/term.ts";
import { bothOf, eitherOf, type Verdict } from "../verdict/verdict.ts";
import { atLeastMargin, over, rank, slack } from "./arithmetic.ts";
import {
  type Apart,
  type Combined,
  type Compared,
  type Evidence,
  type Fact,
  type Ground,
  isKnown,
  isKnownFact,
  type Judgement,
  type Settled,
} from "./evidence.ts";
import { Figures } from "./figures.ts";
import { bears, type JudgementGrade, joinedGrade } from "./grade.ts";
import { NONE } from "./lines.ts";

const NO_JUDGEMENTS: readonly Judgement[] = Object.freeze([]);

/**
 * The arithmetic of the engine. Each operation takes evidence and gives evidence: a value, its band, and the lines it
 * came from. Bands are worst case: each input anywhere in its own band, independent of the others; every band holds its
 * value. An unknown input makes the result lacking, whatever it is multiplied or divided by, with the same lines
 * kept. With `keep` false the lines are dropped and nothing is frozen; values, bands and verdicts are the same.
 */
export class Reckoner extends Figures {
  /** `left` must not be more than `limit`; `grade` says how well the two are founded. */
  atMost<U extends Unit>(
    matter: Matter,
    left: Evidence<U>,
    limit: Evidence<NoInfer<U>>,
    grade: JudgementGrade = "proven",
  ): Compared {
    const known = isKnown(left) && isKnown(limit);
    return this.#compare(
      matter,
      "at-most",
      known ? rank(left.value, limit.value, left.value, limit.value) : "not-known",
      known ? rank(left.high, limit.low, left.low, limit.high) : "not-known",
      known && limit.value > 0 ? 1 - left.value / limit.value : Number.NaN,
      left,
      limit,
      grade,
    );
  }

  /** `left` must not be less than `limit`; `grade` says how well the two are founded. */
  atLeast<U extends Unit>(
    matter: Matter,
    left: Evidence<U>,
    limit: Evidence<NoInfer<U>>,
    grade: JudgementGrade = "proven",
  ): Compared {
    const known = isKnown(left) && isKnown(limit);
    return this.#compare(
      matter,
      "at-least",
      known ? rank(limit.value, left.value, limit.value, left.value) : "not-known",
      known ? rank(limit.high, left.low, limit.low, left.high) : "not-known",
      known && limit.value > 0 ? atLeastMargin(left.value, limit.value) : Number.NaN,
      left,
      limit,
      grade,
    );
  }

  /**
   * Whether two accounts of the same quantity can both be true. Where what they may be out by is given as `apart`, that
   * decides: their difference against the errors between them. Else their bands meet or do not, and the margin is the
   * part of the joint width of the bands that the distance of the values leaves. `grade` says how well it is founded that
   * the other account is the one to agree with.
   */
  agrees<U extends Unit>(
    matter: Matter,
    account: Evidence<U>,
    other: Evidence<NoInfer<U>>,
    relation: "agrees-with" | "not-below" | "not-above" = "agrees-with",
    apart?: Apart,
    grade: JudgementGrade = "proven",
  ): Compared {
    if (!isKnown(account) || !isKnown(other)) {
      return this.#compare(matter, relation, "not-known", "not-known", Number.NaN, account, other);
    }
    if (apart === undefined) return this.#meets(matter, account, other, relation);
    const { verdict, margin } = apart;
    const asRead = verdict === "too-near" ? "not-met" : verdict;
    return this.#compare(matter, relation, asRead, verdict, margin, account, other, grade, apart);
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
    const [lower, upper] = account.value <= other.value ? [account, other] : [other, account];
    // How far the two reach towards each other.
    const reach = lower.high - lower.value + (upper.value - upper.low);
    const minded = relation === "agrees-with" || (relation === "not-below") === (lower === account);
    const apart = minded ? upper.value - lower.value : 0;
    const margin = apart === 0 ? 1 : inKeepingWith(verdict, 1 - over(apart, reach));
    return this.#compare(matter, relation, verdict, verdict, margin, account, other);
  }

  /** Judgements to be shown beside one that decides. They are worked out only where grounds are kept. */
  beside(work: () => readonly Judgement[]): readonly Judgement[] {
    return this.keep ? work() : NO_JUDGEMENTS;
  }

  /** Every part has to be met; the margin is that of the tightest part. */
  all(matter: Matter, ...parts: readonly Judgement[]): Combined {
    return this.#combine(matter, "all", parts);
  }

  /** One part met is enough; parts stand in order of preference, and the margin is that of the first that bears the verdict, what is proven before what is expected. */
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
      grade: "proven",
      why,
      from: this.keep ? from : NONE,
    };
    return this.seal(node);
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

  #compare(
    matter: Matter,
    relation: Compared["relation"],
    asRead: Verdict,
    verdict: Verdict,
    margin: number,
    left: Ground,
    limit: Ground,
    grade: JudgementGrade = "proven",
    apart?: Apart,
  ): Compared {
    const from = this.pair(left, limit);
    const node = {
      kind: "compared",
      matter,
      relation,
      verdict,
      asRead,
      margin: inKeepingWith(verdict, margin),
      grade,
      from,
    } as const;
    return this.seal(apart === undefined ? node : { ...node, apart });
  }

  #combine(matter: Matter, rule: Combined["rule"], parts: readonly Judgement[]): Combined {
    const join = rule === "all" ? bothOf : eitherOf;
    let verdict: Verdict = "not-applicable";
    let asRead: Verdict = "not-applicable";
    for (const part of parts) {
      verdict = join(verdict, part.verdict);
      asRead = join(asRead, part.asRead);
    }
    const grade = joinedGrade(rule, verdict, parts);
    const margin = marginOf(rule, verdict, grade, parts);
    return this.seal({
      kind: "combined",
      matter,
      rule,
      verdict,
      asRead,
      margin,
      grade,
      from: this.keep ? parts : NONE,
    });
  }
}

/** What ties at a limit leaves no margin rather than a last bit on the wrong side. */
function inKeepingWith(verdict: Verdict, margin: number): number {
  return (verdict === "met" && margin < 0) || (verdict === "not-met" && margin > 0) ? 0 : margin;
}

/**
 * The margin of several parts: of all that have to hold, that of the tightest, and where the whole is not met that of the
 * tightest that is not; where one is enough, that of the first that bears the verdict, and where none is met that of
 * the one that comes nearest.
 */
function marginOf(
  rule: Combined["rule"],
  verdict: Verdict,
  grade: JudgementGrade,
  parts: readonly Judgement[],
): number {
  let margin = Number.NaN;
  for (const part of parts) {
    if (part.verdict === "not-applicable") continue;
    if (rule === "any" ? !bears(part, verdict, grade) : part.verdict !== verdict && verdict === "not-met") continue;
    if (rule === "any" && verdict !== "not-met") return part.margin;
    const nearer = rule === "any" ? part.margin > margin : part.margin < margin;
    if (Number.isNaN(margin) || nearer) margin = part.margin;
  }
  return margin;
}
