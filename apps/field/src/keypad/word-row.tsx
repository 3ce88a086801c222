import { Conflict } from "../parts/conflict.tsx";
import type { WordField } from "./fields.ts";
import { Findings } from "./findings.tsx";
import { noValueOf, shownWords } from "./reading.ts";
import { useSpot, within } from "./spot.ts";

interface WordRowProps {
  readonly field: WordField;
  readonly id: string;
  readonly isOpen: boolean;
  readonly onOpen: () => void;
  readonly onChoose: (word: string) => void;
}

/** A fact found by a test: one of a few words. */
export function WordRow({ field, id, isOpen, onOpen, onChoose }: WordRowProps) {
  const { value, standing, writeWhole } = useSpot(field.spot);
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
              checked={value === word}
              onChange={() => onChoose(word)}
            />
            <span>{said}</span>
          </label>
        ))}
        {noValueOf(value) !== undefined && <span class="quiet">{shownWords(value)}</span>}
      </div>
      <Findings about={field.about ?? []} isOpen={isOpen} hasValue={value !== undefined} />
      <Conflict
        field={{ value, standing, write: writeWhole }}
        show={(one) => shownWords(within(one, field.spot.inner))}
      />
    </fieldset>
  );
}
