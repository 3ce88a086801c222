import { useRef } from "preact/hooks";
import { ReadingList } from "../../keypad/reading-list.tsx";
import { usePicked } from "../../keypad/use-record.ts";
import { membersOf } from "../../record/document.ts";
import type { Record as JobRecord } from "../../record/record.ts";
import { useSession } from "../../shell/job.ts";
import { linkTo } from "../../shell/route.ts";
import { READINGS } from "../../words/readings.ts";
import { ObserveHere } from "../observations/observe-here.tsx";
import { boardGroups } from "./board-fields.ts";
import { boardName, circuitName } from "./names.ts";

const END = "after-readings";

/** The tests at one board. */
export function BoardPage({ board }: { readonly board: string }) {
  const { job } = useSession();
  const name = usePicked((record) => boardName(record, board));
  const first = usePicked((record) => membersOf(record, `boards/${board}/circuits`)[0]);
  const firstName = usePicked((record) => (first === undefined ? undefined : circuitName(record, board, first)));
  const groupsOf = useRef((record: JobRecord) => boardGroups(record, board));
  return (
    <>
      <h2 tabIndex={-1} data-start="">
        {READINGS.board(name)}
      </h2>
      <p class="way-links">
        <a class="up-link" href={linkTo("job", job, "readings")}>
          {READINGS.allDone}
        </a>
        <ObserveHere board={board} />
      </p>
      <ReadingList label={READINGS.board(name)} groupsOf={groupsOf.current} endId={END}>
        <a
          id={END}
          class="button main wide"
          href={first === undefined ? linkTo("job", job, "readings") : linkTo("job", job, "readings", board, first)}
        >
          {firstName === undefined ? READINGS.allDone : READINGS.nextCircuit(firstName)}
        </a>
      </ReadingList>
    </>
  );
}
