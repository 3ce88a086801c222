import { ChoiceField } from "../../parts/choice-field.tsx";
import { Members } from "../../parts/members.tsx";
import { Section } from "../../parts/section.tsx";
import { TextField } from "../../parts/text-field.tsx";
import { useJob } from "../../shell/job.ts";
import type { ScreenProps } from "../../shell/screens.ts";
import { EXTENT } from "../../words/extent.ts";
import { SampleReach } from "./sample-reach.tsx";

/** What the inspection covers, what it leaves out and why, and how large the samples are. */
export default function Extent(_: ScreenProps) {
  const { record } = useJob();
  return (
    <div class="columns">
      <div>
        <Section title={EXTENT.agreed} help={EXTENT.agreedHelp}>
          <TextField path="extent/covered" label={EXTENT.covered} kind="paragraph" help={EXTENT.coveredHelp} />
          <TextField path="extent/notCovered" label={EXTENT.notCovered} kind="paragraph" />
          <TextField path="extent/agreedWith" label={EXTENT.agreedWith} />
          <TextField path="extent/agreedOn" label={EXTENT.agreedOn} kind="day" />
        </Section>
      </div>
      <div>
        <Section title={EXTENT.limitations} help={EXTENT.limitationsHelp}>
          <Members
            path="limitations"
            one={EXTENT.limitation}
            add={EXTENT.addLimitation}
            prefix="l"
            title={(_, number) => `${EXTENT.limitation} ${number}`}
          >
            {(at) => (
              <>
                <ChoiceField path={`${at}/kind`} label={EXTENT.kind} options={EXTENT.kinds} />
                <TextField path={`${at}/what`} label={EXTENT.what} />
                <TextField path={`${at}/why`} label={EXTENT.why} kind="paragraph" />
                <TextField
                  path={`${at}/agreedWith`}
                  label={EXTENT.with}
                  fault={(text) =>
                    text === "" && record.value(`${at}/kind`) === "agreed" ? EXTENT.withFault : undefined
                  }
                />
              </>
            )}
          </Members>
        </Section>
        <Section title={EXTENT.sampling} help={EXTENT.samplingHelp}>
          <Members
            path="extent/sampling"
            one={EXTENT.sample}
            add={EXTENT.addSample}
            prefix="s"
            title={(_, number) => `${EXTENT.sample} ${number}`}
          >
            {(at) => (
              <>
                <TextField path={`${at}/what`} label={EXTENT.sampled} suggestions={EXTENT.sampledKinds} />
                <div class="three">
                  <TextField path={`${at}/population`} label={EXTENT.population} kind="count" />
                  <TextField path={`${at}/inspected`} label={EXTENT.inspected} kind="count" />
                  <TextField path={`${at}/defective`} label={EXTENT.defective} kind="count" />
                </div>
                <SampleReach at={at} />
                <TextField path={`${at}/how`} label={EXTENT.how} />
              </>
            )}
          </Members>
        </Section>
      </div>
    </div>
  );
}
