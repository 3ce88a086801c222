import { StatedWord } from "../../keypad/stated-word.tsx";
import { useRecord } from "../../keypad/use-record.ts";
import { Members } from "../../parts/members.tsx";
import { Section } from "../../parts/section.tsx";
import { BOARD } from "../../words/installation.ts";
import { RcdParticulars } from "../circuit/rcd-particulars.tsx";
import { servedBy } from "../readings/served.ts";
import { rcdName } from "./rcd-name.ts";

/** The RCDs of a board that circuits share. */
export function BoardRcds({ board }: { readonly board: string }) {
  const path = `boards/${board}`;
  const record = useRecord();
  return (
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
  );
}
