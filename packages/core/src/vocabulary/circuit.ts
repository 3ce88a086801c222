/** The shape of a circuit. A distribution circuit feeds another board. */
export const CIRCUIT_SHAPES = ["ring", "radial", "distribution"] as const;
export type CircuitShape = (typeof CIRCUIT_SHAPES)[number];

/** What a circuit mainly supplies; settles diversity and voltage drop limits. */
export const CIRCUIT_LOADS = [
  "lighting",
  "socket-outlets",
  "cooker",
  "shower",
  "water-heater",
  "storage-heating",
  "heating",
  "motor",
  "vehicle-charging",
  "alarm",
  "fixed-equipment",
  "board",
  "mixed",
] as const;
export type CircuitLoad = (typeof CIRCUIT_LOADS)[number];
