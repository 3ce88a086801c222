import { source } from "../sources.ts";

/** Terms of deciding with an uncertain reading. */
export const DECISION_TERMS = [
  "tolerance-limit",
  "acceptance-limit",
  "guard-band",
  "simple-acceptance",
  "guarded-acceptance",
  "guarded-rejection",
  "four-way-statement",
] as const;
export type DecisionTerm = (typeof DECISION_TERMS)[number];

const LABORATORIES = source("decision-rule pages of two accredited laboratories (ILAC-G8)", "2019", "published", {
  doubt: "JCGM 106:2012 itself was not read",
});

interface DecisionRule {
  readonly term: DecisionTerm;
  readonly means: string;
  readonly source: typeof LABORATORIES;
}

const MEANS: Readonly<Record<DecisionTerm, string>> = {
  "tolerance-limit": "TL, the limit the requirement sets",
  "acceptance-limit": "AL, the limit a reading is held against",
  "guard-band": "w = |TL − AL|, often the expanded uncertainty U at about 95 %",
  "simple-acceptance": "w = 0: a reading at the limit is wrong up to half the time",
  "guarded-acceptance": "accepted only at or below TL − w (upper limit), at or above TL + w (lower limit)",
  "guarded-rejection": "rejected only beyond TL by more than w",
  "four-way-statement": "pass, pass within the guard band, fail within the guard band, fail",
};

/** Every rule of deciding with an uncertain reading. */
export const DECISION_RULES: readonly DecisionRule[] = Object.freeze(
  DECISION_TERMS.map((term) => Object.freeze({ term, means: MEANS[term], source: LABORATORIES })),
);
