import { type NotKnown, type Published, published, TERM } from "@good-grounds/core";
import { byKey } from "../by-key.ts";
import { notTabulated } from "../not-tabulated.ts";
import { remembered } from "../remembered.ts";
import { source } from "../sources.ts";

const FORMULA = "RA ≤ UL ÷ IΔn, no Cmin";
const TABLE_415 = source("BS 7671 Table 41.5", "2008 to 2018+A4", "published", { formula: FORMULA });
const MANUAL = source("loop-tester manual, table of RA at 50 V and 25 V; BS 7671 411.5.3", "none", "published", {
  formula: FORMULA,
});
const DERIVED = source("BS 7671 411.5.3", "2008 to 2018+A4", "derived", { formula: FORMULA });

/** IΔn in A with the printed RA in Ω at 50 V and at 25 V, to whole ohms. */
const ROWS = Object.freeze([
  { residual: 0.01, at50: 5000, at25: 2500, inTable415: false },
  { residual: 0.03, at50: 1667, at25: 833, inTable415: true },
  { residual: 0.1, at50: 500, at25: 250, inTable415: true },
  { residual: 0.3, at50: 167, at25: 83, inTable415: true },
  { residual: 0.5, at50: 100, at25: 50, inTable415: true },
  { residual: 1, at50: 50, at25: 25, inTable415: false },
] as const);

type Answer = Published<"ohm"> | NotKnown<"ohm">;

const PRINTED_50 = byKey<number, Answer>(
  ROWS.map(({ residual, at50, inTable415 }) => [
    residual,
    published(TERM.permittedRa, at50, inTable415 ? TABLE_415 : MANUAL, `IΔn ${residual} A, 50 V`),
  ]),
);
const PRINTED_25 = byKey<number, Answer>(
  ROWS.map(({ residual, at25 }) => [residual, published(TERM.permittedRa, at25, MANUAL, `IΔn ${residual} A, 25 V`)]),
);

const reckoned = (volts: 50 | 25) =>
  remembered<Answer>((residual) =>
    residual > 0 && Number.isFinite(residual)
      ? published(TERM.permittedRa, volts / residual, DERIVED, `IΔn ${residual} A, ${volts} V`)
      : notTabulated(TERM.permittedRa, "Table 41.5", `IΔn ${residual} A`),
  );
const RECKONED_50 = reckoned(50);
const RECKONED_25 = reckoned(25);

/**
 * Greatest resistance of electrode and protective conductors in Ω behind an RCD of IΔn in A: as printed, to whole ohms,
 * where it is printed, otherwise 50 V ÷ IΔn. Printed values lie up to half an ohm beside the quotient; margins are taken
 * from the touch voltage and IΔn themselves.
 */
export function permittedRa(residualCurrentAmpere: number): Answer {
  return PRINTED_50.get(residualCurrentAmpere) ?? RECKONED_50(residualCurrentAmpere);
}

/** The same for a touch voltage of 25 V. */
export function permittedRaAt25V(residualCurrentAmpere: number): Answer {
  return PRINTED_25.get(residualCurrentAmpere) ?? RECKONED_25(residualCurrentAmpere);
}
