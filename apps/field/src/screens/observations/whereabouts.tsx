import { fieldId } from "../../parts/field-id.ts";
import { join, membersOf } from "../../record/document.ts";
import { put, useJob } from "../../shell/job.ts";
import { OBSERVATIONS } from "../../words/observations.ts";
import { boardName, circuitName } from "../readings/names.ts";
import { textAt } from "./read.ts";

/** The board and circuit an observation belongs to, if it belongs to one: their findings answer facts. */
export function Whereabouts({ observation }: { readonly observation: string }) {
  const session = useJob();
  const { record } = session;
  const boards = membersOf(record, "boards");
  const board = textAt(record, join(observation, "board"));
  const circuits = board === "" ? [] : membersOf(record, `boards/${board}/circuits`);
  if (boards.length === 0) return null;
  const [boardId, circuitId] = [fieldId(join(observation, "board")), fieldId(join(observation, "circuit"))];
  return (
    <div class="pair">
      <div class="field">
        <label for={boardId}>{OBSERVATIONS.board}</label>
        <select
          id={boardId}
          value={board}
          onChange={({ currentTarget }) =>
            put(
              session,
              [join(observation, "board"), currentTarget.value || null],
              [join(observation, "circuit"), null],
            )
          }
        >
          <option value="">{OBSERVATIONS.noBoard}</option>
          {boards.map((one) => (
            <option key={one} value={one}>
              {boardName(record, one)}
            </option>
          ))}
        </select>
      </div>
      {board !== "" && (
        <div class="field">
          <label for={circuitId}>{OBSERVATIONS.circuit}</label>
          <select
            id={circuitId}
            value={textAt(record, join(observation, "circuit"))}
            onChange={({ currentTarget }) => put(session, [join(observation, "circuit"), currentTarget.value || null])}
          >
            <option value="">{OBSERVATIONS.noCircuit}</option>
            {circuits.map((one) => (
              <option key={one} value={one}>
                {circuitName(record, board, one)}
              </option>
            ))}
          </select>
        </div>
      )}
    </div>
  );
}
