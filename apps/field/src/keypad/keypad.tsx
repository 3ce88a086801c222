import { useState } from "preact/hooks";
import { KEYPAD } from "../words/keypad.ts";
import { Keys } from "./keys.tsx";
import { KINDS, type Kind, type KindId } from "./kinds.ts";
import { TopDialog } from "./top-dialog.tsx";
import type { TextKey } from "./typed.ts";

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

/** Large keys for one hand: digits, point, unit, the end of the display, and on to the next field. */
export function Keypad({ kind, top, symbol, label, ...on }: KeypadProps) {
  const [asking, setAsking] = useState(false);
  const about: Kind | undefined = kind === undefined ? undefined : KINDS[kind];
  return (
    <section
      class="keypad"
      aria-label={KEYPAD.label}
      // The field keeps the focus while keys are pressed.
      onMouseDown={(event) => event.preventDefault()}
    >
      <div class="keypad-strip">
        <button type="button" class="plain" tabIndex={-1} disabled={on.onBack === undefined} onClick={on.onBack}>
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
        <button type="button" class="plain" tabIndex={-1} disabled={on.onAbout === undefined} onClick={on.onAbout}>
          {KEYPAD.about}
        </button>
      </div>
      <Keys about={about} top={top} symbol={symbol} onTop={() => setAsking(true)} {...on} />
      {asking && kind !== undefined && (
        <TopDialog
          kind={kind}
          onClose={() => setAsking(false)}
          onChoose={(chosen) => {
            setAsking(false);
            on.onOver(chosen);
          }}
        />
      )}
    </section>
  );
}
