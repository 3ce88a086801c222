import type { ReadRing } from "./from-circuit.ts";
import type { RingInput, RingRow } from "./readings.ts";

/** The rows of rings, as what may stand in the row of another. */
export function rowsOf(rings: readonly { readonly name: string; readonly ring: ReadRing }[]): readonly RingRow[] {
  return rings.map(({ name, ring: { input } }) => ({
    name,
    r1: input.r1,
    rn: input.rn,
    r2: input.r2,
    ring: input,
  }));
}

/** A ring beside the rows of the others. */
export function besideRows(input: RingInput, rows: readonly RingRow[]): RingInput {
  const otherRows = rows.filter(({ ring }) => ring !== input);
  return otherRows.length === 0 ? input : { ...input, otherRows };
}
