import { type Insulation, type NotKnown, type Published, published, type Source, TERM } from "@good-grounds/core";
import { notTabulated } from "../not-tabulated.ts";
import { source } from "../sources.ts";

const P = source("BS 7671 Table 4B1", "2008 to 2018+A4", "published");
const D = source("BS 7671 Table 4B1", "2008 to 2018+A4", "derived", { formula: "√((θp − θa) ÷ (θp − 30)), rounded" });
const M = source("BS 7671 Table 4B1", "2008 to 2018+A4", "memory", { doubt: "lower than the square-root rule gives" });

type Step = readonly [celsius: number, factor: number, source: Source];

/** Rating factor for ambient air by conductor operating temperature. */
export const AMBIENT: Readonly<Record<"70" | "90", readonly Step[]>> = Object.freeze({
  "70": [
    [25, 1.03, M],
    [30, 1.0, D],
    [35, 0.94, D],
    [40, 0.87, P],
    [45, 0.79, P],
    [50, 0.71, P],
    [55, 0.61, P],
    [60, 0.5, D],
  ],
  "90": [
    [25, 1.02, M],
    [30, 1.0, D],
    [35, 0.96, D],
    [40, 0.91, D],
    [45, 0.87, D],
    [50, 0.82, D],
    [55, 0.76, D],
    [60, 0.71, D],
    [65, 0.65, D],
    [70, 0.58, D],
    [75, 0.5, D],
    [80, 0.41, D],
  ],
});

const OPERATING: Readonly<Partial<Record<Insulation, "70" | "90">>> = {
  "70C-thermoplastic": "70",
  "90C-thermoplastic": "90",
  "90C-thermosetting": "90",
};

const NODES = new Map<string, Published<"ratio">>(
  (["70", "90"] as const).flatMap((operating) =>
    AMBIENT[operating].map(([celsius, factor, from]) => [
      `${operating} ${celsius}`,
      published(TERM.ambientFactor, factor, from, `${operating} °C conductor, ${celsius} °C ambient`),
    ]),
  ),
);

/**
 * Rating factor Ca for an ambient temperature in °C. Between the steps of the table the warmer step is taken, below
 * 25 °C the step of 25 °C: both on the safe side. Above the last step there is none.
 */
export function ambientFactor(insulation: Insulation, celsius: number): Published<"ratio"> | NotKnown<"ratio"> {
  const operating = OPERATING[insulation];
  const asked = `${insulation} at ${celsius} °C`;
  if (operating === undefined) return notTabulated(TERM.ambientFactor, "Table 4B1", asked);
  const step = AMBIENT[operating].find(([at]) => celsius <= at);
  const node = step === undefined ? undefined : NODES.get(`${operating} ${step[0]}`);
  return node ?? notTabulated(TERM.ambientFactor, "Table 4B1", asked);
}
