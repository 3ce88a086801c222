import type { Pictures } from "../../engine/picture-view.ts";
import { useRecord } from "../../keypad/use-record.ts";
import { membersOf } from "../../record/document.ts";
import { PICTURES } from "../../words/installation.ts";
import { allCircuits, boardName, circuitName } from "../readings/names.ts";
import { circuitProgress } from "../readings/progress.ts";

/** What was seen and not seen: samples, inspected items, readings, limitations. */
export function Coverage({ samples }: { readonly samples: Pictures["samples"] }) {
  const record = useRecord();
  const circuits = allCircuits(record).map(([board, circuit]) => ({
    name: `${boardName(record, board)}, ${circuitName(record, board, circuit)}`,
    ...circuitProgress(record, board, circuit),
  }));
  const untested = circuits.filter(({ done }) => done === 0);
  const outcomes = membersOf(record, "inspected").map((name) => record.value(`inspected/${name}/outcome`));
  const limitations = membersOf(record, "limitations");
  const text = (path: string) => String(record.value(path) ?? "");
  return (
    <>
      <h3>{PICTURES.readings}</h3>
      <Bars rows={circuits} />
      {untested.length > 0 && (
        <p>
          {PICTURES.untested}: {untested.map(({ name }) => name).join("; ")}
        </p>
      )}
      <h3>{PICTURES.items}</h3>
      <ul>
        {Object.entries(PICTURES.outcomes).map(([outcome, words]) => (
          <li key={outcome}>
            {outcomes.filter((one) => one === outcome).length} {words}
          </li>
        ))}
      </ul>
      <h3>{PICTURES.samples}</h3>
      {samples.length === 0 && <p class="quiet">{PICTURES.noSamples}</p>}
      {samples.map(({ what, seen, leaves }) => (
        <p key={what}>
          <strong>{what}</strong>: {seen}; {leaves}.
        </p>
      ))}
      <h3>{PICTURES.limitations}</h3>
      {limitations.length === 0 && <p class="quiet">{PICTURES.noLimitations}</p>}
      <ul>
        {limitations.map((name) => (
          <li key={name}>
            {text(`limitations/${name}/what`)} <span class="quiet small">{text(`limitations/${name}/why`)}</span>
          </li>
        ))}
      </ul>
    </>
  );
}

interface BarsProps {
  readonly rows: readonly { readonly name: string; readonly done: number; readonly all: number }[];
}

/** For each circuit, how many of its readings there are. */
function Bars({ rows }: BarsProps) {
  return (
    <ul class="coverage">
      {rows.map(({ name, done, all }) => (
        <li key={name}>
          <span>{name}</span>
          <span class="coverage-bar" aria-hidden="true">
            <span style={{ width: `${all === 0 ? 0 : (done / all) * 100}%` }} />
          </span>
          <span class="small quiet">
            {done}/{all}
          </span>
        </li>
      ))}
    </ul>
  );
}
