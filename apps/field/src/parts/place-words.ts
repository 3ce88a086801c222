import type { Record as JobRecord } from "../record/record.ts";

/** A place of the record for people: "boards › Board 1 › circuits › 3 › readings › zs", members by what they are called. */
export function placeWords(record: JobRecord, path: string): string {
  const steps = path.split("/");
  return steps
    .map((step, i) => {
      const at = steps.slice(0, i + 1).join("/");
      const called = NAMED.map((name) => record.value(`${at}/${name}`)).find(
        (one) => typeof one === "string" && one.trim() !== "",
      );
      return i > 0 && typeof called === "string" ? called.slice(0, 60) : step;
    })
    .filter((step) => !step.startsWith("~"))
    .join(" › ");
}

/** Members of something by which people call it, the best first. */
const NAMED = ["designation", "name", "number", "description", "what", "place"];
