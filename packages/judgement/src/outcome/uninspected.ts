import type { OpenPoint } from "@good-grounds/core";
import { type Installation, ITEMS } from "@good-grounds/inspection";
import { isWrittenReason } from "./written-reason.ts";

type Answer = Installation["inspected"][number];

/**
 * Items of the inspection without an answer, and items that nobody verified. Limited with a written reason is an answer,
 * and is shown as a limitation, unless more items are limited than were looked at; so is "not applicable", with a reason where the item arises everywhere.
 */
export function uninspected({ inspected }: Pick<Installation, "inspected">): readonly OpenPoint[] {
  const count = (...outcomes: readonly Answer["outcome"][]) =>
    inspected.filter(({ outcome }) => outcomes.includes(outcome)).length;
  const seen = count("in-order", "observed");
  if (seen === 0) return [{ kind: "nothing-inspected", places: [["inspected"]] }];
  const places = new Map(inspected.map(({ item }, i) => [item as string, ["inspected", i] as const]));
  const answers = new Map(inspected.map((answer) => [answer.item as string, answer]));
  const ids = ITEMS.map(({ id }) => id as string);
  const always = new Set(ITEMS.filter(({ applies }) => applies === "always").map(({ id }) => id as string));
  const notVerified = ids.filter((id) => answers.get(id)?.outcome === "not-verified");
  const not = ids.filter((id) => {
    const answer = answers.get(id);
    return answer === undefined || (answer.outcome !== "not-verified" && !isAnswered(answer, always.has(id)));
  });
  // Where less was looked at than was left out, the limitations are the inspection.
  const left = ids.filter((id) => answers.get(id)?.outcome === "limited");
  const limited = left.length > seen ? left : [];
  const point = (answered: "not" | "not-verified" | "limited", items: readonly string[]): readonly OpenPoint[] =>
    items.length === 0
      ? []
      : [{ kind: "not-inspected", answered, items, places: items.map((id) => places.get(id) ?? ["inspected"]) }];
  return [...point("not", not), ...point("not-verified", notVerified), ...point("limited", limited)];
}

function isAnswered({ outcome, reason }: Answer, always: boolean): boolean {
  if (outcome === "limited" || (outcome === "not-applicable" && always)) return isWrittenReason(reason);
  return true;
}
