import type { ComponentChildren } from "preact";
import type { Value } from "../record/entry.ts";
import { useField } from "../shell/job.ts";
import { PARTS } from "../words/parts.ts";
import { Conflict } from "./conflict.tsx";
import { useDraft } from "./drafts.ts";
import { fieldId } from "./field-id.ts";

interface TextFieldProps {
  readonly path: string;
  readonly label: string;
  readonly help?: ComponentChildren;
  /** What is written: a line, a paragraph, a list of lines, a day, a count. */
  readonly kind?: "line" | "paragraph" | "lines" | "day" | "count";
  /** What is wrong with the text, to be told beside the field; it is kept all the same. */
  readonly fault?: (text: string) => string | undefined;
  readonly inputMode?: "text" | "numeric" | "decimal" | "tel";
  readonly suggestions?: readonly string[];
  readonly autoComplete?: string;
  /** Where one starts on the screen, as long as nothing stands here. */
  readonly startsHere?: true;
}

/** A text at a place of the job, written as it is typed. */
export function TextField({ path, label, help, kind = "line", fault, startsHere, ...input }: TextFieldProps) {
  const field = useField(path);
  const draft = useDraft(textOf(field.value), (text) => {
    const value = typed(kind, text);
    if (value !== undefined && value !== (field.value ?? null)) field.write(value);
  });
  const id = fieldId(path);
  const wrong =
    kind === "count" && typed(kind, draft.text) === undefined ? PARTS.wholeNumber : fault?.(draft.text.trim());
  const described = [help === undefined ? "" : `${id}?`, wrong === undefined ? "" : `${id}!`].filter(Boolean).join(" ");
  const shared = {
    id,
    value: draft.text,
    onBlur: draft.leave,
    "aria-describedby": described || undefined,
    "aria-invalid": wrong === undefined ? undefined : ("true" as const),
    "data-start": startsHere === true && draft.text === "" ? "" : undefined,
  };
  return (
    <div class="field">
      <label for={id}>{label}</label>
      {help !== undefined && (
        <div id={`${id}?`} class="quiet small help">
          {help}
        </div>
      )}
      {kind === "paragraph" || kind === "lines" ? (
        <textarea
          {...shared}
          rows={3}
          maxLength={4000}
          onInput={({ currentTarget }) => draft.type(currentTarget.value)}
        />
      ) : (
        <input
          {...shared}
          type={kind === "day" ? "date" : "text"}
          inputMode={kind === "count" ? "numeric" : input.inputMode}
          autoComplete={input.autoComplete ?? "off"}
          maxLength={300}
          list={input.suggestions === undefined ? undefined : `${id}-list`}
          onInput={({ currentTarget }) => draft.type(currentTarget.value)}
        />
      )}
      {input.suggestions !== undefined && (
        <datalist id={`${id}-list`}>
          {input.suggestions.map((one) => (
            <option key={one} value={one} />
          ))}
        </datalist>
      )}
      {wrong !== undefined && (
        <p id={`${id}!`} class="fault">
          {wrong}
        </p>
      )}
      <Conflict field={field} />
    </div>
  );
}

function textOf(value: Value | undefined): string {
  if (Array.isArray(value)) return value.join("\n");
  return typeof value === "string" || typeof value === "number" ? String(value) : "";
}

/** The value of a text; null where it is empty, undefined where it is no value of this kind. */
function typed(kind: TextFieldProps["kind"], text: string): Value | undefined {
  if (text.trim() === "") return null;
  if (kind === "count") return /^\d{1,6}$/.test(text.trim()) ? Number(text) : undefined;
  if (kind === "lines") {
    const lines = text.split("\n").map((line) => line.trim());
    return lines.filter((line) => line !== "").slice(0, 6);
  }
  return kind === "paragraph" ? text : text.replace(/\p{Cc}/gu, " ");
}
