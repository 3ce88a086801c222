/**
 * What a comparison or a group of them comes to. `too-near`: the band of the reading lies across the limit.
 * `not-known`: something needed is missing. `not-applicable`: the question does not arise here.
 */
export type Verdict = "met" | "not-met" | "too-near" | "not-known" | "not-applicable";

/** The verdicts a completion of the unknown can turn into; `not-known` and `too-near` are the open ones. */
export function isOpen(verdict: Verdict): boolean {
  return verdict === "not-known" || verdict === "too-near";
}

/** Every part has to be met. One part not met decides; parts that do not apply are left out. */
export function allOf(verdicts: readonly Verdict[]): Verdict {
  let result: Verdict = "not-applicable";
  for (const verdict of verdicts) {
    if (verdict === "not-met") return "not-met";
    if (verdict === "not-known" || result === "not-known") result = "not-known";
    else if (verdict === "too-near" || result === "too-near") result = "too-near";
    else if (verdict === "met") result = "met";
  }
  return result;
}

/** One part met is enough. Open parts keep the result open; parts that do not apply are left out. */
export function anyOf(verdicts: readonly Verdict[]): Verdict {
  let result: Verdict = "not-applicable";
  for (const verdict of verdicts) {
    if (verdict === "met") return "met";
    if (verdict === "too-near" || result === "too-near") result = "too-near";
    else if (verdict === "not-known" || result === "not-known") result = "not-known";
    else if (verdict === "not-met") result = "not-met";
  }
  return result;
}

/** Order for showing the worst first. */
export const SEVERITY: Readonly<Record<Verdict, number>> = Object.freeze({
  "not-met": 4,
  "too-near": 3,
  "not-known": 2,
  met: 1,
  "not-applicable": 0,
});
