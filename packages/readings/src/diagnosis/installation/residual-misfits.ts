import { isKnown, isKnownFact, type Misfit, printQuantity, type RcdDelay } from "@good-grounds/core";
import type { Circuit, Installation, ResidualDevice } from "@good-grounds/inspection";
import { logSum } from "./gaussian.ts";
import { lineUp, logNormal, logSpread, type Suspect } from "./line-up.ts";
import { FALLBACK, type Reading, readingOf, wholeDeviation } from "./noise.ts";

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

const time = (seconds: number) => printQuantity(seconds, "second");

/** RCD times that do not go with the device written down, and devices that do not go with their circuit. */
export function residualMisfits({ boards, circuits }: Installation): readonly Misfit[] {
  return [
    ...boards.flatMap((board) =>
      board.rcds.flatMap(
        (rcd) =>
          timeMisfit(
            rcd,
            board.rcds.filter((one) => one !== rcd),
            `${board.name}, RCD${rcd.id === undefined ? "" : ` ${rcd.id}`}`,
          ) ?? [],
      ),
    ),
    ...circuits.flatMap((circuit) => {
      const [own] = circuit.residual.devices;
      const isOwn = own !== undefined && own.path[2] === "circuits";
      return [
        isOwn ? timeMisfit(own, circuit.residual.devices.slice(1), `Circuit ${circuit.designation}, RCD`) : undefined,
        deviceMisfit(circuit),
      ].flatMap((one) => one ?? []);
    }),
  ];
}

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

/** A sound device outside its limits: only where the reading's error was far larger than stated. */
const HARDLY = Math.log(1e-5);

function timeMisfit(rcd: ResidualDevice, inTheWay: readonly ResidualDevice[], name: string): Misfit | undefined {
  const read = readingOf(rcd.timeAtRated);
  const { delay } = rcd;
  if (read === undefined || !(read.value >= 0) || !isKnownFact(delay)) return undefined;
  const { path, resolution } = read.evidence.detail;
  // A display of nought means less than its last digit.
  const reading = { ...read, value: Math.max(read.value, resolution / 2, 1e-4) };
  const log = Math.log(reading.value);
  const other: RcdDelay = delay.word === "general" ? "S" : "general";
  const bandOf = (one: RcdDelay) =>
    one === "general"
      ? { value: GENERAL.middle, low: 0.008, high: GENERAL.slowest }
      : { value: 0.23, low: SELECTIVE.fastest, high: SELECTIVE.slowest };
  const suspect = (
    id: string,
    innocent: boolean,
    prior: number,
    logDensity: number,
    words: string,
    expects: Suspect["expects"],
    of: RcdDelay,
  ): Suspect => ({
    id,
    innocent,
    words,
    expects,
    log: Math.log(FAULTY * prior) + logDensity,
    would: [{ path, ...bandOf(of) }],
  });
  const twin = inTheWay.find((one) => {
    const theirs = readingOf(one.timeAtRated);
    return (
      theirs !== undefined &&
      isKnownFact(one.delay) &&
      one.delay.word !== delay.word &&
      theirs.value > 0 &&
      Math.abs(Math.log(theirs.value) - log) < 0.1
    );
  });
  const isS = (one: ResidualDevice) => isKnownFact(one.delay) && one.delay.word === "S";
  // Nobody makes a time-delayed device for 30 mA or less, and only one in the way can lend another its time.
  const canBeS = !(isKnown(rcd.residual) && rcd.residual.value <= LEAST_DELAYED);
  const [isOther, isOfOther] =
    other === "general" ? [0.3, 0.3] : [canBeS ? 0.3 : 0.003, inTheWay.some(isS) ? 0.3 : 0.05];
  const suspects = [
    suspect(
      "delay-is-another",
      false,
      isOther,
      density(other, reading),
      `the device is ${other === "S" ? "time-delayed (S)" : "without delay"} and not as written`,
      { label: `marked as ${other === "S" ? "S" : "without S"}`, alone: `again about ${time(reading.value)}` },
      other,
    ),
    suspect(
      "another-device-tripped",
      false,
      isOfOther,
      density(other, reading),
      "the time is that of another device in the way of the test current: the circuit does not hang on the device it is written against, or was tested from behind another",
      {
        label: "marked as written",
        alone: `a time as of a device ${delay.word === "S" ? "with delay" : "without delay"}`,
      },
      other,
    ),
    suspect(
      "device-out-of-limits",
      false,
      0.3,
      logSpread(reading.value, 0.002, 2) + log,
      "the device itself is too fast or too slow",
      { label: "marked as written", alone: `again about ${time(reading.value)}` },
      delay.word,
    ),
    suspect(
      "time-not-of-a-test",
      true,
      0.15,
      // Mostly it shows in a time below what any device takes.
      (reading.value < FASTEST
        ? logSpread(reading.value, 1e-4, FASTEST)
        : Math.log(0.2) + logSpread(reading.value, FASTEST, 2)) + log,
      "the time was misread or mistyped, or the test ended for another reason: a device that was off already, no contact",
      { label: "marked as written", alone: "another time" },
      delay.word,
    ),
    ...(twin === undefined
      ? []
      : [
          suspect(
            "time-of-device-in-series",
            false,
            0.1,
            logNormal(log, log, 0.05),
            "the time is that of the device in series, which was tested in its place",
            { label: "marked as written", alone: "another time" },
            delay.word,
          ),
        ]),
  ];
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
    suspects,
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

/** Odds of what follows from marks alone: somebody wrote one of the two wrongly. */
const CERTAIN = 3;

/** A device that has an RCD in it by its standard beside a circuit written down without one, and the other way round. */
function deviceMisfit({ device, residual, path, designation }: Circuit): Misfit | undefined {
  const { standard } = device;
  if (!isKnownFact(standard)) return undefined;
  const [own] = residual.devices;
  const isOwn = own !== undefined && own.path[2] === "circuits";
  const combined = standard.word === "BS EN 61009";
  const without = combined && isKnownFact(residual.present) && !residual.present.word;
  const within = !combined && isOwn && isKnownFact(own.standard) && own.standard.word === "BS EN 61009";
  if (!without && !within) return undefined;
  const words = without
    ? [
        "the circuit has an RCD: its device is a breaker with one in it",
        "the device is a breaker without an RCD and its standard is wrong",
      ]
    : [
        "the RCD is a device apart from the breaker, or serves several circuits",
        "the device is a breaker with an RCD in it and its standard is wrong",
      ];
  return {
    kind: "residual-device",
    path,
    title: `Circuit ${designation}: device and RCD do not go together`,
    odds: CERTAIN,
    clear: true,
    readings: [],
    explanations: words.map((one, i) => ({
      id: i === 0 ? "rcd-written-wrongly" : "device-written-wrongly",
      words: one,
      share: 0.5,
      innocent: true,
      would: [],
    })),
    toldApart: false,
    next: {
      id: "look",
      words: "read the marks on the device and press its test button",
      expects: words.map((one, i) => ({
        explanation: i === 0 ? "rcd-written-wrongly" : "device-written-wrongly",
        words: one,
      })),
    },
    innocentCauses: ["a device changed since the schedule was begun"],
    formula: "BS EN 61009: overcurrent and residual current protection in one device",
    grounds: [standard, residual.present],
  };
}
