import { rcdWorks, residualsBefore } from "@good-grounds/computations";
import { isKnown, isKnownFact, Reckoner } from "@good-grounds/core";
import type { Circuit } from "@good-grounds/inspection";

/** What is asked of an RCD before a circuit. */
export interface AskedRcd {
  /** The greatest rated residual operating current, in A. */
  readonly most: number;
  /** Whether it has to open without delay, as additional protection does (415.1.1). */
  readonly undelayed?: boolean;
}

/** An RCD of additional protection (415.1.1). */
export const ADDITIONAL: AskedRcd = Object.freeze({ most: 0.03, undelayed: true });

const RECKON = new Reckoner(false);
const SLACK = 1e-9;

/**
 * Whether an RCD as asked that its test showed to work stands before a circuit, anywhere on the way to the origin. No:
 * there is none, or none of those there is sensitive enough, undelayed where that is asked, and passed its test.
 */
export function behindRcd(circuit: Circuit, { most, undelayed = false }: AskedRcd): "yes" | "no" | "open" {
  const { present, devices } = residualsBefore(circuit);
  if (isKnownFact(present) && !present.word) return "no";
  const judged = devices.map(({ residual, delay, test }) => {
    if (isKnown(residual) && residual.low > most * (1 + SLACK)) return "no";
    if (undelayed && isKnownFact(delay) && delay.word !== "general") return "no";
    const { verdict } = rcdWorks(test, RECKON);
    if (verdict === "not-met") return "no";
    return verdict === "met" && isKnown(residual) && residual.high <= most * (1 + SLACK) ? "yes" : "open";
  });
  if (judged.includes("yes")) return "yes";
  return judged.length > 0 && judged.every((one) => one === "no") ? "no" : "open";
}
