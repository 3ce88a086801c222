import { useRef } from "preact/hooks";
import { Conflict } from "../parts/conflict.tsx";
import type { WordField } from "./fields.ts";
import { Findings } from "./findings.tsx";
import { noValueOf, shownWords } from "./reading.ts";
import { RowKeys } from "./row-keys.tsx";
import { useSpot, within } from "./spot.ts";

interface WordRowProps {
  readonly field: WordField;
  readonly id: string;
  readonly isOpen: boolean;
  readonly onOpen: () => void;
  /** Where one starts on the screen. */
  readonly startsHere: boolean;
  readonly onChoose: (word: string, stay: boolean) => void;
  readonly onNext: () => void;
  readonly onNoValue: () => void;
  readonly onAbout: () => void;
}

/** A fact found by a test: one of a few words. */
export function WordRow({ field, id, isOpen, startsHere, onOpen, onChoose, ...on }: WordRowProps) {
  const { value, standing, writeWhole } = useSpot(field.spot);
  // An arrow key chooses the word it comes to: the way to a word further on must not end at the first.
  const byArrow = useRef(false);
  return (
    <fieldset class={isOpen ? "reading open" : "reading"} onFocusIn={onOpen}>
      <legend>
        {field.label}
        {field.hint !== undefined && <span class="quiet small"> {field.hint}</span>}
      </legend>
      <div class="choices">
        {Object.entries(field.words).map(([word, said], i) => (
          <label key={word} class="choice">
            <input
              type="radio"
              // The way through the fields leads to the first.
              id={i === 0 ? id : `${id}=${word}`}
              name={id}
              data-start={startsHere && i === 0 ? "" : undefined}
              checked={value === word}
              onKeyDown={(event) => {
                byArrow.current = event.key.startsWith("Arrow");
                if (event.key !== "Enter") return;
                event.preventDefault();
                on.onNext();
              }}
              onPointerDown={() => {
                byArrow.current = false;
              }}
              onChange={() => {
                onChoose(word, byArrow.current);
                byArrow.current = false;
              }}
            />
            <span>{said}</span>
          </label>
        ))}
        {noValueOf(value) !== undefined && <span class="quiet">{shownWords(value)}</span>}
        {isOpen && <RowKeys label={field.label} {...on} />}
      </div>
      <Findings about={field.about ?? []} isOpen={isOpen} hasValue={value !== undefined} />
      <Conflict
        field={{ value, standing, write: writeWhole }}
        show={(one) => shownWords(within(one, field.spot.inner))}
      />
    </fieldset>
  );
}
