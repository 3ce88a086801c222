import { type Circumstance, ITEMS } from "@good-grounds/inspection";
import { METER_ID } from "../simulate/inspect.ts";
import { ACCURACY } from "../simulate/instrument.ts";

export const METER = Object.freeze({
  id: METER_ID,
  kind: "multifunction installation tester",
  serial: "INV-0417",
  checked: "2026-03-02",
  checkReference: "own reference box, log page 14",
  accuracy: { ...ACCURACY },
});

export const THERMOMETER = Object.freeze({
  id: "thermometer",
  kind: "contact thermometer",
  serial: "INV-0102",
  checked: "2026-03-02",
});

/** Hash of a picture that is only spoken of here. */
export function inventedHash(n: number): string {
  return n.toString(16).padStart(2, "0").repeat(32);
}

type Outcome = "in-order" | "limited" | "not-verified" | "not-applicable";

/**
 * Answers every inspection item: not applicable where what it is about is not `there`, in order unless said otherwise.
 * What is always there need not be named.
 */
export function inspectedItems(
  there: readonly Circumstance[],
  observed: Readonly<Record<string, readonly string[]>>,
  other: Readonly<Record<string, readonly [Outcome, string]>>,
) {
  return ITEMS.map(({ id, applies }) => {
    const observations = observed[id];
    if (observations !== undefined) return { item: id, outcome: "observed", observations };
    const said = other[id];
    if (said !== undefined) return { item: id, outcome: said[0], reason: said[1] };
    if (applies === "always" || there.includes(applies)) return { item: id, outcome: "in-order" };
    return { item: id, outcome: "not-applicable", reason: "nothing of the kind here" };
  });
}

/** Surge protection was looked for at every board and is at none of them. */
export function withoutSurgeProtection(boards: readonly { readonly id: string }[]) {
  return boards.map(({ id }, i) => ({ id: `surge-${i + 1}`, board: id, fitted: false }));
}
