import { isAtOrigin } from "@good-grounds/computations";
import { isKnownFact, type Misfit } from "@good-grounds/core";
import type { Board, Installation } from "@good-grounds/inspection";
import { boardReadings } from "./board-fit.ts";
import { boardMisfits } from "./board-misfits.ts";
import { readingOf } from "./fitted-reading.ts";
import { insulationMisfits } from "./insulation-misfits.ts";
import { noContinuityMisfits } from "./no-continuity-misfits.ts";
import { polarityMisfits } from "./polarity-misfits.ts";
import { residualMisfits } from "./residual-misfits.ts";
import { supplyMisfits } from "./supply-misfits.ts";
import { togetherMisfits } from "./together-misfits.ts";

/** Boards are fitted until so many circuits were: a file that claims more must not hold anyone up. */
const MOST_CIRCUITS = 2000;

/**
 * Readings of an installation that cannot all be true, worst first: circuit by circuit, board by board, at the origin.
 * Each with the explanations looked at, how likely they are beside each other given what the instruments can err, what
 * each reading would be under them and what to read next. A misfit is no classification. `disagreeing`: paths, joined by
 * "/", of the circuits whose readings a check found not to agree; each is told of here as clear.
 */
export function diagnoseInstallation(
  installation: Installation,
  disagreeing: ReadonlySet<string> = NOTHING,
): readonly Misfit[] {
  const { boards } = installation;
  const fedBy = new Map<string, Board[]>();
  for (const board of boards) {
    const { feeder } = board;
    if (feeder === undefined) continue;
    const key = `${feeder.board.id} ${feeder.id}`;
    fedBy.set(key, [...(fedBy.get(key) ?? []), board]);
  }
  const lineNeutral = lineNeutralOf(installation);
  const open = noContinuityMisfits(installation);
  // What reads as not connected through is told of as that: Zs is not held against it as well.
  const told = new Set(open.map(({ path }) => path.join("/")));
  const held = new Set([...disagreeing].filter((path) => !told.has(path)));
  const found: Misfit[] = [];
  let left = MOST_CIRCUITS;
  for (const board of boards) {
    left -= board.circuits.length;
    if (left < 0) break;
    const readings = boardReadings(board, installation, fedBy, isAtOrigin(board) ? lineNeutral : undefined, held);
    if (readings !== undefined) found.push(...boardMisfits(readings, installation));
  }
  const supply = supplyMisfits(installation);
  found.push(
    ...supply.filter((one) => !isToldElsewhere(one, [...found, ...supply])),
    ...insulationMisfits(installation),
    ...togetherMisfits(installation),
    ...open,
    ...residualMisfits(installation),
    ...polarityMisfits(installation),
  );
  return found.sort((a, b) => Number(b.clear) - Number(a.clear) || b.odds - a.odds);
}

/**
 * What the fault currents say of a board is said with its circuits where they show it as well, and not at all where one
 * of the currents is not what its own loop gives.
 */
function isToldElsewhere({ kind, path, readings, explanations }: Misfit, found: readonly Misfit[]): boolean {
  if (kind !== "supply-loop") return false;
  const place = path.join("/");
  const clear = found.filter((one) => one.clear);
  const byLoop = clear.some((one) => one.kind === "board-loop" && one.path.join("/") === place);
  if (byLoop && !readings.some(({ name }) => name === "Zdb")) return true;
  const byCurrent = BY_CURRENT.has(explanations[0]?.id ?? "");
  return (
    byCurrent && clear.some((one) => one.kind === "fault-current" && ["supply", place].includes(one.path.join("/")))
  );
}

const BY_CURRENT: ReadonlySet<string> = new Set(["joint-at-main-switch", "fault-current-wrong"]);

const NOTHING: ReadonlySet<string> = new Set();

/** Line to neutral loop at the origin: as read, or from a fault current that is one to neutral. */
function lineNeutralOf({ supply }: Installation): number | undefined {
  const { phases, faultCurrentMethod } = supply;
  const read = readingOf(supply.lineNeutralLoop);
  if (read !== undefined && read.value > 0) return read.value;
  const current = readingOf(supply.faultCurrent);
  const single = isKnownFact(phases) && phases.word === "1";
  const toNeutral = isKnownFact(faultCurrentMethod) && faultCurrentMethod.word === "line-neutral";
  return current !== undefined && current.value > 0 && (single || toNeutral) ? 230 / current.value : undefined;
}
