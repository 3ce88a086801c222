import type { Remark } from "@good-grounds/core";

/** Said where two accounts are further apart than the errors usually bring them, and not so far that one must be wrong. */
export const POSSIBLE_MISFIT: Remark = Object.freeze({
  code: "possible-misfit",
  words:
    "They are further apart than instruments and cable usually bring them, but not so far that one of them must be wrong. Measure again, or state what they may be out by (0.71 ± 0.02 Ω) and how the length was found.",
});
