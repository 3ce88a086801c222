import type { AcceptanceRule, ConformityNote, ErrorKind } from "@good-grounds/core";

/** Words about how sure a finding is. */
export const PROBABILITY = Object.freeze({
  met: (chance: string) => `Probability that it is met: ${chance}`,
  agrees: (chance: string) => `Errors alone bring these as far apart or further: ${chance} of the time`,
  none: "No probability can be given",
  between: (low: string, high: string) => `${low} to ${high} as the ranges lie`,
  expanded: (figure: string) => `U = ${figure}, k = 2`,
  rule: Object.freeze({
    simple: "simple acceptance",
    guarded: "guarded acceptance",
  } satisfies Record<AcceptanceRule, string>),
  chosen: "chosen",
  doubtFrom: "Doubt from",
  source: Object.freeze({
    gain: "scale of the instrument",
    reading: "reading",
    resolution: "last digit",
    leads: "leads",
    contact: "contact",
    range: "range",
  } satisfies Record<ErrorKind, string>),
  shared: (values: number) => ` in ${values} readings`,
  note: Object.freeze({
    "accuracy-not-stated": "Accuracy of an instrument not stated: what usual instruments are out by is taken.",
    "no-ceiling": "Accuracy of an instrument not stated, and nothing usual to take for it: only the last digit counts.",
    "leads-assumed": "What nulling left of the leads was not recorded: 0.02 Ω either way is assumed.",
    ranges: "Values known only between limits take part.",
    "open-ended": "A display at the end of its range takes part.",
    curved: "The errors do not act in proportion: only what holds at every end of them is said.",
    "agreement-apart": "Agreements among the parts have no share in the probability.",
  } satisfies Record<ConformityNote, string>),
  metInDoubt: "A limit that is met, but with a probability below 95 %, is written out too.",
});
