import { useState } from "preact/hooks";
import { Conflict } from "../parts/conflict.tsx";
import { useDraft } from "../parts/drafts.ts";
import type { Value } from "../record/entry.ts";
import { PARTS } from "../words/parts.ts";
import { NotKnownButton } from "./not-known-button.tsx";
import { NotKnownDialog } from "./not-known-dialog.tsx";
import { noValueOf, shownWords } from "./reading.ts";
import { type Spot, spotId, useSpot, within } from "./spot.ts";

interface StatedCountProps {
  readonly spot: Spot;
  readonly label: string;
}

/** How many there are, or that it is not known and why. */
export function StatedCount({ spot, label }: StatedCountProps) {
  const { value, standing, write, writeWhole } = useSpot(spot);
  const [asking, setAsking] = useState(false);
  const id = `at:${spotId(spot)}`;
  const none = noValueOf(value);
  const draft = useDraft(shown(value), (text) => {
    const read = countOf(text);
    if (read !== undefined && read !== (value ?? null)) write(read);
  });
  const isWrong = none === undefined && countOf(draft.text) === undefined;
  return (
    <fieldset class="field stated">
      <legend>
        <label for={id}>{label}</label>
      </legend>
      <NotKnownButton label={label} onAsk={() => setAsking(true)} />
      <input
        id={id}
        class="short"
        type="text"
        inputMode="numeric"
        autoComplete="off"
        value={draft.text}
        aria-invalid={isWrong ? "true" : undefined}
        aria-describedby={isWrong ? `${id}!` : undefined}
        onFocus={({ currentTarget }) => currentTarget.select()}
        onInput={({ currentTarget }) => draft.type(currentTarget.value)}
        onBlur={draft.leave}
      />
      {isWrong && (
        <p id={`${id}!`} class="fault">
          {PARTS.wholeNumber}
        </p>
      )}
      <Conflict field={{ value, standing, write: writeWhole }} show={(one) => shown(within(one, spot.inner))} />
      {asking && (
        <NotKnownDialog spot={spot} label={label} value={value} write={write} onClose={() => setAsking(false)} />
      )}
    </fieldset>
  );
}

function shown(value: Value | undefined): string {
  return typeof value === "number" ? String(value) : shownWords(value);
}

/** Nothing where nothing is typed, undefined where it is no count. */
function countOf(text: string): number | null | undefined {
  if (text.trim() === "") return null;
  return /^\d{1,5}$/.test(text.trim()) ? Number(text) : undefined;
}
