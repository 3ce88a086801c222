import { useRef } from "preact/hooks";
import { ReadingList } from "../../keypad/reading-list.tsx";
import { within } from "../../keypad/spot.ts";
import { usePicked } from "../../keypad/use-record.ts";
import { ChoiceField } from "../../parts/choice-field.tsx";
import { membersOf } from "../../record/document.ts";
import { newName, useSession } from "../../shell/job.ts";
import { linkTo } from "../../shell/route.ts";
import { READINGS } from "../../words/readings.ts";
import { rcdName } from "../installation/rcd-name.ts";
import { ObserveHere } from "../observations/observe-here.tsx";
import { circuitGroups } from "./circuit-fields.ts";
import { allCircuits, circuitName } from "./names.ts";
import type { FreshName } from "./ring-points.ts";

interface CircuitPageProps {
  readonly board: string;
  readonly circuit: string;
}

const END = "after-readings";

/** The tests of one circuit. */
export function CircuitPage({ board, circuit }: CircuitPageProps) {
  const { job } = useSession();
  const at = `boards/${board}/circuits/${circuit}`;
  const name = usePicked((record) => circuitName(record, board, circuit));
  const shape = usePicked((record) => record.value(`${at}/shape`) as string | undefined);
  const rcd = usePicked((record) => {
    const value = record.value(`${at}/rcd`);
    const shared = within(value, ["board"]);
    if (typeof shared === "string") return READINGS.servedBy(rcdName(record, `boards/${board}`, shared));
    return value === undefined ? READINGS.noRcd : "";
  });
  const following = usePicked((record) => {
    const all = allCircuits(record);
    const next = all[all.findIndex(([b, c]) => b === board && c === circuit) + 1];
    return next === undefined ? undefined : next.join("/");
  });
  const nextName = usePicked((record) => {
    const [b, c] = following?.split("/") ?? [];
    return b === undefined || c === undefined ? undefined : circuitName(record, b, c);
  });
  const fresh = useFreshNames();
  const groupsOf = useRef((record: Parameters<typeof circuitGroups>[0]) =>
    circuitGroups(record, board, circuit, fresh(record)),
  );
  return (
    <>
      <h2 tabIndex={-1} data-start="">
        {name}
      </h2>
      <p class="way-links">
        <a href={linkTo("job", job, "installation", board, circuit)}>{READINGS.particulars}</a>
        <a class="up-link" href={linkTo("job", job, "readings")}>
          {READINGS.allDone}
        </a>
        <ObserveHere board={board} circuit={circuit} />
      </p>
      {shape === undefined && (
        <ChoiceField
          path={`${at}/shape`}
          label={READINGS.shape}
          help={READINGS.noShape}
          options={READINGS.words.shape}
        />
      )}
      {rcd !== "" && <p class="small quiet">{rcd}</p>}
      <ReadingList label={name} groupsOf={groupsOf.current} endId={END}>
        <a
          id={END}
          class="button main wide"
          href={
            following === undefined
              ? linkTo("job", job, "readings")
              : linkTo("job", job, "readings", ...following.split("/"))
          }
        >
          {nextName === undefined ? READINGS.allDone : READINGS.nextCircuit(nextName)}
        </a>
      </ReadingList>
    </>
  );
}

/** Names for points still to come: each is kept until it is used. */
function useFreshNames(): (record: Parameters<typeof circuitGroups>[0]) => FreshName {
  const names = useRef(new Map<string, string>());
  return (record) => (list) => {
    const held = names.current.get(list);
    if (held !== undefined && !membersOf(record, list).includes(held)) return held;
    const name = newName("p");
    names.current.set(list, name);
    return name;
  };
}
