import { useState } from "preact/hooks";
import { clock } from "../../parts/clock.ts";
import { Dialog } from "../../parts/dialog.tsx";
import { membersOf } from "../../record/document.ts";
import type { Value } from "../../record/entry.ts";
import { noteEarthing } from "../../shell/earthing.tsx";
import { momentNow, newName, put, useJob } from "../../shell/job.ts";
import { titleOf } from "../../shell/job-label.ts";
import { earthingOff } from "../../shell/safety.ts";
import { EARTHING_PAGE } from "../../words/cautions.ts";
import { BEFORE_EARTHING, confirmedSteps } from "./precautions.ts";
import { StepRow } from "./step-row.tsx";

/** The earthing conductor: shut until the installation is proved dead, and never forgotten once it is off. */
export function EarthingPage() {
  const session = useJob();
  const { record } = session;
  const [asking, setAsking] = useState(false);
  const off = earthingOff(record);
  const confirmed = confirmedSteps(record);
  const ready = BEFORE_EARTHING.every((step) => confirmed.get(step)?.outcome === "done");
  const stamp = () => ({ at: momentNow(), ...(session.person === "" ? {} : { by: session.person }) });

  const disconnect = async () => {
    const now = stamp();
    // The device's own note first: whatever happens in between, somebody is reminded.
    await noteEarthing(session.job, { title: titleOf(record), since: now.at }).catch(() => undefined);
    const place = `earthingOff/${newName("e")}`;
    put(session, [place, true], [`${place}/off`, now]);
  };
  const reconnect = () => {
    const now = stamp();
    put(session, ...(off?.open ?? []).map((place) => [`${place}/on`, now] as const));
    setAsking(false);
  };

  return (
    <>
      {off === undefined ? (
        <>
          <p>{EARTHING_PAGE.before}</p>
          <h3>{EARTHING_PAGE.first}</h3>
          {BEFORE_EARTHING.map((step) => (
            <StepRow key={step} step={step} confirmed={confirmed.get(step)} />
          ))}
          {!ready && <p class="fault">{EARTHING_PAGE.lacking}</p>}
          <div class="stack">
            <button type="button" class="main" disabled={!ready} onClick={() => void disconnect()}>
              {EARTHING_PAGE.disconnect}
            </button>
          </div>
        </>
      ) : (
        <>
          <h3>{EARTHING_PAGE.offTitle}</h3>
          <p>{EARTHING_PAGE.offTodo}</p>
          <div class="stack">
            <button type="button" class="main" onClick={() => setAsking(true)}>
              {EARTHING_PAGE.putBack}
            </button>
          </div>
        </>
      )}
      <Times />
      {asking && (
        <Dialog title={EARTHING_PAGE.ask} onClose={() => setAsking(false)}>
          <ul class="points">
            {EARTHING_PAGE.asks.map((one) => (
              <li key={one}>{one}</li>
            ))}
          </ul>
          <div class="stack">
            <button type="button" class="main" onClick={reconnect}>
              {EARTHING_PAGE.yes}
            </button>
            <button type="button" onClick={() => setAsking(false)}>
              {EARTHING_PAGE.no}
            </button>
          </div>
        </Dialog>
      )}
    </>
  );
}

/** When the earthing conductor was off, as the record has it. */
function Times() {
  const { record } = useJob();
  const names = membersOf(record, "earthingOff");
  if (names.length === 0) return null;
  const at = (path: string) => {
    const value = record.value(path) as { readonly at?: Value } | undefined;
    return typeof value?.at === "string" ? clock(value.at) : undefined;
  };
  return (
    <>
      <h3>{EARTHING_PAGE.times}</h3>
      <ul>
        {names.map((name) => (
          <li key={name}>{EARTHING_PAGE.time(at(`earthingOff/${name}/off`) ?? "", at(`earthingOff/${name}/on`))}</li>
        ))}
      </ul>
    </>
  );
}
