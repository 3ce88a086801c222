import { type Evidence, type Fact, isKnown, isKnownFact, type Unit } from "@good-grounds/core";
import type { Circuit } from "@good-grounds/inspection";
import { factorAt } from "../readings/temperature.ts";
import { wordsOf } from "./words.ts";

/** What a circuit is known by, whatever it is called. Null where it is not known. */
export interface Traits {
  readonly circuit: Circuit;
  readonly words: ReadonlySet<string>;
  readonly designation: string;
  readonly load: string | null;
  readonly shape: string | null;
  readonly phases: string | null;
  readonly standard: string | null;
  readonly type: string | null;
  readonly rated: number | null;
  readonly line: number | null;
  readonly cpc: number | null;
  /** Limits of the length in m. */
  readonly length: readonly [low: number, high: number] | null;
  readonly points: number | null;
  /** Continuity readings at 20 °C in Ω, by name. */
  readonly resistances: Readonly<Record<"r1r2" | "r1" | "rn" | "r2", number | null>>;
}

export function traitsOf(circuit: Circuit): Traits {
  const { device, cable, readings } = circuit;
  const factor = factorAt(readings.temperature).value;
  const at20 = (reading: Evidence<"ohm">) => {
    const value = isKnown(reading) ? reading.value / factor : 0;
    return value > 0 ? value : null;
  };
  return {
    circuit,
    words: wordsOf(circuit.description),
    designation: circuit.designation.trim().toLowerCase(),
    load: word(circuit.load),
    shape: word(circuit.shape),
    phases: word(circuit.phases),
    standard: word(device.standard),
    type: word(device.type),
    rated: value(device.rated),
    line: value(cable.line),
    cpc: value(cable.cpc),
    length:
      isKnown(cable.length) && cable.length.low > 0 && Number.isFinite(cable.length.high)
        ? [cable.length.low, cable.length.high]
        : null,
    points: circuit.points === undefined || circuit.points === 0 ? null : circuit.points,
    resistances: {
      r1r2: at20(readings.r1r2),
      r1: at20(readings.r1),
      rn: at20(readings.rn),
      r2: at20(readings.r2),
    },
  };
}

function word(fact: Fact<string>): string | null {
  return isKnownFact(fact) ? fact.word : null;
}

function value(evidence: Evidence<Unit>): number | null {
  return isKnown(evidence) ? evidence.value : null;
}
