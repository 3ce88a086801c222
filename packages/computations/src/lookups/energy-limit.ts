import { DEVICE_TYPES, isExact, isKnownFact, TERM } from "@good-grounds/core";
import { MATTER } from "@good-grounds/inspection";
import { energyLimitCeiling } from "@good-grounds/tables";
import { calculation } from "../check.ts";
import { asksQuantity, asksWord } from "../need.ts";

/** Greatest energy in A²s that a class 3 device may let through at its marked breaking capacity. */
export const energyLimit = calculation({
  id: "energy-limit",
  title: "Ceiling of energy a breaker lets through",
  formula: "energy limiting class 3",
  regulations: ["434.5.2"],
  needs: {
    type: asksWord(MATTER.deviceType, DEVICE_TYPES),
    rated: asksQuantity(TERM.ratedCurrent, "32 A"),
    breakingCapacity: asksQuantity(TERM.breakingCapacity, "6 kA, as marked"),
    energyClass: asksWord(MATTER.energyClass, ["1", "2", "3"]),
  },
  compute({ type, rated, breakingCapacity, energyClass }, reckon) {
    const figure =
      isKnownFact(type) && isExact(rated) && isExact(breakingCapacity) && isKnownFact(energyClass)
        ? energyLimitCeiling({
            type: type.word,
            rated: rated.value,
            markedBreakingCapacity: breakingCapacity.value,
            energyClass: Number(energyClass.word),
          })
        : undefined;
    return {
      results: [reckon.lookedUp(TERM.letThrough, figure, type, rated, breakingCapacity, energyClass)],
      remarks: [],
    };
  },
  examples: [
    {
      name: "32 A type B, 6 kA",
      given: { type: "B", rated: "32 A", breakingCapacity: "6 kA", energyClass: "3" },
      values: { "let-through": { value: 45000, within: 0 } },
      source: "BS EN 60898-1, from memory",
    },
    {
      name: "no class on the label",
      given: { type: "B", rated: "32 A", breakingCapacity: "6 kA" },
      missing: ["energy-class"],
      source: "input missing",
    },
  ],
});
