import {
  type Evidence,
  type Fact,
  isKnownFact,
  type Misfit,
  type Path,
  printQuantity,
  type Unit,
} from "@good-grounds/core";
import type { Supply } from "@good-grounds/inspection";
import { type Reading, readingOf, wholeDeviation } from "./fitted-reading.ts";
import { logSum } from "./gaussian.ts";
import { lineUp, logNormal, type Suspect } from "./line-up.ts";
import { about, FAULTY, fallbacks, LOG_SOUND, shownReading } from "./origin-shown.ts";

const SQRT3 = Math.sqrt(3);

/** What a fault current is, as a multiple of the line to neutral one, by how it was measured. */
const MULTIPLE = { "line-neutral": 1, "line-line": SQRT3, "three-phase": 2 } as const;
const MULTIPLES = Object.values(MULTIPLE);

/** A fault current and the loop it should come from. */
export interface Pair {
  readonly path: Path;
  readonly title: string;
  readonly current: Evidence<"ampere">;
  readonly loop: Evidence<"ohm">;
  readonly loopName: string;
  /** The current may be higher than the loop gives, since it is the larger of two. */
  readonly oneSided: boolean;
  readonly method: Fact<keyof typeof MULTIPLE>;
}

/** Instruments work a current out with the nominal voltage or with what they read; it lies in 216.2 to 253 V. */
const VOLTS = 230;
const VOLTS_SPREAD = Math.log(253 / 216.2) / Math.sqrt(12);

/** A pair of which both are read, made ready to be held against each other. */
interface PairRead {
  readonly current: Reading;
  readonly loopName: string;
  readonly oneSided: boolean;
  /** Logarithm of the current as a multiple of what the loop gives line to neutral, and its deviation. */
  readonly ratio: number;
  readonly deviation: number;
  /** Multiples the method written down allows, and the least of them. */
  readonly said: readonly number[];
  readonly least: number;
  /** The least current the loop gives, A. */
  readonly expected: number;
}

const densityAt = ({ ratio, deviation }: PairRead, multiple: number) => logNormal(ratio, Math.log(multiple), deviation);

/** Logarithm of the density of a pair of which neither is out. */
function soundDensity(read: PairRead): number {
  const { said, oneSided, ratio, least } = read;
  const sound = logSum(said.map((multiple) => densityAt(read, multiple) - Math.log(said.length)));
  // The larger of two currents may be any times as large as the one the loop gives.
  const larger = oneSided && ratio > Math.log(least) ? -Math.log(Math.log(50)) : Number.NEGATIVE_INFINITY;
  return logSum(oneSided ? [sound, larger] : [sound]);
}

/** A suspect of a current, which is innocent always; `value` is the current to be expected under it, A. */
function suspectOf(
  { current, deviation }: PairRead,
  is: Pick<Suspect, "id" | "words" | "expects">,
  prior: number,
  density: number,
  value: number,
): Suspect {
  return {
    ...is,
    innocent: true,
    log: Math.log(FAULTY * prior) + density,
    would: [{ path: current.evidence.detail.path, ...about(value, deviation * value) }],
  };
}

const amperes = (value: number) => printQuantity(value, "ampere");

/** A current that is a multiple or a part of what the method written down gives. */
function otherMethod(read: PairRead): readonly Suspect[] {
  const { said, least, expected } = read;
  const multipleWords = (multiple: number) =>
    multiple === 2
      ? "the three-phase value, twice"
      : multiple === 1
        ? "the line to neutral value"
        : "the line to line value, √3 times";
  const half = {
    id: "half-of-it",
    words:
      "the current is half of what the loop gives: a three-phase value halved, or a loop that counts both conductors twice",
    expects: { again: `about ${amperes(expected)}` },
  };
  return [
    ...MULTIPLES.filter((multiple) => !said.includes(multiple)).map((multiple) =>
      suspectOf(
        read,
        {
          id: "method-taken-for-another",
          words: `the current is ${multipleWords(multiple)} what a line to neutral loop gives, or the method written down is another`,
          expects: { again: `about ${amperes(expected)} line to neutral` },
        },
        0.15,
        densityAt(read, multiple),
        expected * (multiple / least),
      ),
    ),
    ...said.map((multiple) => suspectOf(read, half, 0.1, densityAt(read, multiple / 2), expected / 2)),
  ];
}

/** A slip of the pen, and a current and a loop that were not of one place. */
function slips(read: PairRead): readonly Suspect[] {
  const { least, expected, loopName } = read;
  const decimal = {
    id: "decimal-slipped",
    words: "the decimal point slipped in the current or in the loop",
    expects: { again: `about ${amperes(expected)}, or another loop` },
  };
  const unit = {
    id: "unit-mistaken",
    words: "amperes were taken for kiloamperes in the current, or the other way round",
    expects: { again: `about ${amperes(expected)}` },
  };
  const elsewhere = {
    id: "other-place-or-loop",
    words: `the current and ${loopName} were read at different places, between other conductors or on another day`,
    expects: { again: "both in agreement" },
  };
  return [
    ...[10, 0.1].map((factor) => suspectOf(read, decimal, 0.1, densityAt(read, least * factor), expected)),
    ...[1000, 0.001].map((factor) => suspectOf(read, unit, 0.05, densityAt(read, least * factor), expected)),
    suspectOf(read, elsewhere, 0.4, -Math.log(Math.log(1000)), expected),
  ];
}

/** A fault current against its loop: I·Z is the voltage, or more where the current may be another's. */
export function currentMisfit(pair: Pair, supply: Supply): Misfit | undefined {
  const [current, loop] = [readingOf(pair.current), readingOf(pair.loop)];
  if (current === undefined || loop === undefined || !(current.value > 0) || !(loop.value > 0)) return undefined;
  const measured = readingOf(supply.voltage);
  const volts = measured === undefined || !(measured.value > 100) ? VOLTS : Math.sqrt(VOLTS * measured.value);
  const deviation = Math.hypot(
    VOLTS_SPREAD,
    wholeDeviation(current) / current.value,
    wholeDeviation(loop) / loop.value,
    current.evidence.detail.resolution / current.value,
  );
  const three = isKnownFact(supply.phases) && supply.phases.word === "3";
  const said = isKnownFact(pair.method) ? [MULTIPLE[pair.method.word]] : three ? MULTIPLES : [1];
  const least = Math.min(...said);
  const expected = (volts * least) / loop.value;
  const { loopName, oneSided } = pair;
  const ratio = Math.log((current.value * loop.value) / volts);
  const read: PairRead = { current, loopName, oneSided, ratio, deviation, said, least, expected };
  return lineUp({
    kind: "fault-current",
    path: pair.path,
    title: pair.title,
    formula: oneSided ? `I·${loopName} ≥ U` : `I·${loopName} = U, 216.2 to 253 V`,
    innocentCauses: [
      "the instrument shows the larger of two currents",
      "the voltage was another at the time",
      "low loops read uncertain",
    ],
    soundLog: LOG_SOUND + soundDensity(read),
    suspects: [...otherMethod(read), ...slips(read)],
    nexts: { again: `read the current and ${loopName} again at one place, one after the other` },
    readings: [
      shownReading("Ipf", current, about(expected, deviation * expected)),
      shownReading(loopName, loop, about((volts * least) / current.value, (deviation * volts * least) / current.value)),
    ],
    grounds: [
      current.evidence,
      loop.evidence,
      ...(measured === undefined ? [] : [measured.evidence as Evidence<Unit>]),
      ...fallbacks(current, loop),
    ],
  });
}
