import type { Taken } from "../../instrument-file/plan.ts";
import { Section } from "../../parts/section.tsx";
import type { Record as JobRecord } from "../../record/record.ts";
import { INSTRUMENT_FILE } from "../../words/instrument-file.ts";
import { placeOf } from "./places.ts";

interface TwiceProps {
  readonly record: JobRecord;
  readonly twice: readonly (readonly Taken[])[];
  /** Which of them is taken, by its place. */
  readonly chosen: ReadonlyMap<string, Taken>;
  readonly onChosen: (chosen: ReadonlyMap<string, Taken>) => void;
}

/** Readings that the file has more than once: the person says which one is meant. */
export function Twice({ record, twice, chosen, onChosen }: TwiceProps) {
  return (
    <Section title={INSTRUMENT_FILE.twice}>
      {twice.map((group) => (
        <fieldset key={group[0]?.path} class="sheet">
          <legend>{placeOf(record, group[0]?.path ?? "")}</legend>
          {group.map((one) => (
            <label key={one.line} class="choice">
              <input
                type="radio"
                name={one.path}
                checked={chosen.get(one.path)?.line === one.line}
                onChange={() => onChosen(new Map([...chosen, [one.path, one]]))}
              />
              <span>
                {one.shown} ({INSTRUMENT_FILE.line} {one.line})
              </span>
            </label>
          ))}
        </fieldset>
      ))}
    </Section>
  );
}
