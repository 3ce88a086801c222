import type { InstrumentRange, Unit } from "@good-grounds/core";

/** What an instrument shows in one of its functions. */
export interface Kind {
  readonly unit: Unit;
  /** Units its display may be in, the usual one first. */
  readonly symbols: readonly string[];
  /** Where displays of this function end; what lies beyond is shown as more than that. The first is offered first. */
  readonly tops: readonly string[];
  /** Values between which nobody is asked whether they are right, in the coherent unit. */
  readonly usual: readonly [low: number, high: number];
  readonly signed?: true;
}

export const KINDS = {
  continuity: {
    unit: "ohm",
    symbols: ["Ω", "mΩ"],
    tops: ["99.9 Ω", "199.9 Ω", "999 Ω", "1999 Ω"],
    usual: [0.01, 9],
  },
  insulation: {
    unit: "ohm",
    symbols: ["MΩ", "GΩ", "kΩ"],
    tops: ["999 MΩ", "200 MΩ", "500 MΩ", "1000 MΩ", "1999 MΩ"],
    usual: [1e5, 2e10],
  },
  loop: { unit: "ohm", symbols: ["Ω", "mΩ"], tops: ["1999 Ω", "999 Ω", "199.9 Ω"], usual: [0.05, 20] },
  electrode: { unit: "ohm", symbols: ["Ω", "kΩ"], tops: ["1999 Ω", "999 Ω"], usual: [2, 2000] },
  time: { unit: "second", symbols: ["ms", "s"], tops: ["300 ms", "500 ms", "1999 ms"], usual: [0.003, 0.5] },
  "fault-current": { unit: "ampere", symbols: ["kA", "A"], tops: ["19.9 kA", "26 kA", "50 kA"], usual: [100, 2e4] },
  leakage: { unit: "ampere", symbols: ["mA", "A"], tops: ["99.9 mA", "999 mA"], usual: [0, 0.3] },
  voltage: { unit: "volt", symbols: ["V"], tops: ["440 V", "500 V"], usual: [200, 260] },
  temperature: { unit: "celsius", symbols: ["°C"], tops: [], usual: [-5, 45], signed: true },
} as const satisfies Readonly<Record<string, Kind>>;

export type KindId = keyof typeof KINDS;

/** What the keypad shows for each function of an instrument. */
export const KIND_OF_RANGE: Readonly<Record<InstrumentRange, KindId>> = {
  continuity: "continuity",
  insulation: "insulation",
  loop: "loop",
  "fault-current": "fault-current",
  "rcd-time": "time",
  electrode: "electrode",
  voltage: "voltage",
  temperature: "temperature",
};
