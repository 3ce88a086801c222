import { regulationsOf } from "./regulation.ts";

/** Notices and labels. Amendment 3 took none away; what amendment 4 changes was not seen. */
export const NOTICES = regulationsOf("notices", [
  ["514.8.1", "memory", "Each protective device can be matched with its circuit."],
  ["514.9.1", "memory", "A diagram, chart or schedule of circuits is there; simple installations may use less."],
  ["514.10.1", "memory", "A warning where more than 230 V to earth is present and would not be expected."],
  ["514.11.1", "memory", "A notice where one device does not isolate all live parts."],
  [
    "514.12.1",
    "published",
    "A notice of the last and next inspection; not for domestic premises since amendment 2, where the report gives the date.",
    { doubt: "seen in general terms; the detail is remembered" },
  ],
  [
    "514.12.2",
    "published",
    "A notice by RCDs to press the test button, six-monthly since 2018; not for domestic premises since amendment 2, where the recipient is told.",
    { doubt: "seen in general terms; the detail is remembered" },
  ],
  ["514.13.1", "memory", "A permanent label at earth and bonding connections that they must not be removed."],
  ["514.14.1", "memory", "A notice of two colour systems; not for domestic premises since amendment 2."],
  ["514.15.1", "memory", "A notice of a further or alternative source of supply."],
]);
