import { ITEM_IDS } from "@good-grounds/inspection";
import { ACCURACY } from "../simulate/instrument.ts";

export const METER = Object.freeze({
  id: "mft",
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

/** Answers every inspection item: in order unless said otherwise. */
export function inspectedItems(
  observed: Readonly<Record<string, readonly string[]>>,
  other: Readonly<Record<string, readonly [Outcome, string]>>,
) {
  return ITEM_IDS.map((item) => {
    const observations = observed[item];
    if (observations !== undefined) return { item, outcome: "observed", observations };
    const said = other[item];
    return said === undefined ? { item, outcome: "in-order" } : { item, outcome: said[0], reason: said[1] };
  });
}
