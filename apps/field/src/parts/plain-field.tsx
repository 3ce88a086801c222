import type { ComponentChildren } from "preact";
import { useId } from "preact/hooks";

interface PlainFieldProps {
  readonly label: string;
  readonly value: string;
  readonly onType: (text: string) => void;
  readonly help?: ComponentChildren;
  /** What is wrong with the text. */
  readonly fault?: string | undefined;
  readonly type?: "text" | "password";
  readonly autoComplete?: string;
  readonly rows?: number;
}

/** A text that stands nowhere in a job. */
export function PlainField({
  label,
  value,
  onType,
  help,
  fault,
  type = "text",
  autoComplete = "off",
  rows,
}: PlainFieldProps) {
  const id = useId();
  const described = [help === undefined ? "" : `${id}?`, fault === undefined ? "" : `${id}!`].filter(Boolean).join(" ");
  const shared = {
    id,
    value,
    maxLength: 4000,
    "aria-describedby": described || undefined,
    "aria-invalid": fault === undefined ? undefined : ("true" as const),
  };
  const typed = ({ currentTarget }: { readonly currentTarget: { readonly value: string } }) =>
    onType(currentTarget.value);
  return (
    <div class="field">
      <label for={id}>{label}</label>
      {help !== undefined && (
        <div id={`${id}?`} class="quiet small help">
          {help}
        </div>
      )}
      {rows !== undefined ? (
        <textarea {...shared} rows={rows} onInput={typed} />
      ) : type === "password" ? (
        <input {...shared} type="password" autoComplete={autoComplete} onInput={typed} />
      ) : (
        <input {...shared} type="text" autoComplete={autoComplete} onInput={typed} />
      )}
      {fault !== undefined && (
        <p id={`${id}!`} class="fault">
          {fault}
        </p>
      )}
    </div>
  );
}
