import { isKnown, isKnownFact, type Misfit, printQuantity, type RcdDelay } from "@good-grounds/core";
import type { ResidualDevice } from "@good-grounds/inspection";
import { FALLBACK, type Reading, readingOf, wholeDeviation } from "./fitted-reading.ts";
import { logSum } from "./gaussian.ts";
import { lineUp, logNormal, logSpread, type Suspect } from "./line-up.ts";

const FAULTY = 0.03;

/** Times of devices without delay as met at their rated current, s, and the limits the standards set for S types. */
const GENERAL = { middle: 0.026, spread: 0.35, slowest: 0.3 } as const;
const SELECTIVE = { fastest: 0.13, slowest: 0.5 } as const;

/** Rated residual current, A, up to which no device is time-delayed. */
const LEAST_DELAYED = 0.03;

/** No device is faster than this, s. */
const FASTEST = 0.004;

/** Of a time of a digit or two the error is no longer in proportion. */
const MOST_ERROR = 0.3;

/** What the marks show where the device is the one written down. */
const AS_WRITTEN = "marked as written";

const time = (seconds: number) => printQuantity(seconds, "second");

const bandOf = (delay: RcdDelay) =>
  delay === "general"
    ? { value: GENERAL.middle, low: 0.008, high: GENERAL.slowest }
    : { value: 0.23, low: SELECTIVE.fastest, high: SELECTIVE.slowest };

/** Logarithm of the density of a time, per unit of its logarithm. */
function density(delay: RcdDelay, reading: Reading): number {
  const log = Math.log(reading.value);
  const error = Math.min(MOST_ERROR, wholeDeviation(reading) / reading.value);
  if (delay === "general") {
    return logSum([
      Math.log(0.9) + logNormal(log, Math.log(GENERAL.middle), Math.hypot(GENERAL.spread, error)),
      Math.log(0.1) + logSpread(reading.value, FASTEST, GENERAL.slowest * (1 + 2 * error)) + log,
    ]);
  }
  return logSpread(reading.value, SELECTIVE.fastest * (1 - 2 * error), SELECTIVE.slowest * (1 + 2 * error)) + log;
}

/** A time of a device, read as it is fitted, and the delay it is held against. */
interface TimeRead {
  readonly rcd: ResidualDevice;
  readonly delay: RcdDelay;
  readonly reading: Reading;
  /** Natural logarithm of the time. */
  readonly log: number;
  /** Devices in the way of the test current that could have tripped in its place. */
  readonly inTheWay: readonly ResidualDevice[];
}

/** A suspect of a time; `of` is the delay whose times are to be expected under it. */
function suspectOf(
  { reading }: TimeRead,
  is: Pick<Suspect, "id" | "innocent" | "words" | "expects">,
  prior: number,
  logDensity: number,
  of: RcdDelay,
): Suspect {
  return {
    ...is,
    log: Math.log(FAULTY * prior) + logDensity,
    would: [{ path: reading.evidence.detail.path, ...bandOf(of) }],
  };
}

/** The time of another kind of device: marked wrongly, or tripped in the place of this one. */
function otherDelay(read: TimeRead): readonly Suspect[] {
  const { rcd, delay, reading, inTheWay } = read;
  const other: RcdDelay = delay === "general" ? "S" : "general";
  const isS = (one: ResidualDevice) => isKnownFact(one.delay) && one.delay.word === "S";
  // Nobody makes a time-delayed device for 30 mA or less, and only one in the way can lend another its time.
  const canBeS = !(isKnown(rcd.residual) && rcd.residual.value <= LEAST_DELAYED);
  const [isOther, isOfOther] =
    other === "general" ? [0.3, 0.3] : [canBeS ? 0.3 : 0.003, inTheWay.some(isS) ? 0.3 : 0.05];
  const marked = {
    id: "delay-is-another",
    innocent: false,
    words: `the device is ${other === "S" ? "time-delayed (S)" : "without delay"} and not as written`,
    expects: { label: `marked as ${other === "S" ? "S" : "without S"}`, alone: `again about ${time(reading.value)}` },
  };
  const tripped = {
    id: "another-device-tripped",
    innocent: false,
    words:
      "the time is that of another device in the way of the test current: the circuit does not hang on the device it is written against, or was tested from behind another",
    expects: { label: AS_WRITTEN, alone: `a time as of a device ${delay === "S" ? "with delay" : "without delay"}` },
  };
  return [
    suspectOf(read, marked, isOther, density(other, reading), other),
    suspectOf(read, tripped, isOfOther, density(other, reading), other),
  ];
}

/** The device itself, or a time that is none. */
function outOfLimits(read: TimeRead): readonly Suspect[] {
  const { delay, reading, log } = read;
  const device = {
    id: "device-out-of-limits",
    innocent: false,
    words: "the device itself is too fast or too slow",
    expects: { label: AS_WRITTEN, alone: `again about ${time(reading.value)}` },
  };
  const noTest = {
    id: "time-not-of-a-test",
    innocent: true,
    words:
      "the time was misread or mistyped, or the test ended for another reason: a device that was off already, no contact",
    expects: { label: AS_WRITTEN, alone: "another time" },
  };
  // Mostly it shows in a time below what any device takes.
  const noTestDensity =
    (reading.value < FASTEST
      ? logSpread(reading.value, 1e-4, FASTEST)
      : Math.log(0.2) + logSpread(reading.value, FASTEST, 2)) + log;
  return [
    suspectOf(read, device, 0.3, logSpread(reading.value, 0.002, 2) + log, delay),
    suspectOf(read, noTest, 0.15, noTestDensity, delay),
  ];
}

/** A device in series of the other kind whose own time is as good as this one. */
function inSeries(read: TimeRead): readonly Suspect[] {
  const { delay, log, inTheWay } = read;
  const twin = inTheWay.find((one) => {
    const theirs = readingOf(one.timeAtRated);
    return (
      theirs !== undefined &&
      isKnownFact(one.delay) &&
      one.delay.word !== delay &&
      theirs.value > 0 &&
      Math.abs(Math.log(theirs.value) - log) < 0.1
    );
  });
  if (twin === undefined) return [];
  const is = {
    id: "time-of-device-in-series",
    innocent: false,
    words: "the time is that of the device in series, which was tested in its place",
    expects: { label: AS_WRITTEN, alone: "another time" },
  };
  return [suspectOf(read, is, 0.1, logNormal(log, log, 0.05), delay)];
}

/** A sound device outside its limits: only where the reading's error was far larger than stated. */
const HARDLY = Math.log(1e-5);

/** The time of a device against the delay it is written down with; `inTheWay` are devices in series with it. */
export function timeMisfit(rcd: ResidualDevice, inTheWay: readonly ResidualDevice[], name: string): Misfit | undefined {
  const read = readingOf(rcd.timeAtRated);
  const { delay } = rcd;
  if (read === undefined || !(read.value >= 0) || !isKnownFact(delay)) return undefined;
  const { path, resolution } = read.evidence.detail;
  // A display of nought means less than its last digit.
  const reading = { ...read, value: Math.max(read.value, resolution / 2, 1e-4) };
  const seen: TimeRead = { rcd, delay: delay.word, reading, log: Math.log(reading.value), inTheWay };
  return lineUp({
    kind: "residual-device",
    path: rcd.path,
    title: `${name}: operating time is not that of the device written down`,
    formula:
      delay.word === "S"
        ? "130 ms ≤ t ≤ 500 ms at the rated residual current"
        : "t ≤ 300 ms at the rated residual current",
    innocentCauses: [
      "leakage of the circuit added to the test current",
      "the test was made at five times the rated current",
      "figures of two devices changed places",
    ],
    soundLog: Math.log(1 - FAULTY) + logSum([density(delay.word, reading), HARDLY]),
    suspects: [...otherDelay(seen), ...outOfLimits(seen), ...inSeries(seen)],
    nexts: {
      alone:
        "test at the outgoing terminals of this device with everything behind it disconnected, and see which device trips",
      label: "read the marks on the device",
    },
    readings: [
      {
        path,
        name: "t at IΔn",
        unit: "second",
        shown: reading.evidence.detail.text,
        measured: read.value,
        ...bandOf(delay.word),
      },
    ],
    grounds: [reading.evidence, delay, ...(reading.stated ? [] : [FALLBACK])],
  });
}
