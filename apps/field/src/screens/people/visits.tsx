import { Members } from "../../parts/members.tsx";
import { MomentField } from "../../parts/moment-field.tsx";
import { Section } from "../../parts/section.tsx";
import { TextField } from "../../parts/text-field.tsx";
import { today } from "../../shell/job.ts";
import { PEOPLE } from "../../words/people.ts";

/** On which days, from when to when. */
export function Visits() {
  return (
    <Section title={PEOPLE.visits}>
      <Members
        path="visits"
        one={PEOPLE.visit}
        add={PEOPLE.addVisit}
        prefix="v"
        fresh={() => ({ date: today() })}
        title={(_, number) => `${PEOPLE.visit} ${number}`}
      >
        {(at) => (
          <>
            <TextField path={`${at}/date`} label={PEOPLE.date} kind="day" />
            <MomentField path={`${at}/arrived`} label={PEOPLE.arrived} now={PEOPLE.now} />
            <MomentField path={`${at}/left`} label={PEOPLE.left} now={PEOPLE.now} />
            <TextField path={`${at}/note`} label={PEOPLE.note} kind="paragraph" help={PEOPLE.noteHelp} />
          </>
        )}
      </Members>
    </Section>
  );
}
