import { CONDUCTOR } from "./conductor.ts";
import { CURRENT } from "./current.ts";
import { FACTOR } from "./factor.ts";
import { IMPEDANCE } from "./impedance.ts";
import { OPENING } from "./opening.ts";
import { REACH } from "./reach.ts";
import { SAMPLE } from "./sample.ts";
import { VOLTAGE } from "./voltage.ts";

/**
 * The quantities of the trade by identifier. `docs/glossary.md` lists them all; a quantity that is not here has no name
 * in this project.
 */
export const TERM = Object.freeze({
  ...IMPEDANCE,
  ...CURRENT,
  ...VOLTAGE,
  ...CONDUCTOR,
  ...OPENING,
  ...FACTOR,
  ...REACH,
  ...SAMPLE,
});
