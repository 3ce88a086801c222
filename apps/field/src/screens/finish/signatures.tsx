import { standingOf } from "@good-grounds/inspection";
import { put, useSession } from "../../shell/job.ts";
import { nameOf } from "../../shell/safety.ts";
import { FINISH } from "../../words/finish.ts";
import { textAt } from "../observations/read.ts";
import { CAPACITIES, type Capacity } from "./capacities.ts";

interface SignaturesProps {
  readonly names: readonly string[];
  /** What the content comes to as it is now, in each way it was ever signed. */
  readonly hashes: readonly string[];
}

/** The signatures that stand, each with whether it still holds. */
export function Signatures({ names, hashes }: SignaturesProps) {
  const session = useSession();
  const { record } = session;
  return (
    <>
      {names.length === 0 && <p class="quiet">{FINISH.none}</p>}
      <ul class="rows">
        {names.map((name) => {
          const at = `signatures/${name}`;
          const content = textAt(record, `${at}/content`);
          const stands = FINISH.standing[standingOf(content === "" ? undefined : content, hashes)];
          return (
            <li key={name} class="row between">
              <span>
                <strong>{nameOf(record, textAt(record, `${at}/person`)) ?? FINISH.unnamed}</strong>{" "}
                {CAPACITIES[textAt(record, `${at}/capacity`) as Capacity] ?? ""}
                <br />
                <span class="quiet small">
                  {textAt(record, `${at}/at`).replace("T", " ").slice(0, 16)}; {stands}
                </span>
              </span>
              <button type="button" class="plain" onClick={() => put(session, [at, null])}>
                {FINISH.withdraw}
              </button>
            </li>
          );
        })}
      </ul>
    </>
  );
}
