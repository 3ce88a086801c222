import { parseAccuracy } from "@good-grounds/core";
import { INSTRUMENT_RANGES } from "@good-grounds/inspection";
import { Members } from "../../parts/members.tsx";
import { MomentField } from "../../parts/moment-field.tsx";
import { Section } from "../../parts/section.tsx";
import { TextField } from "../../parts/text-field.tsx";
import { today, useJob } from "../../shell/job.ts";
import type { ScreenProps } from "../../shell/screens.ts";
import { PEOPLE, RANGES } from "../../words/people.ts";
import { AtWork } from "./at-work.tsx";
import { Checked } from "./checked.tsx";

/** Who inspects, with what, on which days. */
export default function People(_: ScreenProps) {
  const { record } = useJob();
  const called = (path: string, otherwise: string) => {
    const name = record.value(path);
    return typeof name === "string" ? name : otherwise;
  };
  return (
    <div class="columns">
      <div>
        <AtWork />
        <Section title={PEOPLE.people}>
          <Members
            path="people"
            one={PEOPLE.person}
            add={PEOPLE.addPerson}
            prefix="p"
            title={(at, number) => called(`${at}/name`, `${PEOPLE.person} ${number}`)}
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
      </div>
      <div>
        <Section title={PEOPLE.instruments} help={PEOPLE.instrumentsHelp}>
          <Members
            path="instruments"
            one={PEOPLE.instrument}
            add={PEOPLE.addInstrument}
            prefix="i"
            title={(at, number) => called(`${at}/kind`, `${PEOPLE.instrument} ${number}`)}
          >
            {(at) => (
              <>
                <TextField path={`${at}/kind`} label={PEOPLE.kind} suggestions={PEOPLE.kinds} />
                <TextField path={`${at}/serial`} label={PEOPLE.serial} />
                <TextField path={`${at}/checked`} label={PEOPLE.checked} kind="day" />
                <Checked path={`${at}/checked`} />
                <TextField path={`${at}/checkReference`} label={PEOPLE.checkReference} />
                <details>
                  <summary>{PEOPLE.accuracy}</summary>
                  <p class="quiet small">{PEOPLE.accuracyHelp}</p>
                  {INSTRUMENT_RANGES.map((range) => (
                    <TextField
                      key={range}
                      path={`${at}/accuracy/${range}`}
                      label={RANGES[range]}
                      fault={(text) =>
                        text === "" || parseAccuracy(text) !== undefined ? undefined : PEOPLE.accuracyFault
                      }
                    />
                  ))}
                </details>
              </>
            )}
          </Members>
        </Section>
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
      </div>
    </div>
  );
}
