import { membersOf } from "../../record/document.ts";
import { keepSetting } from "../../record/store.ts";
import { useJob } from "../../shell/job.ts";
import { nameOf } from "../../shell/safety.ts";
import { PEOPLE } from "../../words/people.ts";

/** Whose name the entries of this device carry. */
export function AtWork() {
  const session = useJob();
  const named = membersOf(session.record, "people").filter((id) => nameOf(session.record, id) !== undefined);
  const choose = (id: string) => {
    session.person = id;
    keepSetting(`person ${session.job}`, id).catch(() => undefined);
  };
  return (
    <fieldset class="field">
      <legend>{PEOPLE.atWork}</legend>
      <p class="quiet small">{PEOPLE.atWorkHelp}</p>
      <div class="choices">
        {["", ...named].map((id) => (
          <label key={id} class="choice">
            <input
              type="radio"
              id={`at-work:${id}`}
              name="at-work"
              checked={session.person === id}
              onChange={() => choose(id)}
            />
            <span>{nameOf(session.record, id) ?? PEOPLE.nobody}</span>
          </label>
        ))}
      </div>
    </fieldset>
  );
}
