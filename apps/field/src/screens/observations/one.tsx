import { Section } from "../../parts/section.tsx";
import { TextField } from "../../parts/text-field.tsx";
import { Photographs } from "../../photographs/photographs.tsx";
import { join } from "../../record/document.ts";
import { useJob } from "../../shell/job.ts";
import { linkTo } from "../../shell/route.ts";
import { OBSERVATIONS } from "../../words/observations.ts";
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
  return (
    <>
      <p>
        <a href={linkTo("job", session.job, "observations")}>{OBSERVATIONS.back}</a>
      </p>
      <Photographs observation={at} place={place} />
      <TextField path={join(at, "place")} label={OBSERVATIONS.place} help={OBSERVATIONS.placeHelp} />
      <TextField path={join(at, "what")} label={OBSERVATIONS.what} help={OBSERVATIONS.whatHelp} kind="paragraph" />
      <Whereabouts observation={at} />
      <Section title={OBSERVATIONS.reasons}>
        <Reasoning observation={at} state={reasoning} />
      </Section>
      <Section title={OBSERVATIONS.choice} help={OBSERVATIONS.choiceHelp}>
        <Choice observation={at} follows={reasoning.view} />
        <TextField path={join(at, "remedy")} label={OBSERVATIONS.remedy} kind="paragraph" />
      </Section>
      {chosenOf(session.record, at) === "C1" && <MakeSafe observation={at} />}
      <p>
        <button type="button" class="plain" onClick={onRemove}>
          {OBSERVATIONS.remove}
        </button>
      </p>
    </>
  );
}
