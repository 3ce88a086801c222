import { useRef, useState } from "preact/hooks";
import { useSession } from "../shell/job.ts";
import { type AnyField, isReading, type ReadingField } from "./fields.ts";
import { KINDS, type Kind } from "./kinds.ts";
import { takenOf } from "./reading.ts";
import { valueAt } from "./spot.ts";
import { pressed, splitShown, type TextKey } from "./typed.ts";

/** What is being typed into a field. */
export interface TypedText {
  readonly text: string;
  readonly symbol: string;
}

/** The text in the field that is open, from its first key until it is taken, and what is wrong with it. */
export function useTyping(open: AnyField | undefined) {
  const { record } = useSession();
  const [typed, setTyped] = useState<TypedText>();
  const [fault, setFault] = useState<string>();
  const latest = useRef({ typed, open });
  latest.current = { typed, open };

  const shownOf = (field: ReadingField) => {
    const taken = takenOf(valueAt(record, field.spot));
    return taken === undefined ? undefined : splitShown(taken.shown, KINDS[field.kind]);
  };

  const symbolOf = (field: AnyField | undefined): string => {
    if (field === undefined || !isReading(field)) return "";
    return typed?.symbol ?? shownOf(field)?.symbol ?? KINDS[field.kind].symbols[0];
  };

  /** Puts another text into the field, or none; nothing is wrong with it yet. */
  const show = (text: TypedText | undefined) => {
    setTyped(text);
    setFault(undefined);
  };

  return {
    typed,
    fault,
    symbol: symbolOf(open),
    /** What is typed now and into which field, also for who asks before the screen is drawn again. */
    latest,
    tell: setFault,
    shownOf,
    show,
    /** The text was taken, or something else was written instead. */
    drop() {
      latest.current.typed = undefined;
      show(undefined);
    },
    type(text: string) {
      show({ text, symbol: symbolOf(open) });
    },
    key(name: TextKey) {
      if (open === undefined || !isReading(open)) return;
      // Digits start afresh over what stands there; deleting takes it apart.
      const from = typed?.text ?? (name === "back" ? (shownOf(open)?.text ?? "") : "");
      show({ text: pressed(from, name), symbol: symbolOf(open) });
    },
    changeUnit() {
      if (open === undefined || !isReading(open)) return;
      const { symbols }: Kind = KINDS[open.kind];
      const symbol = symbols[(symbols.indexOf(symbolOf(open)) + 1) % symbols.length] ?? "";
      setTyped({ text: typed?.text ?? shownOf(open)?.text ?? "", symbol });
    },
  };
}

export type Typing = ReturnType<typeof useTyping>;
