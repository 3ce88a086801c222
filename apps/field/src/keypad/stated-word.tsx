import { useState } from "preact/hooks";
import { Conflict } from "../parts/conflict.tsx";
import type { Value } from "../record/entry.ts";
import { KEYPAD } from "../words/keypad.ts";
import { PARTS } from "../words/parts.ts";
import { NotKnownButton } from "./not-known-button.tsx";
import { NotKnownDialog } from "./not-known-dialog.tsx";
import { noValueOf, shownWords } from "./reading.ts";
import { type Spot, spotId, useSpot, within } from "./spot.ts";
import { WordChoices } from "./word-choices.tsx";

interface StatedWordProps {
  readonly spot: Spot;
  readonly label: string;
  readonly options: Readonly<Record<string, string>>;
  /** How a word is written where it is not a text: "yes" as true, "3" as 3. */
  readonly written?: (word: string) => Value;
  /** Whether a value is the one a word stands for, where it is more than a word. */
  readonly isSame?: (value: Value, word: Value) => boolean;
  /** Whether there is a way to say that it is not known. */
  readonly isStated?: boolean;
}

/** More than this many are chosen from a list instead of from buttons. */
const MOST_BUTTONS = 6;

/** A fact: one of a few words, or that it is not known and why. */
export function StatedWord({
  spot,
  label,
  options,
  written = (word) => word,
  isSame = Object.is,
  isStated = true,
}: StatedWordProps) {
  const { value, standing, write, writeWhole } = useSpot(spot);
  const [asking, setAsking] = useState(false);
  const id = `at:${spotId(spot)}`;
  const words = Object.entries(options);
  const chosen = value === undefined ? undefined : words.find(([word]) => isSame(value, written(word)))?.[0];
  const none = noValueOf(value);
  const notKnown = isStated && (
    <NotKnownButton
      label={label}
      said={none === undefined ? KEYPAD.notKnown : shownWords(value)}
      onAsk={() => setAsking(true)}
    />
  );
  const rest = (
    <>
      <Conflict field={{ value, standing, write: writeWhole }} show={(one) => wordsOf(within(one, spot.inner))} />
      {asking && (
        <NotKnownDialog spot={spot} label={label} value={value} write={write} onClose={() => setAsking(false)} />
      )}
    </>
  );
  function wordsOf(one: Value | undefined): string {
    return words.find(([word]) => one !== undefined && isSame(one, written(word)))?.[1] ?? shownWords(one);
  }
  if (words.length > MOST_BUTTONS)
    return (
      <div class="field stated">
        <label for={id}>{label}</label>
        {notKnown}
        <select
          id={id}
          value={chosen ?? ""}
          onChange={({ currentTarget }) => write(currentTarget.value === "" ? null : written(currentTarget.value))}
        >
          <option value="">{none === undefined ? PARTS.choose : shownWords(value)}</option>
          {words.map(([word, said]) => (
            <option key={word} value={word}>
              {said}
            </option>
          ))}
        </select>
        {rest}
      </div>
    );
  return (
    <fieldset class="field stated">
      <legend>{label}</legend>
      {notKnown}
      <WordChoices id={id} words={words} chosen={chosen} onChoose={(word) => write(written(word))} />
      {rest}
    </fieldset>
  );
}

/** Yes and no as a file has them. */
export const YES_NO = (word: string): Value => word === "yes";
/** One and three phases as a file has them. */
export const NUMBER = (word: string): Value => Number(word);
