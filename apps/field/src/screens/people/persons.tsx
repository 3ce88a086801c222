import { Members } from "../../parts/members.tsx";
import { Section } from "../../parts/section.tsx";
import { TextField } from "../../parts/text-field.tsx";
import { useJob } from "../../shell/job.ts";
import { PEOPLE } from "../../words/people.ts";
import { called } from "./called.ts";

/** Who inspects, tests or signs. */
export function Persons() {
  const { record } = useJob();
  return (
    <Section title={PEOPLE.people}>
      <Members
        path="people"
        one={PEOPLE.person}
        add={PEOPLE.addPerson}
        prefix="p"
        title={(at, number) => called(record, `${at}/name`, `${PEOPLE.person} ${number}`)}
      >
        {(at) => (
          <>
            <TextField path={`${at}/name`} label={PEOPLE.name} />
            <TextField path={`${at}/position`} label={PEOPLE.position} suggestions={PEOPLE.positions} />
            <TextField path={`${at}/firm`} label={PEOPLE.firm} />
            <TextField path={`${at}/address`} label={PEOPLE.address} kind="lines" />
            <TextField path={`${at}/registration`} label={PEOPLE.registration} />
          </>
        )}
      </Members>
    </Section>
  );
}
