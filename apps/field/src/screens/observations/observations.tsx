import { useState } from "preact/hooks";
import { Beside } from "../../parts/beside.tsx";
import { membersOf } from "../../record/document.ts";
import { put, useJob } from "../../shell/job.ts";
import { goTo } from "../../shell/route.ts";
import type { ScreenProps } from "../../shell/screens.ts";
import { OBSERVATIONS } from "../../words/observations.ts";
import { JudgedWith } from "./judged-with.tsx";
import { List } from "./list.tsx";
import { One } from "./one.tsx";

/** An observation that was taken out, so that the list says so after the screen of it is gone. */
let removed: { readonly job: string; readonly name: string } | undefined;

/** Observations: the list of them, or one that is open. */
export default function Observations({ rest: [open] }: ScreenProps) {
  const session = useJob();
  const isThere = open !== undefined && membersOf(session.record, "observations").includes(open);
  if (!isThere)
    return (
      <>
        <JudgedWith />
        <Removed />
        <List />
      </>
    );
  return (
    <Beside label={OBSERVATIONS.all} list={() => <List current={open} />}>
      <JudgedWith />
      <One
        key={open}
        name={open}
        onRemove={() => {
          put(session, [`observations/${open}`, null]);
          removed = { job: session.job, name: open };
          goTo("job", session.job, "observations");
        }}
      />
    </Beside>
  );
}

/** What was taken out of this job just now; it is said once. */
function takeRemoved(job: string): string | undefined {
  const name = removed?.job === job ? removed.name : undefined;
  removed = undefined;
  return name;
}

/** Says that an observation was taken out, and puts it back. */
function Removed() {
  const session = useJob();
  const [gone, setGone] = useState(() => takeRemoved(session.job));
  return (
    <div role="status">
      {gone !== undefined && (
        <div class="row between sheet">
          <span>{OBSERVATIONS.removed}</span>
          <button
            type="button"
            onClick={() => {
              put(session, [`observations/${gone}`, true]);
              setGone(undefined);
            }}
          >
            {OBSERVATIONS.undo}
          </button>
        </div>
      )}
    </div>
  );
}
