import type { FigureView, ReasonView } from "../../engine/reason-view.ts";
import { useDraft } from "../../parts/drafts.ts";
import { fieldId } from "../../parts/field-id.ts";
import { Picture } from "../../parts/picture.tsx";
import { join } from "../../record/document.ts";
import { put, useSession } from "../../shell/job.ts";
import { OBSERVATIONS } from "../../words/observations.ts";

interface OpeningProps {
  readonly observation: string;
  readonly view: ReasonView;
}

/** The measures of an opening, for where no probe is at hand, and the section they describe. */
export function Opening({ observation, view }: OpeningProps) {
  if (view.figures.length === 0) return null;
  return (
    <details open={view.section !== undefined}>
      <summary>{OBSERVATIONS.measureOpening}</summary>
      {view.figures.map((figure) => (
        <Figure key={figure.name} path={join(observation, `facts/${figure.name}`)} figure={figure} />
      ))}
      {view.section !== undefined && <Picture svg={view.section} />}
    </details>
  );
}

function Figure({ path, figure }: { readonly path: string; readonly figure: FigureView }) {
  const session = useSession();
  const write = (text: string) => {
    const plain = text.trim().replace(",", ".");
    // Openings are measured in millimetres; another unit is written out.
    put(session, [path, plain === "" ? null : /^[\d.]+$/.test(plain) ? `${plain} mm` : plain]);
  };
  const draft = useDraft(figure.given, write);
  const id = fieldId(path);
  return (
    <div class="field">
      <label for={id}>{figure.asks}</label>
      {figure.values.length > 0 ? (
        <select
          id={id}
          value={figure.given}
          onChange={({ currentTarget }) => put(session, [path, currentTarget.value || null])}
        >
          <option value="">–</option>
          {figure.values.map((value) => (
            <option key={value} value={value}>
              {value.replaceAll("-", " ")}
            </option>
          ))}
        </select>
      ) : (
        <input
          id={id}
          inputMode="decimal"
          placeholder="mm"
          autoComplete="off"
          value={draft.text}
          onInput={({ currentTarget }) => draft.type(currentTarget.value)}
          onBlur={draft.leave}
        />
      )}
    </div>
  );
}
