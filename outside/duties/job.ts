import type { Classification, Duty, DutyId } from "@good-grounds/core";
import { type InspectionFile, parseInspectionData } from "@good-grounds/inspection";
import { inspectedItems } from "../../examples/scenarios/common.ts";
import { assemble } from "../../packages/assembly/src/index.ts";
import { smallestFile } from "../files/arbitrary-file.ts";

type Brief = InspectionFile["brief"];

/** What a small job is made of; what is left out is a let home in England, inspected on one day. */
export interface Job {
  readonly nation?: Brief["nation"];
  readonly tenure?: Brief["tenure"];
  readonly use?: Brief["use"];
  readonly letting?: Brief["letting"];
  /** Days of the visits; the first is the day of the inspection. */
  readonly days?: readonly [string, ...string[]];
  readonly classes?: readonly Classification[];
  readonly conclusion?: InspectionFile["conclusion"];
  readonly edit?: (file: InspectionFile) => void;
}

/** A small inspection as a file, every item of it answered. */
export function jobFile({
  nation = "england",
  tenure = "private-rented",
  use = "dwelling",
  letting,
  days = ["2026-11-10"],
  classes = [],
  conclusion,
  edit,
}: Job): InspectionFile {
  const [first] = days;
  const file: InspectionFile = {
    ...smallestFile(),
    inspectedOn: first,
    visits: days.map((date) => ({ date })),
    inspected: inspectedItems(["dwelling"], {}, {}) as InspectionFile["inspected"],
    observations: classes.map((classification, i) => ({
      id: `o${i + 1}`,
      place: "hall",
      what: "Something seen.",
      choice: { classification, reason: "What was seen there is why.", by: "p" },
    })),
    people: [{ id: "p", name: "A. Person" }],
    ...(conclusion === undefined ? {} : { conclusion }),
  };
  Object.assign(file.brief, { nation, tenure, use, ...(letting === undefined ? {} : { letting }) });
  edit?.(file);
  const parsed = parseInspectionData(JSON.parse(JSON.stringify(file)));
  if (!parsed.ok) throw new Error(JSON.stringify(parsed.issues));
  return parsed.file;
}

export function dutiesIn(job: Job): readonly Duty[] {
  return assemble(jobFile(job)).duties;
}

/** One duty of a job; undefined where it is not there. */
export function dutyIn(id: DutyId, job: Job): Duty | undefined {
  return dutiesIn(job).find((duty) => duty.id === id);
}
