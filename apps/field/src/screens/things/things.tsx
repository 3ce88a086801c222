import { useState } from "preact/hooks";
import { useRecord } from "../../keypad/use-record.ts";
import { Beside } from "../../parts/beside.tsx";
import { Removed } from "../../parts/removed.tsx";
import { put, useSession } from "../../shell/job.ts";
import { goTo } from "../../shell/route.ts";
import type { ScreenProps } from "../../shell/screens.ts";
import { THINGS } from "../../words/things.ts";
import type { Change } from "../installation/changes.ts";
import { AllThings } from "./all-things.tsx";
import { OneThing } from "./one-thing.tsx";
import { removeThing, thingAt, thingName } from "./recorded.ts";
import { ThingReadings } from "./thing-readings.tsx";

/** A thing that was taken out. */
interface TakenOut {
  readonly job: string;
  readonly title: string;
  readonly undo: readonly Change[];
}

/** Held until it is put back or another thing is opened: the list is drawn anew when the address changes. */
let takenOut: TakenOut | undefined;

/** Things one by one: the list of all, one of them, or its readings. */
export default function Things({ rest: [kind = "", name = "", page] }: ScreenProps) {
  const session = useSession();
  const record = useRecord();
  const thing = thingAt(record, kind, name);
  if (thing !== undefined && page === "readings") return <ThingReadings thing={thing} />;
  if (thing === undefined)
    return (
      <>
        <TakenOutNow />
        <AllThings />
      </>
    );
  takenOut = undefined;
  return (
    <Beside label={THINGS.title} list={() => <AllThings current={thing.path} />}>
      <OneThing
        key={thing.path}
        thing={thing}
        onRemove={() => {
          const { changes, undo } = removeThing(record, thing.path);
          takenOut = { job: session.job, title: thingName(record, thing), undo };
          put(session, ...changes);
          goTo("job", session.job, "things");
        }}
      />
    </Beside>
  );
}

/** Says what was taken out of this job last, and puts it back with every mention. */
function TakenOutNow() {
  const session = useSession();
  const [, again] = useState(0);
  const gone = takenOut?.job === session.job ? takenOut : undefined;
  return (
    <Removed
      title={gone?.title}
      onUndo={() => {
        takenOut = undefined;
        again((count) => count + 1);
        if (gone !== undefined) put(session, ...gone.undo);
      }}
    />
  );
}
