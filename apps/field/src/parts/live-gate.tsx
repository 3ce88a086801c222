import type { ComponentChildren } from "preact";
import { useState } from "preact/hooks";
import { join } from "../record/document.ts";
import type { Value } from "../record/entry.ts";
import { momentNow, put, useJob } from "../shell/job.ts";
import { continuityProved, mayTestLive } from "../shell/safety.ts";
import { PARTS } from "../words/parts.ts";
import { fieldId } from "./field-id.ts";
import { Notice } from "./notice.tsx";

interface LiveGateProps {
  /** The place of the circuit: "boards/cu/circuits/c1". */
  readonly circuit: string;
  /** The fields of the live tests. */
  readonly children: ComponentChildren;
}

/** Live tests of a circuit stay shut until its protective conductor is proved, or somebody says why not. */
export function LiveGate({ circuit, children }: LiveGateProps) {
  const session = useJob();
  const [asking, setAsking] = useState(false);
  const [reason, setReason] = useState("");
  const place = join(circuit, "liveBeforeContinuity");
  const words = PARTS.live;
  const id = fieldId(place);
  if (mayTestLive(session.record, circuit)) {
    const given = session.record.value(place) as { readonly reason?: Value } | undefined;
    return (
      <>
        {given !== undefined && !continuityProved(session.record, circuit) && (
          <Notice title={words.given(String(given.reason))}>
            <button type="button" class="plain" onClick={() => put(session, [place, null])}>
              {words.withdraw}
            </button>
          </Notice>
        )}
        {children}
      </>
    );
  }
  return (
    <Notice kind="status" title={words.title}>
      <p>{words.why}</p>
      <p>{words.first}</p>
      {asking ? (
        <form
          onSubmit={(event) => {
            event.preventDefault();
            if (reason.trim() === "") return;
            const by = session.person === "" ? {} : { by: session.person };
            put(session, [place, { reason: reason.trim(), at: momentNow(), ...by }]);
          }}
        >
          <label for={id}>{words.ask}</label>
          <textarea
            id={id}
            required
            maxLength={4000}
            value={reason}
            onInput={({ currentTarget }) => setReason(currentTarget.value)}
          />
          <button type="submit" disabled={reason.trim() === ""}>
            {words.confirm}
          </button>
        </form>
      ) : (
        <button type="button" onClick={() => setAsking(true)}>
          {words.override}
        </button>
      )}
    </Notice>
  );
}
