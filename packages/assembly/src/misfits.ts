import type { Weighing } from "@good-grounds/core";
import type { Installation } from "@good-grounds/inspection";
import { diagnoseInstallation, diagnoseRings } from "@good-grounds/readings";
import { type ReportMisfit, ringMisfit } from "@good-grounds/report";

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

/**
 * Rings, by path, whose lower Zs a check has a reason for: it was read nearer the board than R1+R2. One question has one
 * answer: another reason may be told of, and is not clear.
 */
function explainedOf({ circuits }: Weighing): ReadonlySet<string> {
  const found = circuits
    .flat()
    .filter(({ judgement, remarks }) => judgement.verdict === "met" && remarks.some(({ code }) => code === NEAR_BOARD));
  return new Set(found.map(({ path }) => path.join("/")));
}

/** The remark of `zs-agreement` on it. */
const NEAR_BOARD = "r1r2-cross-connected";

/** Every misfit of a weighed installation, for every way out alike: what is clear and worst first; no ring is told of twice. */
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
  const explained = explainedOf(weighing);
  const told = others.map((one) =>
    one.kind === "circuit-readings" && explained.has(one.path.join("/")) && !disagreeing.has(one.path.join("/"))
      ? { ...one, clear: false }
      : one,
  );
  return [...rings, ...told].sort((a, b) => Number(b.clear) - Number(a.clear) || b.odds - a.odds);
}
