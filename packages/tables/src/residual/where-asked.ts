import type { Source } from "@good-grounds/core";
import { source } from "../sources.ts";

/** Locations and uses for which an RCD of at most 30 mA is asked. */
export const RCD_PLACES = [
  "socket-outlet-up-to-32A",
  "mobile-equipment-outdoors",
  "luminaires-in-dwelling",
  "cable-in-wall",
  "cable-in-wall-with-metal-parts",
  "bath-or-shower-room",
  "swimming-pool",
  "sauna",
  "construction-site-socket",
  "agricultural-socket-up-to-32A",
  "caravan-pitch-socket",
  "marina-socket",
  "outdoor-lighting-kiosk",
  "mobile-unit-socket",
  "vehicle-charging-point",
  "heating-cable",
] as const;
export type RcdPlace = (typeof RCD_PLACES)[number];

/** Where and since when additional protection is asked. */
export interface RcdAsked {
  readonly place: RcdPlace;
  readonly regulation: string;
  readonly asks: string;
  /** The edition from which it was asked, as far as known. */
  readonly since: string;
  readonly source: Source;
}

type Listed = readonly [
  place: RcdPlace,
  regulation: string,
  asks: string,
  since: string,
  basis: "published" | "memory",
  doubt?: string,
];

const LISTED: readonly Listed[] = [
  [
    "socket-outlet-up-to-32A",
    "411.3.3",
    "socket-outlets rated up to 32 A",
    "2008; up to 32 A for all since 2018",
    "published",
  ],
  ["mobile-equipment-outdoors", "411.3.3", "mobile equipment up to 32 A used outdoors", "2008", "published"],
  ["luminaires-in-dwelling", "411.3.4", "final circuits with luminaires in domestic premises", "2018", "memory"],
  [
    "cable-in-wall",
    "522.6.202",
    "a cable less than 50 mm deep in a wall or partition without earthed or mechanical protection",
    "2008",
    "published",
    "seen under an earlier number",
  ],
  [
    "cable-in-wall-with-metal-parts",
    "522.6.203",
    "a cable at any depth in a wall with metal parts other than fixings",
    "2008",
    "published",
    "seen under an earlier number",
  ],
  ["bath-or-shower-room", "701.411.3.3", "low voltage circuits of a room with a bath or shower", "2008", "published"],
  [
    "swimming-pool",
    "702.410.3.4",
    "equipment in the zones of a pool, by zone",
    "2008",
    "memory",
    "the zones differ; read Section 702",
  ],
  ["sauna", "703.411.3.3", "circuits of a sauna other than its heater", "2008", "memory"],
  [
    "construction-site-socket",
    "704.411.3.2.1",
    "socket-outlets up to 32 A on a construction site",
    "2008",
    "memory",
    "number remembered",
  ],
  [
    "agricultural-socket-up-to-32A",
    "705.411.1",
    "socket-outlets up to 32 A in agricultural premises",
    "2008",
    "memory",
  ],
  [
    "caravan-pitch-socket",
    "708.415.1",
    "each socket-outlet of a pitch by itself",
    "2008",
    "memory",
    "number remembered",
  ],
  ["marina-socket", "709.531.2", "each socket-outlet of a berth by itself", "2008", "memory", "number remembered"],
  [
    "outdoor-lighting-kiosk",
    "714.411.3.4",
    "lighting in kiosks, shelters, advertising panels and town plans",
    "2015",
    "memory",
  ],
  [
    "mobile-unit-socket",
    "717.415",
    "socket-outlets for equipment outside a mobile or transportable unit",
    "2008",
    "memory",
  ],
  ["vehicle-charging-point", "722.531.3", "each charging point by itself", "2015", "memory", "number remembered"],
  ["heating-cable", "753.415.1", "floor and ceiling heating", "2008", "memory"],
];

/** Every location and use for which an RCD of at most 30 mA is asked, as far as carried here. */
export const RCD_ASKED: readonly RcdAsked[] = Object.freeze(
  LISTED.map(([place, regulation, asks, since, basis, doubt]) =>
    Object.freeze({
      place,
      regulation,
      asks,
      since,
      source: source(`BS 7671 ${regulation}`, since, basis, doubt === undefined ? {} : { doubt }),
    }),
  ),
);

/** What asks additional protection for a place. */
export function rcdAsked(place: RcdPlace): RcdAsked {
  const row = RCD_ASKED.find((one) => one.place === place);
  if (row === undefined) throw new RangeError(`no row for ${place}`);
  return row;
}
