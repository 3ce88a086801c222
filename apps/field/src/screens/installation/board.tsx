import { StatedQuantity } from "../../keypad/stated-quantity.tsx";
import { NUMBER, StatedWord } from "../../keypad/stated-word.tsx";
import { usePicked, useRecord } from "../../keypad/use-record.ts";
import { Members } from "../../parts/members.tsx";
import { Section } from "../../parts/section.tsx";
import { TextField } from "../../parts/text-field.tsx";
import { useField, useSession } from "../../shell/job.ts";
import { linkTo } from "../../shell/route.ts";
import { BOARD, CIRCUIT, ENCLOSURE, INSTALLATION } from "../../words/installation.ts";
import { RcdParticulars } from "../circuit/rcd-particulars.tsx";
import { ObserveHere } from "../observations/observe-here.tsx";
import { allCircuits, boardName, circuitName } from "../readings/names.ts";
import { servedBy } from "../readings/served.ts";
import { rcdName } from "./rcd-name.ts";
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
            <StatedQuantity
              spot={{ path: `${path}/mainSwitch`, inner: ["rated"] }}
              label={BOARD.rated}
              unit="ampere"
              symbol="A"
              usual={["63", "80", "100", "125"]}
            />
            <StatedWord
              spot={{ path: `${path}/mainSwitch`, inner: ["poles"] }}
              label={BOARD.poles}
              options={{ "1": "1", "2": "2", "3": "3", "4": "4" }}
              written={NUMBER}
              isStated={false}
            />
          </Section>
        </div>
        <div>
          <Section title={BOARD.rcds}>
            <Members
              path={`${path}/rcds`}
              one={BOARD.rcd}
              add={BOARD.addRcd}
              prefix="rcd"
              fresh={() => ({ serves: "listed" })}
              title={(_, number) => BOARD.rcdNumber(number)}
            >
              {(at, id) => (
                <>
                  <h3>{rcdName(record, path, id)}</h3>
                  <p class="small quiet">{servedBy(record, board, id)}</p>
                  <StatedWord
                    spot={{ path: `${at}/serves` }}
                    label={BOARD.serves}
                    options={{ listed: BOARD.listed, "whole-board": BOARD.wholeBoard }}
                    isStated={false}
                  />
                  <RcdParticulars path={at} />
                </>
              )}
            </Members>
          </Section>
          <TextField path={`${path}/note`} label={CIRCUIT.note} kind="paragraph" />
        </div>
      </div>
    </>
  );
}

/** What feeds a board: the origin, or a circuit of another board. */
function FedFrom({ board }: { readonly board: string }) {
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
