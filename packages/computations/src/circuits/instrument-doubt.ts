import {
  type Assumed,
  assumed,
  type Evidence,
  type Measured,
  parseAccuracy,
  type Reckoner,
  type Remark,
  TERM,
  type Term,
} from "@good-grounds/core";

/**
 * The greatest operating uncertainty the instrument standard allows over the marked range, ±30 %. It stands in for an
 * accuracy that was not stated, and only where two readings are held against each other: a reading held against a
 * limit is taken as shown.
 */
const CEILING = assumed(
  TERM.operatingUncertainty,
  1,
  "accuracy of the instrument not stated; the greatest uncertainty its standard allows is taken",
  [0.7, 1.3],
  { work: "BS EN 61557", edition: "all parts", basis: "published" },
);

/** What usual instruments are out by, where no accuracy is stated: of each reading, and in digits. */
const USUAL = Object.freeze({
  loop: { factor: usual(0.05), digits: 5 },
  continuity: { factor: usual(0.02), digits: 3 },
});

function usual(part: number): Assumed<"ratio"> {
  return assumed(
    TERM.operatingUncertainty,
    1,
    "accuracy of the instrument not stated; what usual instruments are out by",
    [1 - part, 1 + part],
    { work: "experience of installation testers", edition: "none", basis: "common-practice" },
  );
}

/** A reading as a usual instrument of its range shows it, where no accuracy is stated. */
export function withUsualDoubt(
  term: Term<"ohm">,
  reading: Evidence<"ohm">,
  range: keyof typeof USUAL,
  reckon: Reckoner,
): Evidence<"ohm"> {
  if (reading.kind !== "measured") return reading;
  if (isStated(reading)) return rounded(term, reading, reckon);
  return widened(term, reading, USUAL[range].factor, USUAL[range].digits, reckon);
}

/** Said where accounts agree only if the instruments are as far out as their standard lets them be. */
export const ONLY_AT_THE_CEILING: Remark = Object.freeze({
  code: "agrees-only-at-the-ceiling",
  words:
    "They agree only if the instruments are as far out as their standard allows, which is more than is usual. State their accuracy, or what a figure may be out by (0.71 ± 0.02 Ω), to decide.",
});

/** What differs from one reading to the next of one meter: a part of the reading, and digits. Its scale is common to them. */
const FROM_READING_TO_READING = assumed(
  TERM.operatingUncertainty,
  1,
  "accuracy not stated, but one meter read all of them: its scale is common to them, and each differs by 2 % and 3 digits at most, by the habit of such instruments",
  [0.98, 1.02],
  { work: "experience of continuity testers", edition: "none", basis: "common-practice" },
);
const DIGITS_FROM_READING_TO_READING = 3;

/**
 * A reading with a band: its own where the accuracy is stated, else the ceiling of the instrument standard and one digit
 * of the display. Figures that were given with a band keep it.
 */
export function withInstrumentDoubt(term: Term<"ohm">, reading: Evidence<"ohm">, reckon: Reckoner): Evidence<"ohm"> {
  if (reading.kind !== "measured") return reading;
  return isStated(reading) ? rounded(term, reading, reckon) : widened(term, reading, CEILING, 1, reckon);
}

/** The same for readings that are held against others of the same meter on the same range. */
export function withDoubtOfOneMeter(term: Term<"ohm">, reading: Evidence<"ohm">, reckon: Reckoner): Evidence<"ohm"> {
  if (reading.kind !== "measured") return reading;
  if (isStated(reading)) return rounded(term, reading, reckon);
  return widened(term, reading, FROM_READING_TO_READING, DIGITS_FROM_READING_TO_READING, reckon);
}

/** A reading with one digit of its display either way, where what it is held against already allows for the rest. */
export function withLastDigit(term: Term<"ohm">, reading: Evidence<"ohm">, reckon: Reckoner): Evidence<"ohm"> {
  if (reading.kind !== "measured") return reading;
  return isStated(reading)
    ? rounded(term, reading, reckon)
    : reckon.sum(term, reading, digits(reading, reading.low, 1));
}

/** Whether one meter took all readings, as far as is known: nobody changes it between the ends of one ring. */
export function areOfOneMeter(readings: readonly Evidence<"ohm">[]): boolean {
  const meters = readings.flatMap((one) => (one.kind === "measured" ? [one.detail.taken.instrument] : []));
  return meters.every((meter) => meter === meters[0]);
}

const isStated = ({ detail }: Measured<"ohm">) => detail.accuracy !== null;

function widened(
  term: Term<"ohm">,
  reading: Measured<"ohm">,
  factor: Assumed<"ratio">,
  count: number,
  reckon: Reckoner,
) {
  const scaled = reckon.product(term, reading, factor);
  return reckon.sum(term, scaled, digits(reading, scaled.low, count));
}

/** An accuracy stated in percent alone says nothing of the rounding of the display. */
function rounded(term: Term<"ohm">, reading: Measured<"ohm">, reckon: Reckoner): Evidence<"ohm"> {
  const stated = parseAccuracy(reading.detail.accuracy ?? "");
  if (stated === undefined || stated.digits > 0) return reading;
  return reckon.sum(term, reading, digits(reading, reading.low, 0.5));
}

/** Counts of the last digit shown either way, but not below nothing. */
function digits({ detail: { resolution } }: Measured<"ohm">, low: number, count: number): Assumed<"ohm"> {
  const either = count * resolution;
  return assumed(
    TERM.lastDigit,
    0,
    count < 1 ? "rounding of the display" : `the last digit of the display, ${count} either way`,
    [-Math.min(either, low), either],
  );
}
