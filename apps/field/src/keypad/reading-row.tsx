import { useRef } from "preact/hooks";
import { usePlace } from "../engine/follow.ts";
import type { FindingView, PlaceView } from "../engine/protocol.ts";
import { Conflict } from "../parts/conflict.tsx";
import { KEYPAD } from "../words/keypad.ts";
import { useTakenWords } from "./about.tsx";
import type { About, AnyField, ReadingField, WordField } from "./fields.ts";
import { KINDS, type Kind } from "./kinds.ts";
import type { Doubt } from "./plausible.ts";
import { noValueOf, shownWords, takenOf } from "./reading.ts";
import { useSpot, within } from "./spot.ts";
import { splitShown } from "./typed.ts";
import { FindingLine } from "./verdict.tsx";

/** What is being typed into a field. */
export interface TypedText {
  readonly text: string;
  readonly symbol: string;
}

interface RowProps<F extends AnyField> {
  readonly field: F;
  readonly id: string;
  readonly isOpen: boolean;
  readonly onOpen: () => void;
}

interface ReadingRowProps extends RowProps<ReadingField> {
  readonly typed: TypedText | undefined;
  readonly fault: string | undefined;
  readonly doubt: Doubt | undefined;
  readonly onType: (text: string) => void;
  readonly onLeave: () => void;
  readonly onNext: () => void;
  readonly onInstead: (shown: string | undefined) => void;
}

/** A reading: its field, and beside it what follows from it. */
export function ReadingRow({ field, id, isOpen, typed, fault, doubt, ...on }: ReadingRowProps) {
  const { value, standing } = useSpot(field.spot);
  const taken = takenOf(value);
  const words = useTakenWords(isOpen ? value : undefined);
  const kind: Kind = KINDS[field.kind];
  const kept =
    taken === undefined ? { text: shownWords(value), symbol: kind.symbols[0] ?? "" } : splitShown(taken.shown, kind);
  const { text, symbol } = typed ?? kept;
  const input = useRef<HTMLInputElement>(null);
  const described = [`${id}?`, fault === undefined ? "" : `${id}!`].filter(Boolean).join(" ");
  const isSilent = typed === undefined && noValueOf(value) !== undefined;
  return (
    <div class={isOpen ? "reading open" : "reading"}>
      <div class="reading-line">
        <label for={id}>
          {field.label}
          {field.hint !== undefined && <span class="quiet small"> {field.hint}</span>}
        </label>
        <span class={isSilent ? "reading-box silent" : "reading-box"}>
          <input
            id={id}
            ref={input}
            type="text"
            inputMode="none"
            autoComplete="off"
            enterKeyHint="next"
            value={text}
            aria-invalid={fault === undefined ? undefined : "true"}
            aria-describedby={described}
            onFocus={() => {
              on.onOpen();
              input.current?.select();
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
      </div>
      <span id={`${id}?`} class={words === "" ? "unseen" : "small quiet reading-taken"}>
        {isSilent ? "" : symbol} {words}
      </span>
      {fault !== undefined && (
        <p id={`${id}!`} class="fault" role="alert">
          {fault}
        </p>
      )}
      {doubt !== undefined && taken !== undefined && (
        <div class="doubt" role="group" aria-label={KEYPAD.isIt}>
          <p>
            <strong>{KEYPAD.isIt}</strong>{" "}
            {doubt.expected === undefined ? KEYPAD.unusual : KEYPAD.notExpected(doubt.expected)}
          </p>
          <div class="row">
            {doubt.instead !== undefined && (
              <button type="button" onClick={() => on.onInstead(doubt.instead)}>
                {KEYPAD.meant(doubt.instead)}
              </button>
            )}
            <button type="button" onClick={() => on.onInstead(undefined)}>
              {KEYPAD.keepIt(taken.shown)}
            </button>
          </div>
        </div>
      )}
      <Findings about={field.about ?? []} isOpen={isOpen} hasValue={taken !== undefined} />
      <Conflict
        field={{ value, standing, write: on.onInstead as never }}
        show={(one) => shownWords(within(one, field.spot.inner))}
      />
    </div>
  );
}

interface WordRowProps extends RowProps<WordField> {
  readonly onChoose: (word: string) => void;
}

/** A fact found by a test: one of a few words. */
export function WordRow({ field, id, isOpen, onOpen, onChoose }: WordRowProps) {
  const { value, standing, write } = useSpot(field.spot);
  const none = noValueOf(value);
  return (
    <fieldset class={isOpen ? "reading open" : "reading"} onFocusIn={onOpen}>
      <legend>
        {field.label}
        {field.hint !== undefined && <span class="quiet small"> {field.hint}</span>}
      </legend>
      <div class="choices">
        {Object.entries(field.words).map(([word, said], i) => (
          <label key={word} class="choice">
            <input
              type="radio"
              // The first is where the way through the fields leads.
              id={i === 0 ? id : `${id}=${word}`}
              name={id}
              checked={value === word}
              onChange={() => onChoose(word)}
              onClick={() => value === word && onChoose(word)}
            />
            <span>{said}</span>
          </label>
        ))}
        {none !== undefined && <span class="quiet">{shownWords(value)}</span>}
      </div>
      <Findings about={field.about ?? []} isOpen={isOpen} hasValue={value !== undefined} />
      <Conflict field={{ value, standing, write }} show={(one) => shownWords(within(one, field.spot.inner))} />
    </fieldset>
  );
}

interface FindingsProps {
  readonly about: readonly About[];
  readonly isOpen: boolean;
  readonly hasValue: boolean;
}

/** What follows from a field: the first finding that bears on it, and others that want attention. */
function Findings({ about, isOpen, hasValue }: FindingsProps) {
  const [first, ...others] = about;
  // A field belongs to one place, and findings about another are few: each is watched by itself.
  return (
    <>
      {first !== undefined && <Watched about={first} shown={hasValue || isOpen} />}
      {hasValue && others.map((one) => <Watched key={`${one.place} ${one.check}`} about={one} shown={false} titled />)}
    </>
  );
}

interface WatchedProps {
  readonly about: About;
  /** Shown whatever it says; otherwise only where it wants attention. */
  readonly shown: boolean;
  readonly titled?: boolean;
}

function Watched({ about, shown, titled = false }: WatchedProps) {
  const place: PlaceView | undefined = usePlace(about.place);
  const finding: FindingView | undefined = place?.findings.find(({ check }) => check === about.check);
  if (finding === undefined || finding.verdict === "not-applicable") return null;
  const heavy = finding.verdict === "not-met" || finding.verdict === "too-near";
  if (!shown && !heavy) return null;
  return <FindingLine finding={finding} path={about.place} titled={titled} />;
}
