import { regulationsOf } from "./regulation.ts";

/** Automatic disconnection in case of a fault. */
export const DISCONNECTION = regulationsOf("disconnection", [
  [
    "411.3.2",
    "published",
    "A fault to earth is cleared within the time set for the system, the voltage and the circuit.",
  ],
  [
    "411.3.2.2",
    "published",
    "Times of Table 41.1 hold for final circuits up to 63 A with socket-outlets and up to 32 A with fixed equipment only.",
    { doubt: "before 2018: final circuits up to 32 A" },
  ],
  ["411.3.2.3", "published", "TN: 5 s for distribution circuits and for final circuits that 411.3.2.2 leaves out."],
  ["411.3.2.4", "published", "TT: 1 s for distribution circuits and for final circuits that 411.3.2.2 leaves out."],
  [
    "411.4.4",
    "memory",
    "TN: the loop impedance lets enough current flow to operate the device in time: Zs × Ia ≤ U0 × Cmin.",
  ],
  ["411.5.2", "published", "TT: a residual current device is the preferred device for fault protection."],
  ["411.5.3", "published", "TT with a residual current device: RA × IΔn is at most 50 V, and it opens in time."],
]);
