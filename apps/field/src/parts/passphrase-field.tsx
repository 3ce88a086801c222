import { useState } from "preact/hooks";
import { ISSUE } from "../words/issue.ts";
import { PlainField } from "./plain-field.tsx";

interface PassphraseFieldProps {
  readonly label: string;
  readonly value: string;
  readonly onType: (text: string) => void;
  readonly isNew?: boolean;
  readonly help?: string;
  readonly fault?: string | undefined;
}

/** A passphrase, hidden until somebody who is alone asks to see it. */
export function PassphraseField({ isNew = false, ...field }: PassphraseFieldProps) {
  const [shown, setShown] = useState(false);
  return (
    <>
      <PlainField
        {...field}
        type={shown ? "text" : "password"}
        autoComplete={isNew ? "new-password" : "current-password"}
      />
      <button type="button" aria-pressed={shown} onClick={() => setShown(!shown)}>
        {shown ? ISSUE.hide : ISSUE.show}
      </button>
    </>
  );
}
