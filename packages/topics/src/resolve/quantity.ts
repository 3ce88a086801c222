import { isFault, parseWritten, UNIT_SYMBOL, type Unit } from "@good-grounds/core";
import type { Word } from "../document/condition.ts";
import type { Amount } from "../document/document.ts";
import { nearTo } from "../text/near.ts";
import type { Scope } from "./scope.ts";

const BY_SYMBOL: ReadonlyMap<string, Unit> = new Map(
  Object.entries(UNIT_SYMBOL)
    .filter(([, symbol]) => symbol !== "")
    .map(([unit, symbol]) => [symbol, unit as Unit]),
);

/** The unit an amount is asked in; a symbol that is none is told. */
export function unitOf({ unit }: Amount, scope: Scope, within: readonly string[]): Unit | undefined {
  const found = BY_SYMBOL.get(unit.text);
  if (found !== undefined) return found;
  const symbols = [...BY_SYMBOL.keys()];
  const [near] = nearTo(unit.text, symbols);
  return scope.fault(
    unit,
    `"${unit.text}" is no unit`,
    `one of ${symbols.join(", ")}`,
    near === undefined
      ? "write its symbol"
      : `is it "${near}"? Quantities may still be written in its parts, such as mm`,
    within,
  );
}

/** Tells a limit that is no single quantity in the unit of its amount. */
export function checkLimit(limit: Word, amount: Amount, scope: Scope, within: readonly string[]): void {
  if (isQuantity(limit.text, amount)) return;
  tell(limit, amount, scope, within, `write a number and its unit, such as "10 ${amount.unit.text}"`);
}

/** Tells what is no answer to an amount: a quantity, a bound or a range. */
export function checkAmount(written: Word, amount: Amount, scope: Scope, within: readonly string[]): void {
  const parts = written.text.split(/ to |\.\./);
  if (parts.length <= 2 && parts.every((part) => isQuantity(part.trim(), amount, parts.length === 1))) return;
  const { text } = amount.unit;
  tell(
    written,
    amount,
    scope,
    within,
    `write a number and its unit, or a range: "10 ${text}", "10 ${text} to 20 ${text}"`,
  );
}

function isQuantity(text: string, { unit }: Amount, mayBeBound = false): boolean {
  const symbol = BY_SYMBOL.get(unit.text);
  if (symbol === undefined) return true;
  const written = parseWritten(text, symbol);
  return !isFault(written) && (mayBeBound || written.bound === "exact") && (written.value >= 0 || symbol === "celsius");
}

function tell(word: Word, { unit, name }: Amount, scope: Scope, within: readonly string[], advice: string): void {
  scope.fault(word, `"${word.text}" for "${name.text}"`, `a quantity in ${unit.text}`, advice, within);
}
