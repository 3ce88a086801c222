import { CHECKS, curvesOf, mostDefective } from "@good-grounds/computations";
import type { CheckLabel, Weighing } from "@good-grounds/core";
import { type InspectionFile, type Installation, resolveInstallation } from "@good-grounds/inspection";
import { dutiesOf, outcomeOf, reasonObservations, weigh } from "@good-grounds/judgement";
import { conformities, diagnoseInstallation, diagnoseRings } from "@good-grounds/readings";
import { type ReportInput, type ReportMisfit, ringMisfit } from "@good-grounds/report";
import { EDITION } from "@good-grounds/tables";
import { OWN_TOPICS, type Topics } from "@good-grounds/topics";
import { cableOf } from "./cable-of-observation.ts";

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

/** Ring readings in a reading of circuits and boards; a ring that was looked at by itself has its own, better words. */
const OF_A_RING: ReadonlySet<string> = new Set(["r1", "rn", "r2", "R1+R2"]);

/** Checks that ask whether the readings of a circuit agree with each other and with its cable. */
const OF_AGREEMENT: ReadonlySet<string> = new Set(["zs-agreement", "r1r2-length", "ring-continuity"]);

/** Circuits, by path, whose readings do not agree by a check: what does not agree is told of in one voice. */
function disagreeingOf({ circuits }: Weighing): ReadonlySet<string> {
  const found = circuits
    .flat()
    .filter(({ check, judgement }) => OF_AGREEMENT.has(check) && judgement.verdict === "not-met");
  return new Set(found.map(({ path }) => path.join("/")));
}

/** Everything that does not agree, what is clear and worst first; no ring is told of twice. */
export function misfitsOf(installation: Installation, weighing: Weighing): readonly ReportMisfit[] {
  const disagreeing = disagreeingOf(weighing);
  const rings = diagnoseRings(installation)
    .map(ringMisfit)
    .map((ring) => (disagreeing.has(ring.path.join("/")) ? { ...ring, clear: true } : ring));
  const places = new Set(rings.map(({ path }) => path.join("/")));
  const others = diagnoseInstallation(installation, disagreeing).filter(({ kind, path, readings }) => {
    if (kind !== "circuit-readings" || !places.has(path.join("/"))) return true;
    const out = readings.filter(({ measured, low, high }) => measured < low || measured > high);
    return out.length > 0 && !out.some(({ name }) => OF_A_RING.has(name));
  });
  return [...rings, ...others].sort((a, b) => Number(b.clear) - Number(a.clear) || b.odds - a.odds);
}
