import { assumed, type Evidence, type Reckoner, TERM, type Term } from "@good-grounds/core";

/**
 * The greatest operating uncertainty the instrument standard allows over the marked range, ±30 %. It stands in for an
 * accuracy that was not stated, and only where two readings are held against each other: a reading held against a
 * limit is taken as shown.
 */
const CEILING = assumed(
  TERM.operatingUncertainty,
  1,
  "accuracy of the instrument not stated; the greatest uncertainty its standard allows is taken",
  [0.7, 1.3],
  { work: "BS EN 61557", edition: "all parts", basis: "published" },
);

/** A reading with a band: its own where the accuracy is stated, else the ceiling of the instrument standard. */
export function withInstrumentDoubt(term: Term<"ohm">, reading: Evidence<"ohm">, reckon: Reckoner): Evidence<"ohm"> {
  if (reading.kind !== "measured" || reading.detail.accuracy !== null) return reading;
  return reckon.product(term, reading, CEILING);
}
