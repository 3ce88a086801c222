import type { EditionId, Nation, PremisesUse, Tenure } from "@good-grounds/core";

export const USES: Readonly<Record<PremisesUse, string>> = {
  dwelling: "Dwelling",
  "house-in-multiple-occupation": "House in multiple occupation",
  shop: "Shop",
  office: "Office",
  workshop: "Workshop",
  agricultural: "Agricultural",
  industrial: "Industrial",
  hotel: "Hotel",
  public: "Public building",
  other: "Other",
};

export const TENURE_WORDS: Readonly<Record<Tenure, string>> = {
  "owner-occupied": "Lived in or used by the owner",
  "private-rented": "Let privately",
  "social-rented": "Let by a social landlord",
  "commercial-lease": "Commercial lease",
  other: "Other",
};

export const NATION_WORDS: Readonly<Record<Nation, string>> = {
  england: "England",
  wales: "Wales",
  scotland: "Scotland",
  "northern-ireland": "Northern Ireland",
};

export const EDITION_WORDS: Readonly<Record<EditionId, string>> = {
  "2018+A4": "BS 7671:2018+A4:2026, in force",
  "2018+A2+A3": "BS 7671:2018+A2+A3, withdrawn 15 October 2026",
};

/** Words of the brief. */
export const BRIEF = {
  client: "Who ordered it",
  clientName: "Name of the client",
  clientAddress: "Address of the client",
  lines: "One line each, up to six.",
  premises: "The premises",
  address: "Address of the premises",
  uprn: "UPRN",
  uprnHelp: "The number of the property, if it is known.",
  uprnFault: "Up to 12 digits.",
  description: "What it is",
  descriptionHelp: "Such as: two-storey terraced house, about 1930.",
  occupier: "Who is there",
  occupierHelp: "And what to take care of: medical equipment, work from home, animals, children.",
  use: "Use",
  tenure: "Tenure",
  tenureHelp: "With the nation it decides which law applies, and its dates.",
  nation: "Nation",
  purpose: "Why the inspection is wanted",
  purposes: [
    "periodic inspection of a let home",
    "before letting",
    "before buying or selling",
    "periodic inspection at the place of work",
    "for a licence",
    "for the insurer",
    "after fire or flood",
    "after a fault or a shock",
  ],
  job: "The job",
  title: "Name of the job",
  titleHelp: "As it stands in your list. Without one the address is used.",
  inspectedOn: "Date of the inspection",
  inspectedHelp: "Legal periods are counted from it. With several days: the day on which the first finding was made.",
  edition: "Edition of the standard",
  history: "What is known",
  age: "Age of the installation",
  alterations: "Alterations and additions",
  lastInspection: "Date of the last inspection",
  records: "Records seen or asked for",
  recordsHelp: "Last report, certificates, the distributor's declared values.",
  record: "record",
  addRecord: "Add a record",
  recordKind: "What it is",
  recordKinds: ["condition report", "installation certificate", "minor works certificate", "distributor's letter"],
  recordDate: "Its date",
  recordReference: "Its number, or where it came from",
  far: (have: number, of: number) => (have === of ? "complete" : `${have} of ${of} that the report needs`),
} as const;
