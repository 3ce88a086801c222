import type { Taken } from "../../instrument-file/plan.ts";
import type { Value } from "../../record/entry.ts";
import type { Record as JobRecord } from "../../record/record.ts";
import { INSTRUMENT_FILE } from "../../words/instrument-file.ts";
import { placeOf } from "./places.ts";

interface WrittenOverProps {
  readonly record: JobRecord;
  readonly ready: readonly Taken[];
}

/** Readings of the job that those of the file would replace. */
export function WrittenOver({ record, ready }: WrittenOverProps) {
  return (
    <ul>
      {ready.flatMap(({ path, shown }) => {
        const now = (record.value(path) as { readonly shown?: Value } | undefined)?.shown;
        return typeof now === "string" && now !== shown
          ? [<li key={path}>{INSTRUMENT_FILE.over(placeOf(record, path), now, shown)}</li>]
          : [];
      })}
    </ul>
  );
}
