import { useRef, useState } from "preact/hooks";
import { Dialog } from "../parts/dialog.tsx";
import { flushDrafts } from "../parts/drafts.ts";
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
  const latest = useRef(reason);
  return (
    <Dialog title={KEYPAD.noValueTitle(label)} onClose={onClose}>
      <form
        onSubmit={(event) => {
          event.preventDefault();
          flushDrafts();
          const now = latest.current;
          if (now !== undefined && now.reason.trim() !== "") onKeep({ ...now, reason: now.reason.trim() });
        }}
      >
        <ReasonField
          path={path}
          label={KEYPAD.noValueHelp}
          value={reason}
          onChange={(fresh) => {
            latest.current = fresh;
            setReason(fresh);
          }}
        />
        <div class="row">
          <button type="submit" class="main" disabled={reason === undefined}>
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
      </form>
    </Dialog>
  );
}
