import { type ConductorMaterial, type NotKnown, type Published, published, TERM, type Term } from "@good-grounds/core";
import { byKey } from "../by-key.ts";
import { notTabulated } from "../not-tabulated.ts";
import { source } from "../sources.ts";
import { IMPERIAL_SOURCE, IMPERIAL_STRANDINGS } from "./imperial.ts";

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

/** Exact power of ten: 7.41 mΩ/m becomes the double nearest to 0.00741. */
const perMetre = (milliohm: number): number => Number(`${milliohm}e-3`);

type BySize = ReadonlyMap<number, Published<"ohm-per-metre">>;

/** The columns a look-up can ask for. */
interface Columns {
  readonly copper: BySize;
  readonly flexibleCopper: BySize;
  readonly aluminium: BySize;
}

function columnsFor(term: Term<"ohm-per-metre">): Columns {
  const fixed = RESISTANCES.map(([size, , stranded]) => {
    const words = size > 150 ? `copper ${size} mm², class 2` : `copper ${size} mm², class 1 or 2`;
    return [size, published(term, perMetre(stranded), TABLE, words)] as const;
  });
  const old = IMPERIAL_STRANDINGS.map(({ stranding, area, milliohmPerMetre }) => {
    const words = `copper ${stranding} (${area} mm²)`;
    return [area, published(term, perMetre(milliohmPerMetre), IMPERIAL_SOURCE, words)] as const;
  });
  return {
    copper: byKey<number, Published<"ohm-per-metre">>([...fixed, ...old]),
    flexibleCopper: byKey(
      RESISTANCES.map(([size, , , flexible]) => [
        size,
        published(term, perMetre(flexible), TABLE, `copper ${size} mm², class 5`),
      ]),
    ),
    aluminium: byKey(
      RESISTANCES.flatMap(([size, , , , aluminium]) =>
        aluminium === null
          ? []
          : [[size, published(term, perMetre(aluminium), TABLE, `aluminium ${size} mm², class 1 or 2`)] as const],
      ),
    ),
  };
}

const COLUMNS: ReadonlyMap<string, Columns> = byKey(
  [TERM.conductorPerMetre, TERM.linePerMetre, TERM.cpcPerMetre].map((term) => [term.id, columnsFor(term)] as const),
);

/**
 * Greatest resistance per metre at 20 °C of a conductor, Ω/m, by size in mm². Copper has the pre-metric strandings as
 * well, by their area ({@link IMPERIAL_STRANDINGS}). Sizes between are not tabulated, nor is flexible aluminium.
 */
export function conductorResistance(
  term: Term<"ohm-per-metre">,
  area: number,
  material: ConductorMaterial,
  flexible = false,
): Published<"ohm-per-metre"> | NotKnown<"ohm-per-metre"> {
  const columns = COLUMNS.get(term.id);
  const column =
    material === "copper"
      ? flexible
        ? columns?.flexibleCopper
        : columns?.copper
      : flexible
        ? undefined
        : columns?.aluminium;
  return (
    column?.get(area) ?? notTabulated(term, "BS EN 60228", `${flexible ? "flexible " : ""}${material} of ${area} mm²`)
  );
}
