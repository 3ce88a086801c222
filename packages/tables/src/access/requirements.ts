import type { Source } from "@good-grounds/core";
import { source } from "../sources.ts";

/** What a regulation asks about access to live parts. */
export interface AccessRequirement {
  readonly regulation: string;
  readonly asks: string;
  /** IP codes of which one is enough; empty where none is named. */
  readonly codes: readonly string[];
  readonly source: Source;
}

const EDITIONS = "2018 to 2018+A4";
const of = (regulation: string, basis: "published" | "memory", doubt?: string) =>
  source(`BS 7671 ${regulation}`, EDITIONS, basis, doubt === undefined ? {} : { doubt });

/** Regulations about access, barriers, enclosures, obstacles and reach. */
export const ACCESS_REQUIREMENTS: readonly AccessRequirement[] = Object.freeze([
  {
    regulation: "416.2.1",
    asks: "live parts inside enclosures or behind barriers",
    codes: ["IPXXB", "IP2X"],
    source: of("416.2.1", "published"),
  },
  {
    regulation: "416.2.2",
    asks: "a horizontal top surface within easy reach",
    codes: ["IPXXD", "IP4X"],
    source: of("416.2.2", "published"),
  },
  {
    regulation: "416.2.3",
    asks: "barriers and enclosures fixed firmly, stable and lasting",
    codes: [],
    source: of("416.2.3", "memory"),
  },
  {
    regulation: "416.2.4",
    asks: "opened only with a key or tool, or after disconnection, or onto a second barrier; some lampholders, ceiling roses and pull switches are left out by a note",
    codes: ["IPXXB", "IP2X"],
    source: of("416.2.4", "published"),
  },
  {
    regulation: "521.10.1",
    asks: "non-sheathed cables in conduit, ducting or trunking; the cover of trunking needs a tool or a deliberate act",
    codes: ["IPXXD", "IP4X"],
    source: of("521.10.1", "published", "the codes were read; the wording about covers is remembered"),
  },
  {
    regulation: "526.5",
    asks: "terminations of live conductors inside an enclosure",
    codes: [],
    source: of("526.5", "published"),
  },
  {
    regulation: "417.2",
    asks: "obstacles only where skilled persons control or supervise",
    codes: [],
    source: of("417.2", "memory"),
  },
  {
    regulation: "417.3",
    asks: "placing out of reach only where skilled persons control or supervise",
    codes: [],
    source: of("417.3", "memory"),
  },
]);

const BY_REGULATION: ReadonlyMap<string, AccessRequirement> = new Map(
  ACCESS_REQUIREMENTS.map((row) => [row.regulation, row]),
);

/** What a regulation asks; undefined for one without a row. */
export function accessRequirement(regulation: string): AccessRequirement | undefined {
  return BY_REGULATION.get(regulation);
}

/** Zones of a room with a bath or shower, and the case of water jets used for cleaning. */
export type BathroomZone = "zone 0" | "zone 1" | "zone 2" | "water jets";

const BATHROOM = source("BS 7671 701.512.2", EDITIONS, "memory", {
  doubt: "IPX4 and IPX7 are widely quoted; not read",
});

const BATHROOM_CODES: Readonly<Record<BathroomZone, { readonly code: string; readonly source: Source }>> =
  Object.freeze({
    "zone 0": { code: "IPX7", source: BATHROOM },
    "zone 1": { code: "IPX4", source: BATHROOM },
    "zone 2": { code: "IPX4", source: BATHROOM },
    "water jets": { code: "IPX5", source: BATHROOM },
  });

/** The least IP code of equipment in a bathroom zone (701.512.2). */
export function bathroomCode(zone: BathroomZone): { readonly code: string; readonly source: Source } {
  return BATHROOM_CODES[zone];
}
