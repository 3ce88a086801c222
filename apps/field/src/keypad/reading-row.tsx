import { Conflict } from "../parts/conflict.tsx";
import { useTakenWords } from "./about.tsx";
import { DoubtQuestion } from "./doubt-question.tsx";
import type { ReadingField } from "./fields.ts";
import { Findings } from "./findings.tsx";
import { KINDS, type Kind } from "./kinds.ts";
import type { Doubt } from "./plausible.ts";
import { noValueOf, shownWords, takenOf } from "./reading.ts";
import { ReadingBox } from "./reading-box.tsx";
import { RowKeys } from "./row-keys.tsx";
import { useSpot, within } from "./spot.ts";
import { splitShown } from "./typed.ts";
import type { TypedText } from "./use-typing.ts";

interface ReadingRowProps {
  readonly field: ReadingField;
  readonly id: string;
  readonly isOpen: boolean;
  readonly typed: TypedText | undefined;
  readonly fault: string | undefined;
  readonly doubt: Doubt | undefined;
  /** Where one starts on the screen. */
  readonly startsHere: boolean;
  readonly onOpen: () => void;
  readonly onType: (text: string) => void;
  readonly onLeave: () => void;
  readonly onNext: () => void;
  readonly onNoValue: () => void;
  readonly onAbout: () => void;
  /** The answers to what is asked about the value: it stays, it is measured again, it was typed wrongly. */
  readonly onKeep: () => void;
  readonly onAgain: () => void;
  readonly onMistyped: () => void;
}

/** A reading: its field, and beside it what follows from it. */
export function ReadingRow({ field, id, isOpen, typed, fault, doubt, startsHere, ...on }: ReadingRowProps) {
  const { value, standing, writeWhole } = useSpot(field.spot);
  const taken = takenOf(value);
  const words = useTakenWords(isOpen ? value : undefined);
  const kind: Kind = KINDS[field.kind];
  const kept =
    taken === undefined ? { text: shownWords(value), symbol: kind.symbols[0] ?? "" } : splitShown(taken.shown, kind);
  const { text, symbol } = typed ?? kept;
  const isSilent = typed === undefined && noValueOf(value) !== undefined;
  return (
    <div class={isOpen ? "reading open" : "reading"}>
      <div class="reading-line">
        <label for={id}>
          {field.label}
          {field.hint !== undefined && <span class="quiet small"> {field.hint}</span>}
        </label>
        <ReadingBox
          id={id}
          text={text}
          symbol={symbol}
          isSilent={isSilent}
          typed={typed}
          fault={fault}
          startsHere={startsHere}
          onOpen={on.onOpen}
          onType={on.onType}
          onLeave={on.onLeave}
          onNext={on.onNext}
        />
        {isOpen && <RowKeys label={field.label} onNoValue={on.onNoValue} onAbout={on.onAbout} />}
      </div>
      <span id={`${id}?`} class={words === "" ? "unseen" : "small quiet reading-taken"}>
        {words !== "" || isSilent ? words : symbol}
      </span>
      {fault !== undefined && (
        <p id={`${id}!`} class="fault" role="alert">
          {fault}
        </p>
      )}
      {doubt !== undefined && taken !== undefined && (
        <DoubtQuestion
          doubt={doubt}
          shown={taken.shown}
          onKeep={on.onKeep}
          onAgain={on.onAgain}
          onMistyped={on.onMistyped}
        />
      )}
      <Findings about={field.about ?? []} isOpen={isOpen} hasValue={taken !== undefined} />
      <Conflict
        field={{ value, standing, write: writeWhole }}
        show={(one) => shownWords(within(one, field.spot.inner))}
      />
    </div>
  );
}
