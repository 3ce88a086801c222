export * from "./agreement.ts";
export * from "./conformity.ts";
export * from "./duties.ts";
export * from "./finding.ts";
export * from "./grounds/accuracy.ts";
export { TIE_SLACK } from "./grounds/arithmetic.ts";
export {
  bandOf,
  COMMON_PART,
  type ErrorGrade,
  LEADS_LEFT,
  RECTANGULAR,
  type ReadingError,
  USUAL_ACCURACY,
} from "./grounds/errors.ts";
export * from "./grounds/evidence.ts";
export { gradeOf } from "./grounds/grade.ts";
export * from "./grounds/leaves.ts";
export * from "./grounds/reckoner.ts";
export * from "./grounds/walk.ts";
export * from "./issue/issue.ts";
export * from "./misfit.ts";
export * from "./outcome.ts";
export * from "./own-figures.ts";
export * from "./quantity/algebra.ts";
export * from "./quantity/print.ts";
export * from "./quantity/quantity.ts";
export * from "./quantity/unit.ts";
export * from "./quantity/written.ts";
export * from "./reasoning/index.ts";
export { RELEASE } from "./release.ts";
export * from "./terms/index.ts";
export { rangeOf } from "./terms/range-of-term.ts";
export * from "./terms/term.ts";
export * from "./then-and-now.ts";
export * from "./verdict/verdict.ts";
export * from "./vocabulary/index.ts";
