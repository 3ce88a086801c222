import { printQuantity } from "@good-grounds/core";
import { type CircuitBlock, type Nominal, recorded } from "./circuit-model.ts";
import { type Effect, logGrid, type Surroundings, type Truth } from "./fault.ts";
import { isLive, type Slot } from "./slot.ts";

export const ohms = (value: number) => printQuantity(value, "ohm");

/** What is recorded under a fault of one size: the reading itself, not its change. */
type Shown = (slot: Slot, x: number) => number;

interface Family {
  readonly low: number;
  readonly high: number;
  readonly count: number;
  readonly shown: Shown;
  readonly truth: (x: number) => Truth;
  readonly size: (x: number) => string;
  readonly beforeShare?: (x: number) => number;
  /** How much more likely a size is than others, in proportion; all alike where left out. */
  readonly weight?: (x: number) => number;
}

/** A fault whose size may lie anywhere on a logarithmic scale. */
export function spread(block: CircuitBlock, family: Family): readonly Effect[] {
  const { low, high, count, shown, truth, size, beforeShare, weight = () => 1 } = family;
  const { values, ratio } = logGrid(low, high, count);
  const whole = values.reduce((sum, x) => sum + weight(x), 0);
  const half = Math.sqrt(ratio);
  return values.map((x) => ({
    shift: (slot) => shown(slot, x) - recorded(slot, block.nominal),
    // Within a step the size is as likely anywhere: a twelfth of its width squared.
    step: (slot) => (shown(slot, x * half) - shown(slot, x / half)) / Math.sqrt(12),
    beforeShare: beforeShare?.(x) ?? 1,
    logWeight: Math.log(weight(x) / whole),
    truth: () => truth(x),
    size: () => size(x),
  }));
}

/** What new readings of a circuit with these conductors show. */
export function truthOf({ line, cpc, before }: Nominal): Truth {
  return { r1r2: line + cpc, r2: cpc, r1rn: 2 * line, zs: before + line + cpc };
}

export const added = (truth: Truth, x: number, ...keys: readonly ("r1r2" | "r2" | "r1rn" | "zs")[]): Truth => ({
  ...truth,
  ...Object.fromEntries(keys.map((key) => [key, (truth[key] ?? 0) + x])),
});

/** The nominal circuit with the loop before it as the rest of the board has it. */
export const here = ({ nominal }: CircuitBlock, { before }: Surroundings): Nominal => ({ ...nominal, before });

export const inParallel = (a: number, b: number) => (a * b) / (a + b);

/** Where the furthest point of a ring is at the end of a spur, or a radial anywhere: a joint of some ohms. */
export function joint(block: CircuitBlock, around: Surroundings, conductor: "line" | "cpc"): readonly Effect[] {
  const { nominal } = block;
  const feels = (slot: Slot) =>
    slot === "r1r2" || isLive(slot) || (conductor === "cpc" && slot === "r2" && !block.ring);
  return spread(block, {
    low: 0.03,
    high: 100,
    count: 40,
    shown: (slot, x) => recorded(slot, nominal) + (feels(slot) ? x : 0),
    truth: (x) =>
      added(
        truthOf(here(block, around)),
        x,
        "r1r2",
        "zs",
        ...(conductor === "cpc" ? (["r2"] as const) : (["r1rn"] as const)),
      ),
    size: ohms,
  });
}

/** How much more often an end reads as open where a conductor is than where anything else is wrong, as a logarithm. */
export const SEEN_OPEN = Math.log(100);

export const END = { r1: "r1", rn: "rn", re: "r2" } as const;
export const isEnd = (slot: Slot): slot is keyof typeof END => slot in END;

/** What a reading would show were the circuit's conductors others: one certain change, without a size to spread. */
export function changed(
  block: CircuitBlock,
  around: Surroundings,
  to: Nominal,
  is: { readonly weight: number; readonly size: string; readonly truth?: Truth; readonly part?: number },
): Effect {
  const { nominal } = block;
  const shift = (slot: Slot) => recorded(slot, { ...to, before: nominal.before }) - recorded(slot, nominal);
  return {
    shift,
    step: (slot) => (is.part ?? 0.02) * shift(slot),
    beforeShare: 1,
    logWeight: Math.log(is.weight),
    truth: () => ({ ...truthOf({ ...to, before: around.before }), ...is.truth }),
    size: () => is.size,
  };
}

/** Readings as they are, only not standing where they should. */
export function standing(
  block: CircuitBlock,
  around: Surroundings,
  is: { readonly at: NonNullable<Effect["standsAt"]>; readonly weight: number; readonly size: string },
): Effect {
  return {
    shift: NONE,
    step: NONE,
    beforeShare: 1,
    standsAt: is.at,
    logWeight: Math.log(is.weight),
    truth: () => truthOf(here(block, around)),
    size: () => is.size,
  };
}

const NONE = () => 0;

/** The circuit as it is where a reading does not count: without a cable to go by, R1+R2 comes from Zs instead. */
function withoutReading(block: CircuitBlock, around: Surroundings, slot: "r1r2" | "zs"): Nominal {
  const nominal = here(block, around);
  const zs = block.readings[block.slots.indexOf("zs")]?.value;
  if (block.cableKnown || slot === "zs" || zs === undefined) return nominal;
  const whole = Math.max(0.01, zs - around.before);
  const share = nominal.line / (nominal.line + nominal.cpc) || 0.5;
  return { ...nominal, line: whole * share, cpc: whole * (1 - share) };
}

/** A reading that belongs elsewhere: another circuit's, to the digit, or anything a circuit of this kind may show. */
export function foreign(block: CircuitBlock, around: Surroundings, slot: "r1r2" | "zs"): readonly Effect[] {
  if (!block.slots.some((one) => one !== slot && (block.cableKnown || isLive(one) !== isLive(slot)))) return [];
  const at = block.slots.indexOf(slot);
  const reading = block.readings[at];
  if (reading === undefined) return [];
  // A display of nought means less than its last digit.
  const value = Math.max(reading.value, reading.evidence.detail.resolution / 2);
  if (!(value > 0)) return [];
  const truth = () => truthOf(withoutReading(block, around, slot));
  const effect = (logDensity: number, logWeight: number, size: string): Effect => ({
    shift: NONE,
    step: NONE,
    beforeShare: 1,
    foreign: [{ slot, logDensity }],
    logWeight,
    truth,
    size: () => size,
  });
  // Readings of circuits lie anywhere over three decades.
  const anywhere = effect(-Math.log(value * Math.log(1000)), Math.log(0.5), "");
  const twins = around.others.filter(
    (other) => other.readings[other.slots.indexOf(slot)]?.evidence.detail.text === reading.evidence.detail.text,
  );
  const twin = twins[0];
  if (twin === undefined) return [anywhere];
  const odds = Math.log((0.5 * twins.length) / around.others.length);
  return [anywhere, effect(-Math.log(reading.evidence.detail.resolution), odds, twin.circuit.designation)];
}

/** A ring whose conductors are in a reading this many times; a dead reading and all that is read live differ. */
export function ringOnly(block: CircuitBlock, around: Surroundings, times: (slot: Slot) => number): readonly Effect[] {
  if (!block.ring || !block.slots.includes("r1r2")) return [];
  const { nominal } = block;
  const both = nominal.line + nominal.cpc;
  return [
    {
      shift: (slot) => (slot === "r1r2" || isLive(slot) ? (times(slot) - 1) * both : 0),
      step: () => 0,
      beforeShare: 1,
      logWeight: 0,
      truth: () => truthOf(here(block, around)),
      size: () => "",
    },
  ];
}

export function parallel(block: CircuitBlock, around: Surroundings, dead: boolean): readonly Effect[] {
  const { nominal } = block;
  if (!(nominal.cpc > 0)) return [];
  const feels = (slot: Slot) => isLive(slot) || (dead && (slot === "r1r2" || slot === "r2"));
  const less = (x: number) => nominal.cpc - inParallel(nominal.cpc, x);
  return spread(block, {
    low: nominal.cpc / 30,
    high: nominal.cpc * 8,
    count: 30,
    shown: (slot, x) => recorded(slot, nominal) - (feels(slot) ? less(x) : 0),
    truth: (x) => ({
      ...added(truthOf(here(block, around)), -less(x), "zs", ...(dead ? (["r1r2", "r2"] as const) : [])),
      beyond: x,
    }),
    size: ohms,
  });
}
