import type { Verdict } from "../verdict/verdict.ts";
import type { Combined, Grade, Ground, Judgement } from "./evidence.ts";

/** The grades that decide with a verdict. */
export type JudgementGrade = Judgement["grade"];

/**
 * The grade of several judgements taken together. Where one part settles the verdict (one met of several ways, one not
 * met of several demands), one proven part is enough; where all of them have to bear it, one expected part makes it so.
 */
export function joinedGrade(rule: Combined["rule"], verdict: Verdict, parts: readonly Judgement[]): JudgementGrade {
  if (verdict !== "met" && verdict !== "not-met") return "proven";
  const oneIsEnough = verdict === (rule === "any" ? "met" : "not-met");
  let some = false;
  let proven = false;
  let expected = false;
  for (const part of parts) {
    if (part.verdict !== verdict) continue;
    some = true;
    if (part.grade === "proven") proven = true;
    else expected = true;
  }
  return some && (oneIsEnough ? !proven : expected) ? "expected" : "proven";
}

/** Whether one of several ways bears the verdict of all: one that is proven before one that is expected. */
export function bears({ verdict, grade }: Judgement, joined: Verdict, joinedAs: JudgementGrade): boolean {
  return verdict === joined && (verdict !== "met" || grade === joinedAs);
}

const WEAKEST: readonly Grade[] = ["proven", "expected", "assumed"];

/**
 * The grade of a conclusion by the leaves that bear it: the weakest of them, ways and demands that do not decide left out.
 * Needs the grounds.
 */
export function gradeOf(judgement: Judgement): Grade {
  let weakest = WEAKEST.indexOf(judgement.grade);
  const visited = new Set<Ground>();
  const waiting: Ground[] = [judgement];
  for (let node = waiting.pop(); node !== undefined; node = waiting.pop()) {
    if (visited.has(node)) continue;
    visited.add(node);
    if (node.kind === "assumed" || (node.kind === "fact" && node.how === "assumed")) return "assumed";
    if (node.kind === "expected") weakest = Math.max(weakest, 1);
    if (node.kind === "combined") waiting.push(...deciding(node));
    else if ("from" in node) waiting.push(...node.from);
  }
  return WEAKEST[weakest] ?? "assumed";
}

/** The parts that bear a combined verdict: the first of those of which one is enough, else all of them. */
function deciding({ rule, verdict, grade, from }: Combined): readonly Ground[] {
  const parts = from.filter((part): part is Judgement => "verdict" in part && part.verdict === verdict);
  if (verdict !== (rule === "any" ? "met" : "not-met")) return parts;
  return parts.filter((part) => part.grade === grade).slice(0, 1);
}
