import { type ChangeNote, type Evidence, isKnown, type Known, type Reckoner, rangeOf, TERM } from "@good-grounds/core";
import { type Doubted, lessOf, sumOf, timesOf, within } from "@good-grounds/measurement";
import type { JobDoubt } from "./doubt.ts";
import { factorAt } from "./temperature.ts";

/** How far the conductors of one circuit may be from a temperature stated once for the whole job, K either way. */
const AROUND_THE_HOUSE = 5;

/** A value as it is shown, and as it is compared. */
export interface Normalised {
  readonly shown: Evidence<"ohm">;
  readonly doubted: Doubted | undefined;
  readonly notes: readonly ChangeNote[];
}

/** A conductor resistance at 20 °C, with the doubt of reading and temperature. */
export function at20(
  reading: Evidence<"ohm">,
  temperature: Evidence<"celsius">,
  job: JobDoubt,
  reckon: Reckoner,
): Normalised {
  const factor = factorAt(temperature);
  const shown = reckon.quotient(TERM.resistanceAt20, reading, factor);
  if (!isKnown(reading)) return { shown: reading, doubted: undefined, notes: [] };
  const { doubted, notes } = warmed(job.of(reading), temperature, job);
  return { shown, doubted, notes: [...notes, ...readingNotes(reading, job)] };
}

/**
 * The part of a loop that belongs to the circuit, at 20 °C: the loop at its end less the loop before it. What comes from
 * the supply is warmed by others and taken as it was.
 */
export function circuitPartAt20(
  zs: Known<"ohm">,
  before: Known<"ohm">,
  temperature: Evidence<"celsius">,
  job: JobDoubt,
  reckon: Reckoner,
): Normalised {
  const part = reckon.difference(TERM.circuitPart, zs, before);
  const shown = reckon.quotient(TERM.circuitPartAt20, part, factorAt(temperature));
  const { doubted, notes } = warmed(lessOf(job.of(zs), job.of(before)), temperature, job);
  return { shown, doubted, notes: [...notes, ...readingNotes(zs, job), "supply-taken-out"] };
}

/** A value that no temperature is taken out of. */
export function asRead(reading: Evidence<"ohm">, job: JobDoubt): Normalised {
  if (!isKnown(reading)) return { shown: reading, doubted: undefined, notes: [] };
  return { shown: reading, doubted: job.of(reading), notes: readingNotes(reading, job) };
}

/** A resistance brought to 20 °C; the doubt of the temperature is a part of the resistance. */
function warmed(
  resistance: Doubted,
  temperature: Evidence<"celsius">,
  job: JobDoubt,
): { readonly doubted: Doubted; readonly notes: readonly ChangeNote[] } {
  const factor = factorAt(temperature);
  const at = timesOf(1 / factor.value, resistance);
  const { value } = at;
  const spread = (part: number) => within(0, Math.abs(value) * part, job.own("temperature"));
  if (!isKnown(temperature) || factor.kind === "assumed") {
    const half = (factor.high - factor.low) / 2 / factor.value;
    return { doubted: sumOf(at, spread(half)), notes: ["temperature-assumed"] };
  }
  const perKelvin = 0.004 / factor.value;
  const warmer = timesOf(-value * perKelvin, { ...job.of(temperature), value: 0 });
  const doubted = sumOf(at, warmer);
  if (!forTheWholeJob(temperature)) return { doubted, notes: [] };
  return { doubted: sumOf(doubted, spread(perKelvin * AROUND_THE_HOUSE)), notes: ["one-temperature"] };
}

function forTheWholeJob(temperature: Known<"celsius">): boolean {
  return temperature.kind === "measured" && temperature.detail.path[0] === "conditions";
}

function readingNotes(reading: Known<"ohm">, job: JobDoubt): readonly ChangeNote[] {
  if (reading.kind !== "measured") return [];
  const notes: ChangeNote[] = reading.detail.accuracy === null ? ["accuracy-assumed"] : [];
  if (rangeOf(reading.term) === "continuity" && !job.leadsRecorded(reading)) notes.push("leads-assumed");
  return notes;
}
