import { useEffect, useState } from "preact/hooks";
import { engine } from "../../engine/client.ts";
import type { ReachView } from "../../engine/reach-view.ts";
import { fieldId } from "../../parts/field-id.ts";
import { Picture } from "../../parts/picture.tsx";
import { join } from "../../record/document.ts";
import { put, useJob } from "../../shell/job.ts";
import { OBSERVATIONS } from "../../words/observations.ts";
import { textAt } from "./read.ts";

/** The topic that asks whether a part lies out of reach, and its fact. */
const TOPIC = "live-parts-out-of-reach";
const FACT = "reach";

const FIELDS = {
  height: OBSERVATIONS.reachHeight,
  beside: OBSERVATIONS.reachBeside,
  objects: OBSERVATIONS.reachObjects,
};

interface ReachProps {
  readonly observation: string;
  readonly topic: string;
}

/** The distances to a bare part, what arm's reach makes of them, and the elevation. They are kept with the job. */
export function Reach({ observation, topic }: ReachProps) {
  const session = useJob();
  const [view, setView] = useState<ReachView>();
  const at = (name: string) => join(observation, `~reach/${name}`);
  const texts = Object.keys(FIELDS).map((name) => textAt(session.record, at(name)));
  const asked = topic === TOPIC ? texts.map((text) => (text === "" ? Number.NaN : Number(text.replace(",", ".")))) : [];
  const known = asked.length === 3 && asked.every((one) => Number.isFinite(one) && Math.abs(one) <= 50);
  useEffect(() => {
    if (!known) return setView(undefined);
    let left = false;
    const [height = 0, beside = 0, objects = 0] = asked;
    engine.reach({ height, beside, objects: Math.max(0, objects) }).then(
      (found) => !left && setView(found),
      () => !left && setView(undefined),
    );
    return () => {
      left = true;
    };
  }, [texts.join(" ")]);
  if (topic !== TOPIC) return null;
  return (
    <details open={view !== undefined}>
      <summary>{OBSERVATIONS.reach}</summary>
      {Object.entries(FIELDS).map(([name, label], i) => (
        <div key={name} class="field">
          <label for={fieldId(at(name))}>{label}</label>
          <input
            id={fieldId(at(name))}
            inputMode="decimal"
            autoComplete="off"
            value={texts[i]}
            onChange={({ currentTarget }) => put(session, [at(name), currentTarget.value.trim() || null])}
          />
        </div>
      ))}
      {view !== undefined && (
        <>
          <Picture svg={view.svg} />
          <div class="row between">
            <strong>{OBSERVATIONS.reachAnswer[view.answer]}</strong>
            <button type="button" onClick={() => put(session, [join(observation, `facts/${FACT}`), view.answer])}>
              {OBSERVATIONS.take}
            </button>
          </div>
        </>
      )}
    </details>
  );
}
