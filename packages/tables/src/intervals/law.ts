import type { Nation, Source, Tenure } from "@good-grounds/core";
import { source } from "../sources.ts";

/** A legal instrument that sets an interval or days. What it starts in a given case is worked out elsewhere. */
export interface Instrument {
  readonly nation: Nation;
  readonly tenures: readonly Tenure[];
  readonly source: Source;
  /** Longest interval between inspections, years. */
  readonly years: number;
  /** Days in which an existing occupier gets the report. */
  readonly copyToOccupierDays: number | null;
  /** Days in which remedial or investigative work has to be done. */
  readonly remedyDays: number | null;
  /** Days in which a local authority that asks gets a copy. */
  readonly copyToAuthorityDays: number | null;
  readonly inForce: readonly { readonly from: string; readonly what: string }[];
}

/** Instruments about rented homes. Dates and days are reminders, no legal advice. */
export const INSTRUMENTS: readonly Instrument[] = Object.freeze([
  {
    nation: "england",
    tenures: ["private-rented"],
    source: source(
      "SI 2020/312, Electrical Safety Standards in the Private Rented Sector (England) Regulations 2020",
      "as amended by SI 2025/1043",
      "published",
    ),
    years: 5,
    copyToOccupierDays: 28,
    remedyDays: 28,
    copyToAuthorityDays: 7,
    inForce: [
      { from: "2020-07-01", what: "new tenancies" },
      { from: "2021-04-01", what: "existing tenancies" },
    ],
  },
  {
    nation: "england",
    tenures: ["social-rented"],
    source: source("SI 2025/1043, extension to the social rented sector", "2025", "published"),
    years: 5,
    copyToOccupierDays: 28,
    remedyDays: 28,
    copyToAuthorityDays: 7,
    inForce: [
      { from: "2025-12-01", what: "new tenancies" },
      { from: "2026-05-01", what: "older tenancies, first inspection by 1 November 2026" },
    ],
  },
  {
    nation: "wales",
    tenures: ["private-rented", "social-rented"],
    source: source("WSI 2022/6, regulation 6", "as amended", "published", {
      doubt: "7 days as made, 14 by a secondary source",
    }),
    years: 5,
    copyToOccupierDays: 14,
    remedyDays: null,
    copyToAuthorityDays: null,
    inForce: [{ from: "2022-12-01", what: "occupation contracts" }],
  },
  {
    nation: "scotland",
    tenures: ["private-rented"],
    source: source("Housing (Scotland) Act 2006, sections 13(4A), 19A, 19B", "as inserted 2014", "published"),
    years: 5,
    copyToOccupierDays: null,
    remedyDays: null,
    copyToAuthorityDays: null,
    inForce: [
      { from: "2015-12-01", what: "new tenancies" },
      { from: "2016-12-01", what: "existing tenancies" },
    ],
  },
  {
    nation: "northern-ireland",
    tenures: ["private-rented"],
    source: source("SR 2024/201", "2024", "published"),
    years: 5,
    copyToOccupierDays: 28,
    remedyDays: 28,
    copyToAuthorityDays: 7,
    inForce: [
      { from: "2025-04-01", what: "new tenancies" },
      { from: "2025-12-01", what: "existing tenancies" },
    ],
  },
]);
