import { type ConductorMaterial, type Evidence, type Fact, type Reckoner, TERM } from "@good-grounds/core";
import { CONDUCTOR_TOLERANCE, perMetre, testFactor } from "@good-grounds/measurement";

/** What settles the resistance of a length of conductor. */
export interface ConductorRun {
  readonly size: Evidence<"square-millimetre">;
  readonly material: Fact<ConductorMaterial>;
  /** A range where it is not known exactly; the resistance is then a band. */
  readonly length: Evidence<"metre">;
  readonly temperature: Evidence<"celsius">;
}

/**
 * Resistance of a length of conductor, Ω: greatest resistance per metre at 20 °C (BS EN 60228) × length × temperature
 * factor × tolerance. Lacking where size, material or length is not known; a temperature not recorded becomes a band.
 */
export function conductorOhms(
  { size, material, length, temperature }: ConductorRun,
  reckon: Reckoner,
): Evidence<"ohm"> {
  const greatest = reckon.product(TERM.resistance, perMetre(TERM.conductorPerMetre, size, material, reckon), length);
  const atTest = reckon.product(TERM.resistance, greatest, testFactor(temperature));
  return reckon.product(TERM.resistance, atTest, CONDUCTOR_TOLERANCE);
}
