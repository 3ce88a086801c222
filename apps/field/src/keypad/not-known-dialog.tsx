import type { Value } from "../record/entry.ts";
import { NoValueDialog } from "./no-value.tsx";
import { noValueOf } from "./reading.ts";
import { type Spot, spotId } from "./spot.ts";

interface NotKnownDialogProps {
  readonly spot: Spot;
  readonly label: string;
  /** What stands at the spot. */
  readonly value: Value | undefined;
  readonly write: (value: Value) => void;
  readonly onClose: () => void;
}

/** Asks why a size or a fact is not known, and writes that in its place. */
export function NotKnownDialog({ spot, label, value, write, onClose }: NotKnownDialogProps) {
  return (
    <NoValueDialog
      label={label}
      path={spotId(spot)}
      value={noValueOf(value)}
      hasValue={value !== undefined}
      onClose={onClose}
      onKeep={(fresh) => {
        onClose();
        write(fresh === undefined ? null : { notKnown: fresh.kind, reason: fresh.reason });
      }}
    />
  );
}
