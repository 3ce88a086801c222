import { type Grade, gradeOf, type Judgement } from "@good-grounds/core";
import { GRADE, VERDICT, VERDICT_EXPECTED, VERDICT_SHORT } from "../locales/labels.ts";

/** A verdict in words; one that rests on what is expected never reads like one that is proven. */
export function verdictOf({ verdict, grade }: Pick<Judgement, "verdict" | "grade">): string {
  return isExpected(grade, verdict) ? VERDICT_EXPECTED[verdict] : VERDICT[verdict];
}

/** The same where there is little room. */
export function verdictShort({ verdict, grade }: Pick<Judgement, "verdict" | "grade">): string {
  return isExpected(grade, verdict) && verdict === "met" ? GRADE.expected : VERDICT_SHORT[verdict];
}

/** How a verdict that is settled is founded, where that is less than proven; empty where nothing is to be said. */
export function gradeWords(judgement: Judgement): string {
  if (judgement.verdict !== "met" && judgement.verdict !== "not-met") return "";
  const grade = gradeOf(judgement);
  return grade === "proven" ? "" : GRADE[grade];
}

/** Whether a verdict is settled by what is expected alone. */
export function isExpected(grade: Grade, verdict: Judgement["verdict"]): verdict is "met" | "not-met" {
  return grade === "expected" && (verdict === "met" || verdict === "not-met");
}
