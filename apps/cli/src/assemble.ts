import type { CheckLabel, Evidence, Finding } from "@good-grounds/core";
import { isKnown, nodesOf } from "@good-grounds/core";
import { type Circuit, type InspectionFile, type Installation, resolveInstallation } from "@good-grounds/inspection";
import { CHECKS, mostDefective, outcomeOf, reasonObservations, weigh } from "@good-grounds/judgement";
import type { CurvesOfCircuit, ReportInput } from "@good-grounds/report";
import { EDITION, timeCurrentCurve } from "@good-grounds/tables";

/** Titles, formulas and regulations of every check. */
const LABELS: readonly CheckLabel[] = CHECKS.map(({ id, title, formula, regulations }) => ({
  id,
  title,
  formula,
  regulations,
}));

/** The assurance with which reports say what a sample leaves open: the usual one of statistics. */
const ASSURANCE = 0.95;

/** Everything a report or a screen is made from, for one inspection file. */
export function assemble(file: InspectionFile): ReportInput {
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
    curves: installation.circuits.flatMap((circuit, i) => curvesOf(circuit, weighing.circuits[i] ?? [], installation)),
  };
}

const DRAWN_FOR: ReadonlySet<string> = new Set(["maximum-zs", "cpc-adiabatic", "breaking-capacity"]);

/** Curves are drawn for circuits whose disconnection or fault energy is not shown to be in order. */
function curvesOf(
  circuit: Circuit,
  findings: readonly Finding[],
  installation: Installation,
): readonly CurvesOfCircuit[] {
  const inDoubt = findings.some(
    ({ check, judgement }) =>
      DRAWN_FOR.has(check) &&
      (judgement.verdict === "not-met" || judgement.verdict === "too-near" || judgement.verdict === "not-known"),
  );
  const { standard, type, rated } = circuit.device;
  if (!inDoubt || standard.kind !== "fact" || !isKnown(rated)) return [];
  const points = timeCurrentCurve({
    standard: standard.word,
    type: type.kind === "fact" ? type.word : null,
    rated: rated.value,
  });
  if (points.length === 0) return [];
  const energy = findings.find(({ check }) => check === "cpc-adiabatic");
  return [
    {
      circuit: circuit.path,
      device: `${rated.value} A${type.kind === "fact" ? ` type ${type.word}` : ""}, ${standard.word}`,
      points,
      withstand: energy === undefined ? null : withstandOf(circuit, energy),
      conductor: isKnown(circuit.cable.cpc)
        ? `protective conductor ${circuit.cable.cpc.value} mm²`
        : "protective conductor",
      faultCurrent: faultCurrentOf(circuit, installation.supply.nominalVoltage),
      permittedTime: timeOf(findings),
    },
  ];
}

/** Between a fault at the far end and one at the board, in A. */
function faultCurrentOf({ readings, board }: Circuit, nominal: Evidence<"volt">): readonly [number, number] | null {
  const [far, near] = [readings.zs, board.zdb];
  if (!isKnown(far) || !isKnown(near) || !isKnown(nominal) || !(far.high > 0) || !(near.low > 0)) return null;
  const ends = [nominal.low / far.high, nominal.high / near.low] as const;
  // With a parallel path the far reading can be the lower one.
  return [Math.min(...ends), Math.max(...ends)];
}

/** k²S² from the grounds of the energy check, in A²s. */
function withstandOf(circuit: Circuit, { judgement }: Finding): number | null {
  const { cpc } = circuit.cable;
  if (!isKnown(cpc)) return null;
  for (const node of nodesOf(judgement)) {
    if (node.kind === "published" && node.term.id === "adiabatic-k") return (node.value * cpc.value) ** 2;
  }
  return null;
}

function timeOf(findings: readonly Finding[]): number | null {
  const finding = findings.find(({ check }) => check === "maximum-zs");
  if (finding === undefined) return null;
  for (const node of nodesOf(finding.judgement)) {
    if (node.kind === "published" && node.term.id === "permitted-disconnection-time") return node.value;
  }
  return null;
}
