import { here, truthOf } from "../circuit-effects.ts";
import type { CircuitFault } from "../fault.ts";

/** Readings lie anywhere over three decades where nothing that was looked at accounts for them. */
const DECADES = Math.log(1000);

/** What is left where no explanation accounts for the readings. */
export const NONE_OF_THESE: CircuitFault = {
  id: "none-of-these",
  innocent: false,
  prior: 0.05,
  words: () => "none of the explanations looked at accounts for all readings",
  effects: (block, around) => [
    {
      shift: () => 0,
      step: () => 0,
      beforeShare: 1,
      foreign: block.slots.map((slot, i) => {
        const reading = block.readings[i];
        const value = Math.max(reading?.value ?? 0, (reading?.evidence.detail.resolution ?? 0.01) / 2, 1e-4);
        return { slot, logDensity: -Math.log(value * DECADES) };
      }),
      logWeight: 0,
      truth: () => truthOf(here(block, around)),
      size: () => "",
    },
  ],
};
