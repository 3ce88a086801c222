import { term } from "./term.ts";

/** Dimensionless factors. */
export const FACTOR = {
  cMin: term("c-min", "voltage factor for the least fault current", "Cmin", "ratio"),
  cMax: term("c-max", "voltage factor for the greatest fault current", "Cmax", "ratio"),
  thumb: term("thumb-factor", "rule of thumb for readings taken cold", "0.8", "ratio"),
  hotFactor: term("hot-factor", "rise of resistance from 20 °C to operating temperature", "F", "ratio"),
  testFactor: term("test-factor", "resistance at test temperature over that at 20 °C", "Ft", "ratio"),
  temperatureRise: term(
    "temperature-correction",
    "rise of resistance from the test to operating temperature",
    "F/Ft",
    "ratio",
  ),
  temperatureAddition: term(
    "temperature-addition",
    "part added by the rise to operating temperature",
    "F/Ft − 1",
    "ratio",
  ),
  ambientFactor: term("ambient-factor", "rating factor for ambient temperature", "Ca", "ratio"),
  groupingFactor: term("grouping-factor", "rating factor for grouping", "Cg", "ratio"),
  insulationFactor: term("insulation-factor", "rating factor for thermal insulation", "Ci", "ratio"),
  fuseFactor: term("fuse-factor", "rating factor for semi-enclosed fuses", "Cf", "ratio"),
  multiple: term("trip-multiple", "multiple of rated current that trips at once", "m", "ratio"),
  conductorTolerance: term(
    "conductor-tolerance",
    "real over greatest permitted resistance of a conductor",
    "τ",
    "ratio",
  ),
  ringRatio: term("ring-ratio", "ratio of protective to line conductor resistance", "r2/r1", "ratio"),
  dropFraction: term("drop-fraction", "permitted voltage drop as a part of nominal", "", "ratio"),
  half: term("half", "half", "½", "ratio"),
  quarter: term("quarter", "quarter", "¼", "ratio"),
  two: term("two", "two", "2", "ratio"),
  root3: term("root-three", "square root of three", "√3", "ratio"),
  diversity: term("diversity", "diversity factor", "", "ratio"),
  operatingUncertainty: term(
    "operating-uncertainty",
    "true value over reading, by the instrument standard",
    "",
    "ratio",
  ),
  ratio: term("ratio", "ratio", "", "ratio"),
  count: term("count", "number", "n", "ratio"),
} as const;
