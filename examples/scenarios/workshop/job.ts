import { DAYS } from "./days.ts";

/** Who asked for the inspection, of what and for what. */
export const BRIEF = {
  client: { name: "Invented Joinery Works", address: ["Unit 0, Example Way", "Anytown"] },
  premises: {
    address: ["Unit 0, Example Way", "Anytown", "AN0 0AN"],
    description: "brick workshop with a shop at the front, three-phase supply",
  },
  use: "workshop",
  tenure: "commercial-lease",
  nation: "england",
  purpose: "maintenance under the Electricity at Work Regulations",
  ageOfInstallation: "about 1998, shop refitted 2014",
  records: [{ kind: "installation certificate", date: "2014-05-12", reference: "shop" }],
};

/** When somebody was there. */
export const VISITS = [
  { date: DAYS[0], arrived: "2026-09-22T07:30:00+01:00", left: "2026-09-22T16:00:00+01:00" },
  { date: DAYS[1], arrived: "2026-09-23T07:30:00+01:00", left: "2026-09-23T13:00:00+01:00" },
];

/** Who did the work and who answers for it. */
export const PEOPLE = [
  {
    id: "inspector",
    name: "T. Instance (invented)",
    position: "inspector",
    firm: "Instance and Partner (invented)",
  },
  {
    id: "supervisor",
    name: "L. Instance (invented)",
    position: "qualified supervisor",
    firm: "Instance and Partner (invented)",
  },
];

/** What was agreed to be inspected, and what was opened. */
export const EXTENT = {
  covered: "All boards and circuits. One in four accessories and every machine isolator opened.",
  agreedWith: "the works manager",
  agreedOn: "2026-09-10",
  sampling: [
    {
      what: "accessories opened",
      population: 88,
      inspected: 22,
      defective: 2,
      how: "spread over both rooms; widened after the second defect",
    },
    { what: "machine isolators opened", population: 9, inspected: 9, defective: 0 },
  ],
};

/** What could not be inspected or tested. */
export const LIMITATIONS = [
  {
    id: "l1",
    kind: "agreed",
    what: "Alarm circuit not isolated",
    why: "The insurer asks for continuous service.",
    agreedWith: "the works manager",
  },
  {
    id: "l2",
    kind: "operational",
    what: "Ceiling void of the shop",
    why: "No access without taking the ceiling down.",
  },
];
