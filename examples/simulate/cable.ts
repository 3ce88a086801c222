import type { Chance } from "./chance.ts";

/** Greatest copper resistance at 20 °C in mΩ/m, BS EN 60228. */
const MILLIOHM: Readonly<Record<number, number>> = {
  1: 18.1,
  1.5: 12.1,
  2.5: 7.41,
  4: 4.61,
  6: 3.08,
  10: 1.83,
  16: 1.15,
  25: 0.727,
  35: 0.524,
};

/** Real conductors lie about 3 % below the greatest resistance, ±1 %. */
export function perMetre(size: number, celsius: number, chance: Chance): number {
  const milliohm = MILLIOHM[size];
  if (milliohm === undefined) throw new Error(`no conductor of ${size} mm²`);
  return (milliohm / 1000) * chance.normal(0.97, 0.01) * (1 + 0.004 * (celsius - 20));
}
