import { useState } from "preact/hooks";
import type { Value } from "../../record/entry.ts";
import { OBSERVATIONS } from "../../words/observations.ts";

interface QuantityAnswerProps {
  /** The id of the question, after which that of its words is made. */
  readonly id: string;
  /** The unit it is asked in. */
  readonly unit: string | undefined;
  readonly onAnswer: (value: Value) => void;
}

/** An answer that is measured: a figure, in the unit of the question where no other is typed. */
export function QuantityAnswer({ id, unit, onAnswer }: QuantityAnswerProps) {
  const [typed, setTyped] = useState("");
  return (
    <form
      class="row"
      onSubmit={(event) => {
        event.preventDefault();
        const text = typed.trim().replace(",", ".");
        if (text !== "") onAnswer(/[a-zµΩ%²]/i.test(text) ? text : `${text} ${unit ?? ""}`.trim());
      }}
    >
      <input
        id={id}
        inputMode="decimal"
        autoComplete="off"
        aria-labelledby={`${id}?`}
        value={typed}
        onInput={({ currentTarget }) => setTyped(currentTarget.value)}
      />
      <span>{unit}</span>
      <button type="submit">{OBSERVATIONS.take}</button>
    </form>
  );
}
