import { SEVERITY } from "@good-grounds/core";
import { useState } from "preact/hooks";
import type { FindingView, PlaceView } from "../../engine/view.ts";
import { FindingLine } from "../../keypad/verdict.tsx";
import { PICTURES } from "../../words/installation.ts";

interface Margin {
  readonly place: PlaceView;
  readonly finding: FindingView;
}

/** As many as can be taken in before the rest is asked for. */
const SHOWN = 20;

/** Every reading that is held against a limit, the worst first. */
export function Margins({ places }: { readonly places: readonly PlaceView[] }) {
  const [all, setAll] = useState(false);
  const margins = marginsOf(places);
  if (margins.length === 0) return <p class="quiet">{PICTURES.noMargins}</p>;
  return (
    <>
      <ol class="margins">
        {(all ? margins : margins.slice(0, SHOWN)).map(({ place, finding }) => (
          <li key={`${place.path} ${finding.check}`}>
            <strong>{place.name}</strong>
            <span class="small"> {finding.title}</span>
            <FindingLine finding={finding} path={place.path} />
          </li>
        ))}
      </ol>
      {!all && margins.length > SHOWN && (
        <button type="button" onClick={() => setAll(true)}>
          {PICTURES.showAll(margins.length)}
        </button>
      )}
    </>
  );
}

/** Findings with a bar: by verdict, then by how near the limit is. */
function marginsOf(places: readonly PlaceView[]): readonly Margin[] {
  return places
    .flatMap((place) => place.findings.map((finding) => ({ place, finding })))
    .filter(({ finding }) => finding.bar !== "" && finding.marginWords !== "")
    .sort(
      (a, b) =>
        SEVERITY[b.finding.verdict] - SEVERITY[a.finding.verdict] || (a.finding.margin ?? 0) - (b.finding.margin ?? 0),
    );
}
