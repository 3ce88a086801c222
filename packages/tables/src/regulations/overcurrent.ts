import { regulationsOf } from "./regulation.ts";

/** Protection against overload and fault current, demand and assemblies. */
export const OVERCURRENT = regulationsOf("overcurrent", [
  ["311.1", "memory", "The maximum demand is assessed; diversity may be allowed for."],
  [
    "313.1",
    "memory",
    "The supply's voltage, frequency, fault current, loop impedance and protective device are found out.",
  ],
  [
    "433.1.1",
    "memory",
    "Design current, rated current and capacity of the cable follow in rising order, and the device opens at 1.45 times the capacity.",
  ],
  ["433.1.202", "published", "Under a semi-enclosed fuse the rated current is at most 0.725 of the cable's capacity."],
  [
    "433.1.204",
    "memory",
    "Ring final circuits of 30 A or 32 A: 2.5 mm² of copper at least (1.5 mm² mineral insulated), 20 A of capacity, and no part overloaded for long.",
  ],
  ["433.3.1", "memory", "Overload protection may be left out where the load cannot overload the cable."],
  [
    "434.1",
    "memory",
    "The prospective fault current is found at every relevant point, by calculation, enquiry or measurement.",
  ],
  [
    "434.5.1",
    "memory",
    "A device's breaking capacity is at least the prospective fault current there, unless a device before it is co-ordinated with it.",
  ],
  [
    "434.5.2",
    "memory",
    "A fault is cleared before the conductor reaches its limiting temperature: I²t ≤ k²S² up to 5 s.",
  ],
  [
    "536.4.202",
    "memory",
    "Switches and residual current devices without overload protection are protected against overload.",
  ],
  ["536.4.203", "memory", "Devices in an assembly suit it by the declaration of the assembly's maker."],
]);
