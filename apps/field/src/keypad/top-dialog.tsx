import { useState } from "preact/hooks";
import { Dialog } from "../parts/dialog.tsx";
import { KEYPAD } from "../words/keypad.ts";
import { KINDS, type Kind, type KindId } from "./kinds.ts";
import { readTyped } from "./typed.ts";

interface TopDialogProps {
  readonly kind: KindId;
  readonly onClose: () => void;
  readonly onChoose: (top: string) => void;
}

/** Asks once where a display ends; it is never made up. */
export function TopDialog({ kind, onClose, onChoose }: TopDialogProps) {
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
