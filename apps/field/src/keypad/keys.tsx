import { KEYPAD } from "../words/keypad.ts";
import type { Kind } from "./kinds.ts";
import type { TextKey } from "./typed.ts";

interface KeysProps {
  /** The function of the instrument; undefined where no digits are asked for. */
  readonly about: Kind | undefined;
  /** Where the display ends, where that is known. */
  readonly top: string | undefined;
  readonly symbol: string;
  readonly onKey: (key: TextKey) => void;
  readonly onUnit: () => void;
  /** Where the display ends is to be asked. */
  readonly onTop: () => void;
  /** The display was at its end, which is `top`. */
  readonly onOver: (top: string) => void;
  readonly onNoValue: (() => void) | undefined;
  readonly onNext: () => void;
}

const DIGITS: readonly TextKey[] = ["1", "2", "3", "4", "5", "6", "7", "8", "9"];

/** Digits and point, with the end of the display, no value, the unit and the next field among them. */
export function Keys({ about, top, symbol, onKey, onUnit, onTop, onOver, onNoValue, onNext }: KeysProps) {
  const key = (name: TextKey, shown: string = name, said?: string) => (
    <button
      key={name}
      type="button"
      tabIndex={-1}
      disabled={about === undefined}
      aria-label={said}
      onClick={() => onKey(name)}
    >
      {shown}
    </button>
  );
  return (
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
        onClick={() => (top === undefined ? onTop() : onOver(top))}
      >
        {top === undefined ? KEYPAD.chooseTopShort : `>${top}`}
      </button>
      {DIGITS.slice(6, 9).map((name) => key(name))}
      <button type="button" class="small" tabIndex={-1} disabled={onNoValue === undefined} onClick={onNoValue}>
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
      <button type="button" class="main" tabIndex={-1} onClick={onNext}>
        {KEYPAD.next} →
      </button>
    </div>
  );
}
