import { Mark } from "../../parts/mark.tsx";
import { Notice } from "../../parts/notice.tsx";
import { join, membersOf } from "../../record/document.ts";
import { useJob } from "../../shell/job.ts";
import { linkTo } from "../../shell/route.ts";
import { DANGER, OBSERVATIONS } from "../../words/observations.ts";
import { MakeSafe } from "../observations/make-safe.tsx";
import { chosenOf, textAt } from "../observations/read.ts";
import { isTold } from "./told.ts";

/** Everything classified C1, and whether it was made safe and told. */
export default function Danger() {
  const session = useJob();
  const { record } = session;
  const dangers = membersOf(record, "observations").filter(
    (name) => chosenOf(record, join("observations", name)) === "C1",
  );
  if (dangers.length === 0) return <p>{DANGER.none}</p>;
  return (
    <>
      {dangers.map((name) => {
        const at = join("observations", name);
        return (
          <section key={name} class="sheet" aria-label={textAt(record, join(at, "place")) || OBSERVATIONS.untitled}>
            <div class="row">
              <Mark of="C1" />
              <strong>{textAt(record, join(at, "place")) || OBSERVATIONS.untitled}</strong>
            </div>
            <p>{textAt(record, join(at, "what"))}</p>
            {isTold(record, at) ? <p>{DANGER.complete}</p> : <Notice kind="status">{DANGER.untold}</Notice>}
            <MakeSafe observation={at} />
            <p class="way-links">
              <a href={linkTo("job", session.job, "observations", name)}>{DANGER.go}</a>
            </p>
          </section>
        );
      })}
    </>
  );
}
