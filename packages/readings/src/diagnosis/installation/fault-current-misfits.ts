import {
  type Evidence,
  type Fact,
  isKnown,
  isKnownFact,
  type Misfit,
  type Path,
  printQuantity,
  type Unit,
} from "@good-grounds/core";
import type { Installation, Supply } from "@good-grounds/inspection";
import { logSum } from "./gaussian.ts";
import { lineUp, logNormal, type Suspect } from "./line-up.ts";
import { readingOf, wholeDeviation } from "./noise.ts";
import { about, FAULTY, fallbacks, LOG_SOUND, shownReading } from "./pair-of-readings.ts";

const SQRT3 = Math.sqrt(3);

/** What a fault current is, as a multiple of the line to neutral one, by how it was measured. */
const MULTIPLE = { "line-neutral": 1, "line-line": SQRT3, "three-phase": 2 } as const;

interface Pair {
  readonly path: Path;
  readonly title: string;
  readonly current: Evidence<"ampere">;
  readonly loop: Evidence<"ohm">;
  readonly loopName: string;
  /** The current may be higher than the loop gives, since it is the larger of two. */
  readonly oneSided: boolean;
  readonly method: Fact<keyof typeof MULTIPLE>;
}

/** Fault currents against the loops they should come from: I·Z is the voltage. */
export function currentMisfits({ supply, boards }: Installation): readonly (Misfit | undefined)[] {
  const tt = isKnownFact(supply.earthing) && supply.earthing.word === "TT";
  const none = supply.faultCurrentMethod;
  const pairs: Pair[] = [
    {
      path: supply.path,
      title: "Prospective fault current and line to neutral loop at the origin do not agree",
      current: supply.faultCurrent,
      loop: supply.lineNeutralLoop,
      loopName: "Z(L-N)",
      oneSided: false,
      method: none,
    },
    {
      path: supply.path,
      title: "Prospective earth fault current and Ze do not agree",
      current: supply.earthFaultCurrent,
      loop: supply.ze,
      loopName: "Ze",
      // Bonding takes part where the earthing conductor was on for the one and off for the other.
      oneSided: true,
      method: none,
    },
    ...(isKnown(supply.lineNeutralLoop) || tt
      ? []
      : [
          {
            path: supply.path,
            title: "Prospective fault current at the origin is lower than Ze gives",
            current: supply.faultCurrent,
            loop: supply.ze,
            loopName: "Ze",
            oneSided: true,
            method: none,
          },
        ]),
    ...(tt
      ? []
      : boards.map(
          (board): Pair => ({
            path: board.path,
            title: `${board.name}: prospective fault current is lower than Zdb gives`,
            current: board.faultCurrent,
            loop: board.zdb,
            loopName: "Zdb",
            oneSided: true,
            method: board.faultCurrentMethod,
          }),
        )),
  ];
  return pairs.map((pair) => currentMisfit(pair, supply));
}

/** Instruments work a current out with the nominal voltage or with what they read; it lies in 216.2 to 253 V. */
const VOLTS = 230;
const VOLTS_SPREAD = Math.log(253 / 216.2) / Math.sqrt(12);

function currentMisfit(pair: Pair, supply: Supply): Misfit | undefined {
  const [current, loop] = [readingOf(pair.current), readingOf(pair.loop)];
  if (current === undefined || loop === undefined || !(current.value > 0) || !(loop.value > 0)) return undefined;
  const measured = readingOf(supply.voltage);
  const volts = measured === undefined || !(measured.value > 100) ? VOLTS : Math.sqrt(VOLTS * measured.value);
  const ratio = Math.log((current.value * loop.value) / volts);
  const deviation = Math.hypot(
    VOLTS_SPREAD,
    wholeDeviation(current) / current.value,
    wholeDeviation(loop) / loop.value,
    current.evidence.detail.resolution / current.value,
  );
  const three = isKnownFact(supply.phases) && supply.phases.word === "3";
  const multiples = Object.values(MULTIPLE);
  const said = isKnownFact(pair.method) ? [MULTIPLE[pair.method.word]] : three ? multiples : [1];
  const at = (multiple: number) => logNormal(ratio, Math.log(multiple), deviation);
  const sound = logSum(said.map((multiple) => at(multiple) - Math.log(said.length)));
  const least = Math.min(...said);
  // The larger of two currents may be any times as large as the one the loop gives.
  const larger = pair.oneSided && ratio > Math.log(least) ? -Math.log(Math.log(50)) : Number.NEGATIVE_INFINITY;
  const soundLog = LOG_SOUND + logSum(pair.oneSided ? [sound, larger] : [sound]);
  const expected = (volts * least) / loop.value;
  const others = multiples.filter((multiple) => !said.includes(multiple));
  const suspect = (
    id: string,
    innocent: boolean,
    prior: number,
    density: number,
    words: string,
    expects: Suspect["expects"],
    value: number,
  ): Suspect => ({
    id,
    innocent,
    words,
    expects,
    log: Math.log(FAULTY * prior) + density,
    would: [{ path: current.evidence.detail.path, ...about(value, deviation * value) }],
  });
  const amperes = (value: number) => printQuantity(value, "ampere");
  const suspects = [
    ...others.flatMap((multiple) => [
      suspect(
        "method-taken-for-another",
        true,
        0.15,
        at(multiple),
        `the current is ${multiple === 2 ? "the three-phase value, twice" : multiple === 1 ? "the line to neutral value" : "the line to line value, √3 times"} what a line to neutral loop gives, or the method written down is another`,
        { again: `about ${amperes(expected)} line to neutral` },
        expected * (multiple / least),
      ),
    ]),
    ...said.map((multiple) =>
      suspect(
        "half-of-it",
        true,
        0.1,
        at(multiple / 2),
        "the current is half of what the loop gives: a three-phase value halved, or a loop that counts both conductors twice",
        { again: `about ${amperes(expected)}` },
        expected / 2,
      ),
    ),
    ...[10, 0.1].map((factor) =>
      suspect(
        "decimal-slipped",
        true,
        0.1,
        at(least * factor),
        "the decimal point slipped in the current or in the loop",
        { again: `about ${amperes(expected)}, or another loop` },
        expected,
      ),
    ),
    ...[1000, 0.001].map((factor) =>
      suspect(
        "unit-mistaken",
        true,
        0.05,
        at(least * factor),
        "amperes were taken for kiloamperes in the current, or the other way round",
        { again: `about ${amperes(expected)}` },
        expected,
      ),
    ),
    suspect(
      "other-place-or-loop",
      true,
      0.4,
      -Math.log(Math.log(1000)),
      `the current and ${pair.loopName} were read at different places, between other conductors or on another day`,
      { again: "both in agreement" },
      expected,
    ),
  ];
  return lineUp({
    kind: "fault-current",
    path: pair.path,
    title: pair.title,
    formula: pair.oneSided ? `I·${pair.loopName} ≥ U` : `I·${pair.loopName} = U, 216.2 to 253 V`,
    innocentCauses: [
      "the instrument shows the larger of two currents",
      "the voltage was another at the time",
      "low loops read uncertain",
    ],
    soundLog,
    suspects,
    nexts: { again: `read the current and ${pair.loopName} again at one place, one after the other` },
    readings: [
      shownReading("Ipf", current, about(expected, deviation * expected)),
      shownReading(
        pair.loopName,
        loop,
        about((volts * least) / current.value, (deviation * volts * least) / current.value),
      ),
    ],
    grounds: [
      current.evidence,
      loop.evidence,
      ...(measured === undefined ? [] : [measured.evidence as Evidence<Unit>]),
      ...fallbacks(current, loop),
    ],
  });
}
