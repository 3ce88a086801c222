import { useState } from "preact/hooks";
import { Conflict } from "../parts/conflict.tsx";
import { Toggle } from "../parts/toggle.tsx";
import type { Value } from "../record/entry.ts";
import { KEYPAD } from "../words/keypad.ts";
import { NotKnownButton } from "./not-known-button.tsx";
import { NotKnownDialog } from "./not-known-dialog.tsx";
import { noValueOf, shownWords } from "./reading.ts";
import { type Spot, spotId, useSpot, within } from "./spot.ts";

interface StatedWordsProps {
  readonly spot: Spot;
  readonly label: string;
  readonly help?: string | undefined;
  readonly options: Readonly<Record<string, string>>;
}

/** Several facts of one kind: as many of a few words as are true, or that it is not known and why. */
export function StatedWords({ spot, label, help, options }: StatedWordsProps) {
  const { value, standing, write, writeWhole } = useSpot(spot);
  const [asking, setAsking] = useState(false);
  const id = `at:${spotId(spot)}`;
  const chosen = wordsIn(value);
  const none = noValueOf(value);
  const shown = (one: Value | undefined) =>
    wordsIn(one)
      .map((word) => options[word] ?? word)
      .join(", ") || shownWords(one);
  return (
    <fieldset class="field stated" aria-describedby={`${id}?`}>
      <legend>{label}</legend>
      <NotKnownButton
        label={label}
        said={none === undefined ? KEYPAD.notKnown : shownWords(value)}
        onAsk={() => setAsking(true)}
      />
      <p id={`${id}?`} class="quiet small help">
        {help ?? KEYPAD.several}
      </p>
      {Object.entries(options).map(([word, said], i) => (
        <Toggle
          key={word}
          id={i === 0 ? id : `${id}=${word}`}
          checked={chosen.includes(word)}
          onChange={(checked) => {
            // In the order of the words, so that two who tick the same write the same.
            const next = Object.keys(options).filter((one) => (one === word ? checked : chosen.includes(one)));
            write(next.length === 0 ? null : next);
          }}
        >
          {said}
        </Toggle>
      ))}
      <Conflict field={{ value, standing, write: writeWhole }} show={(one) => shown(within(one, spot.inner))} />
      {asking && (
        <NotKnownDialog spot={spot} label={label} value={value} write={write} onClose={() => setAsking(false)} />
      )}
    </fieldset>
  );
}

function wordsIn(value: Value | undefined): readonly string[] {
  return Array.isArray(value) ? value.filter((one): one is string => typeof one === "string") : [];
}
