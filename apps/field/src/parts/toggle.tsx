import type { ComponentChildren } from "preact";

interface ToggleProps {
  readonly id?: string;
  readonly checked: boolean;
  readonly onChange: (checked: boolean) => void;
  readonly children: ComponentChildren;
  readonly note?: ComponentChildren;
}

/** A box to tick with its words, the whole row to be hit. */
export function Toggle({ id, checked, onChange, children, note }: ToggleProps) {
  return (
    <label class="toggle">
      <input
        id={id}
        type="checkbox"
        checked={checked}
        onChange={({ currentTarget }) => onChange(currentTarget.checked)}
      />
      <span>
        {children}
        {note !== undefined && <span class="quiet small note">{note}</span>}
      </span>
    </label>
  );
}
