import { clock } from "../parts/clock.ts";
import { Dialog } from "../parts/dialog.tsx";
import { TextField } from "../parts/text-field.tsx";
import type { Value } from "../record/entry.ts";
import { nameOf } from "../shell/safety.ts";
import { KEYPAD } from "../words/keypad.ts";
import { PARTS } from "../words/parts.ts";
import { instrumentName } from "./instrument.tsx";
import { takenOf } from "./reading.ts";
import { type Spot, spotId, useSpot } from "./spot.ts";
import { useRecord } from "./use-record.ts";

/** When, by whom and with what a reading was taken, in one line. */
export function useTakenWords(value: Value | undefined): string {
  const record = useRecord();
  const taken = takenOf(value);
  if (taken === undefined) return "";
  return [
    taken.at === undefined ? "" : KEYPAD.takenAt(clock(taken.at)),
    taken.by === undefined ? KEYPAD.nobody : KEYPAD.takenBy(nameOf(record, taken.by) ?? KEYPAD.personUnnamed),
    taken.with === undefined
      ? KEYPAD.noInstrument
      : KEYPAD.takenWith(instrumentName(record, taken.with) ?? KEYPAD.instrumentUnnamed),
  ]
    .filter(Boolean)
    .join(" ");
}

interface AboutDialogProps {
  readonly label: string;
  readonly spot: Spot;
  /** The name of a ring's point, where the field is one. */
  readonly pointPath: string | undefined;
  readonly onClose: () => void;
}

/** What belongs to a reading besides its figure. */
export function AboutDialog({ label, spot, pointPath, onClose }: AboutDialogProps) {
  const field = useSpot(spot);
  const taken = takenOf(field.value);
  const words = useTakenWords(field.value);
  const line = (name: "method" | "note", title: string) => (
    <div class="field">
      <label for={`${spotId(spot)} ${name}`}>{title}</label>
      <input
        id={`${spotId(spot)} ${name}`}
        maxLength={300}
        autoComplete="off"
        value={taken?.[name] ?? ""}
        onChange={({ currentTarget }) => {
          const { [name]: _, ...others } = taken as unknown as { readonly [name: string]: Value };
          const text = currentTarget.value.trim();
          field.write(text === "" ? others : { ...others, [name]: text });
        }}
      />
    </div>
  );
  return (
    <Dialog title={KEYPAD.aboutTitle(label)} onClose={onClose}>
      {taken === undefined ? (
        <p>{KEYPAD.nothingYet}</p>
      ) : (
        <>
          <p>
            <strong>{taken.shown}</strong> {words}
          </p>
          {line("method", KEYPAD.method)}
          {line("note", KEYPAD.note)}
        </>
      )}
      {pointPath !== undefined && <TextField path={pointPath} label={KEYPAD.pointName} />}
      <button type="button" onClick={onClose}>
        {PARTS.close}
      </button>
    </Dialog>
  );
}
