import { NUMBER, StatedWord } from "../../keypad/stated-word.tsx";
import { usePicked, useRecord } from "../../keypad/use-record.ts";
import { Section } from "../../parts/section.tsx";
import { TextField } from "../../parts/text-field.tsx";
import { useSession } from "../../shell/job.ts";
import { linkTo } from "../../shell/route.ts";
import { BOARD, CIRCUIT, ENCLOSURE, INSTALLATION } from "../../words/installation.ts";
import { MainSwitchFields } from "../circuit/main-switch-fields.tsx";
import { MisfitsAt } from "../circuit/misfits-at.tsx";
import { ObserveHere } from "../observations/observe-here.tsx";
import { boardName } from "../readings/names.ts";
import { ThingsHere } from "../things/things-here.tsx";
import { BoardRcds } from "./board-rcds.tsx";
import { FedFrom } from "./fed-from.tsx";
import { surgeSpot } from "./surge-spot.ts";

/** Whether a device is fitted, as the file has it. */
const FITTED = (word: string) => word === "fitted";

/** The particulars of one board. */
export function BoardParticulars({ board }: { readonly board: string }) {
  const { job } = useSession();
  const path = `boards/${board}`;
  const record = useRecord();
  const name = usePicked((now) => boardName(now, board));
  const surge = surgeSpot(record, board);
  return (
    <>
      <h2 tabIndex={-1} data-start="">
        {name}
      </h2>
      <p class="way-links">
        <a href={linkTo("job", job, "readings", board)}>{INSTALLATION.toReadings}</a>
        <a class="up-link" href={linkTo("job", job, "installation")}>
          {INSTALLATION.back}
        </a>
        <ObserveHere board={board} />
      </p>
      <div class="columns">
        <div>
          <Section title={BOARD.about}>
            <TextField path={`${path}/name`} label={BOARD.name} startsHere />
            <TextField path={`${path}/location`} label={BOARD.location} />
            <FedFrom board={board} />
            <StatedWord
              spot={{ path: `${path}/phases` }}
              label={BOARD.phases}
              options={{ "1": BOARD.one, "3": BOARD.three }}
              written={NUMBER}
            />
            <StatedWord spot={{ path: `${path}/enclosure` }} label={BOARD.enclosure} options={ENCLOSURE} />
            <StatedWord
              spot={surge}
              label={BOARD.surge}
              options={{ fitted: BOARD.fitted, "not-fitted": BOARD.notFitted }}
              {...(surge.fitted === "word" ? {} : { written: FITTED })}
            />
          </Section>
          <Section title={BOARD.mainSwitch}>
            <MainSwitchFields
              path={`${path}/mainSwitch`}
              rated={BOARD.rated}
              usual={["63", "80", "100", "125"]}
              asksFitted
            />
          </Section>
        </div>
        <div>
          <BoardRcds board={board} />
          <ThingsHere board={board} />
          <MisfitsAt path={path} />
          <TextField path={`${path}/note`} label={CIRCUIT.note} kind="paragraph" />
        </div>
      </div>
    </>
  );
}
