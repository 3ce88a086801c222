import { useState } from "preact/hooks";
import { Dialog } from "../parts/dialog.tsx";
import { type Reason, ReasonField } from "../parts/reason-field.tsx";
import { KEYPAD } from "../words/keypad.ts";
import { PARTS } from "../words/parts.ts";
import type { NoValue } from "./reading.ts";

interface NoValueDialogProps {
  readonly label: string;
  readonly path: string;
  readonly value: NoValue | undefined;
  /** Something stands there that can be taken out. */
  readonly hasValue: boolean;
  readonly onClose: () => void;
  readonly onKeep: (value: NoValue | undefined) => void;
}

/** Asks why there is no value, or takes the value out. */
export function NoValueDialog({ label, path, value, hasValue, onClose, onKeep }: NoValueDialogProps) {
  const [reason, setReason] = useState<Reason | undefined>(value);
  const isReady = reason !== undefined && reason.reason.trim() !== "";
  return (
    <Dialog title={KEYPAD.noValueTitle(label)} onClose={onClose}>
      <ReasonField path={path} label={KEYPAD.noValueHelp} value={reason} onChange={setReason} />
      <div class="row">
        <button
          type="button"
          class="main"
          onClick={() => {
            // What is typed is handed over as the field is left.
            (document.activeElement as HTMLElement | null)?.blur();
            setReason((now) => {
              if (now !== undefined && now.reason.trim() !== "")
                queueMicrotask(() => onKeep({ ...now, reason: now.reason.trim() }));
              return now;
            });
          }}
          aria-disabled={isReady ? undefined : "true"}
        >
          {KEYPAD.keepReason}
        </button>
        {hasValue && (
          <button type="button" onClick={() => onKeep(undefined)}>
            {KEYPAD.takeOut}
          </button>
        )}
        <button type="button" onClick={onClose}>
          {PARTS.cancel}
        </button>
      </div>
    </Dialog>
  );
}
