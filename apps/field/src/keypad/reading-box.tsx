import { useRef } from "preact/hooks";
import { bringIntoView } from "./bring-into-view.ts";
import type { TypedText } from "./use-typing.ts";

interface ReadingBoxProps {
  readonly id: string;
  /** What stands in it, with the unit beside it. */
  readonly text: string;
  readonly symbol: string;
  /** There is no reading, and a reason instead. */
  readonly isSilent: boolean;
  readonly typed: TypedText | undefined;
  readonly fault: string | undefined;
  /** Where one starts on the screen. */
  readonly startsHere: boolean;
  readonly onOpen: () => void;
  readonly onType: (text: string) => void;
  readonly onLeave: () => void;
  readonly onNext: () => void;
}

/** The field a reading is typed into. */
export function ReadingBox({ id, text, symbol, isSilent, typed, fault, startsHere, ...on }: ReadingBoxProps) {
  const input = useRef<HTMLInputElement>(null);
  const described = [`${id}?`, fault === undefined ? "" : `${id}!`].filter(Boolean).join(" ");
  return (
    <span class={isSilent ? "reading-box silent" : "reading-box"}>
      <input
        id={id}
        ref={input}
        data-start={startsHere ? "" : undefined}
        type="text"
        inputMode="none"
        autoComplete="off"
        enterKeyHint="next"
        value={text}
        aria-invalid={fault === undefined ? undefined : "true"}
        aria-describedby={described}
        onFocus={() => {
          on.onOpen();
          // What was mistyped is put right digit by digit; anything else is typed over.
          if (typed === undefined) input.current?.select();
          else input.current?.setSelectionRange(typed.text.length, typed.text.length);
          bringIntoView(input.current);
        }}
        onInput={({ currentTarget }) => on.onType(currentTarget.value)}
        onBlur={on.onLeave}
        onKeyDown={(event) => {
          if (event.key !== "Enter") return;
          event.preventDefault();
          on.onNext();
        }}
      />
      {!isSilent && <span aria-hidden="true">{symbol}</span>}
    </span>
  );
}
