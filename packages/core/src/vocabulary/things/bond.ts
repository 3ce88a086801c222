import { matter } from "../../terms/term.ts";

/** Whether the service or part that main bonding would go to is there at all. */
export const SERVICE_PRESENCES = ["present", "no-such-service"] as const;
export type ServicePresence = (typeof SERVICE_PRESENCES)[number];

/** Kinds of earth electrode. */
export const ELECTRODE_KINDS = ["rod", "plate", "tape-or-wire", "foundation", "buried-steel", "other"] as const;
export type ElectrodeKind = (typeof ELECTRODE_KINDS)[number];

/** State of the ground when an electrode was measured; a reading in dry ground is the severe one. */
export const SEASONS = ["wet", "dry", "frozen"] as const;
export type Season = (typeof SEASONS)[number];

/** What is asked about bonds, the parts they go to, and electrodes. */
export const BOND_MATTER = Object.freeze({
  service: matter("service-presence", "whether the service is there"),
  state: matter("bond-state", "state of the bond and its connections"),
  joined: matter("parts-connected", "the parts are joined"),
  electrodeKind: matter("electrode-kind", "kind of earth electrode"),
  season: matter("electrode-season", "state of the ground during the test"),
  electrodeAccessible: matter("electrode-accessible", "the connection of the electrode can be got at"),
  electrodeState: matter("electrode-state", "state of the electrode's connection"),
});
