import { printQuantity } from "@good-grounds/core";
import {
  added,
  END,
  foreign,
  here,
  inParallel,
  isEnd,
  joint,
  ohms,
  otherSize,
  parallel,
  ringOnly,
  SEEN_OPEN,
  spread,
  truthOf,
} from "./circuit-effects.ts";
import { type Nominal, recorded } from "./circuit-model.ts";
import type { CircuitFault } from "./fault.ts";
import { isLive, type Slot } from "./slot.ts";

/** The explanations of one circuit's readings that do not agree. Shares are a judgement of how often each is met. */
export const CIRCUIT_FAULTS: readonly CircuitFault[] = [
  {
    id: "joint-in-protective-conductor",
    innocent: false,
    prior: 0.14,
    words: (size) => `a joint of about ${size} in the protective conductor, there in the dead and in the live test`,
    effects: (block, around) => joint(block, around, "cpc"),
  },
  {
    id: "joint-in-line",
    innocent: false,
    prior: 0.07,
    words: (size) => `a joint of about ${size} in the line conductor, there in the dead and in the live test`,
    effects: (block, around) => joint(block, around, "line"),
  },
  {
    id: "length-wrong",
    innocent: true,
    prior: 0.2,
    words: (size) => `the cable to the point of the reading is about ${size} long and not as written`,
    effects: (block, around) => {
      const { nominal, length } = block;
      if (!block.cableKnown || length === undefined) return [];
      const scaled = (k: number): Nominal => ({ ...nominal, line: nominal.line * k, cpc: nominal.cpc * k });
      return spread(block, {
        low: 0.2,
        high: 5,
        count: 40,
        shown: (slot, k) => recorded(slot, scaled(k)),
        truth: (k) => ({ ...truthOf({ ...scaled(k), before: around.before }), length: k * length }),
        size: (k) => printQuantity(Math.round(k * length * 2) / 2, "metre"),
        // Guesses are more often out by a third than by half or twice.
        weight: (k) => Math.exp(-Math.abs(Math.log(k)) / 0.4),
      });
    },
  },
  {
    id: "protective-conductor-size-wrong",
    innocent: false,
    prior: 0.12,
    words: (size) => `the protective conductor has ${size} and not the size written down`,
    effects: otherSize,
  },
  {
    id: "leads-not-nulled-here",
    innocent: true,
    prior: 0.05,
    words: (size) => `the leads were not nulled for the dead test of this circuit: about ${size} too much`,
    effects: (block, around) =>
      spread(block, {
        low: 0.04,
        high: 0.8,
        count: 25,
        shown: (slot, x) => recorded(slot, block.nominal) + (isLive(slot) ? 0 : x),
        truth: () => truthOf(here(block, around)),
        size: ohms,
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
    id: "ring-ends-exchanged",
    innocent: true,
    prior: 0.05,
    words: () => "r1 and r2 changed places in the schedule",
    effects: (block, around) => {
      if (!block.slots.includes("r1") || !block.slots.includes("re")) return [];
      const { nominal } = block;
      const other: Readonly<Partial<Record<Slot, Slot>>> = { r1: "re", re: "r1" };
      return [
        {
          shift: (slot) => recorded(other[slot] ?? slot, nominal) - recorded(slot, nominal),
          step: () => 0,
          beforeShare: 1,
          logWeight: 0,
          truth: truthOf(here(block, around)),
          size: "",
        },
      ];
    },
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
          count: 75,
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
  {
    id: "parallel-path",
    innocent: false,
    prior: 0.15,
    words: (size) =>
      `another way back to the main earthing terminal of about ${size} (bonded pipes, steelwork, another circuit's conductor) carries part of the loop test's current`,
    effects: (block, around) => parallel(block, around, false),
  },
  {
    id: "parallel-path-in-both-tests",
    innocent: false,
    prior: 0.05,
    words: (size) =>
      `a way of about ${size} beside the protective conductor (shared conductor, armour, conduit, bonding left on) took part in the dead test as well`,
    effects: (block, around) => parallel(block, around, true),
  },
  {
    id: "other-earth",
    innocent: false,
    prior: 0.08,
    words: (size) =>
      `an earth of its own at the far end, about ${size}: the earth of another supply, bonded metal in the ground, an electrode`,
    effects: (block, around) => {
      const { line, cpc, before } = here(block, around);
      if (!(before > 0.02)) return [];
      const way = before + cpc;
      return spread(block, {
        low: 0.05,
        high: Math.max(0.5, 3 * before),
        count: 60,
        shown: (slot, p) =>
          isLive(slot)
            ? line + inParallel(way, p) + (p / (way + p)) ** 2 * (block.nominal.before - before)
            : recorded(slot, block.nominal),
        truth: (p) => ({ ...truthOf(here(block, around)), zs: line + inParallel(way, p), beyond: before + p }),
        size: ohms,
        beforeShare: (p) => (p / (way + p)) ** 2,
      });
    },
  },
  {
    id: "loop-line-to-neutral",
    innocent: true,
    prior: 0.05,
    words: () => "Zs was read between line and neutral",
    effects: (block, around) => {
      const { lineNeutral } = around;
      if (lineNeutral === undefined) return [];
      const shown = lineNeutral + 2 * block.nominal.line;
      return spread(block, {
        low: 0.9,
        high: 1.1,
        count: 5,
        shown: (slot, k) => (slot === "zs" ? k * shown : recorded(slot, block.nominal)),
        truth: () => truthOf(here(block, around)),
        size: () => "",
        beforeShare: () => 0,
      });
    },
  },
];
