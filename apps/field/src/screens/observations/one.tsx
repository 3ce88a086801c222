import { Section } from "../../parts/section.tsx";
import { TextField } from "../../parts/text-field.tsx";
import { Photographs } from "../../photographs/photographs.tsx";
import { join, membersOf } from "../../record/document.ts";
import type { Record as JobRecord } from "../../record/record.ts";
import { useJob } from "../../shell/job.ts";
import { linkTo } from "../../shell/route.ts";
import { OBSERVATIONS } from "../../words/observations.ts";
import { SpeaksOf } from "../things/speaks-of.tsx";
import { Answers } from "./answers.tsx";
import { Choice } from "./choice.tsx";
import { MakeSafe } from "./make-safe.tsx";
import { chosenOf, textAt } from "./read.ts";
import { Reasoning } from "./reasoning.tsx";
import { useReasoning } from "./use-reasoning.ts";
import { Whereabouts } from "./whereabouts.tsx";

interface OneProps {
  readonly name: string;
  readonly onRemove: () => void;
}

/** One observation: photograph, place and fact first; the reasons can come later. */
export function One({ name, onRemove }: OneProps) {
  const session = useJob();
  const at = join("observations", name);
  const reasoning = useReasoning(at);
  const place = textAt(session.record, join(at, "place"));
  const severalDays =
    membersOf(session.record, "visits").length > 1 || textAt(session.record, join(at, "foundOn")) !== "";
  const chosen = chosenOf(session.record, at);
  const isNew =
    textAt(session.record, join(at, "what")) === "" && membersOf(session.record, join(at, "photographs")).length === 0;
  return (
    <>
      <p class="way-links up-link">
        <a href={linkTo("job", session.job, "observations")}>{OBSERVATIONS.back}</a>
      </p>
      <div class="columns">
        <div>
          <Photographs observation={at} place={place} startsHere={isNew} />
          <TextField
            path={join(at, "place")}
            label={OBSERVATIONS.place}
            help={OBSERVATIONS.placeHelp}
            suggestions={placesOf(session.record)}
          />
          <TextField path={join(at, "what")} label={OBSERVATIONS.what} help={OBSERVATIONS.whatHelp} kind="paragraph" />
          <Whereabouts observation={at} />
          {severalDays && (
            <TextField
              path={join(at, "foundOn")}
              label={OBSERVATIONS.foundOn}
              help={OBSERVATIONS.foundOnHelp}
              kind="day"
            />
          )}
          <SpeaksOf observation={at} />
          <Answers observation={at} />
        </div>
        <div>
          <Section title={OBSERVATIONS.reasons}>
            <Reasoning observation={at} state={reasoning} />
          </Section>
          <Section title={OBSERVATIONS.choice} help={OBSERVATIONS.choiceHelp}>
            <Choice observation={at} follows={reasoning.view} />
            <TextField path={join(at, "remedy")} label={OBSERVATIONS.remedy} kind="paragraph" />
          </Section>
          {chosen === "C1" && <MakeSafe observation={at} />}
        </div>
      </div>
      <p>
        <button type="button" class="plain" onClick={onRemove}>
          {OBSERVATIONS.remove}
        </button>
      </p>
    </>
  );
}

/** Places spoken of in this job already: where its boards are, and where other observations were made. */
function placesOf(record: JobRecord): readonly string[] {
  const boards = membersOf(record, "boards").map((name) => textAt(record, `boards/${name}/location`));
  const others = membersOf(record, "observations").map((name) => textAt(record, `observations/${name}/place`));
  return [...new Set([...boards, ...others])].filter((one) => one !== "");
}
