import { type Evidence, type Finding, isKnown, type Path, type Unit } from "@good-grounds/core";
import type { Circuit, Installation, ResidualDevice } from "@good-grounds/inspection";
import { rcdsOf } from "./rcds-of.ts";

/** Checks whose failure makes others fail; the first is looked at first. */
const CAUSES: readonly string[] = ["rcd-time", "electrode"];

/** Whether other checks may fail because this one does. */
export function isCause({ check, judgement }: Finding): boolean {
  return judgement.verdict === "not-met" && CAUSES.includes(check);
}

/** Causes in the order in which they are looked at. */
export function byCause(a: Finding, b: Finding): number {
  const rank = ({ check }: Finding) => CAUSES.indexOf(check);
  return rank(a) - rank(b);
}

/** The touch voltage that may stand, in volts, and the residual current of additional protection, in amperes. */
const TOUCH = 50;
const ADDITIONAL = 0.03;

/** Whether a current through a loop leaves no more than the touch voltage: so an RCD that worked would do. */
function wouldDo(loop: Evidence<Unit>, residual: number): boolean {
  return isKnown(loop) && loop.high * residual <= TOUCH;
}

/**
 * Findings that are as they are because another is, and that would not be otherwise: what an RCD that fails its test leaves
 * of the circuits behind it and of the electrode, where it would do if it worked; and what an electrode that is too high
 * leaves of the loops through it.
 */
export function followFrom(
  cause: Finding,
  findings: readonly Finding[],
  installation: Installation,
): readonly Finding[] {
  if (cause.check === "electrode") return findings.filter(({ check }) => check === "maximum-zs");
  if (cause.check !== "rcd-time") return [];
  const key = cause.path.join("/");
  const rcd = rcdsOf(installation).find(({ path }) => path.join("/") === key);
  if (rcd === undefined || !isKnown(rcd.residual)) return [];
  const residual = rcd.residual.high;
  const behind = new Map(
    installation.circuits.filter((one) => isBehind(one, rcd)).map((one) => [keyOf(one.path), one]),
  );
  return findings.filter(({ check, path }) => {
    if (check === "electrode") return behind.size > 0 && wouldDo(installation.supply.ra, residual);
    const circuit = behind.get(keyOf(path));
    if (circuit === undefined) return false;
    if (check === "additional-protection") return residual <= ADDITIONAL;
    return check === "maximum-zs" && wouldDo(circuit.readings.zs, residual);
  });
}

const keyOf = (path: Path) => path.join("/");

/** Whether a device is in the way of the current of a circuit to the origin. */
function isBehind(circuit: Circuit, rcd: ResidualDevice): boolean {
  for (let at: Circuit | undefined = circuit; at !== undefined; at = at.board.feeder)
    if (at.residual.devices.includes(rcd)) return true;
  return false;
}
