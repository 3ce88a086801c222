import type { Use } from "../../instrument-file/columns.ts";
import { fieldId } from "../../parts/field-id.ts";
import { Section } from "../../parts/section.tsx";
import { membersOf } from "../../record/document.ts";
import type { Record as JobRecord } from "../../record/record.ts";
import { INSTRUMENT_FILE } from "../../words/instrument-file.ts";
import { textAt } from "../observations/read.ts";
import { ColumnUse } from "./column-use.tsx";

interface ColumnsProps {
  readonly record: JobRecord;
  readonly header: readonly string[];
  readonly uses: readonly (Use | undefined)[];
  readonly onUses: (uses: readonly (Use | undefined)[]) => void;
  /** Where the display of the instrument ends, as it was typed. */
  readonly range: string;
  readonly onRange: (range: string) => void;
  /** The instrument of the job it was; empty where none was chosen. */
  readonly instrument: string;
  readonly onInstrument: (instrument: string) => void;
}

/** What each column is, and what holds for the whole file. */
export function Columns({
  record,
  header: columns,
  uses,
  onUses,
  range,
  onRange,
  instrument,
  onInstrument,
}: ColumnsProps) {
  return (
    <Section title={INSTRUMENT_FILE.columns}>
      {columns.map((header, i) => (
        <ColumnUse
          key={`${i} ${header}`}
          id={fieldId("column", String(i))}
          header={header}
          use={uses[i]}
          onChange={(use) => onUses(uses.map((one, j) => (j === i ? use : one)))}
        />
      ))}
      <div class="pair">
        <div class="field">
          <label for="file-range">{INSTRUMENT_FILE.range}</label>
          <input
            id="file-range"
            inputMode="decimal"
            value={range}
            onInput={({ currentTarget }) => onRange(currentTarget.value)}
          />
        </div>
        <div class="field">
          <label for="file-with">{INSTRUMENT_FILE.instrument}</label>
          <select id="file-with" value={instrument} onChange={({ currentTarget }) => onInstrument(currentTarget.value)}>
            <option value="">{INSTRUMENT_FILE.noInstrument}</option>
            {membersOf(record, "instruments").map((id) => (
              <option key={id} value={id}>
                {textAt(record, `instruments/${id}/kind`) || INSTRUMENT_FILE.unnamed}
              </option>
            ))}
          </select>
        </div>
      </div>
    </Section>
  );
}
