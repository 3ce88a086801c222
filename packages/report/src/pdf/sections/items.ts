import { type InspectionFile, ITEM_GROUPS } from "@good-grounds/inspection";
import type { ReportInput } from "../../input.ts";
import { REPORT } from "../../locales/report-en.ts";
import { numbered } from "../../words/observation-number.ts";
import { cell, gap } from "../cell.ts";

type Answer = InspectionFile["inspected"][number];

const OPEN: ReadonlySet<Answer["outcome"]> = new Set(["limited", "not-verified"]);

/** How many items of the inspection are without an answer that settles them. */
export function openItems(file: InspectionFile): number {
  const settled = new Set(file.inspected.filter(({ outcome }) => !OPEN.has(outcome)).map(({ item }) => item));
  return ITEM_GROUPS.flatMap((group) => [...group.items]).filter(({ id }) => !settled.has(id)).length;
}

/** Every item that has to be looked at, by group, with its outcome. An item nobody answered says so. */
export function items({ installation }: ReportInput) {
  const { file } = installation;
  const answers = new Map<string, Answer>(file.inspected.map((answer) => [answer.item, answer]));
  const numbers = new Map(numbered(file).map(({ number, observation }) => [observation.id, number]));
  return {
    title: REPORT.itemsTitle,
    head: REPORT.itemsHead,
    groups: ITEM_GROUPS.map((group) => ({
      title: group.title,
      rows: group.items.map(({ id, asks, regulations }) => {
        const answer = answers.get(id);
        const outcome =
          answer === undefined
            ? gap(REPORT.unanswered)
            : { words: REPORT.itemOutcome[answer.outcome], open: OPEN.has(answer.outcome) };
        return [cell(asks), cell(regulations.join(", ")), outcome, cell(noteOf(answer, numbers))];
      }),
    })),
  };
}

function noteOf(answer: Answer | undefined, numbers: ReadonlyMap<string, number>): string {
  if (answer === undefined) return "";
  const seen = (answer.observations ?? []).flatMap((id) => {
    const number = numbers.get(id);
    return number === undefined ? [] : [REPORT.seeObservation(number)];
  });
  return [answer.reason ?? "", ...seen].filter((part) => part !== "").join("; ");
}
