import { added, here, joint, ohms, spread, truthOf } from "../circuit-effects.ts";
import { recorded } from "../circuit-model.ts";
import type { CircuitFault } from "../fault.ts";
import { isLive, type Slot } from "../slot.ts";

/** Resistance where there should be none. */
export const JOINTS: readonly CircuitFault[] = [
  {
    id: "joint-in-protective-conductor",
    innocent: false,
    prior: 0.14,
    seenAs: "joint",
    words: (size) => `a joint of about ${size} in the protective conductor, there in the dead and in the live test`,
    effects: (block, around) => joint(block, around, "cpc"),
  },
  {
    id: "joint-in-line",
    innocent: false,
    prior: 0.07,
    seenAs: "joint",
    words: (size) => `a joint of about ${size} in the line conductor, there in the dead and in the live test`,
    effects: (block, around) => joint(block, around, "line"),
  },
  {
    id: "resistance-in-loop-test-only",
    innocent: false,
    prior: 0.1,
    words: (size) =>
      `about ${size} in the way of the loop test that the dead test does not have: a contact that opens under current, a protective conductor that is not on the earth terminal, a poor probe or plug contact, or another point`,
    effects: (block, around) => {
      const felt = (feels: (slot: Slot) => boolean) =>
        spread(block, {
          low: 0.05,
          high: 2000,
          count: 40,
          shown: (slot, x) => recorded(slot, block.nominal) + (feels(slot) ? x : 0),
          truth: (x) => added(truthOf(here(block, around)), x, "zs"),
          size: ohms,
        });
      if (!block.slots.includes("fed")) return felt((slot) => slot === "zs");
      // A poor contact of the probe is in one reading, one in the circuit in that of the board behind it as well.
      return [...felt((slot) => slot === "zs"), ...felt(isLive)].map((effect) => ({
        ...effect,
        logWeight: effect.logWeight - Math.LN2,
      }));
    },
  },
  {
    id: "warm-conductors",
    innocent: true,
    prior: 0.05,
    words: (size) =>
      `the conductors were warm from load in the live test: ${size} more resistance than in the dead test`,
    effects: (block, around) =>
      spread(block, {
        low: 0.04,
        high: 0.2,
        count: 8,
        shown: (slot, w) =>
          recorded(slot, block.nominal) + (isLive(slot) ? w * (block.nominal.line + block.nominal.cpc) : 0),
        truth: () => truthOf(here(block, around)),
        size: (w) => `${Math.round(w * 100)} %`,
      }),
  },
];
