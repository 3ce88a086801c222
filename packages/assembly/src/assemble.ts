import { CHECKS, curvesOf, mostDefective } from "@good-grounds/computations";
import { type InspectionFile, type Installation, resolveInstallation } from "@good-grounds/inspection";
import { dutiesOf, harm, outcomeOf, reasonObservations, weigh } from "@good-grounds/judgement";
import { conformities } from "@good-grounds/readings";
import type { ReportInput } from "@good-grounds/report";
import { EDITION } from "@good-grounds/tables";
import { OWN_TOPICS, type Topics } from "@good-grounds/topics";
import { cableOf } from "./cable-of-observation.ts";
import { misfitsOf } from "./misfits.ts";

/** Titles, formulas and regulations of every check, and how near to harm its failure is. */
const LABELS: ReportInput["checks"] = CHECKS.map(({ id, title, formula, regulations }) => ({
  id,
  title,
  formula,
  regulations,
  harm: harm(id),
}));

/** The assurance with which reports say what a sample leaves open: the usual one of statistics. */
const ASSURANCE = 0.95;

/** Everything a report or a screen is made from, for one inspection file; with `probability`, how sure each finding is. */
export function assemble(file: InspectionFile, probability = false, topics: Topics = OWN_TOPICS): ReportInput {
  const installation = resolveInstallation(file);
  const weighing = weigh(installation);
  const reasoned = reasonObservations(installation, weighing, topics);
  const misfits = misfitsOf(installation, weighing);
  const outcome = outcomeOf(installation, weighing, reasoned, misfits, topics);
  const { id, label, notes } = EDITION[file.edition];
  return {
    installation,
    weighing,
    outcome,
    duties: dutiesOf(installation, outcome),
    checks: LABELS,
    edition: { id, label, notes },
    ...(topics.folder === undefined ? {} : { folder: topics.folder }),
    samples: file.extent.sampling.map(({ population, inspected, defective }) =>
      population === 0
        ? null
        : { most: mostDefective(population, inspected, defective, ASSURANCE), assurance: ASSURANCE },
    ),
    reasoned: withCables(installation, reasoned),
    misfits,
    ...(probability ? { conformity: conformities(weighing, installation) } : {}),
    curves: installation.circuits.flatMap((circuit, i) => curvesOf(circuit, weighing.circuits[i] ?? [], installation)),
  };
}

/** The reasoning of the observations, each with the cable it is about where that can be drawn. */
function withCables(
  installation: Installation,
  reasoned: ReturnType<typeof reasonObservations>,
): ReportInput["reasoned"] {
  const observations = new Map(installation.observations.map((one) => [one.id, one]));
  return reasoned.map((one) => {
    const observation = observations.get(one.observation);
    const cable = observation === undefined ? undefined : cableOf(observation, installation);
    return cable === undefined ? one : { ...one, cable };
  });
}
