import { useEffect, useState } from "preact/hooks";
import { engine } from "../../engine/client.ts";
import type { Trouble } from "../../engine/protocol.ts";
import { ChoiceField } from "../../parts/choice-field.tsx";
import { Notice } from "../../parts/notice.tsx";
import { Section } from "../../parts/section.tsx";
import { TextField } from "../../parts/text-field.tsx";
import { documentOf, membersOf, takenOutAndWritten } from "../../record/document.ts";
import { useJob } from "../../shell/job.ts";
import { linkTo } from "../../shell/route.ts";
import { earthingOff } from "../../shell/safety.ts";
import { FINISH } from "../../words/finish.ts";
import { untold } from "../danger/told.ts";
import { chosenOf } from "../observations/read.ts";
import { NextInspection } from "./next-inspection.tsx";
import { OwnFigures } from "./own-figures.tsx";
import { Signing } from "./signing.tsx";

/** Troubles shown before the rest are counted. */
const SHOWN = 12;

/** What stands in the way of the report, the conclusion, and the signatures. */
export default function Finish() {
  const session = useJob();
  const { record, job } = session;
  const [troubles, setTroubles] = useState<readonly Trouble[] | "unchecked">();
  const size = record.size;
  useEffect(() => {
    let left = false;
    // What was found before a change says nothing about the job after it.
    setTroubles(undefined);
    engine.check(documentOf(record)).then(
      (found) => !left && setTroubles(found),
      () => !left && setTroubles("unchecked"),
    );
    return () => {
      left = true;
    };
  }, [size]);
  const conflicts = record.conflicts().length + takenOutAndWritten(record).length;
  const dangers = untold(record).length;
  const open = membersOf(record, "observations").filter(
    (name) => chosenOf(record, `observations/${name}`) === undefined,
  ).length;
  const off = earthingOff(record) !== undefined;
  const clear = troubles !== "unchecked" && troubles?.length === 0 && conflicts === 0 && dangers === 0 && !off;
  return (
    <>
      <Section title={FINISH.way}>
        <div role="status">
          {off && <Notice>{FINISH.earthing}</Notice>}
          {dangers > 0 && (
            <Notice>
              <a href={linkTo("job", job, "danger")}>{FINISH.untold(dangers)}</a>
            </Notice>
          )}
          {conflicts > 0 && (
            <Notice>
              <a href={linkTo("job", job, "hand-over")}>{FINISH.conflicts(conflicts)}</a>
            </Notice>
          )}
          {open > 0 && (
            <Notice>
              <a href={linkTo("job", job, "observations")}>{FINISH.unclassified(open)}</a>
            </Notice>
          )}
          {troubles === undefined && <p class="quiet">{FINISH.checking}</p>}
          {troubles === "unchecked" && <Notice>{FINISH.unchecked}</Notice>}
          {clear && <p>{FINISH.wayNone}</p>}
        </div>
        {Array.isArray(troubles) && troubles.length > 0 && (
          <ul>
            {troubles.slice(0, SHOWN).map(({ path, place, words }) => (
              <li key={`${path} ${words}`}>
                {place === "" ? "" : `${place}: `}
                {words}
              </li>
            ))}
            {troubles.length > SHOWN && <li>{FINISH.more(troubles.length - SHOWN)}</li>}
          </ul>
        )}
      </Section>
      <Section title={FINISH.stated}>
        <ChoiceField
          path="conclusion/outcome"
          label={FINISH.outcome}
          options={{ satisfactory: FINISH.satisfactory, unsatisfactory: FINISH.unsatisfactory }}
        />
        <TextField path="conclusion/generalCondition" label={FINISH.general} kind="paragraph" />
        <NextInspection />
      </Section>
      <OwnFigures />
      <Signing allowed={clear} />
    </>
  );
}
