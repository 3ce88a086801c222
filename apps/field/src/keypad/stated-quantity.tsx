import type { Unit } from "@good-grounds/core";
import { useState } from "preact/hooks";
import { Conflict } from "../parts/conflict.tsx";
import { useDraft } from "../parts/drafts.ts";
import type { Value } from "../record/entry.ts";
import { KEYPAD } from "../words/keypad.ts";
import { NotKnownButton } from "./not-known-button.tsx";
import { NotKnownDialog } from "./not-known-dialog.tsx";
import { readStated } from "./read-stated.ts";
import { noValueOf, shownWords } from "./reading.ts";
import { type Spot, spotId, useSpot, within } from "./spot.ts";

interface StatedQuantityProps {
  readonly spot: Spot;
  readonly label: string;
  readonly unit: Unit;
  /** As it is written: "mm²". */
  readonly symbol: string;
  /** Usual values, to be had by one touch. */
  readonly usual?: readonly string[];
  readonly help?: string;
}

/** A size or rating: a usual one by touch, any other typed, a range where only its ends are known, or not known. */
export function StatedQuantity({ spot, label, unit, symbol, usual = [], help }: StatedQuantityProps) {
  const { value, standing, write, writeWhole } = useSpot(spot);
  const [asking, setAsking] = useState(false);
  const id = `at:${spotId(spot)}`;
  const none = noValueOf(value);
  const draft = useDraft(textOf(value, symbol), (text) => {
    const read = readStated(text, symbol, unit);
    if (read !== undefined && JSON.stringify(read) !== JSON.stringify(value ?? null)) write(read);
  });
  const isWrong = readStated(draft.text, symbol, unit) === undefined && none === undefined;
  return (
    <fieldset class="field stated">
      <legend>
        <label for={id}>{label}</label>
      </legend>
      <NotKnownButton label={label} onAsk={() => setAsking(true)} />
      {help !== undefined && <p class="quiet small help">{help}</p>}
      <div class="choices">
        {usual.map((figure) => {
          const isChosen = value === `${figure} ${symbol}`;
          return (
            <button
              key={figure}
              type="button"
              class="choice"
              aria-pressed={isChosen ? "true" : "false"}
              aria-label={`${label} ${figure} ${symbol}`}
              onClick={() => write(isChosen ? null : `${figure} ${symbol}`)}
            >
              {figure}
            </button>
          );
        })}
        <span class="reading-box">
          <input
            id={id}
            class="short"
            type="text"
            inputMode="decimal"
            autoComplete="off"
            value={none === undefined ? draft.text : shownWords(value)}
            aria-invalid={isWrong ? "true" : undefined}
            aria-describedby={isWrong ? `${id}!` : undefined}
            onFocus={({ currentTarget }) => currentTarget.select()}
            onInput={({ currentTarget }) => draft.type(currentTarget.value)}
            onBlur={draft.leave}
          />
          <span>{symbol}</span>
        </span>
      </div>
      {isWrong && (
        <p id={`${id}!`} class="fault">
          {KEYPAD.notASize(symbol)}
        </p>
      )}
      <Conflict
        field={{ value, standing, write: writeWhole }}
        show={(one) => textOf(within(one, spot.inner), "") || shownWords(within(one, spot.inner))}
      />
      {asking && (
        <NotKnownDialog spot={spot} label={label} value={value} write={write} onClose={() => setAsking(false)} />
      )}
    </fieldset>
  );
}

/** A stated quantity as it is typed: without the unit that stands beside the field. */
function textOf(value: Value | undefined, symbol: string): string {
  const bare = (text: string) => (text.endsWith(` ${symbol}`) ? text.slice(0, -symbol.length - 1) : text);
  if (typeof value === "string") return bare(value);
  if (typeof value !== "object" || value === null || Array.isArray(value)) return "";
  const { from, to } = value as { readonly from?: Value; readonly to?: Value };
  return typeof from === "string" && typeof to === "string" ? `${bare(from)} to ${bare(to)}` : "";
}
