import { type Basis, isKnown } from "@good-grounds/core";
import { BREAKER_RATINGS, breakerType, SHORTEST_BREAKER_TIME } from "./breaker-types.ts";
import { conventionalCurrents } from "./conventional-currents.ts";
import type { MarkedDevice } from "./device.ts";
import { fuseRows } from "./fuses/index.ts";
import { fuseCurrent } from "./operating-current.ts";

/**
 * A known point. Conventional currents: the device stays closed at `low` and has operated at `high` after `seconds`.
 * Instant trip: it does not trip at once up to `low` and does from `high`. Fuses: one current, at which it operates.
 */
export interface TimeCurrentPoint {
  readonly seconds: number;
  readonly low: number;
  readonly high: number;
  readonly basis: Basis;
}

/**
 * The known points of a device's characteristic, slowest first; empty where none is known. Nothing between them is made
 * up: a drawing joins them by straight lines on logarithmic scales.
 */
export function timeCurrentCurve(device: MarkedDevice): readonly TimeCurrentPoint[] {
  const points = [...conventionalPoint(device), ...instantPoints(device), ...fusePoints(device)];
  return points.sort((a, b) => b.seconds - a.seconds);
}

function conventionalPoint(device: MarkedDevice): readonly TimeCurrentPoint[] {
  const { nonOperating, operating, seconds } = conventionalCurrents(device);
  if (seconds === null || !isKnown(nonOperating) || !isKnown(operating)) return [];
  return [{ seconds, low: nonOperating.value, high: operating.value, basis: operating.detail.source.basis }];
}

function instantPoints({ standard, type, rated }: MarkedDevice): readonly TimeCurrentPoint[] {
  const breaker = breakerType(standard, type);
  if (breaker === undefined || !(rated >= BREAKER_RATINGS.least && rated <= BREAKER_RATINGS.greatest)) return [];
  const { least, most, source } = breaker;
  const band = { low: least * rated, high: most * rated, basis: source.basis };
  return [
    { seconds: 5, ...band },
    { seconds: SHORTEST_BREAKER_TIME, ...band },
  ];
}

function fusePoints(device: MarkedDevice): readonly TimeCurrentPoint[] {
  return fuseRows(device)
    .filter(({ rated }) => rated === device.rated)
    .map((row) => {
      const amperes = fuseCurrent(row);
      return { seconds: row.seconds, low: amperes, high: amperes, basis: row.source.basis };
    });
}
