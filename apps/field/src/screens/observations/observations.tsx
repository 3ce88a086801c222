import { useState } from "preact/hooks";
import { Mark } from "../../parts/mark.tsx";
import { join, membersOf, ORDER } from "../../record/document.ts";
import { newName, put, useJob } from "../../shell/job.ts";
import { goTo, linkTo } from "../../shell/route.ts";
import type { ScreenProps } from "../../shell/screens.ts";
import { OBSERVATIONS } from "../../words/observations.ts";
import { One } from "./one.tsx";
import { chosenOf, textAt } from "./read.ts";

/** Observations: the list of them, or one that is open. */
export default function Observations({ rest }: ScreenProps) {
  const session = useJob();
  const [removed, setRemoved] = useState<string>();
  const names = membersOf(session.record, "observations");
  const [open] = rest;
  if (open !== undefined && names.includes(open))
    return (
      <One
        key={open}
        name={open}
        onRemove={() => {
          put(session, [`observations/${open}`, null]);
          setRemoved(open);
          goTo("job", session.job, "observations");
        }}
      />
    );
  const add = () => {
    const name = newName("o");
    put(session, [`observations/${name}`, true], [`observations/${name}/${ORDER}`, names.length]);
    goTo("job", session.job, "observations", name);
  };
  return (
    <>
      <button type="button" class="main wide" onClick={add}>
        {OBSERVATIONS.add}
      </button>
      <div role="status">
        {removed !== undefined && (
          <div class="row between sheet">
            <span>{OBSERVATIONS.removed}</span>
            <button
              type="button"
              onClick={() => {
                put(session, [`observations/${removed}`, true]);
                setRemoved(undefined);
              }}
            >
              {OBSERVATIONS.undo}
            </button>
          </div>
        )}
      </div>
      {names.length === 0 && <p class="quiet">{OBSERVATIONS.none}</p>}
      <ul class="rows">
        {names.map((name) => {
          const at = join("observations", name);
          const chosen = chosenOf(session.record, at);
          return (
            <li key={name}>
              <a class="row-link" href={linkTo("job", session.job, "observations", name)}>
                <span class="row-mark">
                  {chosen === undefined ? <span class="quiet">{OBSERVATIONS.open}</span> : <Mark of={chosen} />}
                </span>
                <span>
                  <strong>{textAt(session.record, join(at, "place")) || OBSERVATIONS.untitled}</strong>
                  <br />
                  <span class="quiet">{textAt(session.record, join(at, "what"))}</span>
                </span>
              </a>
            </li>
          );
        })}
      </ul>
    </>
  );
}
