import { source } from "../sources.ts";

/** Second numerals of an IP code. */
export const WATER_NUMERALS = [1, 2, 3, 4, 5, 6, 7, 8] as const;
export type WaterNumeral = (typeof WATER_NUMERALS)[number];

const REMEMBERED = source("BS EN 60529, second numeral", "current", "memory");

/** What a second numeral withstands. */
export interface WaterProtection {
  readonly numeral: WaterNumeral;
  readonly withstands: string;
  readonly source: typeof REMEMBERED;
}

const WITHSTANDS: Readonly<Record<WaterNumeral, string>> = {
  1: "drops falling straight down",
  2: "drops with the enclosure tilted by 15°",
  3: "spray up to 60° from the vertical",
  4: "splashes from every side",
  5: "jets from a 6.3 mm nozzle",
  6: "strong jets from a 12.5 mm nozzle",
  7: "lying in 1 m of water for 30 minutes",
  8: "lying in water for longer, as agreed with the maker",
};

const ROWS: ReadonlyMap<number, WaterProtection> = new Map(
  WATER_NUMERALS.map((numeral) => [
    numeral,
    Object.freeze({ numeral, withstands: WITHSTANDS[numeral], source: REMEMBERED }),
  ]),
);

/** What a second numeral withstands; undefined for a numeral that is none. Numerals 7 and 8 do not include jets. */
export function waterProtection(numeral: number): WaterProtection | undefined {
  return ROWS.get(numeral);
}
