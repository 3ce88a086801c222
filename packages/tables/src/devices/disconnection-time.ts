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
const DIRECT = source("BS 7671 Table 41.1", "2008, d.c.", "published", {
  doubt: "read in the 2008 text; not compared with later editions",
});
const DIRECT_TN = source("BS 7671 Table 41.1", "2018 and later, d.c.", "memory", {
  doubt: "1 s is remembered from IEC 60364-4-41:2017; the 2008 text has 5 s; do not rely on it",
});
const LONGER = source("BS 7671 411.3.2.3 and 411.3.2.4", "2008 to 2018+A4", "published");

/** Voltage bands of Table 41.1 with the times in s: a.c. and d.c., TN and TT. Null: no disconnection asked for this reason. */
const ROWS = [
  { above: 50, upTo: 120, TN: 0.8, TT: 0.3, directTN: null, directTT: null },
  { above: 120, upTo: 230, TN: 0.4, TT: 0.2, directTN: 1, directTT: 0.4 },
  { above: 230, upTo: 400, TN: 0.2, TT: 0.07, directTN: 0.4, directTT: 0.2 },
  { above: 400, upTo: Number.POSITIVE_INFINITY, TN: 0.1, TT: 0.04, directTN: 0.1, directTT: 0.1 },
] as const;

const NODES = ROWS.map((row) => {
  const band = row.above === 400 ? "U0 > 400 V" : `${row.above} V < U0 ≤ ${row.upTo} V`;
  const direct = (system: "TN" | "TT", seconds: number | null) => {
    const words = `${system}, d.c., ${band}`;
    if (seconds === null) return notTabulated(TERM.disconnectionTime, "Table 41.1", words);
    const from = system === "TN" && row.upTo === 230 ? DIRECT_TN : DIRECT;
    return published(TERM.disconnectionTime, seconds, from, words);
  };
  return {
    upTo: row.upTo,
    TN: published(TERM.disconnectionTime, row.TN, TABLE, `TN, ${band}`),
    TT: published(TERM.disconnectionTime, row.TT, TABLE, `TT, ${band}`),
    directTN: direct("TN", row.directTN),
    directTT: direct("TT", row.directTT),
  };
});

const OTHER = Object.freeze({
  TN: published(TERM.disconnectionTime, 5, LONGER, "TN, distribution circuit or final circuit outside 411.3.2.2"),
  TT: published(TERM.disconnectionTime, 1, LONGER, "TT, distribution circuit or final circuit outside 411.3.2.2"),
});

/** Disconnection time in a reduced low voltage system (55 V or 63.5 V to earth), s. */
export const reducedLowVoltageTime = published(
  TERM.disconnectionTime,
  5,
  source("BS 7671 411.8.3", "2008 to 2018+A4", "memory"),
  "reduced low voltage system",
);

/**
 * Permitted disconnection time in s for an alternating nominal voltage to earth in V: of Table 41.1 for final circuits
 * within its scope, otherwise 5 s (TN) and 1 s (TT). IT systems and voltages of 50 V or less have no row. A TT circuit
 * cleared by an overcurrent device, with every extraneous-conductive-part bonded, may use the TN times (411.3.2.2): ask
 * for the TN system then.
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

/** The time of Table 41.1 in s for a direct nominal voltage to earth in V. Below 120 V and in IT systems there is none. */
export function permittedDirectCurrentTime(
  system: EarthingSystem,
  nominalVoltage: number,
): Published<"second"> | NotKnown<"second"> {
  const row = system === "IT" || !(nominalVoltage > 50) ? undefined : NODES.find(({ upTo }) => nominalVoltage <= upTo);
  if (row !== undefined) return system === "TT" ? row.directTT : row.directTN;
  return notTabulated(TERM.disconnectionTime, "Table 41.1", `${system}, ${nominalVoltage} V d.c.`);
}

/**
 * Whether a final circuit falls under Table 41.1 (411.3.2.2): up to 63 A with socket-outlets, up to 32 A with fixed
 * equipment only. Both editions carried here have the same scope; before 2018 it was 32 A for every final circuit.
 */
export function fallsUnderTable411(
  _edition: EditionId,
  circuit: { readonly ratedCurrent: number; readonly socketOutlets: boolean },
): boolean {
  return circuit.ratedCurrent <= (circuit.socketOutlets ? 63 : 32);
}
