import { KEYPAD } from "../words/keypad.ts";

interface NotKnownButtonProps {
  /** What the field is called. */
  readonly label: string;
  /** That it is not known and why, where that was said. */
  readonly said?: string;
  readonly onAsk: () => void;
}

/** The way to say that a size or a fact is not known. */
export function NotKnownButton({ label, said = KEYPAD.notKnown, onAsk }: NotKnownButtonProps) {
  return (
    <button type="button" class="plain small not-known" aria-label={`${label}: ${KEYPAD.notKnown}`} onClick={onAsk}>
      {said}
    </button>
  );
}
