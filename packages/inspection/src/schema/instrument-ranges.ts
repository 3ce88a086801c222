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
export type InstrumentRange = (typeof INSTRUMENT_RANGES)[number];
