import { term } from "./term.ts";

/** Sizes, lengths and temperatures of conductors. */
export const CONDUCTOR = {
  lineArea: term("line-area", "cross-sectional area of the line conductor", "S", "square-millimetre"),
  neutralArea: term("neutral-area", "cross-sectional area of the neutral conductor", "Sn", "square-millimetre"),
  cpcArea: term("cpc-area", "cross-sectional area of the protective conductor", "Sp", "square-millimetre"),
  earthingArea: term("earthing-area", "cross-sectional area of the earthing conductor", "Se", "square-millimetre"),
  bondArea: term("bond-area", "cross-sectional area of the bonding conductor", "Sb", "square-millimetre"),
  earthingBond: term(
    "earthing-bond",
    "least main bonding conductor where PME does not apply",
    "Sb",
    "square-millimetre",
  ),
  tailsArea: term("tails-area", "cross-sectional area of the meter tails", "St", "square-millimetre"),
  requiredArea: term("required-area", "cross-sectional area required", "S,min", "square-millimetre"),
  area: term("area", "cross-sectional area", "S", "square-millimetre"),
  length: term("length", "length of the cable", "L", "metre"),
  depthInWall: term("depth-in-wall", "depth of the cable behind the surface of the wall", "", "metre"),
  surgeLeads: term("surge-leads", "length of the leads of a surge protective device", "L", "metre"),
  ringLength: term("ring-length", "length of the ring", "L", "metre"),
  expectedLength: term("expected-length", "length that the resistance stands for", "R/r", "metre"),
  testTemperature: term("test-temperature", "conductor temperature during the test", "θ", "celsius"),
  operatingTemperature: term("operating-temperature", "conductor operating temperature", "θp", "celsius"),
  ambientTemperature: term("ambient-temperature", "ambient temperature", "θa", "celsius"),
  loadTemperature: term("load-temperature", "conductor temperature under load", "θ", "celsius"),
  temperatureSpan: term("temperature-span", "temperature difference", "Δθ", "celsius"),
  age: term("age", "age", "", "year"),
} as const;
