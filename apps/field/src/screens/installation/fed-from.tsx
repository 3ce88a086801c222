import { useRecord } from "../../keypad/use-record.ts";
import { useField } from "../../shell/job.ts";
import { BOARD } from "../../words/installation.ts";
import { allCircuits, boardName, circuitName } from "../readings/names.ts";

/** What feeds a board: the origin, or a circuit of another board. */
export function FedFrom({ board }: { readonly board: string }) {
  const path = `boards/${board}/fedFrom`;
  const { value, write } = useField(path);
  const record = useRecord();
  const fed = value as { readonly board?: string; readonly circuit?: string } | string | undefined;
  const chosen = typeof fed === "object" ? `${fed.board}/${fed.circuit}` : (fed ?? "");
  return (
    <div class="field">
      <label for={`at:${path}`}>{BOARD.fedFrom}</label>
      <select
        id={`at:${path}`}
        value={chosen}
        onChange={({ currentTarget }) => {
          const [from = "", circuit] = currentTarget.value.split("/");
          write(circuit === undefined ? "supply" : { board: from, circuit });
        }}
      >
        <option value="supply">{BOARD.supply}</option>
        {allCircuits(record)
          .filter(([other]) => other !== board)
          .map(([other, circuit]) => (
            <option key={`${other}/${circuit}`} value={`${other}/${circuit}`}>
              {boardName(record, other)}, {circuitName(record, other, circuit)}
            </option>
          ))}
      </select>
    </div>
  );
}
