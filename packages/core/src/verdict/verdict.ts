/**
 * What a comparison or a group of them comes to. `too-near`: the band of the reading lies across the limit.
 * `not-known`: something needed is missing. `not-applicable`: the question does not arise here.
 */
export type Verdict = "met" | "not-met" | "too-near" | "not-known" | "not-applicable";

/** The verdicts a completion of the unknown can turn into; `not-known` and `too-near` are the open ones. */
export function isOpen(verdict: Verdict): boolean {
  return verdict === "not-known" || verdict === "too-near";
}

/** Two parts that both have to be met. One not met decides; a part that does not apply is left out. */
export function bothOf(a: Verdict, b: Verdict): Verdict {
  if (a === b || b === "not-applicable") return a;
  if (a === "not-applicable") return b;
  if (a === "not-met" || b === "not-met") return "not-met";
  if (a === "not-known" || b === "not-known") return "not-known";
  return "too-near";
}

/** Two parts of which one met is enough. An open part keeps the result open; a part that does not apply is left out. */
export function eitherOf(a: Verdict, b: Verdict): Verdict {
  if (a === b || b === "not-applicable") return a;
  if (a === "not-applicable") return b;
  if (a === "met" || b === "met") return "met";
  if (a === "too-near" || b === "too-near") return "too-near";
  return "not-known";
}

/** Every part has to be met. */
export function allOf(verdicts: readonly Verdict[]): Verdict {
  return verdicts.reduce(bothOf, "not-applicable");
}

/** One part met is enough. */
export function anyOf(verdicts: readonly Verdict[]): Verdict {
  return verdicts.reduce(eitherOf, "not-applicable");
}

/** Order for showing the worst first. */
export const SEVERITY: Readonly<Record<Verdict, number>> = Object.freeze({
  "not-met": 4,
  "too-near": 3,
  "not-known": 2,
  met: 1,
  "not-applicable": 0,
});
