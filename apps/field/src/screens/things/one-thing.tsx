import { FIELDS_AT, THING_KINDS } from "@good-grounds/inspection";
import { StatedFields } from "../../keypad/stated-fields.tsx";
import { useRecord } from "../../keypad/use-record.ts";
import { Members } from "../../parts/members.tsx";
import { Section } from "../../parts/section.tsx";
import { TextField } from "../../parts/text-field.tsx";
import { useSession } from "../../shell/job.ts";
import { linkTo } from "../../shell/route.ts";
import { THINGS } from "../../words/things.ts";
import { ThingLinks } from "./links.tsx";
import { type RecordedThing, thingName } from "./recorded.ts";
import { ThingPlace } from "./thing-place.tsx";
import { thingGroups } from "./thing-readings.tsx";

interface OneThingProps {
  readonly thing: RecordedThing;
  readonly onRemove: () => void;
}

/** Kinds that lead from one end to another, each end in words. */
const WITH_ENDS: ReadonlySet<string> = new Set(["sections", "supplementaryBonds"]);

/** One thing: what it is called, where it is, and everything that can be recorded of it. */
export function OneThing({ thing, onRemove }: OneThingProps) {
  const { job } = useSession();
  const record = useRecord();
  const { kind, name, path, broughtBy } = thing;
  const { noun, fields } = THING_KINDS[kind];
  return (
    <>
      <h2 tabIndex={-1} data-start="">
        {thingName(record, thing)}
      </h2>
      <p class="way-links">
        {thingGroups(thing).length > 0 && (
          <a href={linkTo("job", job, "things", kind, name, "readings")}>{THINGS.toReadings}</a>
        )}
        {broughtBy !== undefined && <a href={linkTo("job", job, "observations", broughtBy)}>{THINGS.toObservation}</a>}
        <a class="up-link" href={linkTo("job", job, "things")}>
          {THINGS.back}
        </a>
      </p>
      {broughtBy !== undefined && <p class="quiet small">{THINGS.broughtBy}</p>}
      <div class="columns">
        <div>
          <TextField path={`${path}/name`} label={THINGS.name} help={THINGS.nameHelp} />
          <TextField path={`${path}/quantity`} label={THINGS.quantity} kind="count" />
          <Section title={THINGS.where}>
            <ThingPlace thing={thing} />
            {WITH_ENDS.has(kind) && (
              <>
                <TextField path={`${path}/from`} label={THINGS.from} />
                <TextField path={`${path}/to`} label={THINGS.to} />
              </>
            )}
            <ThingLinks thing={thing} />
          </Section>
          <TextField path={`${path}/note`} label={THINGS.note} kind="paragraph" />
        </div>
        <div>
          <Section title={THINGS.particulars}>
            <StatedFields fields={fields} path={path} />
          </Section>
          {kind === "enclosures" && (
            <Section title={THINGS.openings}>
              <Members
                path={`${path}/openings`}
                one={THINGS.opening}
                add={THINGS.addOpening}
                prefix="g"
                title={(_, number) => THINGS.openingNumber(number)}
              >
                {(at) => <StatedFields fields={FIELDS_AT["things/enclosures/*/openings/*"]} path={at} />}
              </Members>
            </Section>
          )}
        </div>
      </div>
      <p>
        <button type="button" class="plain" onClick={onRemove}>
          {THINGS.remove(noun)}
        </button>
      </p>
    </>
  );
}
