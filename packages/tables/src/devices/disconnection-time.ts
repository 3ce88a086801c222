import {
  type EarthingSystem,
  type EditionId,
  type NotKnown,
  type Published,
  published,
  TERM,
} from "@good-grounds/core";
import { notTabulated } from "../not-tabulated.ts";
import { source } from "../sources.ts";

const TABLE = source("BS 7671 Table 41.1", "2008 to 2018+A4, a.c.", "published");
const LONGER = source("BS 7671 411.3.2.3 and 411.3.2.4", "2008 to 2018+A4", "published");

/** Upper end of each voltage band of Table 41.1, and the a.c. times in seconds. */
const ROWS = [
  { upTo: 120, above: 50, TN: 0.8, TT: 0.3 },
  { upTo: 230, above: 120, TN: 0.4, TT: 0.2 },
  { upTo: 400, above: 230, TN: 0.2, TT: 0.07 },
  { upTo: Number.POSITIVE_INFINITY, above: 400, TN: 0.1, TT: 0.04 },
] as const;

const NODES = ROWS.map((row) => {
  const band = row.above === 400 ? "U0 > 400 V" : `${row.above} V < U0 ≤ ${row.upTo} V`;
  return {
    upTo: row.upTo,
    TN: published(TERM.disconnectionTime, row.TN, TABLE, `TN, ${band}`),
    TT: published(TERM.disconnectionTime, row.TT, TABLE, `TT, ${band}`),
  };
});

const OTHER = Object.freeze({
  TN: published(TERM.disconnectionTime, 5, LONGER, "TN, distribution circuit or final circuit outside 411.3.2.2"),
  TT: published(TERM.disconnectionTime, 1, LONGER, "TT, distribution circuit or final circuit outside 411.3.2.2"),
});

/**
 * Permitted disconnection time in s for a nominal voltage to earth in V: of Table 41.1 for final circuits within its
 * scope, otherwise 5 s (TN) and 1 s (TT). IT systems and voltages of 50 V or less have no row.
 */
export function permittedDisconnectionTime(
  system: EarthingSystem,
  nominalVoltage: number,
  circuit: "final-41.1" | "other",
): Published<"second"> | NotKnown<"second"> {
  if (system === "IT") return notTabulated(TERM.disconnectionTime, "Table 41.1", "an IT system");
  if (!(nominalVoltage > 50)) {
    return notTabulated(TERM.disconnectionTime, "Table 41.1", `a nominal voltage of ${nominalVoltage} V`);
  }
  const column = system === "TT" ? "TT" : "TN";
  if (circuit === "other") return OTHER[column];
  for (const row of NODES) if (nominalVoltage <= row.upTo) return row[column];
  return notTabulated(TERM.disconnectionTime, "Table 41.1", `${nominalVoltage} V`);
}

/**
 * Whether a final circuit falls under Table 41.1 (411.3.2.2): up to 63 A with socket-outlets, up to 32 A with fixed
 * equipment only. Both editions carried here have the same scope.
 */
export function fallsUnderTable411(
  _edition: EditionId,
  circuit: { readonly ratedCurrent: number; readonly socketOutlets: boolean },
): boolean {
  return circuit.ratedCurrent <= (circuit.socketOutlets ? 63 : 32);
}
