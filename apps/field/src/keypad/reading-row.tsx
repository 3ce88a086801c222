import { useRef } from "preact/hooks";
import { Conflict } from "../parts/conflict.tsx";
import { KEYPAD } from "../words/keypad.ts";
import { useTakenWords } from "./about.tsx";
import { bringIntoView } from "./bring-into-view.ts";
import type { ReadingField } from "./fields.ts";
import { Findings } from "./findings.tsx";
import { KINDS, type Kind } from "./kinds.ts";
import type { Doubt } from "./plausible.ts";
import { noValueOf, shownWords, takenOf } from "./reading.ts";
import { RowKeys } from "./row-keys.tsx";
import { useSpot, within } from "./spot.ts";
import { splitShown } from "./typed.ts";
import type { TypedText } from "./use-entry.ts";

interface ReadingRowProps {
  readonly field: ReadingField;
  readonly id: string;
  readonly isOpen: boolean;
  readonly typed: TypedText | undefined;
  readonly fault: string | undefined;
  readonly doubt: Doubt | undefined;
  /** Where one starts on the screen. */
  readonly startsHere: boolean;
  readonly onOpen: () => void;
  readonly onType: (text: string) => void;
  readonly onLeave: () => void;
  readonly onNext: () => void;
  readonly onNoValue: () => void;
  readonly onAbout: () => void;
  /** The answers to what is asked about the value: it stays, it is measured again, it was typed wrongly. */
  readonly onKeep: () => void;
  readonly onAgain: () => void;
  readonly onMistyped: () => void;
}

/** A reading: its field, and beside it what follows from it. */
export function ReadingRow({ field, id, isOpen, typed, fault, doubt, startsHere, ...on }: ReadingRowProps) {
  const { value, standing, writeWhole } = useSpot(field.spot);
  const taken = takenOf(value);
  const words = useTakenWords(isOpen ? value : undefined);
  const kind: Kind = KINDS[field.kind];
  const kept =
    taken === undefined ? { text: shownWords(value), symbol: kind.symbols[0] ?? "" } : splitShown(taken.shown, kind);
  const { text, symbol } = typed ?? kept;
  const input = useRef<HTMLInputElement>(null);
  const described = [`${id}?`, fault === undefined ? "" : `${id}!`].filter(Boolean).join(" ");
  const isSilent = typed === undefined && noValueOf(value) !== undefined;
  return (
    <div class={isOpen ? "reading open" : "reading"}>
      <div class="reading-line">
        <label for={id}>
          {field.label}
          {field.hint !== undefined && <span class="quiet small"> {field.hint}</span>}
        </label>
        <span class={isSilent ? "reading-box silent" : "reading-box"}>
          <input
            id={id}
            ref={input}
            data-start={startsHere ? "" : undefined}
            type="text"
            inputMode="none"
            autoComplete="off"
            enterKeyHint="next"
            value={text}
            aria-invalid={fault === undefined ? undefined : "true"}
            aria-describedby={described}
            onFocus={() => {
              on.onOpen();
              // What was mistyped is put right digit by digit; anything else is typed over.
              if (typed === undefined) input.current?.select();
              else input.current?.setSelectionRange(typed.text.length, typed.text.length);
              bringIntoView(input.current);
            }}
            onInput={({ currentTarget }) => on.onType(currentTarget.value)}
            onBlur={on.onLeave}
            onKeyDown={(event) => {
              if (event.key !== "Enter") return;
              event.preventDefault();
              on.onNext();
            }}
          />
          {!isSilent && <span aria-hidden="true">{symbol}</span>}
        </span>
        {isOpen && <RowKeys label={field.label} onNoValue={on.onNoValue} onAbout={on.onAbout} />}
      </div>
      <span id={`${id}?`} class={words === "" ? "unseen" : "small quiet reading-taken"}>
        {words !== "" || isSilent ? words : symbol}
      </span>
      {fault !== undefined && (
        <p id={`${id}!`} class="fault" role="alert">
          {fault}
        </p>
      )}
      {doubt !== undefined && taken !== undefined && (
        <fieldset class="doubt" aria-label={KEYPAD.isIt}>
          <p>
            <strong>{KEYPAD.isIt}</strong> {KEYPAD.asks[doubt]}
          </p>
          <div class="row">
            <button type="button" onClick={on.onAgain}>
              {KEYPAD.again}
            </button>
            <button type="button" onClick={on.onMistyped}>
              {KEYPAD.mistyped}
            </button>
            <button type="button" onClick={on.onKeep}>
              {KEYPAD.keepIt(taken.shown)}
            </button>
          </div>
        </fieldset>
      )}
      <Findings about={field.about ?? []} isOpen={isOpen} hasValue={taken !== undefined} />
      <Conflict
        field={{ value, standing, write: writeWhole }}
        show={(one) => shownWords(within(one, field.spot.inner))}
      />
    </div>
  );
}
