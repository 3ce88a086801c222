import type { DeviceStandard, DeviceType, Source } from "@good-grounds/core";
import { byKey } from "../by-key.ts";
import { source } from "../sources.ts";

/** A type of circuit-breaker by the multiples of its rated current between which it trips at once. */
export interface BreakerType {
  readonly standards: readonly DeviceStandard[];
  readonly type: DeviceType;
  /** Does not trip at once up to this multiple. */
  readonly least: number;
  /** Trips at once from this multiple; loop limits rest on it. */
  readonly most: number;
  /** Multiple that operates it within 5 s where that is less than for instant operation. */
  readonly within5s?: { readonly multiple: number; readonly source: Source };
  readonly source: Source;
}

/** Shortest time the multiples hold for, s. What trips at once does so in less; how much less is not in the standards. */
export const SHORTEST_BREAKER_TIME = 0.1;

/** Rated currents of breakers to these standards, A. */
export const BREAKER_RATINGS = Object.freeze({ least: 0.5, greatest: 125 });

const EN = source("BS EN 60898-1 and BS EN 61009-1, trip multiples", "current", "published");
const D5 = source("BS 7671 Table 41.3(c), 5 s column", "2018 to 2018+A4", "memory", {
  formula: "Ia = 10 × In",
  doubt: "not seen; the 0.4 s limit is stricter",
});
const WITHDRAWN = "BS 3871-1 (withdrawn), quoted in a trade discussion of older types";
const OLD = source(WITHDRAWN, "1965 to 1994", "published");
const OLD4 = source(WITHDRAWN, "1965 to 1994", "published", {
  doubt: "type 4 varies between makers; ask for the maker's figure",
});

/** Every circuit-breaker type, current and withdrawn. */
export const BREAKER_TYPES: readonly BreakerType[] = Object.freeze([
  { standards: ["BS EN 60898", "BS EN 61009"], type: "B", least: 3, most: 5, source: EN },
  { standards: ["BS EN 60898", "BS EN 61009"], type: "C", least: 5, most: 10, source: EN },
  {
    standards: ["BS EN 60898", "BS EN 61009"],
    type: "D",
    least: 10,
    most: 20,
    within5s: { multiple: 10, source: D5 },
    source: EN,
  },
  { standards: ["BS 3871"], type: "1", least: 2.7, most: 4, source: OLD },
  { standards: ["BS 3871"], type: "2", least: 4, most: 7, source: OLD },
  { standards: ["BS 3871"], type: "3", least: 7, most: 10, source: OLD },
  { standards: ["BS 3871"], type: "4", least: 10, most: 50, source: OLD4 },
]);

const BY_MARK = byKey<string, BreakerType>(
  BREAKER_TYPES.flatMap((row) => row.standards.map((standard) => [`${standard} ${row.type}`, row] as const)),
);

/** The type's row; undefined for standards without types and for types the standard does not have. */
export function breakerType(standard: DeviceStandard, type: DeviceType | null): BreakerType | undefined {
  return BY_MARK.get(`${standard} ${type}`);
}

/** The multiple that operates a type within a time in s, and its source. */
export function breakerMultiple(row: BreakerType, seconds: number): { multiple: number; source: Source } {
  const slow = seconds >= 5 ? row.within5s : undefined;
  return slow ?? { multiple: row.most, source: row.source };
}
