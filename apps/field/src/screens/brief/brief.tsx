import { FIELDS_AT } from "@good-grounds/inspection";
import { StatedFields } from "../../keypad/stated-fields.tsx";
import { ChoiceField } from "../../parts/choice-field.tsx";
import { Members } from "../../parts/members.tsx";
import { Section } from "../../parts/section.tsx";
import { TextField } from "../../parts/text-field.tsx";
import type { ScreenProps } from "../../shell/screens.ts";
import { BRIEF, EDITION_WORDS, NATION_WORDS, TENURE_WORDS, USES } from "../../words/brief.ts";
import { DUTIES } from "../../words/duties.ts";

/** What was ordered, for which premises, by whom and why. */
export default function Brief(_: ScreenProps) {
  return (
    <div class="columns">
      <div>
        <Section title={BRIEF.premises}>
          <TextField path="brief/premises/address" label={BRIEF.address} kind="lines" help={BRIEF.lines} />
          <TextField path="brief/premises/description" label={BRIEF.description} help={BRIEF.descriptionHelp} />
          <TextField path="brief/premises/occupier" label={BRIEF.occupier} help={BRIEF.occupierHelp} />
          <TextField
            path="brief/premises/uprn"
            label={BRIEF.uprn}
            help={BRIEF.uprnHelp}
            inputMode="numeric"
            fault={(text) => (text === "" || /^\d{1,12}$/.test(text) ? undefined : BRIEF.uprnFault)}
          />
          <ChoiceField path="brief/use" label={BRIEF.use} options={USES} />
          <ChoiceField path="brief/tenure" label={BRIEF.tenure} help={BRIEF.tenureHelp} options={TENURE_WORDS} />
          <ChoiceField path="brief/nation" label={BRIEF.nation} options={NATION_WORDS} />
        </Section>
        <Section title={DUTIES.ordered} help={DUTIES.orderedHelp}>
          <StatedFields fields={FIELDS_AT["brief/letting"]} path="brief/letting" />
          <TextField path="brief/letting/starts" label={DUTIES.starts} kind="day" />
          <TextField path="brief/letting/granted" label={DUTIES.granted} kind="day" />
          <TextField path="brief/letting/equipmentChecked" label={DUTIES.equipmentChecked} kind="day" />
        </Section>
      </div>
      <div>
        <Section title={BRIEF.client}>
          <TextField path="brief/client/name" label={BRIEF.clientName} />
          <TextField path="brief/client/address" label={BRIEF.clientAddress} kind="lines" help={BRIEF.lines} />
        </Section>
        <Section title={BRIEF.job}>
          <TextField path="brief/purpose" label={BRIEF.purpose} suggestions={BRIEF.purposes} />
          <TextField path="inspectedOn" label={BRIEF.inspectedOn} kind="day" help={BRIEF.inspectedHelp} />
          <ChoiceField path="edition" label={BRIEF.edition} options={EDITION_WORDS} />
          <TextField path="title" label={BRIEF.title} help={BRIEF.titleHelp} />
        </Section>
        <Section title={BRIEF.history}>
          <TextField path="brief/ageOfInstallation" label={BRIEF.age} />
          <TextField path="brief/alterations" label={BRIEF.alterations} kind="paragraph" />
          <TextField path="brief/lastInspection" label={BRIEF.lastInspection} kind="day" />
        </Section>
        <Section title={BRIEF.records} help={BRIEF.recordsHelp}>
          <Members
            path="brief/records"
            one={BRIEF.record}
            add={BRIEF.addRecord}
            prefix="r"
            title={(_, number) => `${BRIEF.record} ${number}`}
          >
            {(at) => (
              <>
                <TextField path={`${at}/kind`} label={BRIEF.recordKind} suggestions={BRIEF.recordKinds} />
                <TextField path={`${at}/date`} label={BRIEF.recordDate} kind="day" />
                <TextField path={`${at}/reference`} label={BRIEF.recordReference} />
              </>
            )}
          </Members>
        </Section>
      </div>
    </div>
  );
}
