import {
  BOARD_CHECKS,
  BOND_CHECKS,
  type Check,
  CIRCUIT_CHECKS,
  concluded,
  DoesNotArise,
  RCD_CHECKS,
  type Scope,
  SUPPLY_CHECKS,
  type Subjects,
} from "@good-grounds/computations";
import { type Finding, matter, Reckoner, type Weighing } from "@good-grounds/core";
import type { Board, Circuit, Installation } from "@good-grounds/inspection";

const WITH_GROUNDS = new Reckoner(true);
const VERDICTS_ONLY = new Reckoner(false);

const APPLICABILITY = matter("applicability", "whether the question arises");

/** One weighing under way: what is weighed, and the arithmetic it is weighed with. */
interface Run {
  readonly installation: Installation;
  readonly reckon: Reckoner;
}

/**
 * Weighs an installation by every check. With `grounds` false the same computations run but the lines they came from
 * are dropped: verdicts and margins are the same, the argument behind them is not kept.
 */
export function weigh(installation: Installation, grounds = true): Weighing {
  const run: Run = { installation, reckon: grounds ? WITH_GROUNDS : VERDICTS_ONLY };
  return {
    supply: ofSupply(run),
    boards: installation.boards.map((board) => ofBoard(run, board)),
    circuits: installation.circuits.map((circuit) => ofCircuit(run, circuit)),
  };
}

function ofSupply(run: Run): readonly Finding[] {
  const { supply } = run.installation;
  const found: Finding[] = [];
  add(found, run, SUPPLY_CHECKS, run.installation, supply.path);
  for (const bond of supply.bonding) add(found, run, BOND_CHECKS, bond, bond.path);
  return found;
}

function ofBoard(run: Run, board: Board): readonly Finding[] {
  const found: Finding[] = [];
  add(found, run, BOARD_CHECKS, board, board.path);
  for (const rcd of board.rcds) add(found, run, RCD_CHECKS, rcd, rcd.path);
  return found;
}

function ofCircuit(run: Run, circuit: Circuit): readonly Finding[] {
  const found: Finding[] = [];
  add(found, run, CIRCUIT_CHECKS, circuit, circuit.path);
  // A device of the board is told there, once.
  for (const rcd of circuit.residual.devices)
    if (!circuit.board.rcds.includes(rcd)) add(found, run, RCD_CHECKS, rcd, rcd.path);
  return found;
}

function add<S extends Scope>(
  found: Finding[],
  { installation, reckon }: Run,
  checks: readonly Check<S>[],
  subject: Subjects[S],
  path: Finding["path"],
): void {
  for (const check of checks) {
    const { judgement, beside, remarks, settles } = applied(check, subject, installation, reckon);
    // Written out: spreading the conclusion took a tenth of the whole weighing.
    found.push(
      settles === undefined
        ? { check: check.id, path, judgement, beside, remarks }
        : { check: check.id, path, judgement, beside, remarks, settles },
    );
  }
}

function applied<S extends Scope>(check: Check<S>, subject: Subjects[S], installation: Installation, reckon: Reckoner) {
  const given = check.gather(subject, installation);
  if (!(given instanceof DoesNotArise)) return check.conclude(given, reckon);
  return concluded(reckon.settled(APPLICABILITY, "not-applicable", given.reason, ...given.because));
}
