import * as z from "zod";
import { day, id, line, moment } from "./common.ts";
import { INSTRUMENT_RANGES } from "./instrument-ranges.ts";
import { accuracyText, written } from "./written.ts";

export const instrument = z.strictObject({
  id,
  kind: line,
  serial: line,
  checked: day.optional(),
  checkReference: line.optional(),
  accuracy: z.partialRecord(z.enum(INSTRUMENT_RANGES), accuracyText).optional(),
  /**
   * When the test leads were nulled, and what the display showed with them joined just before: what had crept into the
   * readings since the nulling before. A check at the end of the job is written the same way.
   */
  leadsNulled: z
    .array(z.strictObject({ at: moment, showed: written("ohm", "reading with the leads joined", true).optional() }))
    .max(60)
    .optional(),
});

/** An instrument as far as it was written down. */
export type Instrument = Pick<z.infer<typeof instrument>, "accuracy"> & { readonly id?: string | undefined };
