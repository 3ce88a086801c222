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

/** A thing that was taken out, so that the list says so after the screen of it is gone. */
interface TakenOut {
  readonly title: string;
  readonly undo: readonly Change[];
}

/** Things one by one: the list of all, one of them, or its readings. */
export default function Things({ rest: [kind = "", name = "", page] }: ScreenProps) {
  const session = useSession();
  const record = useRecord();
  const [removed, setRemoved] = useState<TakenOut>();
  const thing = thingAt(record, kind, name);
  if (thing !== undefined && page === "readings") return <ThingReadings thing={thing} />;
  if (thing === undefined)
    return (
      <>
        <Removed
          title={removed?.title}
          onUndo={() => {
            if (removed !== undefined) put(session, ...removed.undo);
            setRemoved(undefined);
          }}
        />
        <AllThings />
      </>
    );
  return (
    <Beside label={THINGS.title} list={() => <AllThings current={thing.path} />}>
      <OneThing
        key={thing.path}
        thing={thing}
        onRemove={() => {
          const { changes, undo } = removeThing(record, thing.path);
          setRemoved({ title: thingName(record, thing), undo });
          put(session, ...changes);
          goTo("job", session.job, "things");
        }}
      />
    </Beside>
  );
}
