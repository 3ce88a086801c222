import type { Fault } from "./faults/fault.ts";
import { careOf, type FaultyJob, faultyJob, newIn } from "./job.ts";
import { leadOf, type Told } from "./judged.ts";

/** One job with a fault, as far as it is counted. */
export interface FaultyResult {
  readonly level: number;
  readonly size: number | undefined;
  /** Whether the file differs from that of the same job without the fault. */
  readonly traced: boolean;
  readonly found: boolean;
  /** By what: a check that is not met, readings that do not agree, an open point or the outcome alone. */
  readonly by: "check" | "misfit" | "open" | "nothing";
  /** Whether readings that clearly do not agree were told of at its place. */
  readonly clear: boolean;
  readonly first: boolean;
  readonly firstTwo: boolean;
  /** Named among those that are said not to be told apart. */
  readonly amongTied: boolean;
  /** Led by an innocent explanation that is said to be told apart, where something is wrong. */
  readonly innocentLead: boolean;
  readonly unaccounted: boolean;
  /** What leads, for those who look for causes. */
  readonly lead: string;
  readonly seed: string;
}

export function tryFault(fault: Fault, jobs: number, seed: string): readonly FaultyResult[] {
  const results: FaultyResult[] = [];
  for (let i = 0; i < jobs; i++) {
    const one = `${seed}/${fault.id}/${i}`;
    const level = (i % 4) + 1;
    const job = faultyJob(fault, one, careOf(level));
    if (job !== null) results.push(resultOf(fault, job, level, one));
  }
  return results;
}

function resultOf(fault: Fault, job: FaultyJob, level: number, seed: string): FaultyResult {
  const { raised, told, open } = newIn(job);
  const [lead] = [...told].sort((a, b) => Number(b.clear) - Number(a.clear));
  const outcome = fault.inOutcome === true && job.with.outcome !== "satisfactory";
  const found = job.traced && (fault.inOutcome === true ? outcome : raised.length + told.length + open.length > 0);
  return {
    level,
    size: job.planted.size,
    traced: job.traced,
    found,
    by: raised.length > 0 ? "check" : told.length > 0 ? "misfit" : found ? "open" : "nothing",
    clear: lead?.clear === true,
    ...named(fault, lead),
    innocentLead: fault.innocent !== true && lead?.clear === true && lead.innocent && lead.toldApart,
    unaccounted: lead?.unaccounted === true,
    lead: lead === undefined ? "" : leadOf(lead),
    seed,
  };
}

function named({ named: name }: Fault, lead: Told | undefined) {
  const says = (count: number) => lead?.explanations.slice(0, count).some((id) => name.test(id)) === true;
  return { first: says(1), firstTwo: says(2), amongTied: lead !== undefined && says(Math.max(1, lead.tied)) };
}
