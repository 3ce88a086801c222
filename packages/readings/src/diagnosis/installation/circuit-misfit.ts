import type { Explanation, Misfit, MisfitReading } from "@good-grounds/core";
import type { JudgedCircuit } from "./board-fit.ts";
import type { Block } from "./circuit-model.ts";
import type { FaultFit, SoundFit } from "./judge-block.ts";
import { nextForCircuit } from "./next-reading.ts";
import { NAME } from "./slot.ts";
import { CLEAR, LISTED, LOG_TEN, TOLD_APART } from "./thresholds.ts";

/** Explanations less likely than this beside the leading one are not shown. */
const SHOWN = 0.01;
const MOST_SHOWN = 6;

const INNOCENT = [
  "leads not nulled, or another pair of leads",
  "the readings were taken at different points or days",
  "a figure read or written wrongly, or two rows of the schedule that changed places",
  "a length that was guessed",
];

/** A circuit whose readings do not agree, as a misfit; undefined where the odds are too small to speak of. */
export function circuitMisfit({ block, sound, faults, logOdds }: JudgedCircuit): Misfit | undefined {
  const odds = logOdds / LOG_TEN;
  const [first, second] = faults;
  if (!(odds >= LISTED) || first === undefined) return undefined;
  const explanations = explanationsOf(faults);
  const toldApart = second === undefined || Math.exp(first.logEvidence - second.logEvidence) >= TOLD_APART;
  const named = ({ fault, best }: FaultFit) => ({ id: fault.id, truth: best.truth() });
  return {
    kind: "circuit-readings",
    path: block.circuit.path,
    title: `Circuit ${block.circuit.designation}: readings that do not agree`,
    odds,
    clear: odds >= CLEAR,
    readings: readingsOf(block, sound),
    explanations,
    toldApart,
    next: nextForCircuit(block, named(first), named(second ?? first)),
    innocentCauses: INNOCENT,
    formula: block.ring ? "R1+R2 ≈ (r1 + r2)/4; Zs = Zdb + (R1+R2)" : "R1+R2 = (r1 + r2)·L·Ft; Zs = Zdb + (R1+R2)",
    grounds: [...block.readings.map(({ evidence }) => evidence), ...block.grounds],
  };
}

function explanationsOf(faults: readonly FaultFit[]): readonly Explanation[] {
  const top = faults[0]?.logEvidence ?? 0;
  const weights = faults.map(({ logEvidence }) => Math.exp(logEvidence - top));
  const all = weights.reduce((sum, one) => sum + one, 0);
  return faults
    .filter((_, i) => (weights[i] as number) >= SHOWN)
    .slice(0, MOST_SHOWN)
    .map(({ fault, best, expected }, i) => ({
      id: fault.id,
      words: fault.words(best.size()),
      share: (weights[i] as number) / all,
      innocent: fault.innocent,
      would: expected,
    }));
}

/** Readings of a block beside what the others would have them be were everything sound. */
export function readingsOf({ slots, readings }: Block, sound: SoundFit): readonly MisfitReading[] {
  const { expected } = sound;
  return readings.flatMap(({ evidence, value }, i) => {
    const one = expected[i];
    const slot = slots[i];
    if (one === undefined || slot === undefined) return [];
    return [{ ...one, name: NAME[slot], unit: evidence.term.unit, shown: evidence.detail.text, measured: value }];
  });
}
