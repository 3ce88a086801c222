import { useState } from "preact/hooks";
import type { Value } from "../../record/entry.ts";
import { OBSERVATIONS } from "../../words/observations.ts";

interface CannotSayProps {
  /** The id of the question. */
  readonly id: string;
  readonly onAnswer: (value: Value) => void;
}

/** The way to say that a question cannot be answered, and why. */
export function CannotSay({ id, onAnswer }: CannotSayProps) {
  const [why, setWhy] = useState<string>();
  if (why === undefined)
    return (
      <button type="button" class="plain" onClick={() => setWhy("")}>
        {OBSERVATIONS.cannot}
      </button>
    );
  return (
    <form
      onSubmit={(event) => {
        event.preventDefault();
        if (why.trim() !== "") onAnswer({ notKnown: "limited", reason: why.trim() });
      }}
    >
      <label for={`${id}-why`}>{OBSERVATIONS.why}</label>
      <input
        id={`${id}-why`}
        maxLength={300}
        value={why}
        onInput={({ currentTarget }) => setWhy(currentTarget.value)}
      />
      <button type="submit">{OBSERVATIONS.take}</button>
    </form>
  );
}
