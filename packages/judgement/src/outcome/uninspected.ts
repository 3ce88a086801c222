import type { OpenPoint } from "@good-grounds/core";
import { type InspectionFile, ITEMS } from "@good-grounds/inspection";
import { isWrittenReason } from "./written-reason.ts";

type Answer = InspectionFile["inspected"][number];

/**
 * Items of the inspection without an answer, and items that nobody verified. Limited with a written reason is an answer,
 * and is shown as a limitation; so is "not applicable", with a reason where the item arises everywhere.
 */
export function uninspected({ inspected }: InspectionFile): readonly OpenPoint[] {
  if (!inspected.some(({ outcome }) => outcome === "in-order" || outcome === "observed"))
    return [{ kind: "nothing-inspected", places: [["inspected"]] }];
  const places = new Map(inspected.map(({ item }, i) => [item as string, ["inspected", i] as const]));
  const answers = new Map(inspected.map((answer) => [answer.item as string, answer]));
  const ids = ITEMS.map(({ id }) => id as string);
  const always = new Set(ITEMS.filter(({ applies }) => applies === "always").map(({ id }) => id as string));
  const notVerified = ids.filter((id) => answers.get(id)?.outcome === "not-verified");
  const not = ids.filter((id) => {
    const answer = answers.get(id);
    return answer === undefined || (answer.outcome !== "not-verified" && !isAnswered(answer, always.has(id)));
  });
  const point = (answered: "not" | "not-verified", items: readonly string[]): readonly OpenPoint[] =>
    items.length === 0
      ? []
      : [{ kind: "not-inspected", answered, items, places: items.map((id) => places.get(id) ?? ["inspected"]) }];
  return [...point("not", not), ...point("not-verified", notVerified)];
}

function isAnswered({ outcome, reason }: Answer, always: boolean): boolean {
  if (outcome === "limited" || (outcome === "not-applicable" && always)) return isWrittenReason(reason);
  return true;
}
