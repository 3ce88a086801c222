import { INSTRUMENT_RANGES, parseAccuracy } from "@good-grounds/core";
import { Members } from "../../parts/members.tsx";
import { Section } from "../../parts/section.tsx";
import { TextField } from "../../parts/text-field.tsx";
import { useJob } from "../../shell/job.ts";
import { PEOPLE, RANGES } from "../../words/people.ts";
import { called } from "./called.ts";
import { Checked } from "./checked.tsx";

/** What was measured with, when it was last checked and how exact it is. */
export function Instruments() {
  const { record } = useJob();
  return (
    <Section title={PEOPLE.instruments} help={PEOPLE.instrumentsHelp}>
      <Members
        path="instruments"
        one={PEOPLE.instrument}
        add={PEOPLE.addInstrument}
        prefix="i"
        title={(at, number) => called(record, `${at}/kind`, `${PEOPLE.instrument} ${number}`)}
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
  );
}
