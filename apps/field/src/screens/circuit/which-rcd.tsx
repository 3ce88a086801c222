import { within } from "../../keypad/spot.ts";
import { StatedWord } from "../../keypad/stated-word.tsx";
import { usePicked } from "../../keypad/use-record.ts";
import { join, membersOf } from "../../record/document.ts";
import type { Value } from "../../record/entry.ts";
import { equal } from "../../record/record.ts";
import { useSession } from "../../shell/job.ts";
import { CIRCUIT } from "../../words/installation.ts";
import { rcdName } from "../installation/rcd-name.ts";
import { RcdParticulars } from "./rcd-particulars.tsx";

/** Which RCD serves a circuit: none, its own, or one of the board's; and what its own is. */
export function WhichRcd({ board, circuit }: { readonly board: string; readonly circuit: string }) {
  const { record } = useSession();
  const path = join(circuit, "rcd");
  const names = usePicked((now) => membersOf(now, join(board, "rcds")).join(" "));
  const hasOwn = usePicked((now) => within(now.value(path), ["own"]) !== undefined);
  const shared = names === "" ? [] : names.split(" ");
  const options = {
    none: CIRCUIT.rcdNone,
    own: CIRCUIT.rcdOwn,
    ...Object.fromEntries(shared.map((name) => [`board ${name}`, rcdName(record, board, name)])),
  };
  const written = (word: string): Value => {
    const now = record.value(path);
    if (word === "none") return "none";
    // What is recorded of its own RCD stays when its own is what was chosen already.
    if (word === "own") return within(now, ["own"]) === undefined || now === undefined ? { own: {} } : now;
    return { board: word.slice("board ".length) };
  };
  return (
    <>
      <StatedWord spot={{ path }} label={CIRCUIT.rcdWhich} options={options} written={written} isSame={equal} />
      {hasOwn && <RcdParticulars path={path} inner={["own"]} />}
    </>
  );
}
