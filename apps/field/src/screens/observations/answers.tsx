import { engine } from "../../engine/client.ts";
import { useWeighing } from "../../engine/follow.ts";
import type { OutcomeView } from "../../engine/outcome-view.ts";
import { useLooked } from "../../engine/use-looked.ts";
import type { PlaceView } from "../../engine/view.ts";
import { fieldId } from "../../parts/field-id.ts";
import { Toggle } from "../../parts/toggle.tsx";
import { join } from "../../record/document.ts";
import { useField, useJob } from "../../shell/job.ts";
import { ANSWERS } from "../../words/outcome.ts";
import { type Answered, answeredBy, isSame } from "./answered.ts";
import { textAt } from "./read.ts";

/** The checks that are not met at the place of an observation, to tick those it speaks of. */
export function Answers({ observation }: { readonly observation: string }) {
  const { record } = useJob();
  const at = join(observation, "answers");
  const field = useField(at);
  const places = useWeighing(({ view }) => view?.places);
  const named = (Array.isArray(field.value) ? field.value : []) as unknown as readonly Answered[];
  const board = textAt(record, join(observation, "board"));
  const circuit = textAt(record, join(observation, "circuit"));
  const looked = useLooked((document) => engine.outcome(document));
  const open = typeof looked?.found === "object" ? looked.found.toAnswer : [];
  const offered = [
    ...(places ?? []).flatMap((place) => offersOf(place, board, circuit)),
    ...open.flatMap((one) => offerOf(one, board, circuit)),
  ];
  const gone = named.filter((one) => !offered.some(({ answer }) => isSame(answer, one, { board, circuit })));
  if (offered.length === 0 && gone.length === 0) return null;
  const write = (next: readonly Answered[]) => field.write(next.length === 0 ? null : next.map((one) => ({ ...one })));
  return (
    <fieldset class="field">
      <legend>{ANSWERS.title}</legend>
      <p class="quiet small">{ANSWERS.help}</p>
      {offered.map(({ answer, words }) => {
        const others = named.filter((one) => !isSame(answer, one, { board, circuit }));
        return (
          <Toggle
            key={words}
            id={fieldId(at, words)}
            checked={others.length < named.length}
            onChange={(checked) => write(checked ? [...others, answer] : others)}
          >
            {words}
          </Toggle>
        );
      })}
      {gone.map((one) => (
        <Toggle key={JSON.stringify(one)} checked onChange={() => write(named.filter((other) => other !== one))}>
          {[titleOf(one.check, places ?? []), one.board, one.circuit, one.part].filter(Boolean).join(", ")}
        </Toggle>
      ))}
    </fieldset>
  );
}

/** What is named, in words: a check by its title, a sample, or else readings that do not agree. */
function titleOf(name: string, places: readonly PlaceView[]): string {
  if (name.startsWith("defective-sample")) return ANSWERS.sample;
  const check = places.flatMap(({ findings }) => findings).find(({ check }) => check === name);
  return check?.title ?? ANSWERS.readings;
}

/** An open point that can be ticked: at the place of the observation, or a sample of the whole. */
function offerOf({ check, path, words }: OutcomeView["toAnswer"][number], board: string, circuit: string) {
  const answer = path.startsWith("extent/") ? {} : answeredBy(path, board, circuit);
  return answer === undefined ? [] : [{ answer: { check, ...answer }, words }];
}

/** What of one place can be ticked: all of the board an observation names, or of its circuit; without a board, the origin's. */
function offersOf({ path, name, findings }: PlaceView, board: string, circuit: string) {
  const answer = answeredBy(path, board, circuit);
  if (answer === undefined) return [];
  return findings
    .filter(({ verdict }) => verdict === "not-met" || verdict === "too-near")
    .map(({ check, title }) => ({ answer: { check, ...answer }, words: `${title}: ${name}` }));
}
