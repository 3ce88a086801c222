import { item } from "./item.ts";

/** Intake and distributor's equipment. */
export const INTAKE = [
  item("intake.cut-out", "always", "Cut-out sound, sealed and of the right rating", "313.1"),
  item("intake.service-cable", "always", "Service cable undamaged and supported", "522.6"),
  item("intake.meter-tails", "always", "Meter tails sound, protected and large enough", "522.6", "521.10.1"),
  item("intake.meter", "always", "Meter position sound and accessible", "132.12"),
  item("intake.isolator", "always", "Isolator between meter and board, where there is one, sound", "462.1"),
  item("intake.polarity", "always", "Polarity of the incoming supply right", "643.6"),
] as const;
