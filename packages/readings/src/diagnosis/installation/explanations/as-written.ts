import { foreign, here, ohms, spread, standing, truthOf } from "../circuit-effects.ts";
import { recorded } from "../circuit-model.ts";
import type { CircuitFault, Effect, Surroundings } from "../fault.ts";
import { isLive, NAME, type Slot } from "../slot.ts";

/** Leads with their clips have no more, Ω; most have far less. */
const MOST_LEADS = 0.6;
const USUAL_LEADS = 0.15;

/** Readings that are not what they are written down as. */
export const AS_WRITTEN: readonly CircuitFault[] = [
  {
    id: "leads-not-nulled-here",
    innocent: true,
    prior: 0.05,
    words: (size) => `the leads were not nulled for the dead test of this circuit: about ${size} too much`,
    effects: (block, around) =>
      spread(block, {
        low: 0.04,
        high: MOST_LEADS,
        count: 15,
        shown: (slot, x) => recorded(slot, block.nominal) + (isLive(slot) ? 0 : x),
        truth: () => truthOf(here(block, around)),
        size: ohms,
        weight: (x) => Math.exp(-x / USUAL_LEADS),
      }),
  },
  {
    id: "r1r2-at-nearer-point",
    innocent: true,
    prior: 0.08,
    words: (size) => `R1+R2 was read at a nearer point, about ${size} of the way`,
    effects: (block, around) =>
      spread(block, {
        low: 0.1,
        high: 0.95,
        count: 25,
        shown: (slot, k) => recorded(slot, block.nominal) * (slot === "r1r2" || slot === "r2" ? k : 1),
        truth: () => truthOf(here(block, around)),
        size: (k) => `${Math.round(k * 100)} %`,
      }),
  },
  {
    id: "r1r2-not-of-this-circuit",
    innocent: true,
    prior: 0.12,
    words: (size) =>
      size === ""
        ? "R1+R2 as written is not of this circuit: misread, mistyped or of another circuit"
        : `R1+R2 as written is not of this circuit; it is that of circuit ${size} to the digit`,
    effects: (block, around) => foreign(block, around, "r1r2"),
  },
  {
    id: "zs-not-of-this-circuit",
    innocent: true,
    prior: 0.08,
    words: (size) =>
      size === ""
        ? "Zs as written is not of this circuit: misread, mistyped or of another circuit"
        : `Zs as written is not of this circuit; it is that of circuit ${size} to the digit`,
    effects: (block, around) => foreign(block, around, "zs"),
  },
  {
    id: "loop-line-to-neutral",
    innocent: true,
    prior: 0.06,
    words: () => "Zs was read between line and neutral",
    effects(block, around) {
      const whole = 2 * block.nominal.line;
      const [low, high] = neutralLoop(around);
      return spread(block, {
        // In a ring the point may be anywhere.
        low: block.ring ? low : low + whole,
        high: high + whole,
        count: 8,
        shown: (slot, loop) => (slot === "zs" ? loop : recorded(slot, block.nominal)),
        truth: () => truthOf(here(block, around)),
        size: () => "",
        beforeShare: (loop) => (loop > 0 ? 0 : 1),
      });
    },
  },
  {
    id: "decimal-slipped",
    innocent: true,
    prior: 0.1,
    words: (size) => `the decimal of ${size} slipped`,
    effects: (block, around) =>
      block.slots.flatMap((slot, i): readonly Effect[] =>
        slot === "fed" || block.slots.indexOf(slot) !== i
          ? []
          : [10, 0.1, 100, 0.01].map((times) =>
              standing(block, around, {
                at: (of) => ({ of, times: of === slot ? times : 1 }),
                weight: (times === 10 || times === 0.1 ? 0.45 : 0.05) / block.slots.length,
                size: NAME[slot],
              }),
            ),
      ),
  },
  {
    id: "columns-exchanged",
    innocent: true,
    prior: 0.08,
    words: (size) => `${size} stand in each other's column`,
    effects(block, around) {
      const pairs: readonly (readonly [Slot, Slot])[] = [
        ["r1r2", "r2"],
        ["r1r2", "zs"],
        ["r2", "zs"],
        ["r1", "re"],
        ["rn", "re"],
      ];
      const both = pairs.filter((pair) => pair.every((slot) => block.slots.includes(slot)));
      return both.map(([one, other]) =>
        standing(block, around, {
          at: (slot) => ({ of: slot === one ? other : slot === other ? one : slot, times: 1 }),
          weight: 1 / both.length,
          size: `${NAME[one]} and ${NAME[other]}`,
        }),
      );
    },
  },
];

/** Loop from line to neutral at the board, between two values: as read there, as the earth's where they are one, or as usual. */
function neutralLoop({ lineNeutral, combined, before }: Surroundings): readonly [low: number, high: number] {
  if (lineNeutral !== undefined) return [0.92 * lineNeutral, 1.08 * lineNeutral];
  return combined ? [0.85 * before, 1.1 * before] : USUAL_NEUTRAL_LOOP;
}

/** Ω */
const USUAL_NEUTRAL_LOOP = [0.08, 0.5] as const;
