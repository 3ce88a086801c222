import type { DutyTable } from "../row.ts";

/** Dangers in homes of social landlords in England. */
export const ENGLAND_HAZARDS: DutyTable = {
  statute: {
    id: "england-hazards",
    title: "Hazards in Social Housing (Prescribed Requirements) (England) Regulations 2025",
    number: "under section 10A of the Landlord and Tenant Act 1985",
  },
  edition: "in force since 27 October 2025",
  rows: [
    {
      id: "england-emergency-hazard",
      provision: "emergency hazards",
      basis: "memory",
      doubt: "numbers of regulations and the date of the wider list of hazards are not checked",
      who: "landlord",
      when: ["england", "social-let", "danger"],
      since: "2025-10-27",
      time: { kind: "within", number: 24, unit: "hour", from: "told", firstDay: "elapsed" },
    },
  ],
};
