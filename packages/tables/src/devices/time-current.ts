import type { Basis } from "@good-grounds/core";
import { breakerType } from "./breaker-types.ts";
import type { MarkedDevice } from "./device.ts";
import { FUSES } from "./fuses/index.ts";

/** A known point: the device operates within `seconds` somewhere between `low` and `high` amperes. */
export interface TimeCurrentPoint {
  readonly seconds: number;
  readonly low: number;
  readonly high: number;
  readonly basis: Basis;
}

/** Conventional currents of BS EN 60898 at one hour (two above 63 A), from memory. */
const CONVENTIONAL = { nonTrip: 1.13, trip: 1.45 } as const;

/** The known points of a device's characteristic, slowest first; empty where none is known. Nothing between them is made up. */
export function timeCurrentCurve(device: MarkedDevice): readonly TimeCurrentPoint[] {
  const breaker = breakerType(device.standard, device.type);
  if (breaker !== undefined) {
    const { least, most, source } = breaker;
    const { rated } = device;
    const hour = rated > 63 ? 7200 : 3600;
    return [
      { seconds: hour, low: CONVENTIONAL.nonTrip * rated, high: CONVENTIONAL.trip * rated, basis: "memory" },
      { seconds: 5, low: least * rated, high: most * rated, basis: source.basis },
      { seconds: 0.1, low: least * rated, high: most * rated, basis: source.basis },
    ];
  }
  return (FUSES.get(device.standard) ?? [])
    .filter((row) => row.rated === device.rated)
    .map((row) => {
      const amperes = row.operating ?? 218.5 / row.printedZs;
      return { seconds: row.seconds, low: amperes, high: amperes, basis: row.source.basis };
    })
    .sort((a, b) => b.seconds - a.seconds);
}
