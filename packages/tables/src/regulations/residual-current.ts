import { regulationsOf } from "./regulation.ts";

const RENUMBERED = {
  doubt: "seen under the 2008 and 2011 numbers 522.6.6 and 522.6.101 to 103; the present number is remembered",
};

/** Residual current devices as additional protection, and where they are asked for. */
export const RESIDUAL_CURRENT = regulationsOf("residual-current", [
  [
    "411.3.3",
    "published",
    "An RCD of at most 30 mA for socket-outlets up to 32 A that ordinary persons, children or disabled persons may use, and for mobile equipment up to 32 A outdoors. Leaving it out on a documented risk assessment is not open for dwellings.",
    { doubt: "amendment 2 narrowed the exception to places used by skilled or instructed persons only" },
  ],
  ["411.3.4", "memory", "An RCD of at most 30 mA for a.c. final circuits that supply luminaires in domestic premises."],
  ["415.1.1", "published", "Additional protection means an RCD of at most 30 mA."],
  ["415.1.2", "published", "An RCD for additional protection never stands in place of another protective measure."],
  [
    "522.6.201",
    "memory",
    "A cable under a floor or above a ceiling keeps 50 mm from the edges of the joist or is protected.",
  ],
  [
    "522.6.202",
    "published",
    "A cable less than 50 mm deep in a wall or partition, without mechanical or earthed protection, lies in a safe zone and has an RCD of at most 30 mA.",
    RENUMBERED,
  ],
  [
    "522.6.203",
    "published",
    "In a wall with metal parts other than fixings, a cable at any depth has mechanical protection or an RCD.",
    RENUMBERED,
  ],
  [
    "531.3.3",
    "published",
    "The type of an RCD fits the d.c. content and frequency of its loads; type AC is only for fixed equipment known to give no d.c.",
  ],
  [
    "701.411.3.3",
    "published",
    "An RCD of at most 30 mA for low voltage circuits that serve a room with a bath or shower, or pass through its zones 1 and 2.",
    { doubt: "circuits that only pass through: from memory" },
  ],
  [
    "701.415.2",
    "published",
    "Supplementary bonding in a room with a bath or shower may be left out where disconnection times, RCDs and main bonding are all in order.",
  ],
]);
