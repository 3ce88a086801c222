import { useState } from "preact/hooks";
import { hashOf } from "../../hand-over/hash.ts";
import { COLUMNS, type Column, guess, type Use } from "../../instrument-file/columns.ts";
import { planOf, type Taken, type Target } from "../../instrument-file/plan.ts";
import { type Sheet, sheetOf } from "../../instrument-file/rows.ts";
import { fieldId } from "../../parts/field-id.ts";
import { Notice } from "../../parts/notice.tsx";
import { Section } from "../../parts/section.tsx";
import { membersOf } from "../../record/document.ts";
import type { Value } from "../../record/entry.ts";
import type { Record as JobRecord } from "../../record/record.ts";
import { momentNow, useJob } from "../../shell/job.ts";
import { INSTRUMENT_FILE } from "../../words/instrument-file.ts";
import { textAt } from "../observations/read.ts";

interface Opened {
  readonly name: string;
  readonly text: string;
  readonly sheet: Sheet;
}

/** Readings from a file of an instrument: every line shown, columns named by the person, nothing dropped. */
export default function InstrumentFile() {
  const session = useJob();
  const { record } = session;
  const [opened, setOpened] = useState<Opened | "refused">();
  const [uses, setUses] = useState<readonly (Use | undefined)[]>([]);
  const [range, setRange] = useState("");
  const [chosen, setChosen] = useState<ReadonlyMap<string, Taken>>(new Map());
  const [instrument, setInstrument] = useState("");
  const [done, setDone] = useState<number>();
  const open = async (file: File | undefined) => {
    if (file === undefined) return;
    const text = await file.text();
    const sheet = sheetOf(text);
    setDone(undefined);
    setChosen(new Map());
    setOpened(sheet === undefined ? "refused" : { name: file.name, text, sheet });
    setUses((sheet?.header ?? []).map(guess));
  };
  const targets = targetsOf(record);
  const sheet = opened === undefined || opened === "refused" ? undefined : opened.sheet;
  const plan = sheet === undefined ? undefined : planOf(sheet, uses, targets, range.trim() || undefined);
  const ready = [...(plan?.taken ?? []), ...chosen.values()];
  const take = async () => {
    if (opened === undefined || opened === "refused") return;
    const sha256 = await hashOf(new TextEncoder().encode(opened.text));
    const at = momentNow();
    await session.write(
      // The file as it was, so that every reading can be followed back to its line.
      [`~files/${sha256.slice(0, 16)}`, { name: opened.name, sha256, at, text: opened.text }],
      ...ready.map(({ path, shown, line }): readonly [string, Value] => [
        path,
        {
          shown,
          ...(instrument === "" ? {} : { with: instrument }),
          method: `from ${opened.name.slice(0, 80)}, line ${line}`,
        },
      ]),
    );
    setDone(ready.length);
  };
  return (
    <>
      <p>{INSTRUMENT_FILE.intro}</p>
      <label class="button">
        {INSTRUMENT_FILE.choose}
        <input
          class="unseen"
          type="file"
          accept=".csv,.txt,.tsv,text/*"
          onChange={({ currentTarget }) => void open(currentTarget.files?.[0])}
        />
      </label>
      {opened === "refused" && <Notice kind="alert">{INSTRUMENT_FILE.refused}</Notice>}
      {sheet !== undefined && plan !== undefined && (
        <>
          <Section title={INSTRUMENT_FILE.columns}>
            {sheet.header.map((header, i) => (
              <ColumnUse
                key={`${i} ${header}`}
                id={fieldId("column", String(i))}
                header={header}
                use={uses[i]}
                onChange={(use) => setUses(uses.map((one, j) => (j === i ? use : one)))}
              />
            ))}
            <div class="pair">
              <div class="field">
                <label for="file-range">{INSTRUMENT_FILE.range}</label>
                <input
                  id="file-range"
                  inputMode="decimal"
                  value={range}
                  onInput={({ currentTarget }) => setRange(currentTarget.value)}
                />
              </div>
              <div class="field">
                <label for="file-with">{INSTRUMENT_FILE.instrument}</label>
                <select
                  id="file-with"
                  value={instrument}
                  onChange={({ currentTarget }) => setInstrument(currentTarget.value)}
                >
                  <option value="">{INSTRUMENT_FILE.noInstrument}</option>
                  {membersOf(record, "instruments").map((id) => (
                    <option key={id} value={id}>
                      {textAt(record, `instruments/${id}/kind`) || INSTRUMENT_FILE.unnamed}
                    </option>
                  ))}
                </select>
              </div>
            </div>
          </Section>
          {plan.twice.length > 0 && (
            <Section title={INSTRUMENT_FILE.twice}>
              {plan.twice.map((group) => (
                <fieldset key={group[0]?.path} class="sheet">
                  <legend>{placeOf(record, group[0]?.path ?? "")}</legend>
                  {group.map((one) => (
                    <label key={one.line} class="choice">
                      <input
                        type="radio"
                        name={one.path}
                        checked={chosen.get(one.path)?.line === one.line}
                        onChange={() => setChosen(new Map([...chosen, [one.path, one]]))}
                      />
                      <span>
                        {one.shown} ({INSTRUMENT_FILE.line} {one.line})
                      </span>
                    </label>
                  ))}
                </fieldset>
              ))}
            </Section>
          )}
          <ul>
            {ready.flatMap(({ path, shown }) => {
              const now = (record.value(path) as { readonly shown?: Value } | undefined)?.shown;
              return typeof now === "string" && now !== shown
                ? [<li key={path}>{INSTRUMENT_FILE.over(placeOf(record, path), now, shown)}</li>]
                : [];
            })}
          </ul>
          <button type="button" class="main wide" disabled={ready.length === 0} onClick={() => void take()}>
            {INSTRUMENT_FILE.takeIn(ready.length)}
          </button>
          <p role="status">{done === undefined ? "" : INSTRUMENT_FILE.taken(done)}</p>
          {plan.unplaced.length > 0 && (
            <details>
              <summary>{INSTRUMENT_FILE.unplaced(plan.unplaced.length)}</summary>
              <ul>
                {plan.unplaced.map(({ line, cell, because }, i) => (
                  <li key={`${i} ${line}`}>
                    {INSTRUMENT_FILE.line} {line}: “{cell}” {INSTRUMENT_FILE.because[because]}
                  </li>
                ))}
              </ul>
            </details>
          )}
          <details>
            <summary>{INSTRUMENT_FILE.rows(sheet.rows.length)}</summary>
            {/* biome-ignore lint/a11y/noNoninteractiveTabindex: what scrolls has to be reached by keyboard */}
            <div class="scroll" tabIndex={0}>
              <table>
                <thead>
                  <tr>
                    <th scope="col">{INSTRUMENT_FILE.line}</th>
                    {sheet.header.map((header, i) => (
                      <th key={`${i} ${header}`} scope="col">
                        {header}
                      </th>
                    ))}
                  </tr>
                </thead>
                <tbody>
                  {sheet.rows.map(({ line, cells }) => (
                    <tr key={line}>
                      <th scope="row">{line}</th>
                      {sheet.header.map((header, i) => (
                        <td key={`${i} ${header}`}>{cells[i] ?? ""}</td>
                      ))}
                    </tr>
                  ))}
                </tbody>
              </table>
            </div>
          </details>
        </>
      )}
    </>
  );
}

interface ColumnUseProps {
  readonly id: string;
  readonly header: string;
  readonly use: Use | undefined;
  readonly onChange: (use: Use | undefined) => void;
}

function ColumnUse({ id, header, use, onChange }: ColumnUseProps) {
  return (
    <div class="field">
      <label for={id}>{header}</label>
      <div class="pair">
        <select
          id={id}
          value={use?.column ?? ""}
          onChange={({ currentTarget }) => {
            const column = currentTarget.value as Column | "";
            onChange(column === "" ? undefined : { column, unit: COLUMNS[column].unit });
          }}
        >
          <option value="">{INSTRUMENT_FILE.unused}</option>
          {Object.entries(COLUMNS).map(([column, { words }]) => (
            <option key={column} value={column}>
              {words}
            </option>
          ))}
        </select>
        {use !== undefined && use.unit !== "" && (
          <input
            aria-label={`${header}: ${INSTRUMENT_FILE.unit}`}
            value={use.unit}
            onInput={({ currentTarget }) => onChange({ ...use, unit: currentTarget.value.trim() })}
          />
        )}
      </div>
    </div>
  );
}

function targetsOf(record: JobRecord): readonly Target[] {
  return membersOf(record, "boards").flatMap((board) =>
    membersOf(record, `boards/${board}/circuits`).map((circuit) => {
      const path = `boards/${board}/circuits/${circuit}`;
      const [designation, description] = [textAt(record, `${path}/designation`), textAt(record, `${path}/description`)];
      const name = textAt(record, `boards/${board}/name`);
      return {
        path,
        names: [
          designation,
          description,
          `${designation} ${description}`,
          `${name} ${designation}`,
          `${board} ${designation}`,
        ].filter((one) => one.trim() !== ""),
      };
    }),
  );
}

function placeOf(record: JobRecord, path: string): string {
  const circuit = path.split("/").slice(0, 4).join("/");
  return `${textAt(record, `${circuit}/designation`)} ${textAt(record, `${circuit}/description`)}, ${COLUMNS[path.split("/").at(-1) as Column]?.words ?? ""}`.trim();
}
