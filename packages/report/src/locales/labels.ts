/** Labels of classes, verdicts, outcomes and gaps: report, command and app take them from here. */
import type { Classification, Grade, Outcome, Silence, Verdict } from "@good-grounds/core";

/** Verdicts in words. */
export const VERDICT: Readonly<Record<Verdict, string>> = Object.freeze({
  met: "met",
  "not-met": "not met",
  "too-near": "too near to call",
  "not-known": "not known",
  "not-applicable": "does not arise",
});

/** Verdicts where there is little room. */
export const VERDICT_SHORT: Readonly<Record<Verdict, string>> = Object.freeze({
  met: "met",
  "not-met": "NOT MET",
  "too-near": "too near",
  "not-known": "not known",
  "not-applicable": "–",
});

/** Verdicts that rest on what is to be expected, in words. */
export const VERDICT_EXPECTED: Readonly<Record<"met" | "not-met", string>> = Object.freeze({
  met: "met as expected, not proven",
  "not-met": "not met, by what is expected",
});

/** How well a conclusion is founded, in a word. */
export const GRADE: Readonly<Record<Grade, string>> = Object.freeze({
  proven: "proven",
  expected: "expected",
  assumed: "assumed",
});

/** Why something has no value, in words. */
export const SILENCE: Readonly<Record<Silence, string>> = Object.freeze({
  absent: "not recorded",
  limited: "limited",
  "not-verified": "not verified",
  "not-applicable": "recorded as not applicable",
  "not-tabulated": "not tabulated",
});

/** Outcomes in words. */
export const OUTCOME: Readonly<Record<Outcome["outcome"], string>> = Object.freeze({
  satisfactory: "satisfactory",
  unsatisfactory: "unsatisfactory",
  "not-determined": "not determined yet",
});

/** What a classification means, for a reader without the trade's words. */
export const CLASSIFICATION: Readonly<Record<Classification, string>> = Object.freeze({
  C1: "danger now: someone can be hurt",
  C2: "could become dangerous: put right soon",
  C3: "not dangerous: better to improve",
  FI: "could not be settled: look into it without delay",
  none: "nothing to be done",
});

/** What a classification means where there is little room, for the person who chooses it. */
export const CLASSIFICATION_SHORT: Readonly<Record<Classification, string>> = Object.freeze({
  C1: "danger now",
  C2: "could become dangerous",
  C3: "better to improve",
  FI: "could not be settled",
  none: "nothing to classify",
});
