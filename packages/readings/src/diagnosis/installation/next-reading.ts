import { isKnown, type NextReading, printQuantity } from "@good-grounds/core";
import type { CircuitBlock } from "./circuit-model.ts";
import type { Truth } from "./fault.ts";

/** Something that could be read or looked at, with what an explanation leads one to expect. */
interface Candidate {
  readonly id: string;
  readonly words: string;
  readonly expects: (truth: Truth) => number | undefined;
  /** How far such a reading may lie from the truth, as a deviation. */
  readonly deviation: (value: number) => number;
  readonly print: (value: number) => string;
  /** Trouble of taking it, against which what it separates is weighed. */
  readonly effort: number;
}

const ohms = (value: number) => printQuantity(Math.round(value * 100) / 100, "ohm");
const continuity = (value: number) => 0.02 + 0.03 * value;
const loop = (value: number) => 0.03 + 0.04 * value;

/** Stands for no connection, Ω. */
const NOTHING = 1e6;

const CANDIDATES: readonly Candidate[] = [
  {
    id: "cpc-size",
    words: "look at the size of the protective conductor at both ends",
    expects: ({ cpcSize }) => cpcSize,
    deviation: () => 0.12,
    print: (value) => printQuantity(value, "square-millimetre"),
    effort: 1,
  },
  {
    id: "r1r2-again",
    words: "null the leads and read R1+R2 again at the furthest point",
    expects: ({ r1r2 }) => r1r2,
    deviation: continuity,
    print: ohms,
    effort: 1,
  },
  {
    id: "r1rn",
    words:
      "with the circuit isolated, join line and neutral at the furthest point, read R1+Rn at the board and take the link off",
    expects: ({ r1rn }) => r1rn,
    deviation: continuity,
    print: ohms,
    effort: 1.2,
  },
  {
    id: "r2-long-lead",
    words: "read R2 by itself with a long lead to the furthest point",
    expects: ({ r2 }) => r2,
    deviation: continuity,
    print: ohms,
    effort: 1.4,
  },
  {
    id: "zs-again",
    words: "read Zs again at the furthest point, line to earth, with the same leads as at the board",
    expects: ({ zs }) => zs,
    deviation: loop,
    print: ohms,
    effort: 1.2,
  },
  {
    id: "beyond",
    words:
      "isolate and prove dead, take the circuit's protective conductor off at the board, read with a long lead from the earthed metal at the far end to the main earthing terminal and put the conductor back",
    expects: ({ beyond }) => beyond ?? NOTHING,
    deviation: (value) => 0.05 + 0.25 * value,
    print: (value) => (value >= NOTHING ? "no connection" : ohms(value)),
    effort: 2,
  },
  {
    id: "length",
    words: "follow or pace the route and set the length down anew",
    expects: ({ length }) => length,
    deviation: (value) => 0.08 * value + 0.5,
    print: (value) => printQuantity(Math.round(value), "metre"),
    effort: 1.6,
  },
];

/** Explanations are told apart by a reading that differs by this many deviations. */
const SEPARATES = 2;

/**
 * Which reading separates two explanations best for its trouble. Where none does, the one that tells the leading
 * explanation from what was written down; null where there is none of that either.
 */
export function nextForCircuit(
  block: CircuitBlock,
  first: { readonly id: string; readonly truth: Truth },
  second: { readonly id: string; readonly truth: Truth },
): NextReading | null {
  const [a, b] = [first.truth, second.truth].map((truth) => withWritten(block, truth)) as [Truth, Truth];
  let best:
    | { readonly candidate: Candidate; readonly worth: number; readonly values: readonly [number, number] }
    | undefined;
  for (const candidate of CANDIDATES) {
    const [va, vb] = [candidate.expects(a), candidate.expects(b)];
    if (va === undefined || vb === undefined) continue;
    const apart = Math.abs(va - vb) / Math.hypot(candidate.deviation(va), candidate.deviation(vb));
    // Beyond some ten deviations nothing is gained by more.
    const worth = Math.min(apart, 10) / candidate.effort;
    if (apart >= SEPARATES && (best === undefined || worth > best.worth)) {
      best = { candidate, worth, values: [va, vb] };
    }
  }
  if (best === undefined) return repeated(block, first, a);
  const { candidate, values } = best;
  return {
    id: candidate.id,
    words: candidate.words,
    expects: [
      { explanation: first.id, words: about(candidate, values[0]) },
      { explanation: second.id, words: about(candidate, values[1]) },
    ],
  };
}

function about({ print }: Candidate, value: number): string {
  return value >= NOTHING ? print(value) : `about ${print(value)}`;
}

/** The reading to take again: the one that lies furthest from what the explanation expects of it. */
function repeated(
  { slots, readings }: CircuitBlock,
  { id }: { readonly id: string },
  truth: Truth,
): NextReading | null {
  const found = (["r1r2", "zs"] as const).flatMap((slot) => {
    const [was, is] = [readings[slots.indexOf(slot)]?.value, truth[slot]];
    const candidate = CANDIDATES.find((one) => one.id === `${slot}-again`);
    if (was === undefined || is === undefined || candidate === undefined) return [];
    return [{ candidate, is, apart: Math.abs(was - is) / candidate.deviation(is) }];
  });
  const [furthest] = found.sort((one, other) => other.apart - one.apart);
  if (furthest === undefined || furthest.apart < SEPARATES) return null;
  const { candidate, is } = furthest;
  return { id: candidate.id, words: candidate.words, expects: [{ explanation: id, words: about(candidate, is) }] };
}

/** Where an explanation does not speak of size or length, what is written down holds. */
function withWritten({ circuit, length }: CircuitBlock, truth: Truth): Truth {
  const size = circuit.cable.cpc;
  return {
    ...(isKnown(size) ? { cpcSize: size.value } : {}),
    ...(length === undefined ? {} : { length }),
    ...truth,
  };
}
