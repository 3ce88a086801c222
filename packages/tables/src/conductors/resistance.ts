import { type ConductorMaterial, type NotKnown, type Published, published, TERM, type Term } from "@good-grounds/core";
import { notTabulated } from "../not-tabulated.ts";
import { source } from "../sources.ts";

const TABLE = source("BS EN 60228 Tables 1 to 3", "2005 and later", "published");

/**
 * Greatest d.c. resistance at 20 °C in mΩ/m by size in mm²: plain copper of class 1 (solid), 2 (stranded) and 5
 * (flexible), and aluminium of class 1 and 2.
 */
export const RESISTANCES: readonly (readonly [
  size: number,
  copper1: number,
  copper2: number,
  copper5: number,
  aluminium: number | null,
])[] = Object.freeze([
  [0.5, 36.0, 36.0, 39.0, null],
  [0.75, 24.5, 24.5, 26.0, null],
  [1, 18.1, 18.1, 19.5, null],
  [1.5, 12.1, 12.1, 13.3, null],
  [2.5, 7.41, 7.41, 7.98, null],
  [4, 4.61, 4.61, 4.95, null],
  [6, 3.08, 3.08, 3.3, null],
  [10, 1.83, 1.83, 1.91, 3.08],
  [16, 1.15, 1.15, 1.21, 1.91],
  [25, 0.727, 0.727, 0.78, 1.2],
  [35, 0.524, 0.524, 0.554, 0.868],
  [50, 0.387, 0.387, 0.386, 0.641],
  [70, 0.268, 0.268, 0.272, 0.443],
  [95, 0.193, 0.193, 0.206, 0.32],
  [120, 0.153, 0.153, 0.161, 0.253],
  [150, 0.124, 0.124, 0.129, 0.206],
  [185, 0.101, 0.0991, 0.106, 0.164],
  [240, 0.0775, 0.0754, 0.0801, 0.125],
  [300, 0.062, 0.0601, 0.0641, 0.1],
]);

const NODES = new Map<string, Published<"ohm-per-metre">>();

/** Exact power of ten: 7.41 mΩ/m becomes the double nearest to 0.00741. */
const perMetre = (milliohm: number): number => Number(`${milliohm}e-3`);

for (const [size, , stranded, flexible, aluminium] of RESISTANCES) {
  for (const term of [TERM.conductorPerMetre, TERM.linePerMetre, TERM.cpcPerMetre]) {
    NODES.set(
      `${term.id} ${size} copper`,
      published(term, perMetre(stranded), TABLE, `copper ${size} mm², class 1 or 2`),
    );
    NODES.set(
      `${term.id} ${size} copper flexible`,
      published(term, perMetre(flexible), TABLE, `copper ${size} mm², class 5`),
    );
    if (aluminium !== null) {
      NODES.set(`${term.id} ${size} aluminium`, published(term, perMetre(aluminium), TABLE, `aluminium ${size} mm²`));
    }
  }
}

/** Greatest resistance per metre at 20 °C of a conductor, Ω/m. Sizes between the standard ones are not tabulated. */
export function conductorResistance(
  term: Term<"ohm-per-metre">,
  area: number,
  material: ConductorMaterial,
  flexible = false,
): Published<"ohm-per-metre"> | NotKnown<"ohm-per-metre"> {
  const found = NODES.get(`${term.id} ${area} ${material}${flexible ? " flexible" : ""}`);
  return found ?? notTabulated(term, "BS EN 60228", `${material} of ${area} mm²`);
}
