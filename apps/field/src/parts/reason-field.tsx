import { PARTS } from "../words/parts.ts";
import { useDraft } from "./drafts.ts";
import { fieldId } from "./field-id.ts";

/** Why there is no answer. */
export interface Reason {
  readonly kind: "limited" | "not-verified" | "not-applicable";
  readonly reason: string;
}

interface ReasonFieldProps {
  /** The place it belongs to, for the ids of its controls. */
  readonly path: string;
  readonly label: string;
  readonly value: Reason | undefined;
  readonly onChange: (value: Reason | undefined) => void;
  /** Kinds that need no reason. */
  readonly freely?: readonly Reason["kind"][];
}

const REASON_WORDS: Readonly<Record<Reason["kind"], string>> = {
  limited: PARTS.limited,
  "not-verified": PARTS.notVerified,
  "not-applicable": PARTS.notApplicable,
};

/** The statement that something has no value, and why: limited, not verified or not applicable. */
export function ReasonField({ path, label, value, onChange, freely = [] }: ReasonFieldProps) {
  const id = fieldId(path, "reason");
  const draft = useDraft(value?.reason ?? "", (reason) => value !== undefined && onChange({ ...value, reason }));
  const lacking = value !== undefined && draft.text.trim() === "" && !freely.includes(value.kind);
  return (
    <fieldset class="field">
      <legend>{label}</legend>
      <div class="choices">
        {(Object.keys(REASON_WORDS) as Reason["kind"][]).map((kind) => (
          <label key={kind} class="choice">
            <input
              type="radio"
              id={fieldId(path, kind)}
              name={fieldId(path, "kind")}
              checked={value?.kind === kind}
              onChange={() => onChange({ kind, reason: draft.text })}
            />
            <span>{REASON_WORDS[kind]}</span>
          </label>
        ))}
      </div>
      {value !== undefined && <ReasonText id={id} draft={draft} lacking={lacking} />}
    </fieldset>
  );
}

interface ReasonTextProps {
  readonly id: string;
  readonly draft: ReturnType<typeof useDraft>;
  readonly lacking: boolean;
}

/** The line that says why. */
export function ReasonText({ id, draft, lacking }: ReasonTextProps) {
  return (
    <>
      <label for={id}>{PARTS.reason}</label>
      <input
        id={id}
        type="text"
        autoComplete="off"
        maxLength={300}
        value={draft.text}
        aria-invalid={lacking ? "true" : undefined}
        aria-describedby={lacking ? `${id}!` : undefined}
        onInput={({ currentTarget }) => draft.type(currentTarget.value)}
        onBlur={draft.leave}
      />
      {lacking && (
        <p id={`${id}!`} class="fault">
          {PARTS.reasonNeeded}
        </p>
      )}
    </>
  );
}
