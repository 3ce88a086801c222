import { type NotKnown, type Published, published, TERM } from "@good-grounds/core";
import { byKey } from "../by-key.ts";
import { notTabulated } from "../not-tabulated.ts";
import { source } from "../sources.ts";

const TABLE = source(
  "handbook appendix on cable data, armour of copper-cored cable (BS 6346, BS 5467)",
  "16th to 18th edition",
  "published",
);

/** Greatest resistance of steel-wire armour in mΩ/m at 20 °C for 2, 3, 4 and 5 cores, by size in mm². */
export const ARMOUR = Object.freeze([
  { size: 1.5, cores: [10.2, 9.5, 8.8, 8.2] },
  { size: 2.5, cores: [8.8, 8.2, 7.7, 6.8] },
  { size: 4, cores: [7.9, 7.5, 6.8, 6.2] },
  { size: 6, cores: [7.0, 6.7, 4.3, 3.9] },
]);

const NODES = byKey(
  ARMOUR.flatMap(({ size, cores }) =>
    cores.map((milliohm, i) => {
      const row = `armour of ${i + 2}-core ${size} mm²`;
      return [`${size} ${i + 2}`, published(TERM.cpcPerMetre, Number(`${milliohm}e-3`), TABLE, row)] as const;
    }),
  ),
);

/** Greatest resistance per metre of the armour as protective conductor, Ω/m. */
export function armourResistance(area: number, cores: number): Published<"ohm-per-metre"> | NotKnown<"ohm-per-metre"> {
  return (
    NODES.get(`${area} ${cores}`) ?? notTabulated(TERM.cpcPerMetre, "the armour table", `${cores} cores of ${area} mm²`)
  );
}
