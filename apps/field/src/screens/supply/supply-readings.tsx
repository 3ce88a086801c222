import { ReadingList } from "../../keypad/reading-list.tsx";
import { usePicked } from "../../keypad/use-record.ts";
import { membersOf } from "../../record/document.ts";
import { useSession } from "../../shell/job.ts";
import { linkTo } from "../../shell/route.ts";
import { SUPPLY } from "../../words/installation.ts";
import { READINGS } from "../../words/readings.ts";
import { boardName } from "../readings/names.ts";
import { supplyGroups } from "./supply-fields.ts";

const END = "after-readings";

/** The tests at the origin. */
export function SupplyReadings() {
  const { job } = useSession();
  const first = usePicked((record) => membersOf(record, "boards")[0]);
  const name = usePicked((record) => (first === undefined ? undefined : boardName(record, first)));
  return (
    <>
      <h2 tabIndex={-1} data-start="">
        {SUPPLY.toReadings}
      </h2>
      <p class="way-links">
        <a href={linkTo("job", job, "supply")}>{SUPPLY.back}</a>
      </p>
      <div class="warning">
        <p>
          {SUPPLY.zeCaution} <a href={linkTo("job", job, "cautions", "earthing")}>{SUPPLY.zeTo}</a>
        </p>
      </div>
      <ReadingList label={SUPPLY.toReadings} groupsOf={supplyGroups} endId={END}>
        <a
          id={END}
          class="button main wide"
          href={first === undefined ? linkTo("job", job, "readings") : linkTo("job", job, "readings", first)}
        >
          {name === undefined ? READINGS.allDone : READINGS.nextCircuit(READINGS.board(name))}
        </a>
      </ReadingList>
    </>
  );
}
