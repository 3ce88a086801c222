import { type CircuitLoad, isKnownFact } from "@good-grounds/core";
import { here, inParallel, ohms, parallel, spread, truthOf } from "../circuit-effects.ts";
import { type CircuitBlock, recorded } from "../circuit-model.ts";
import type { CircuitFault } from "../fault.ts";
import { isLive } from "../slot.ts";

/** Loads that stand on pipes, which lead back to the main earthing terminal. */
const ON_PIPES: ReadonlySet<CircuitLoad> = new Set(["water-heater", "heating", "shower", "fixed-equipment", "cooker"]);

/** Loads of which little else is earthed. */
const OFF_PIPES: ReadonlySet<CircuitLoad> = new Set(["lighting", "socket-outlets"]);

/** How often something other than the protective conductor earths a load, by what it is. */
const earthed =
  (onPipes: number, usual: number, offPipes: number) =>
  ({ circuit: { load } }: CircuitBlock) =>
    !isKnownFact(load) ? usual : ON_PIPES.has(load.word) ? onPipes : OFF_PIPES.has(load.word) ? offPipes : usual;

/** Ways other than the protective conductor. */
export const PATHS: readonly CircuitFault[] = [
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
    prior: earthed(0.3, 0.08, 0.04),
    words: (size) =>
      `a way of about ${size} beside the protective conductor (shared conductor, armour, conduit, bonding left on) took part in the dead test as well`,
    effects: (block, around) => parallel(block, around, true),
  },
  {
    id: "other-earth",
    innocent: false,
    prior: (_, { tt }) => (tt ? 0.12 : 0.03),
    words: (size) =>
      `an earth of its own at the far end, about ${size}: the earth of another supply, bonded metal in the ground, an electrode`,
    effects: (block, around) => {
      const { line, cpc, before } = here(block, around);
      if (!(before > 0.02)) return [];
      const way = before + cpc;
      return spread(block, {
        low: 0.05,
        high: Math.max(0.5, 3 * before),
        count: 24,
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
    id: "protective-conductor-open",
    innocent: false,
    prior: 0.08,
    seenAs: "open",
    words: (size) =>
      `the protective conductor is open, and something else earths the far end through about ${size}: pipes, steelwork, another circuit's conductor`,
    effects: (block, around) => {
      const { nominal } = block;
      if (block.ring) return [];
      return spread(block, {
        low: 0.02,
        high: 30,
        count: 30,
        shown: (slot, p) => recorded(slot, { ...nominal, cpc: p }),
        truth: (p) => ({ ...truthOf({ ...here(block, around), cpc: p }), beyond: p }),
        size: ohms,
      });
    },
  },
];
