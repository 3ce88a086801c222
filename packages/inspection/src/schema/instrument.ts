import { z } from "zod";
import { day, id, line } from "./common.ts";
import { accuracyText } from "./written.ts";

/** What an instrument measures; each range has its own accuracy. */
export const INSTRUMENT_RANGES = [
  "continuity",
  "insulation",
  "loop",
  "fault-current",
  "rcd-time",
  "electrode",
  "voltage",
  "temperature",
] as const;

export const instrument = z.strictObject({
  id,
  kind: line,
  serial: line,
  checked: day.optional(),
  checkReference: line.optional(),
  accuracy: z.partialRecord(z.enum(INSTRUMENT_RANGES), accuracyText).optional(),
});
