import { KEYPAD } from "../words/keypad.ts";

interface RowKeysProps {
  readonly label: string;
  readonly onNoValue: () => void;
  readonly onAbout: () => void;
}

/** What the keypad offers besides digits, for the keyboard: seen only while it has the focus, after the field it is for. */
export function RowKeys({ label, onNoValue, onAbout }: RowKeysProps) {
  return (
    <span class="row-keys">
      <button type="button" class="small on-focus" onClick={onNoValue}>
        {KEYPAD.noValueTitle(label)}
      </button>
      <button type="button" class="small on-focus" onClick={onAbout}>
        {KEYPAD.aboutTitle(label)}
      </button>
    </span>
  );
}
