import type { CheckLabel } from "@good-grounds/core";
import { type InspectionFile, resolveInstallation } from "@good-grounds/inspection";
import {
  CHECKS,
  conformities,
  curvesOf,
  diagnoseInstallation,
  mostDefective,
  outcomeOf,
  reasonObservations,
  weigh,
} from "@good-grounds/judgement";
import type { ReportInput } from "@good-grounds/report";
import { EDITION } from "@good-grounds/tables";

/** Titles, formulas and regulations of every check. */
const LABELS: readonly CheckLabel[] = CHECKS.map(({ id, title, formula, regulations }) => ({
  id,
  title,
  formula,
  regulations,
}));

/** The assurance with which reports say what a sample leaves open: the usual one of statistics. */
const ASSURANCE = 0.95;

/** Everything a report or a screen is made from, for one inspection file; with `probability`, how sure each finding is. */
export function assemble(file: InspectionFile, probability = false): ReportInput {
  const installation = resolveInstallation(file);
  const weighing = weigh(installation);
  const { id, label, notes } = EDITION[file.edition];
  return {
    installation,
    weighing,
    outcome: outcomeOf(file),
    checks: LABELS,
    edition: { id, label, notes },
    samples: file.extent.sampling.map(({ population, inspected, defective }) =>
      population === 0
        ? null
        : { most: mostDefective(population, inspected, defective, ASSURANCE), assurance: ASSURANCE },
    ),
    reasoned: reasonObservations(installation, weighing),
    misfits: diagnoseInstallation(installation),
    ...(probability ? { conformity: conformities(weighing, installation) } : {}),
    curves: installation.circuits.flatMap((circuit, i) => curvesOf(circuit, weighing.circuits[i] ?? [], installation)),
  };
}
