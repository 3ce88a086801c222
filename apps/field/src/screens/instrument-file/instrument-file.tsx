import { useState } from "preact/hooks";
import { guess, type Use } from "../../instrument-file/columns.ts";
import { planOf, type Taken } from "../../instrument-file/plan.ts";
import { sheetOf } from "../../instrument-file/rows.ts";
import { Notice } from "../../parts/notice.tsx";
import { useJob } from "../../shell/job.ts";
import { INSTRUMENT_FILE } from "../../words/instrument-file.ts";
import { changesOf, type Opened } from "./changes.ts";
import { Columns } from "./columns.tsx";
import { Lines } from "./lines.tsx";
import { targetsOf } from "./places.ts";
import { Twice } from "./twice.tsx";
import { Unplaced } from "./unplaced.tsx";
import { WrittenOver } from "./written-over.tsx";

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
    await session.write(...(await changesOf(opened, ready, instrument)));
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
          <Columns
            record={record}
            header={sheet.header}
            uses={uses}
            onUses={setUses}
            range={range}
            onRange={setRange}
            instrument={instrument}
            onInstrument={setInstrument}
          />
          {plan.twice.length > 0 && <Twice record={record} twice={plan.twice} chosen={chosen} onChosen={setChosen} />}
          <WrittenOver record={record} ready={ready} />
          <button type="button" class="main wide" disabled={ready.length === 0} onClick={() => void take()}>
            {INSTRUMENT_FILE.takeIn(ready.length)}
          </button>
          <p role="status">{done === undefined ? "" : INSTRUMENT_FILE.taken(done)}</p>
          {plan.unplaced.length > 0 && <Unplaced unplaced={plan.unplaced} />}
          <Lines sheet={sheet} />
        </>
      )}
    </>
  );
}
