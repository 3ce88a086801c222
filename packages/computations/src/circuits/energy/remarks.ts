import type { Remark } from "@good-grounds/core";

export const CEILING: Remark = Object.freeze({
  code: "energy-from-class",
  words:
    "Only the ceiling of the energy limiting class is held. It belongs to the marked breaking capacity, not to this fault current; the maker's curve may settle it.",
});

export const NONE_HELD: Remark = Object.freeze({
  code: "energy-not-held",
  words:
    "The device opens in less than 0.1 s, and no let-through energy is held: ask for the maker's figure at this fault current, or the energy class on the label.",
});

export const SLOW: Remark = Object.freeze({
  code: "fault-below-known-point",
  words: "The fault current at the far end does not reach a current at which the operating time is known.",
});
