import type { Explanation, Misfit, MisfitReading } from "@good-grounds/core";
import type { JudgedCircuit } from "./board-fit.ts";
import type { Block } from "./circuit-model.ts";
import type { FaultFit, SoundFit } from "./judge-block.ts";
import { nextForCircuit } from "./next-reading.ts";
import { NAME } from "./slot.ts";
import { CLEAR, INNOCENT_ALONE, LISTED, LOG_TEN, TOLD_APART } from "./thresholds.ts";

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
export function circuitMisfit(judged: JudgedCircuit): Misfit | undefined {
  const { block, sound, faults, logOdds, logOddsBeyondGuess, disagrees } = judged;
  const [first, second] = faults;
  if ((!disagrees && !(logOdds / LOG_TEN >= LISTED)) || first === undefined) return undefined;
  // It may be no more than a length that was guessed: worth saying where asked for, and not unasked.
  // What a check finds not met is clear here as well: the two are one judgement.
  const least = disagrees ? CLEAR : LISTED;
  const odds = Math.max(least, Math.min(logOdds, logOddsBeyondGuess) / LOG_TEN);
  const explanations = explanationsOf(faults);
  const tied = tiedOf(faults);
  const named = ({ fault, best }: FaultFit) => ({ id: fault.id, truth: best.truth() });
  return {
    kind: "circuit-readings",
    path: block.circuit.path,
    title: `Circuit ${block.circuit.designation}: readings that do not agree`,
    odds,
    clear: odds >= CLEAR,
    readings: readingsOf(block, sound),
    explanations,
    toldApart: tied === 1,
    tied: Math.min(tied, explanations.length),
    next: nextForCircuit(block, named(first), named(second ?? first)),
    innocentCauses: INNOCENT,
    formula: block.ring ? "R1+R2 ≈ (r1 + r2)/4; Zs = Zdb + (R1+R2)" : "R1+R2 = (r1 + r2)·L·Ft; Zs = Zdb + (R1+R2)",
    grounds: [...block.readings.map(({ evidence }) => evidence), ...block.grounds],
  };
}

/** Where two explanations fit as well, only how common they are tells them apart: that has to say more. */
const BY_PRACTICE = 10;
/** Fits closer than this, as logarithms of densities, are as good as each other. */
const AS_GOOD = 2;

/** How many explanations, from the first on, cannot be told apart. */
function tiedOf(faults: readonly FaultFit[]): number {
  const [first, ...others] = faults;
  if (first === undefined) return 0;
  const apart = others.findIndex((other) => {
    const needed =
      first.fault.innocent && !other.fault.innocent
        ? INNOCENT_ALONE
        : other.peak > first.peak - AS_GOOD
          ? BY_PRACTICE
          : TOLD_APART;
    return Math.exp(first.logEvidence - other.logEvidence) >= needed;
  });
  return apart < 0 ? faults.length : apart + 1;
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
