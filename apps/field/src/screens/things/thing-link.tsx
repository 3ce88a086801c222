import { THING_KINDS } from "@good-grounds/inspection";
import { join } from "../../record/document.ts";
import type { Record as JobRecord } from "../../record/record.ts";
import { linkTo } from "../../shell/route.ts";
import { boardName, circuitName } from "../readings/names.ts";
import { type RecordedThing, thingName } from "./recorded.ts";

interface ThingLinkProps {
  readonly record: JobRecord;
  readonly job: string;
  readonly thing: RecordedThing;
  readonly current?: boolean;
}

/** A thing in a list: what it is called, what it is and where. */
export function ThingLink({ record, job, thing, current = false }: ThingLinkProps) {
  const { kind, name } = thing;
  return (
    <a class="row-link" href={linkTo("job", job, "things", kind, name)} aria-current={current ? "page" : undefined}>
      <span>
        <strong>{thingName(record, thing)}</strong>
        <span class="quiet small note">
          {[THING_KINDS[kind].noun, whereWords(record, thing)].filter(Boolean).join(", ")}
        </span>
      </span>
    </a>
  );
}

/** The board and the circuit of a thing, as people call them. */
function whereWords(record: JobRecord, { path }: RecordedThing): string {
  const [board, circuit] = [record.value(join(path, "board")), record.value(join(path, "circuit"))];
  if (typeof board !== "string") return "";
  return typeof circuit === "string"
    ? `${boardName(record, board)}, ${circuitName(record, board, circuit)}`
    : boardName(record, board);
}
