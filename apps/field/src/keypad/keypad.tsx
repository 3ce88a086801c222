import { useState } from "preact/hooks";
import { Dialog } from "../parts/dialog.tsx";
import { KEYPAD } from "../words/keypad.ts";
import { KINDS, type Kind, type KindId } from "./kinds.ts";
import { readTyped, type TextKey } from "./typed.ts";

interface KeypadProps {
  /** The function of the instrument of the field that is open; undefined where no digits are asked for. */
  readonly kind: KindId | undefined;
  /** Where the display ends, where that is known. */
  readonly top: string | undefined;
  readonly symbol: string;
  /** What the field is called. */
  readonly label: string;
  readonly onKey: (key: TextKey) => void;
  readonly onUnit: () => void;
  /** The display was at its end, which is `top` or another one. */
  readonly onOver: (top: string) => void;
  readonly onNoValue: (() => void) | undefined;
  readonly onAbout: (() => void) | undefined;
  readonly onNext: () => void;
  readonly onBack: (() => void) | undefined;
}

const DIGITS: readonly TextKey[] = ["1", "2", "3", "4", "5", "6", "7", "8", "9"];

/** Large keys for one hand: digits, point, unit, the end of the display, and on to the next field. */
export function Keypad({ kind, top, symbol, label, onKey, onUnit, onOver, ...more }: KeypadProps) {
  const [asking, setAsking] = useState(false);
  const about: Kind | undefined = kind === undefined ? undefined : KINDS[kind];
  const key = (name: TextKey, shown: string = name, said?: string) => (
    <button
      key={name}
      type="button"
      tabIndex={-1}
      disabled={kind === undefined}
      aria-label={said}
      onClick={() => onKey(name)}
    >
      {shown}
    </button>
  );
  return (
    <section
      class="keypad"
      aria-label={KEYPAD.label}
      // The field keeps the focus while keys are pressed.
      onMouseDown={(event) => event.preventDefault()}
    >
      <div class="keypad-strip">
        <button type="button" class="plain" tabIndex={-1} disabled={more.onBack === undefined} onClick={more.onBack}>
          ← {KEYPAD.previous}
        </button>
        <span class="keypad-label">{label}</span>
        {about !== undefined && about.tops.length > 0 && top !== undefined && (
          <button
            type="button"
            class="plain"
            tabIndex={-1}
            aria-label={KEYPAD.chooseTop}
            onClick={() => setAsking(true)}
          >
            {KEYPAD.chooseTopShort}
          </button>
        )}
        <button type="button" class="plain" tabIndex={-1} disabled={more.onAbout === undefined} onClick={more.onAbout}>
          {KEYPAD.about}
        </button>
      </div>
      <div class="keys">
        {DIGITS.slice(0, 3).map((name) => key(name))}
        {key("back", KEYPAD.backShort, KEYPAD.back)}
        {DIGITS.slice(3, 6).map((name) => key(name))}
        <button
          type="button"
          class="small"
          tabIndex={-1}
          disabled={about === undefined || about.tops.length === 0}
          aria-label={top === undefined ? KEYPAD.chooseTop : KEYPAD.overRange(top)}
          onClick={() => (top === undefined ? setAsking(true) : onOver(top))}
        >
          {top === undefined ? KEYPAD.chooseTopShort : `>${top}`}
        </button>
        {DIGITS.slice(6, 9).map((name) => key(name))}
        <button
          type="button"
          class="small"
          tabIndex={-1}
          disabled={more.onNoValue === undefined}
          onClick={more.onNoValue}
        >
          {KEYPAD.noValue}
        </button>
        {about?.signed === true ? key("sign", "±", KEYPAD.sign) : key(".", ".", KEYPAD.point)}
        {key("0")}
        <button
          type="button"
          class="small"
          tabIndex={-1}
          disabled={about === undefined || about.symbols.length < 2}
          aria-label={KEYPAD.unit(symbol)}
          onClick={onUnit}
        >
          {symbol}
          {about !== undefined && about.symbols.length > 1 ? " ⇅" : ""}
        </button>
        <button type="button" class="main" tabIndex={-1} onClick={more.onNext}>
          {KEYPAD.next} →
        </button>
      </div>
      {asking && kind !== undefined && (
        <TopDialog
          kind={kind}
          onClose={() => setAsking(false)}
          onChoose={(chosen) => {
            setAsking(false);
            onOver(chosen);
          }}
        />
      )}
    </section>
  );
}

interface TopDialogProps {
  readonly kind: KindId;
  readonly onClose: () => void;
  readonly onChoose: (top: string) => void;
}

/** Asks once where a display ends; it is never made up. */
function TopDialog({ kind, onClose, onChoose }: TopDialogProps) {
  const [other, setOther] = useState("");
  const about: Kind = KINDS[kind];
  const read = readTyped(other, about.symbols[0] ?? "", kind, undefined);
  return (
    <Dialog title={KEYPAD.topTitle} onClose={onClose}>
      <p>{KEYPAD.topHelp}</p>
      <div class="choices">
        {about.tops.map((top) => (
          <button key={top} type="button" onClick={() => onChoose(top)}>
            &gt;{top}
          </button>
        ))}
      </div>
      <form
        onSubmit={(event) => {
          event.preventDefault();
          if ("shown" in read) onChoose(read.shown.replace(/^[<>]/, ""));
        }}
      >
        <label for="top-other">{KEYPAD.topOther}</label>
        <div class="row">
          <input
            id="top-other"
            class="short"
            inputMode="decimal"
            autoComplete="off"
            value={other}
            onInput={({ currentTarget }) => setOther(currentTarget.value)}
          />
          <button type="submit" disabled={!("shown" in read)}>
            {"shown" in read ? `>${read.shown.replace(/^[<>]/, "")}` : KEYPAD.done}
          </button>
        </div>
      </form>
    </Dialog>
  );
}
