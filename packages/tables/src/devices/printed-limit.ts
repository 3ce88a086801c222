import { type DeviceType, type NotKnown, type Published, published, TERM } from "@good-grounds/core";
import { byKey } from "../by-key.ts";
import { notTabulated } from "../not-tabulated.ts";
import { source } from "../sources.ts";
import { BREAKER_TYPES, breakerMultiple } from "./breaker-types.ts";
import { deviceWords, type MarkedDevice } from "./device.ts";
import { FUSES, fuseRows } from "./fuses/index.ts";

const CURRENT = [6, 10, 16, 20, 25, 32, 40, 50, 63, 80, 100, 125] as const;
const WITHDRAWN = [5, 6, 10, 15, 16, 20, 25, 30, 32, 40, 45, 50, 60, 63, 80, 100] as const;

/** Ratings with a limiting impedance in print, A, by type. */
export const PRINTED_BREAKER_RATINGS: Readonly<Partial<Record<DeviceType, readonly number[]>>> = Object.freeze({
  B: [3, ...CURRENT],
  C: CURRENT,
  D: CURRENT,
  "1": WITHDRAWN,
  "2": WITHDRAWN,
  "3": WITHDRAWN,
  "4": WITHDRAWN,
});

const FORMULA = "U0·Cmin ÷ (multiple × In) = 218.5 V ÷ Ia, half up to 0.01 Ω";
const TABLE_413 = source("BS 7671 Table 41.3", "2018 to 2018+A4", "derived", {
  formula: `${FORMULA}; agrees with 0.95 of the 2008 table`,
});
const TABLE_413_D5 = source("BS 7671 Table 41.3(c), 5 s column", "2018 to 2018+A4", "memory", { formula: FORMULA });
const OLD = source("BS 3871-1 (withdrawn), limits raised to Cmin", "no table of today", "derived", {
  formula: FORMULA,
});

/** Rounded half up to two decimals. The addition outweighs the error of the quotient, which can lie just below a half. */
const printed = (quotient: number) => Math.floor(quotient * 100 + 0.5 + 1e-9) / 100;

const BREAKERS = byKey<string, Published<"ohm">>(
  BREAKER_TYPES.flatMap((row) =>
    row.standards.flatMap((standard) =>
      (PRINTED_BREAKER_RATINGS[row.type] ?? []).flatMap((rated) =>
        [0.4, 5].map((seconds) => {
          const { multiple, source: from } = breakerMultiple(row, seconds);
          const memory = from.basis === "memory";
          const words = `${deviceWords({ standard, type: row.type, rated })}, ${seconds} s`;
          const stands = standard === "BS 3871" ? OLD : memory ? TABLE_413_D5 : TABLE_413;
          return [
            `${standard} ${row.type} ${rated} ${seconds}`,
            published(TERM.permittedZs, printed(218.5 / (multiple * rated)), stands, words),
          ] as const;
        }),
      ),
    ),
  ),
);

const FUSE_LIMITS = byKey<string, Published<"ohm">>(
  [...FUSES].flatMap(([standard, rows]) =>
    rows.map((row) => {
      const words = `${standard}, ${row.rated} A, ${row.seconds} s`;
      return [
        `${standard} ${row.rated} ${row.seconds}`,
        published(TERM.permittedZs, row.printedZs, row.source, words),
      ] as const;
    }),
  ),
);

/**
 * The limiting loop impedance in Ω as tables print it, to two decimals half up, for comparison with the exact quotient.
 * The rounding puts some entries up to 5 mΩ above the quotient; margins are never taken from them. Only 0.4 s and 5 s
 * are printed.
 */
export function tabulatedPermittedZs(device: MarkedDevice, seconds: number): Published<"ohm"> | NotKnown<"ohm"> {
  const { standard, type, rated } = device;
  const found =
    BREAKERS.get(`${standard} ${type} ${rated} ${seconds}`) ??
    (fuseRows(device).length > 0 ? FUSE_LIMITS.get(`${standard} ${rated} ${seconds}`) : undefined);
  return found ?? notTabulated(TERM.permittedZs, "the printed tables", `${deviceWords(device)}, ${seconds} s`);
}
