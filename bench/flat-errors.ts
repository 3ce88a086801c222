/**
 * What readings, lengths and cables may be out by, written a second time for the flat loop: a value as plain numbers
 * with one standard deviation a cause, and how far two such values lie apart.
 */
import { type Evidence, TERM, type Unit } from "@good-grounds/core";
import type { Circuit, Installation } from "@good-grounds/inspection";
import { conductorResistance } from "@good-grounds/tables";

/** A value, its standard deviations by cause, and the side on which it has no end. */
export interface Loose {
  v: number;
  open: number;
  by: Map<unknown, number>;
}

const ROOT3 = Math.sqrt(3);
const LOOP = new Set(["measured-ze", "measured-zdb", "measured-zs", "line-neutral-loop"]);

/** Usual instruments of the two ranges that are held against each other here. */
const usualOf = (loop: boolean) => (loop ? { part: 0.05, counts: 5 } : { part: 0.02, counts: 3 });

export const sure = (v: number): Loose => ({ v, open: 0, by: new Map() });

export function loose(e: Evidence<Unit>): Loose {
  if (e.kind !== "measured") return e.low === e.high ? sure(e.value) : between(e.low, e.high, e);
  const { accuracy, resolution: q, bound, taken } = e.detail;
  const loop = LOOP.has(e.term.id);
  const numbers = accuracy === null ? null : (accuracy.match(/[\d.]+/g) ?? []).map(Number);
  const { part, counts } =
    numbers === null ? usualOf(loop) : { part: (numbers[0] ?? 0) / 100, counts: numbers[1] ?? 0 };
  const size = Math.abs(e.value);
  // A usual display has three figures and shows hundredths of an ohm at best.
  const shown = numbers === null && size >= 10 ? 10 ** (Math.floor(Math.log10(size)) - 2) : 0.01;
  const step = numbers === null ? Math.min(q, shown) : q;
  const gain = Math.sqrt(0.5) * part * size;
  const all = part * size + counts * step;
  const by = new Map<unknown, number>();
  const put = (cause: unknown, half: number) => by.set(cause, half / ROOT3);
  put(`gain/${loop}/${taken.instrument ?? ""}`, gain);
  put({}, Math.sqrt(Math.max(0, all * all - gain * gain)));
  if (counts === 0 || step < q) put({}, q / 2);
  if (!loop && bound === "exact")
    put(`leads/${taken.instrument ?? ""}/${taken.leads?.since ?? ""}`, taken.leads?.half ?? 0.02);
  put({}, loop ? 0.02 : 0.01);
  return { v: e.value, open: bound === "above" ? 1 : bound === "below" ? -1 : 0, by };
}

/** The same evidence twice is one reading: its causes have to be the same objects. */
export function remembered(): (e: Evidence<Unit>) => Loose {
  const held = new Map<unknown, Loose>();
  return (e) => {
    const one = held.get(e) ?? loose(e);
    held.set(e, one);
    return one;
  };
}

export function between(low: number, high: number, cause: unknown = {}): Loose {
  if (high === Number.POSITIVE_INFINITY) return { ...sure(low), open: 1 };
  return { v: (low + high) / 2, open: 0, by: new Map([[cause, (high - low) / 2 / ROOT3]]) };
}

/** Σ factor · value. */
export function mix(...terms: readonly (readonly [number, Loose])[]): Loose {
  const by = new Map<unknown, number>();
  let v = 0;
  let open = 0;
  for (const [factor, one] of terms) {
    v += factor * one.v;
    const end = Math.sign(factor) * one.open;
    open = open !== 0 && end !== 0 && open !== end ? Number.NaN : open !== 0 ? open : end;
    for (const [cause, deviation] of one.by) by.set(cause, (by.get(cause) ?? 0) + factor * deviation);
  }
  return { v, open, by };
}

/** A value times a factor with a doubt of its own. */
export const by = (a: Loose, b: Loose): Loose => ({ ...mix([b.v, a], [a.v, b]), v: a.v * b.v });

/** A length as good as the way it was found. */
export function run(length: Evidence<"metre">, found: string): Loose {
  if (length.low !== length.high) return between(length.low, length.high);
  const [part, metres] = WAYS[found] ?? [0.15, 1];
  return mix([1, between(length.value * (1 - part), length.value * (1 + part))], [1, between(-metres, metres)]);
}

/** Worst of a length, and best. */
export function span(length: Evidence<"metre">, found: string): { v: number; l: number; h: number } {
  if (length.low !== length.high) return { v: length.value, l: length.low, h: length.high };
  const [part, metres] = WAYS[found] ?? [0.15, 1];
  const either = part * length.value + metres;
  return { v: length.value, l: Math.max(0, length.value - either), h: length.value + either };
}

const WAYS: Readonly<Record<string, readonly [number, number]>> = {
  taped: [0.01, 0.5],
  "by-drawing": [0.06, 1],
  estimated: [0.15, 1],
  unknown: [0.5, 2],
};

/** What conductors of so many Ω/m read over a length: `per` is at 20 °C by the standard. */
export function cores(per: readonly number[], length: Loose, warmth: { l: number; h: number }): readonly Loose[] {
  const make = {};
  const warm = mix([1, between(warmth.l - 0.012, warmth.h + 0.012)]);
  return per.map((r) => {
    const drawn = mix([1, sure(0.97 * r)], [1, between(-0.03 * r, 0.03 * r, make)]);
    return by(by(by(drawn, between(1 - 0.035, 1 + 0.035)), warm), length);
  });
}

/** Standard deviations from each other; `side` 1 minds only what lies below, −1 only what lies above. */
export function apart(a: Loose, b: Loose, side = 0): number {
  const d = mix([1, a], [-1, b]);
  if (Number.isNaN(a.v) || Number.isNaN(b.v)) return Number.NaN;
  if (Number.isNaN(d.open) || d.v * d.open < 0 || d.v * side > 0) return 0;
  if (Math.abs(d.v) <= 1e-9 * Math.max(Math.abs(a.v), Math.abs(b.v))) return 0;
  return Math.abs(d.v) / Math.hypot(...d.by.values());
}

/**
 * How a length came about: as was said, or as the lengths of all other circuits speak for estimates against guesses, 20 to
 * 1. Summed anew for each circuit, as nothing is kept here.
 */
export function foundAmong(circuit: Circuit, { boards }: Installation): string {
  const { length, lengthFound } = circuit.cable;
  if (lengthFound.kind === "fact") return lengthFound.word;
  const alone = boards.reduce((sum, { circuits }) => sum + circuits.length, 0) < 2;
  if (alone || length.low !== length.high) return "estimated";
  let odds = writtenOdds(length.value);
  for (const { circuits } of boards) for (const one of circuits) if (one !== circuit) odds *= estimateOverGuess(one);
  return odds >= 20 ? "estimated" : "unknown";
}

/** How much likelier what a circuit reads end to end is if its length was estimated than if it was guessed. */
function estimateOverGuess({ cable, readings, shape }: Circuit): number {
  const { length, lengthFound, line, cpc, material, cpcArrangement } = cable;
  if (lengthFound.kind === "fact" || material.kind !== "fact" || length.low !== length.high || !(length.value > 0))
    return 1;
  const isRing = shape.kind === "fact" && shape.word === "ring";
  const metal = material.word;
  const ohms = (area: typeof line) =>
    area.low === area.high ? conductorResistance(TERM.conductorPerMetre, area.value, metal).value : Number.NaN;
  const odd = cpcArrangement.kind === "fact" && !["in-cable", "separate"].includes(cpcArrangement.word);
  const per = isRing ? ohms(line) : odd ? Number.NaN : ohms(line) + ohms(cpc);
  const { temperature: t } = readings;
  const known = t.kind !== "not-known" && t.kind !== "lacking";
  const at = (celsius: number) => 1 + 0.004 * (celsius - 20);
  if (known && !(t.value >= -20 && t.value <= 110)) return 1;
  const wild = known && !(t.low >= -20 && t.high <= 110);
  const warm = !known ? 0.98 : wild ? at(t.value) : (at(t.low) + at(t.high)) / 2;
  const end = isRing ? readings.r1 : readings.r1r2;
  if (Number.isNaN(per) || end.kind === "not-known" || end.kind === "lacking") return 1;
  const seen = loose(end);
  if (seen.open !== 0) return 1;
  const due = 0.97 * per * warm * length.value;
  const own = Math.hypot(0.04, Math.hypot(...seen.by.values()) / due);
  const likely = (way: string) => {
    const [part, metres] = WAYS[way] ?? [0, 0];
    const sigma = Math.hypot(own, part / ROOT3, metres / ROOT3 / length.value);
    const z = (seen.v / due - 1) / sigma;
    return (0.95 * Math.exp(-0.5 * z * z)) / (sigma * Math.sqrt(2 * Math.PI)) + 0.025;
  };
  return (likely("estimated") / likely("unknown")) * writtenOdds(length.value);
}

/** Four in five guesses of ten metres and more are round fives, and three in five estimates. */
const writtenOdds = (metres: number) => (metres < 10 ? 1 : metres % 5 === 0 ? 0.6 / 0.8 : 0.4 / 0.2);
