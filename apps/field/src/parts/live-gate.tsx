import { printQuantity } from "@good-grounds/core";
import type { NotProved } from "@good-grounds/inspection/continuity";
import type { ComponentChildren } from "preact";
import { useState } from "preact/hooks";
import { join } from "../record/document.ts";
import { momentNow, put, useJob } from "../shell/job.ts";
import { liveTests } from "../shell/safety.ts";
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
  const { open, notProved, reason: given, reasonIsOlder } = liveTests(session.record, circuit);
  if (open) {
    return (
      <>
        {given !== undefined && notProved !== undefined && (
          <Notice title={words.given(given)}>
            {notProved.kind !== "none" && <p>{notProvedWords(notProved)}</p>}
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
      {notProved !== undefined && <p>{notProvedWords(notProved)}</p>}
      <p>{words.danger}</p>
      {reasonIsOlder && <p>{words.older(given ?? "")}</p>}
      <p>{words.first}</p>
      {asking ? (
        <form
          onSubmit={(event) => {
            event.preventDefault();
            if (reason.trim() === "") return;
            const by = session.person === "" ? {} : { by: session.person };
            put(session, [place, { reason: reason.trim(), at: momentNow(), ...by }]);
            setAsking(false);
            setReason("");
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

/** Why the protective conductor does not count as proved, for the one who holds the instrument. */
function notProvedWords(why: NotProved): string {
  const { not } = PARTS.live;
  if (why.kind === "none") return not.none;
  const name = not.names[why.name] ?? why.name;
  switch (why.kind) {
    case "not-taken":
      return not.notTaken(name, why.reason);
    case "too-high":
      return not.tooHigh(name, why.shown, printQuantity(why.limit, "ohm"));
    case "more-than-cable":
      return not.moreThanCable(name, why.shown);
    case "less-than-cable":
      return not.lessThanCable(name, why.shown);
    default:
      return not[why.kind](name, why.shown);
  }
}
