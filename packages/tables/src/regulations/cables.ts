import { regulationsOf } from "./regulation.ts";

/** Current-carrying capacity, voltage drop and installation of cables. */
export const CABLES = regulationsOf("cables", [
  ["512.1.5", "memory", "Equipment that is made for 70 °C is not put on a conductor that runs hotter."],
  [
    "521.10.1",
    "published",
    "Cables without a sheath run in conduit, ducting or trunking; trunking shuts to IP4X or IPXXD and opens by a tool or on purpose.",
  ],
  ["523", "memory", "Capacity of cables with ambient temperature, grouping and thermal insulation allowed for."],
  ["523.9", "published", "A cable wholly surrounded by thermal insulation for over 500 mm carries half."],
  ["525.1", "memory", "Voltage at the equipment's terminals suits the equipment."],
  ["525.202", "memory", "Voltage drop within Table 4Ab of Appendix 4 is taken as sufficient."],
  ["526.5", "published", "Terminations of live conductors lie in an enclosure."],
  ["Appendix 3", "published", "Time and current of protective devices; adjusting measured loop impedance."],
  ["Appendix 4", "published", "Capacity and voltage drop of cables; the tables are informative."],
]);
