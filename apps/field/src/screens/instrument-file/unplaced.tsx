import type { Plan } from "../../instrument-file/plan.ts";
import { INSTRUMENT_FILE } from "../../words/instrument-file.ts";

/** Cells that are not taken, each with the reason. */
export function Unplaced({ unplaced }: { readonly unplaced: Plan["unplaced"] }) {
  return (
    <details>
      <summary>{INSTRUMENT_FILE.unplaced(unplaced.length)}</summary>
      <ul>
        {unplaced.map(({ line, cell, because }, i) => (
          <li key={`${i} ${line}`}>
            {INSTRUMENT_FILE.line} {line}: “{cell}” {INSTRUMENT_FILE.because[because]}
          </li>
        ))}
      </ul>
    </details>
  );
}
