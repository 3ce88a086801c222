import { type NotKnown, type Published, published, TERM } from "@good-grounds/core";
import { notTabulated } from "../not-tabulated.ts";
import { remembered } from "../remembered.ts";
import { source } from "../sources.ts";

const TABLE = "BS 7671 Appendix 4 Table 4Ab";
const EDITIONS = "2008 to 2018+A4, informative";
const PUBLIC = source(TABLE, EDITIONS, "published");
const PRIVATE = source(TABLE, EDITIONS, "memory");

const ROWS = Object.freeze({
  "public lighting": published(TERM.dropFraction, 0.03, PUBLIC, "public supply, lighting"),
  "public other": published(TERM.dropFraction, 0.05, PUBLIC, "public supply, other uses"),
  "private lighting": published(TERM.dropFraction, 0.06, PRIVATE, "private supply, lighting"),
  "private other": published(TERM.dropFraction, 0.08, PRIVATE, "private supply, other uses"),
});

/** Permitted voltage drop from origin to load as a part of the nominal voltage. */
export function permittedDrop(circuit: {
  readonly supply: "public" | "private";
  readonly use: "lighting" | "other";
}): Published<"ratio"> {
  return ROWS[`${circuit.supply} ${circuit.use}`];
}

/** Length, m, beyond which the addition begins; the addition per metre and at most, in parts of a thousandth of a per cent. */
const LONG = { beyond: 100, perMetre: 5, most: 500, scale: 1e5 } as const;

const LONG_RUN = source(TABLE, EDITIONS, "memory", {
  formula: "0.005 % for each metre beyond 100 m, at most 0.5 %",
});

/** What the permitted part grows by on a run of this length, m: nothing up to 100 m, half a per cent from 200 m. */
export const permittedDropAddition: (metres: number) => Published<"ratio"> | NotKnown<"ratio"> = remembered(
  (metres) => {
    if (!(metres >= 0)) return notTabulated(TERM.dropFraction, TABLE, `a length of ${metres} m`);
    const addition = Math.min(LONG.most, Math.max(0, metres - LONG.beyond) * LONG.perMetre) / LONG.scale;
    return published(TERM.dropFraction, addition, LONG_RUN, `run of ${metres} m`);
  },
);
