import { DAY } from "./days.ts";

/** Who asked for the inspection, of what and for what. */
export const BRIEF = {
  client: { name: "A. N. Landlord (invented)", address: ["3 Example Row", "Anytown"] },
  premises: {
    address: ["12 Example Terrace", "Anytown", "AN1 1AA"],
    description: "two-storey terraced house, about 1930, three bedrooms",
    occupier: "tenant, at home during the visit",
  },
  use: "dwelling",
  tenure: "private-rented",
  nation: "england",
  purpose: "five-yearly inspection of a let house",
  ageOfInstallation: "board about 2016, some cables older",
  alterations: "Shower and garden shed added later; no certificates found.",
  records: [{ kind: "condition report", date: "2021-09-30", reference: "of another firm" }],
  lastInspection: "2021-09-30",
};

/** When somebody was there. */
export const VISITS = [{ date: DAY, arrived: "2026-10-06T09:05:00+01:00", left: "2026-10-06T12:10:00+01:00" }];

/** Who did the work and who answers for it. */
export const PEOPLE = [
  {
    id: "inspector",
    name: "J. Sample (invented)",
    position: "inspector",
    firm: "Sample Electrical (invented)",
    address: ["7 Example Yard", "Anytown"],
  },
  {
    id: "supervisor",
    name: "M. Specimen (invented)",
    position: "qualified supervisor",
    firm: "Sample Electrical (invented)",
  },
];

/** What was agreed to be inspected, and what was opened. */
export const EXTENT = {
  covered:
    "All circuits of the house and the supply to the garden shed. One accessory in five opened, spread over all rooms.",
  notCovered: "Concealed cables; the loft beyond the hatch.",
  agreedWith: "A. N. Landlord (invented)",
  agreedOn: "2026-09-28",
  sampling: [
    { what: "accessories opened", population: 46, inspected: 10, defective: 1, how: "at least one in each room" },
  ],
};

/** What could not be inspected or tested. */
export const LIMITATIONS = [
  {
    id: "l1",
    kind: "agreed",
    what: "Concealed cables were not exposed",
    why: "No opening of walls or floors without cause.",
    agreedWith: "A. N. Landlord (invented)",
  },
  {
    id: "l2",
    kind: "operational",
    what: "Loft space beyond the hatch",
    why: "Boarded over and filled with the tenant's belongings.",
    agreedWith: "tenant",
  },
  {
    id: "l3",
    kind: "operational",
    what: "Insulation resistance of the smoke alarm circuit",
    why: "The alarms cannot be disconnected without damage.",
  },
];
