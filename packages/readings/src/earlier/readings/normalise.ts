import { type ChangeNote, type Evidence, isKnown, type Known, type Reckoner, TERM } from "@good-grounds/core";
import { rangeOf } from "../../uncertainty/range-of-term.ts";
import type { Doubted, JobDoubt } from "./doubt.ts";
import { factorAt } from "./temperature.ts";

/** Standard deviation of a rectangular error that reaches one either way. */
const RECTANGULAR = 1 / Math.sqrt(3);

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
  const [loop, origin] = [job.of(zs), job.of(before)];
  const errors = new Map(loop.errors);
  for (const [name, deviation] of origin.errors) errors.set(name, (errors.get(name) ?? 0) - deviation);
  const open = origin.open === 0 ? loop.open : Number.NaN;
  const { doubted, notes } = warmed({ value: loop.value - origin.value, errors, open }, temperature, job);
  return { shown, doubted, notes: [...notes, ...readingNotes(zs, job), "supply-taken-out"] };
}

/** A value that no temperature is taken out of. */
export function asRead(reading: Evidence<"ohm">, job: JobDoubt): Normalised {
  if (!isKnown(reading)) return { shown: reading, doubted: undefined, notes: [] };
  return { shown: reading, doubted: job.of(reading), notes: readingNotes(reading, job) };
}

/** A resistance brought to 20 °C; the doubt of the temperature is a part of the resistance. */
function warmed(
  { value, errors, open }: Doubted,
  temperature: Evidence<"celsius">,
  job: JobDoubt,
): { readonly doubted: Doubted; readonly notes: readonly ChangeNote[] } {
  const factor = factorAt(temperature);
  const at = value / factor.value;
  const all = new Map([...errors].map(([name, deviation]) => [name, deviation / factor.value]));
  const add = (name: string, part: number) => all.set(name, (all.get(name) ?? 0) - at * part);
  if (!isKnown(temperature) || factor.kind === "assumed") {
    add(job.own("temperature"), ((factor.high - factor.low) / 2 / factor.value) * RECTANGULAR);
    return { doubted: { value: at, errors: all, open }, notes: ["temperature-assumed"] };
  }
  const perKelvin = 0.004 / factor.value;
  for (const [name, deviation] of job.of(temperature).errors) add(name, perKelvin * deviation);
  if (!forTheWholeJob(temperature)) return { doubted: { value: at, errors: all, open }, notes: [] };
  add(job.own("temperature"), perKelvin * AROUND_THE_HOUSE * RECTANGULAR);
  return { doubted: { value: at, errors: all, open }, notes: ["one-temperature"] };
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
