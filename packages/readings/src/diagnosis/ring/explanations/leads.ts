import type { Explanation, Tried } from "../explanation.ts";
import type { Banded, Fault, Size } from "../fault.ts";

/** Readings taken with one pair of leads: all, those from end to end, those at the points, or one from end to end. */
export type ReadWithLeads = keyof typeof READ;

export interface LeadsSaid {
  readonly kind: "leads-not-nulled";
  readonly readings: ReadWithLeads;
  readonly ohms: Banded;
}

/** r1, rn, r2 and the readings at the points, by number. */
const READ = { all: [0, 1, 2, 3], ends: [0, 1, 2], points: [3], r1: [0], rn: [1], r2: [2] } as const;
const COMMON: Readonly<Record<ReadWithLeads, number>> = {
  all: 0.01,
  ends: 0.004,
  points: 0.004,
  r1: 0.01,
  rn: 0.01,
  r2: 0.01,
};
/** Leads with their probes have some tenths of an ohm and never more than the last, Ω. */
const OHMS: Size = { value: 0.12, deviation: 0.2, low: 0.005, high: 0.6 };
const TRIED = 0.15;

/** The leads were not nulled before these readings. */
export function leadsFor(readings: ReadWithLeads): Fault<LeadsSaid> {
  return {
    key: `leads ${readings}`,
    common: COMMON[readings],
    sizes: [OHMS],
    ofMethod: true,
    bears(model, values, at) {
      for (const one of READ[readings]) model.addLeads(one, values[at] as number);
    },
    says: ({ band }) => ({ kind: "leads-not-nulled", readings, ohms: band(0) }),
  };
}

export const leads: Explanation<LeadsSaid> = {
  id: "leads-not-nulled",
  innocent: true,
  tried({ base, problem: { input, observed } }): readonly Tried<LeadsSaid>[] {
    if (base.hypothesis.faults.some(({ key }) => key.startsWith("leads"))) return [];
    // Without readings at points, those from end to end are all.
    const kinds = (Object.keys(READ) as ReadWithLeads[]).filter(
      (one) => input.points.length > 0 || (one !== "ends" && one !== "points"),
    );
    const isLow = (i: number) => (observed[i]?.shown ?? 0) < (base.expected[i] ?? 0);
    const isTried = (one: ReadWithLeads) =>
      one === "all" || READ[one].length !== 1 || one === "points" || !isLow(READ[one][0]);
    return kinds.filter(isTried).map((readings) => ({ fault: leadsFor(readings), sizes: [TRIED] }));
  },
};
