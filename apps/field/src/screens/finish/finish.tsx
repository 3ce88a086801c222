import { engine } from "../../engine/client.ts";
import { useLooked } from "../../engine/use-looked.ts";
import { ChoiceField } from "../../parts/choice-field.tsx";
import { Notice } from "../../parts/notice.tsx";
import { Section } from "../../parts/section.tsx";
import { TextField } from "../../parts/text-field.tsx";
import { membersOf, takenOutAndWritten } from "../../record/document.ts";
import { useJob } from "../../shell/job.ts";
import { linkTo } from "../../shell/route.ts";
import { earthingOff } from "../../shell/safety.ts";
import { DUTIES } from "../../words/duties.ts";
import { FINISH } from "../../words/finish.ts";
import { untold } from "../danger/told.ts";
import { LawAsks } from "../duties/law-asks.tsx";
import { chosenOf } from "../observations/read.ts";
import { StandsOpen } from "../outcome/stands-open.tsx";
import { InTheWay } from "./in-the-way.tsx";
import { NextInspection } from "./next-inspection.tsx";
import { OwnFigures } from "./own-figures.tsx";
import { Papers } from "./papers.tsx";
import { Signing } from "./signing.tsx";

/** What stands in the way of the report, the conclusion, and the signatures. */
export default function Finish() {
  const session = useJob();
  const { record, job } = session;
  const looked = useLooked((document) => engine.check(document));
  const conflicts = record.conflicts().length + takenOutAndWritten(record).length;
  const dangers = untold(record).length;
  const open = membersOf(record, "observations").filter(
    (name) => chosenOf(record, `observations/${name}`) === undefined,
  ).length;
  const off = earthingOff(record) !== undefined;
  const troubles = looked?.found;
  // What was found before a change says nothing about the job after it.
  const isNow = looked?.isNow === true;
  const clear = isNow && troubles !== "failed" && troubles?.length === 0 && conflicts === 0 && dangers === 0 && !off;
  return (
    <div class="columns">
      <div>
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
            {!isNow && <p class="quiet">{FINISH.checking}</p>}
            {troubles === "failed" && <Notice>{FINISH.unchecked}</Notice>}
            {clear && <p>{FINISH.wayNone}</p>}
          </div>
          {Array.isArray(troubles) && troubles.length > 0 && <InTheWay troubles={troubles} />}
        </Section>
        <StandsOpen shown={30} />
        <Section title={FINISH.stated}>
          <ChoiceField
            path="conclusion/outcome"
            label={FINISH.outcome}
            options={{ satisfactory: FINISH.satisfactory, unsatisfactory: FINISH.unsatisfactory }}
          />
          <TextField path="conclusion/generalCondition" label={FINISH.general} kind="paragraph" />
          <TextField
            path="conclusion/workWithin/days"
            label={DUTIES.workWithin}
            help={DUTIES.workWithinHelp}
            kind="count"
          />
          <NextInspection />
        </Section>
        <LawAsks />
      </div>
      <div>
        <OwnFigures />
        <Signing allowed={clear} />
        <Papers />
      </div>
    </div>
  );
}
