import type { Nation, Source, Tenure } from "@good-grounds/core";
import { source } from "../sources.ts";

/** A day from which an instrument holds for some tenancies. */
export interface InForce {
  /** ISO date. */
  readonly from: string;
  readonly what: string;
  /** Day by which the first inspection has to be made, ISO, where one is set. */
  readonly firstBy?: string;
}

/** A legal instrument about inspection. What it starts in a given case is worked out elsewhere. */
export interface Instrument {
  readonly nations: readonly Nation[];
  readonly tenures: readonly Tenure[];
  readonly concerns: "rented-homes" | "workplaces";
  readonly source: Source;
  /** Longest interval between inspections, years; null where none is fixed. */
  readonly years: number | null;
  /** Days in which an existing occupier gets the report. */
  readonly copyToOccupierDays: number | null;
  /** Days in which remedial or investigative work has to be done. */
  readonly remedyDays: number | null;
  /** Days in which a local authority that asks gets a copy. */
  readonly copyToAuthorityDays: number | null;
  /** Years for which the record is kept. */
  readonly recordYears: number | null;
  readonly inForce: readonly InForce[];
  readonly note: string;
}

/** Instruments by nation and tenure. Dates and days are reminders, no legal advice. */
export const INSTRUMENTS: readonly Instrument[] = Object.freeze<Instrument[]>([
  {
    nations: ["england"],
    tenures: ["private-rented"],
    concerns: "rented-homes",
    source: source(
      "SI 2020/312, Electrical Safety Standards in the Private Rented Sector (England) Regulations 2020",
      "as amended by SI 2025/1043",
      "published",
      { doubt: "the number of the instrument is remembered" },
    ),
    years: 5,
    copyToOccupierDays: 28,
    remedyDays: 28,
    copyToAuthorityDays: 7,
    recordYears: null,
    inForce: [
      { from: "2020-07-01", what: "new tenancies" },
      { from: "2021-04-01", what: "existing tenancies" },
    ],
    note: "A report that asks for further investigation starts the 28 days as one that asks for remedial work does.",
  },
  {
    nations: ["england"],
    tenures: ["social-rented"],
    concerns: "rented-homes",
    source: source(
      "SI 2025/1043, amendment and extension of the 2020 regulations to the social rented sector",
      "2025",
      "published",
      { doubt: "the amended ceilings of penalties were not checked" },
    ),
    years: 5,
    copyToOccupierDays: 28,
    remedyDays: 28,
    copyToAuthorityDays: 7,
    recordYears: null,
    inForce: [
      { from: "2025-11-01", what: "the instrument itself" },
      { from: "2025-12-01", what: "new tenancies" },
      { from: "2026-05-01", what: "older tenancies", firstBy: "2026-11-01" },
    ],
    note: "Interval and days are those of the regulations of 2020, which it extends.",
  },
  {
    nations: ["wales"],
    tenures: ["private-rented", "social-rented"],
    concerns: "rented-homes",
    source: source(
      "WSI 2022/6, Renting Homes (Fitness for Human Habitation) (Wales) Regulations 2022, regulation 6",
      "as amended",
      "published",
      { doubt: "7 days as made, 14 as amended; the day it came into force is remembered" },
    ),
    years: 5,
    copyToOccupierDays: 14,
    remedyDays: null,
    copyToAuthorityDays: null,
    recordYears: null,
    inForce: [{ from: "2022-12-01", what: "occupation contracts" }],
    note: "A home without a valid report counts as unfit.",
  },
  {
    nations: ["scotland"],
    tenures: ["private-rented"],
    concerns: "rented-homes",
    source: source("Housing (Scotland) Act 2006, sections 13(4A), 19A and 19B", "as inserted 2014", "published", {
      doubt: "1 December of 2016 for existing tenancies is read from “2016” alone",
    }),
    years: 5,
    copyToOccupierDays: null,
    remedyDays: null,
    copyToAuthorityDays: null,
    recordYears: 6,
    inForce: [
      { from: "2015-12-01", what: "new tenancies" },
      { from: "2016-12-01", what: "existing tenancies" },
    ],
    note: "Covers the fixed installation and the landlord's appliances.",
  },
  {
    nations: ["northern-ireland"],
    tenures: ["private-rented"],
    concerns: "rented-homes",
    source: source(
      "SR 2024/201, Electrical Safety Standards for Private Tenancies Regulations (Northern Ireland) 2024",
      "2024",
      "published",
      { doubt: "the 7 days for the council come from a secondary source" },
    ),
    years: 5,
    copyToOccupierDays: 28,
    remedyDays: 28,
    copyToAuthorityDays: 7,
    recordYears: null,
    inForce: [
      { from: "2025-04-01", what: "new tenancies" },
      { from: "2025-12-01", what: "existing tenancies" },
    ],
    note: "",
  },
  {
    nations: ["england", "wales", "scotland"],
    tenures: ["commercial-lease", "other"],
    concerns: "workplaces",
    source: source("SI 1989/635, Electricity at Work Regulations 1989", "1989", "published"),
    years: null,
    copyToOccupierDays: null,
    remedyDays: null,
    copyToAuthorityDays: null,
    recordYears: null,
    inForce: [],
    note: "A duty to maintain so as to prevent danger; no interval is fixed. It binds whoever works on the installation, in a home as well.",
  },
]);

/** The instruments that apply to premises in a nation under a tenure; none for an owner's own home. */
export function instrumentsFor(nation: Nation, tenure: Tenure): readonly Instrument[] {
  return INSTRUMENTS.filter(({ nations, tenures }) => nations.includes(nation) && tenures.includes(tenure));
}
