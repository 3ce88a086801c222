import { END, here, isEnd, ohms, ringOnly, SEEN_OPEN, spread, truthOf } from "../circuit-effects.ts";
import { recorded } from "../circuit-model.ts";
import type { CircuitFault } from "../fault.ts";
import { isLive } from "../slot.ts";

/** What only a ring can have. */
export const RINGS: readonly CircuitFault[] = [
  {
    id: "r1r2-not-quartered",
    innocent: true,
    prior: 0.05,
    words: () => "R1+R2 as written is r1 and r2 added up, and not what the furthest point of the ring reads",
    effects: (block, around) => ringOnly(block, around, (slot) => (slot === "r1r2" ? 4 : 1)),
  },
  {
    id: "no-ring-or-open",
    innocent: false,
    prior: 0.15,
    words: () => "the circuit reads as a radial of this length: it is no ring, or the ring is open",
    // With its ends read, they say whether a ring is open.
    effects: (block, around) =>
      block.slots.some(isEnd) || block.openEnds.length > 0 ? [] : ringOnly(block, around, () => 4),
  },
  {
    id: "ring-bridged",
    innocent: false,
    prior: 0.1,
    words: (size) =>
      `a cable bridges the ring, so that its ends read about ${size} of what the length gives while the furthest point does not`,
    effects: (block, around) =>
      block.ring && block.cableKnown
        ? spread(block, {
            low: 0.15,
            high: 0.93,
            count: 25,
            shown: (slot, k) => recorded(slot, block.nominal) * (isEnd(slot) ? k : 1),
            truth: () => truthOf(here(block, around)),
            size: (k) => `${Math.round(k * 100)} %`,
          })
        : [],
  },
  {
    id: "ring-conductor-open",
    innocent: false,
    prior: 1,
    words: (size) => `the ring is open: no continuity from end to end, ${size}`,
    // An end that reads as open says it by itself; the rest only has to go with it.
    effects: (block, around) =>
      block.openEnds.length === 0
        ? []
        : spread(block, {
            low: 1.02,
            high: 4.5,
            count: 25,
            shown: (slot, k) => {
              const { line, cpc } = block.nominal;
              return recorded(slot, block.nominal) + (slot === "r1r2" || isLive(slot) ? (k - 1) * (line + cpc) : 0);
            },
            truth: () => truthOf(here(block, around)),
            size: () => block.openEnds.join(", "),
          }).map((effect) => ({ ...effect, logWeight: effect.logWeight + SEEN_OPEN })),
  },
  {
    id: "ring-conductor-high",
    innocent: false,
    prior: 0.1,
    words: (size) => `a joint or a misreading in one conductor of the ring: ${size}`,
    effects: (block, around) =>
      (["r1", "rn", "re"] as const).flatMap((end) =>
        block.slots.includes(end)
          ? spread(block, {
              low: 0.05,
              high: 20,
              count: 30,
              shown: (slot, x) => recorded(slot, block.nominal) + (slot === end ? x : 0),
              truth: () => truthOf(here(block, around)),
              size: (x) => `about ${ohms(x)} too much in ${END[end]}`,
            }).map((effect) => ({ ...effect, logWeight: effect.logWeight - Math.log(3) }))
          : [],
      ),
  },
];
