import type { Path } from "@good-grounds/core";
import type { DraftFile } from "@good-grounds/inspection";

/** A reading as it stands in the file, whatever it is of. */
export interface Entry {
  readonly path: Path;
  readonly shown: string;
  /** When, in milliseconds; undefined where no time is recorded. */
  readonly at: number | undefined;
  /** The time as written. */
  readonly time: string | undefined;
  /** Id of the instrument: the one it names, or the only one there is. */
  readonly instrument: string | undefined;
}

/** Every reading of supply, boards and conditions, in the order of the file. The schema bounds how deep it goes. */
export function entriesOf(file: DraftFile): readonly Entry[] {
  const only = file.instruments?.length === 1 ? file.instruments[0]?.id : undefined;
  const entries: Entry[] = [];
  const walk = (value: unknown, path: Path): void => {
    if (typeof value !== "object" || value === null) return;
    if ("shown" in value && typeof value.shown === "string") {
      const time = "at" in value && typeof value.at === "string" ? value.at : undefined;
      const named = "with" in value && typeof value.with === "string" ? value.with : undefined;
      const at = time === undefined ? undefined : Date.parse(time);
      entries.push({ path, shown: value.shown, at, time, instrument: named ?? only });
      return;
    }
    const steps = Array.isArray(value) ? value.entries() : Object.entries(value);
    for (const [step, inner] of steps) walk(inner, [...path, step]);
  };
  walk(file.supply, ["supply"]);
  walk(file.boards, ["boards"]);
  walk(file.conditions, ["conditions"]);
  return entries;
}
