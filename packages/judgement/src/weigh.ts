import { type Conclusion, type Finding, matter, Reckoner, type Weighing } from "@good-grounds/core";
import type { Installation } from "@good-grounds/inspection";
import type { Check, DoesNotArise, Scope, Subjects } from "./check.ts";
import { concluded } from "./check.ts";
import { BOARD_CHECKS, BOND_CHECKS, CIRCUIT_CHECKS, RCD_CHECKS, SUPPLY_CHECKS } from "./checks/index.ts";
import type { Given, Needs } from "./need.ts";

const WITH_GROUNDS = new Reckoner(true);
const VERDICTS_ONLY = new Reckoner(false);

const APPLICABILITY = matter("applicability", "whether the question arises");

/**
 * Weighs an installation by every check. With `grounds` false the same computations run but the lines they came from
 * are dropped: verdicts and margins are the same, the argument behind them is not kept.
 */
export function weigh(installation: Installation, grounds = true): Weighing {
  const reckon = grounds ? WITH_GROUNDS : VERDICTS_ONLY;
  const run = <S extends Scope>(checks: readonly Check<S>[], subject: Subjects[S], path: Finding["path"]) =>
    checks.map((one) => apply(one, subject, installation, reckon, path));
  const { supply, boards, circuits } = installation;
  return {
    supply: [
      ...run(SUPPLY_CHECKS, installation, supply.path),
      ...supply.bonding.flatMap((bond) => run(BOND_CHECKS, bond, bond.path)),
    ],
    boards: boards.map((board) => [
      ...run(BOARD_CHECKS, board, board.path),
      ...board.rcds.flatMap((rcd) => run(RCD_CHECKS, rcd, rcd.path)),
    ]),
    circuits: circuits.map((circuit) => [
      ...run(CIRCUIT_CHECKS, circuit, circuit.path),
      ...circuit.residual.devices.flatMap((rcd) =>
        circuit.board.rcds.includes(rcd) ? [] : run(RCD_CHECKS, rcd, rcd.path),
      ),
    ]),
  };
}

function apply<S extends Scope>(
  one: Check<S>,
  subject: Subjects[S],
  installation: Installation,
  reckon: Reckoner,
  path: Finding["path"],
): Finding {
  const { judgement, beside, remarks, settles } = applied(one, subject, installation, reckon);
  // Written out: spreading the conclusion took a tenth of the whole weighing.
  return settles === undefined
    ? { check: one.id, path, judgement, beside, remarks }
    : { check: one.id, path, judgement, beside, remarks, settles };
}

function applied<S extends Scope>(
  one: Check<S>,
  subject: Subjects[S],
  installation: Installation,
  reckon: Reckoner,
): Conclusion {
  const gathered = one.gather(subject, installation);
  if (!isDoesNotArise(gathered)) return one.conclude(gathered, reckon);
  return concluded(reckon.settled(APPLICABILITY, "not-applicable", gathered.doesNotArise, ...gathered.because));
}

function isDoesNotArise(gathered: Given<Needs> | DoesNotArise): gathered is DoesNotArise {
  return typeof gathered.doesNotArise === "string";
}
