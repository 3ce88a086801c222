import { regulationsOf } from "./regulation.ts";

/** Basic protection: what keeps live parts from being touched. */
export const BASIC_PROTECTION = regulationsOf("basic-protection", [
  [
    "410.3.5",
    "memory",
    "Obstacles and placing out of reach are only for places that skilled or instructed persons control.",
  ],
  ["416.1", "memory", "Live parts are covered with insulation that comes off only by destroying it."],
  ["416.2.1", "published", "Live parts lie behind barriers or in enclosures of at least IPXXB or IP2X."],
  ["416.2.2", "published", "A horizontal top that is readily reached has at least IPXXD or IP4X."],
  ["416.2.3", "memory", "Barriers and enclosures are fixed firmly, sound and lasting."],
  [
    "416.2.4",
    "published",
    "They open only with a key or tool, after disconnection, or onto a further barrier of IPXXB or IP2X; a few accessories are excepted.",
  ],
  ["417.2", "memory", "Obstacles prevent contact by accident, not on purpose."],
  ["417.3", "memory", "Parts at different potentials that can be touched at once are not within arm's reach."],
  ["701.512.2", "memory", "Rooms with a bath or shower: IPX7 in zone 0, IPX4 in zones 1 and 2, IPX5 where jets clean."],
]);
