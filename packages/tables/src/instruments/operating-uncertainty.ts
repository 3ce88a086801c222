import { type NotKnown, type Published, publishedBetween, type Source, TERM } from "@good-grounds/core";
import { byKey } from "../by-key.ts";
import { notTabulated } from "../not-tabulated.ts";
import { source } from "../sources.ts";

/** What the parts of BS EN 61557 deal with. */
export const INSTRUMENT_QUANTITIES = [
  "insulation",
  "loop",
  "continuity",
  "electrode",
  "rcd-test-current",
  "rcd-half-test-current",
  "rcd-time",
  "rcd-current",
  "touch-voltage",
  "phase-sequence",
  "combined",
] as const;
export type InstrumentQuantity = (typeof INSTRUMENT_QUANTITIES)[number];

interface InstrumentPart {
  readonly part: number;
  readonly quantity: InstrumentQuantity;
  /** Permitted deviation as parts of the value, from `least` to `greatest`; null where the part sets none. */
  readonly deviation: readonly [least: number, greatest: number] | null;
  /** Resolution, in words. */
  readonly resolution?: string;
  readonly source: Source;
}

const of = (part: number, basis: "published" | "memory", doubt?: string) =>
  source(`BS EN 61557-${part}`, "current", basis, doubt === undefined ? {} : { doubt });
const GENERAL = "30 % was read for the series; that it holds for this part is remembered";

/** Greatest operating uncertainty over the marked measuring range, by part of the standard. */
export const INSTRUMENT_PARTS: readonly InstrumentPart[] = Object.freeze([
  {
    part: 2,
    quantity: "insulation",
    deviation: [-0.3, 0.3],
    resolution: "0.01 MΩ below 20 MΩ is usual",
    source: of(2, "memory", GENERAL),
  },
  {
    part: 3,
    quantity: "loop",
    deviation: [-0.3, 0.3],
    resolution: "0.01 Ω is usual",
    source: of(3, "memory", GENERAL),
  },
  {
    part: 4,
    quantity: "continuity",
    deviation: [-0.3, 0.3],
    resolution: "0.01 Ω or better",
    source: of(4, "published"),
  },
  { part: 5, quantity: "electrode", deviation: [-0.3, 0.3], source: of(5, "memory", GENERAL) },
  { part: 6, quantity: "rcd-test-current", deviation: [0, 0.1], source: of(6, "published") },
  { part: 6, quantity: "rcd-half-test-current", deviation: [-0.1, 0], source: of(6, "published") },
  {
    part: 6,
    quantity: "rcd-time",
    deviation: [-0.1, 0.1],
    resolution: "1 ms or 0.1 ms is usual",
    source: of(6, "memory"),
  },
  { part: 6, quantity: "rcd-current", deviation: [-0.1, 0.1], source: of(6, "memory") },
  {
    part: 6,
    quantity: "touch-voltage",
    deviation: [0, 0.2],
    source: of(6, "memory", "one tester claims 0 to 10 % or 15 %"),
  },
  { part: 7, quantity: "phase-sequence", deviation: null, source: of(7, "memory") },
  { part: 10, quantity: "combined", deviation: null, source: of(10, "memory") },
]);

const BANDS = byKey<InstrumentQuantity, Published<"ratio"> | NotKnown<"ratio">>(
  INSTRUMENT_PARTS.map(({ part, quantity, deviation, source: from }) => {
    const row = `part ${part}, ${quantity}`;
    if (deviation === null) return [quantity, notTabulated(TERM.operatingUncertainty, "BS EN 61557", row)];
    const [least, greatest] = deviation;
    return [quantity, publishedBetween(TERM.operatingUncertainty, 1, 1 + least, 1 + greatest, from, row)];
  }),
);

/**
 * The greatest operating uncertainty permitted over the marked range, as a factor of 1 with its band: 0.7 to 1.3 for a
 * loop impedance. It holds at rated operating conditions; ordinary instruments are far better in the middle of a range.
 */
export function operatingUncertainty(quantity: InstrumentQuantity): Published<"ratio"> | NotKnown<"ratio"> {
  return BANDS.get(quantity) ?? notTabulated(TERM.operatingUncertainty, "BS EN 61557", quantity);
}

/** Conditions for which the operating uncertainty holds. */
export const RATED_OPERATING_CONDITIONS = Object.freeze({
  /** Ambient temperature, °C. */
  temperature: Object.freeze({ least: 0, greatest: 35 }),
  /** Tilt from the reference position, degrees either way. */
  tilt: 90,
  /** Supply or battery voltage as parts of nominal. */
  supply: Object.freeze({ least: 0.85, greatest: 1.1 }),
  source: of(1, "published"),
});
