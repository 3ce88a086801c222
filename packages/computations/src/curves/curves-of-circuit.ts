import { type Basis, type Evidence, type Finding, isKnown, nodesOf, type Path } from "@good-grounds/core";
import type { Circuit, Installation } from "@good-grounds/inspection";
import { timeCurrentCurve } from "@good-grounds/tables";

/** What a time-current drawing of one circuit shows. */
export interface CircuitCurves {
  readonly circuit: Path;
  /** The device in words: "32 A type B, BS EN 60898". */
  readonly device: string;
  /** It operates within `seconds` somewhere from `low` to `high` amperes. */
  readonly points: readonly {
    readonly seconds: number;
    readonly low: number;
    readonly high: number;
    readonly basis: Basis;
  }[];
  /** Energy the weakest conductor withstands, k²S² in A²s; null where it is not known. */
  readonly withstand: number | null;
  readonly conductor: string;
  /** Prospective fault current between far end and board in A; null where it is not known. */
  readonly faultCurrent: readonly [low: number, high: number] | null;
  /** Permitted disconnection time in s; null where it is not known. */
  readonly permittedTime: number | null;
}

const DRAWN_FOR: ReadonlySet<string> = new Set(["maximum-zs", "cpc-adiabatic", "breaking-capacity"]);

/** Curves are drawn for circuits whose disconnection or fault energy is not shown to be in order. */
export function curvesOf(
  circuit: Circuit,
  findings: readonly Finding[],
  installation: Installation,
): readonly CircuitCurves[] {
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
