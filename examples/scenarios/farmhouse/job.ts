import { DAYS } from "./days.ts";

/** Who asked for the inspection, of what and for what. */
export const BRIEF = {
  client: { name: "Invented Farm Partnership", address: ["Example Farm", "Nowhere"] },
  premises: {
    address: ["Example Farm", "Nowhere", "NW0 0ZZ"],
    description: "stone farmhouse with barn and parlour, overhead supply",
  },
  use: "agricultural",
  tenure: "owner-occupied",
  nation: "wales",
  purpose: "insurer's condition",
  ageOfInstallation: "house about 2009, parlour before 1980",
  records: [],
};

/** When somebody was there. */
export const VISITS = [
  { date: DAYS[0], arrived: "2026-11-10T08:50:00+00:00", left: "2026-11-10T15:40:00+00:00" },
  {
    date: DAYS[1],
    arrived: "2026-11-11T09:00:00+00:00",
    left: "2026-11-11T11:15:00+00:00",
    note: "Barn and observations.",
  },
];

/** Who did the work and who answers for it. */
export const PEOPLE = [
  {
    id: "inspector",
    name: "R. Example (invented)",
    position: "inspector and qualified supervisor",
    firm: "Example Rural Electrics (invented)",
  },
];

/** What was agreed to be inspected, and what was opened. */
export const EXTENT = {
  covered: "House, barn, borehole pump and the parlour as far as animals allowed.",
  notCovered: "Portable equipment; the cable under the yard.",
  agreedWith: "the partnership's manager",
  agreedOn: "2026-11-02",
  sampling: [
    { what: "accessories opened, house", population: 61, inspected: 14, defective: 0 },
    { what: "accessories opened, barn", population: 15, inspected: 6, defective: 1 },
  ],
};

/** What could not be inspected or tested. */
export const LIMITATIONS = [
  {
    id: "l1",
    kind: "operational",
    what: "Milking parlour circuit not tested",
    why: "Animals could not be moved on either day.",
    agreedWith: "the partnership's manager",
  },
  {
    id: "l2",
    kind: "agreed",
    what: "Buried cables not exposed",
    why: "No digging without cause.",
    agreedWith: "the partnership's manager",
  },
];
