import type { Sheet } from "../../instrument-file/rows.ts";
import { INSTRUMENT_FILE } from "../../words/instrument-file.ts";

/** The file as it is, line by line. */
export function Lines({ sheet }: { readonly sheet: Sheet }) {
  return (
    <details>
      <summary>{INSTRUMENT_FILE.rows(sheet.rows.length)}</summary>
      {/* biome-ignore lint/a11y/noNoninteractiveTabindex: what scrolls has to be reached by keyboard */}
      <div class="scroll" tabIndex={0}>
        <table>
          <thead>
            <tr>
              <th scope="col">{INSTRUMENT_FILE.line}</th>
              {sheet.header.map((header, i) => (
                <th key={`${i} ${header}`} scope="col">
                  {header}
                </th>
              ))}
            </tr>
          </thead>
          <tbody>
            {sheet.rows.map(({ line, cells }) => (
              <tr key={line}>
                <th scope="row">{line}</th>
                {sheet.header.map((header, i) => (
                  <td key={`${i} ${header}`}>{cells[i] ?? ""}</td>
                ))}
              </tr>
            ))}
          </tbody>
        </table>
      </div>
    </details>
  );
}
