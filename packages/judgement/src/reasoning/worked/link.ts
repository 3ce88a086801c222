import type { Conclusion, Judgement, Verdict, Worked } from "@good-grounds/core";
import type { WorkedFact } from "../results.ts";

/** One computation of a link, or a matter within it. */
export type LinkPart = Pick<Worked, "by" | "matter">;

/** One computation of a link with what it says; nothing where it was not made. */
export interface JudgedPart {
  readonly by: string;
  readonly verdict: Verdict;
  readonly judgement?: Judgement;
}

/** The computations a link takes together: all of them have to be met, one that is not met is enough. */
export function partsOf({ by, matter, and = [] }: Worked): readonly LinkPart[] {
  return [matter === undefined ? { by } : { by, matter }, ...and];
}

export function judgedPart(part: LinkPart, conclusion: Conclusion | undefined): JudgedPart {
  const judgement = conclusion === undefined ? undefined : judgementFor(part, conclusion);
  return judgement === undefined
    ? { by: part.by, verdict: "not-known" }
    : { by: part.by, verdict: judgement.verdict, judgement };
}

/** The answer of a link's computations together; undefined where none of them was made. */
export function answered(fact: string, link: Worked, parts: readonly JudgedPart[]): WorkedFact | undefined {
  const notMet = parts.find(({ verdict }) => verdict === "not-met");
  const made = parts.filter(({ judgement }) => judgement !== undefined);
  const telling = notMet ?? made.find(({ verdict }) => verdict !== "met") ?? made[0];
  if (telling?.judgement === undefined) return undefined;
  // What is only expected to be met answers nothing: an observation rests on what is shown.
  const isMet = parts.every(({ verdict, judgement }) => verdict === "met" && judgement?.grade === "proven");
  const value = (notMet === undefined ? (isMet ? link.met : undefined) : link.notMet) ?? null;
  return { fact, by: telling.by, value, judgement: telling.judgement };
}

/** What of a conclusion a fact rests on: the whole, or the matter within it that the link names. */
export function judgementFor({ matter }: LinkPart, { judgement, settles }: Conclusion): Judgement | undefined {
  return matter === undefined ? judgement : settles?.find((one) => one.matter.id === matter);
}
