import { type Evidence, parseAccuracy } from "@good-grounds/core";
import type { Circuit } from "@good-grounds/inspection";
import type { RingPointReadings, RingReading } from "./readings.ts";

/** The cross-connected readings of one point; what was not taken is left out. */
export interface PointEvidence {
  readonly lineNeutral?: Evidence<"ohm">;
  readonly lineCpc?: Evidence<"ohm">;
}

/** What no display of a continuity range shows, Ω. */
const ABSURD = 1e9;

/** A reading as the diagnosis takes it; undefined where there is none, or none that an instrument shows. */
export function readingOf(evidence: Evidence<"ohm">): RingReading | undefined {
  if (evidence.kind !== "measured") return undefined;
  const { resolution, bound, accuracy, taken } = evidence.detail;
  if (!(evidence.value >= 0 && evidence.value < ABSURD && resolution > 0 && resolution < ABSURD)) return undefined;
  return {
    shown: evidence.value,
    resolution,
    bound,
    accuracy: accuracy === null ? null : (parseAccuracy(accuracy) ?? null),
    ...(taken.leads?.half === undefined ? {} : { leads: taken.leads.half }),
  };
}

/** Points by their names, in the order in which they are listed; a name that stands twice in one list is two points. */
export function pointsOf({ readings }: Circuit): readonly (RingPointReadings & { readonly evidence: PointEvidence })[] {
  interface Entry {
    readonly name: string;
    lineNeutral?: RingReading;
    lineCpc?: RingReading;
    readonly evidence: { lineNeutral?: Evidence<"ohm">; lineCpc?: Evidence<"ohm"> };
  }
  const found = new Map<string, Entry>();
  const add = (listed: typeof readings.crossLineNeutral, key: "lineNeutral" | "lineCpc") => {
    const seen = new Map<string, number>();
    for (const { point, reading } of listed) {
      const times = (seen.get(point) ?? 0) + 1;
      seen.set(point, times);
      const id = `${times} ${point}`;
      const entry = found.get(id) ?? { name: point, evidence: {} };
      const made = readingOf(reading);
      if (made !== undefined) {
        entry[key] = made;
        entry.evidence[key] = reading;
      }
      found.set(id, entry);
    }
  };
  add(readings.crossLineNeutral, "lineNeutral");
  add(readings.crossLineCpc, "lineCpc");
  return [...found.values()];
}
