import { KEYPAD } from "../words/keypad.ts";
import type { Doubt } from "./plausible.ts";

interface DoubtQuestionProps {
  readonly doubt: Doubt;
  /** The reading as it was shown. */
  readonly shown: string;
  /** The answers: it stays, it is measured again, it was typed wrongly. */
  readonly onKeep: () => void;
  readonly onAgain: () => void;
  readonly onMistyped: () => void;
}

/** Asks about a reading that looks implausible. */
export function DoubtQuestion({ doubt, shown, onKeep, onAgain, onMistyped }: DoubtQuestionProps) {
  return (
    <fieldset class="doubt" aria-label={KEYPAD.isIt}>
      <p>
        <strong>{KEYPAD.isIt}</strong> {KEYPAD.asks[doubt]}
      </p>
      <div class="row">
        <button type="button" onClick={onAgain}>
          {KEYPAD.again}
        </button>
        <button type="button" onClick={onMistyped}>
          {KEYPAD.mistyped}
        </button>
        <button type="button" onClick={onKeep}>
          {KEYPAD.keepIt(shown)}
        </button>
      </div>
    </fieldset>
  );
}
