import { COLUMNS, type Column, type Use } from "../../instrument-file/columns.ts";
import { INSTRUMENT_FILE } from "../../words/instrument-file.ts";

interface ColumnUseProps {
  readonly id: string;
  readonly header: string;
  readonly use: Use | undefined;
  readonly onChange: (use: Use | undefined) => void;
}

/** What one column of the file is, and in which unit. */
export function ColumnUse({ id, header, use, onChange }: ColumnUseProps) {
  return (
    <div class="field">
      <label for={id}>{header}</label>
      <div class="pair">
        <select
          id={id}
          value={use?.column ?? ""}
          onChange={({ currentTarget }) => {
            const column = currentTarget.value as Column | "";
            onChange(column === "" ? undefined : { column, unit: COLUMNS[column].unit });
          }}
        >
          <option value="">{INSTRUMENT_FILE.unused}</option>
          {Object.entries(COLUMNS).map(([column, { words }]) => (
            <option key={column} value={column}>
              {words}
            </option>
          ))}
        </select>
        {use !== undefined && use.unit !== "" && (
          <input
            aria-label={`${header}: ${INSTRUMENT_FILE.unit}`}
            value={use.unit}
            onInput={({ currentTarget }) => onChange({ ...use, unit: currentTarget.value.trim() })}
          />
        )}
      </div>
    </div>
  );
}
