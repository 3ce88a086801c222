import {
  type Evidence,
  type ExpectedReading,
  type Fact,
  isKnown,
  isKnownFact,
  type Misfit,
  type MisfitReading,
  type Path,
  printQuantity,
  type Unit,
} from "@good-grounds/core";
import type { Installation, Supply } from "@good-grounds/inspection";
import { logSum } from "./gaussian.ts";
import { lineUp, logNormal, logSpread, type Suspect } from "./line-up.ts";
import { FALLBACK, type Reading, readingOf, wholeDeviation } from "./noise.ts";

/** How often one of a pair of readings at the origin is out. */
const FAULTY = 0.03;
const LOG_SOUND = Math.log(1 - FAULTY);

const ohms = (value: number) => printQuantity(value, "ohm");

/** A reading as a misfit shows it. */
function shownReading(
  name: string,
  { evidence, value }: Reading,
  expected: Omit<ExpectedReading, "path">,
): MisfitReading {
  return {
    name,
    path: evidence.detail.path,
    unit: evidence.term.unit,
    shown: evidence.detail.text,
    measured: value,
    ...expected,
  };
}

const about = (value: number, deviation: number) => ({
  value,
  low: Math.max(0, value - 1.96 * deviation),
  high: value + 1.96 * deviation,
});

const fallbacks = (...readings: readonly Reading[]) => (readings.every(({ stated }) => stated) ? [] : [FALLBACK]);

/** The misfits among the readings of the origin, and of the boards' fault currents. */
export function supplyMisfits(installation: Installation): readonly Misfit[] {
  const { supply, boards } = installation;
  return [
    ...boards.map((board) =>
      board.feeder === undefined ? loopAtBoard(supply, board.zdb, board.path, board.name) : undefined,
    ),
    electrode(supply),
    systemMisfit(supply),
    ...currentMisfits(installation),
  ].flatMap((one) => one ?? []);
}

/** Zdb of a board at the origin against Ze: higher only by what lies between, lower by whatever earthed metal is bonded. */
function loopAtBoard(supply: Supply, zdbEvidence: Evidence<"ohm">, path: Path, board: string): Misfit | undefined {
  const [ze, zdb] = [readingOf(supply.ze), readingOf(zdbEvidence)];
  if (ze === undefined || zdb === undefined) return undefined;
  const off = zdb.value - ze.value;
  const deviation = Math.hypot(wholeDeviation(ze), wholeDeviation(zdb), 0.02);
  const tt = isKnownFact(supply.earthing) && supply.earthing.word === "TT";
  // On an electrode a board that is far lower has found another earth, which is worth knowing.
  const bonded = tt ? 0.03 : 0.3;
  const ways = off < 0 ? Math.log(bonded) + logSpread(-off, 0.005, Math.max(0.01, ze.value)) : Number.NEGATIVE_INFINITY;
  const soundLog = LOG_SOUND + logSum([Math.log(1 - bonded) + logNormal(off, 0, deviation), ways]);
  const x = Math.abs(off);
  const expects = {
    joint: { zdb: `still about ${ohms(zdb.value)}`, ze: `about ${ohms(ze.value)}` },
    off: { zdb: `about ${ohms(ze.value)}`, ze: `about ${ohms(ze.value)}` },
    wrong: { zdb: "another value than written", ze: "another value than written" },
  };
  const suspect = (
    id: string,
    innocent: boolean,
    prior: number,
    density: number,
    words: string,
    is: Suspect["expects"],
  ): Suspect => ({
    id,
    innocent,
    words,
    expects: is,
    log: Math.log(FAULTY * prior) + density,
    would: [{ path: zdb.evidence.detail.path, ...about(off > 0 ? ze.value : zdb.value, deviation) }],
  });
  const wrong = suspect(
    "loop-reading-wrong",
    true,
    0.3,
    logSpread(Math.max(0.01, zdb.value), 0.005, 1e4),
    "Ze or Zdb was misread, mistyped or taken elsewhere",
    expects.wrong,
  );
  const suspects =
    off > 0
      ? [
          suspect(
            "earthing-conductor-off",
            false,
            tt ? 0.05 : 0.25,
            logSpread(x, 1, 500),
            `the earthing conductor was off when the board was read: about ${ohms(x)} by what was left of the earth`,
            expects.off,
          ),
          suspect(
            "joint-in-earthing-conductor",
            false,
            0.35,
            logSpread(x, 0.03, 20),
            `about ${ohms(x)} in the earthing conductor, its terminations or the main terminals`,
            expects.joint,
          ),
          wrong,
        ]
      : [
          suspect(
            "other-earth",
            false,
            0.4,
            logSpread(Math.max(0.01, zdb.value), 0.01, Math.max(0.02, ze.value)),
            `another earth of about ${ohms(zdb.value)} is connected at the board: bonded metal in the ground or the earth of another supply`,
            expects.joint,
          ),
          wrong,
        ];
  return lineUp({
    kind: "supply-loop",
    path,
    title: `${board}: Zdb and Ze do not agree`,
    formula: "Zdb ≤ Ze + tails",
    innocentCauses: ["Ze and Zdb read on different days", "bonding connected for one and not for the other"],
    soundLog,
    suspects,
    nexts: {
      zdb: "see that the earthing conductor is on and tight, then read Zdb again",
      ze: "read Ze again, isolated and with the earthing conductor off",
    },
    readings: [
      shownReading("Zdb", zdb, about(ze.value, deviation)),
      shownReading("Ze", ze, about(zdb.value, deviation)),
    ],
    grounds: [ze.evidence, zdb.evidence, ...fallbacks(ze, zdb)],
  });
}

/** Ze through an electrode against the electrode itself: the distributor's side adds a few ohms at most. */
function electrode(supply: Supply): Misfit | undefined {
  const [ze, ra] = [readingOf(supply.ze), readingOf(supply.ra)];
  if (ze === undefined || ra === undefined || !isKnownFact(supply.earthing) || supply.earthing.word !== "TT") return;
  const off = ze.value - ra.value;
  // The electrode's own reading depends on where the spikes stand, some 5 % of it.
  const deviation = Math.hypot(wholeDeviation(ze), wholeDeviation(ra), 0.05 * ra.value, 2);
  const soundLog = LOG_SOUND + logNormal(off, 1, deviation);
  const again = { ze: "about RA", ra: "as before" };
  const suspect = (
    id: string,
    innocent: boolean,
    prior: number,
    density: number,
    words: string,
    expects: Suspect["expects"],
  ): Suspect => ({
    id,
    innocent,
    words,
    expects,
    log: Math.log(FAULTY * prior) + density,
    would: [{ path: ze.evidence.detail.path, ...about(ra.value + 1, deviation) }],
  });
  const anything = logSpread(Math.max(0.01, ze.value), 0.005, 1e5);
  return lineUp({
    kind: "supply-loop",
    path: supply.path,
    title: "Ze and the earth electrode do not agree",
    formula: "Ze ≈ RA + source side",
    innocentCauses: ["dry or wet ground between two days", "spikes too near to each other"],
    soundLog,
    suspects:
      off > 0
        ? [
            suspect(
              "joint-in-earthing-conductor",
              false,
              0.35,
              logSpread(off, 1, 1e4),
              `about ${ohms(off)} between the electrode and the main earthing terminal`,
              { ze: "as before", ra: "as before" },
            ),
            suspect(
              "electrode-reading-wrong",
              true,
              0.35,
              anything,
              "the electrode's reading is too low: spikes too near, or another electrode in parallel",
              { ze: "as before", ra: `about ${ohms(ze.value)}` },
            ),
          ]
        : [
            suspect(
              "earth-in-parallel",
              true,
              0.4,
              anything,
              "bonding or another earth was connected while Ze was read",
              again,
            ),
            suspect(
              "electrode-reading-wrong",
              true,
              0.2,
              anything,
              "the electrode's reading is too high: a lead or spike of poor contact",
              { ze: "as before", ra: `about ${ohms(ze.value)}` },
            ),
          ],
    nexts: {
      ze: "read Ze again with the earthing conductor off at the main earthing terminal",
      ra: "read the electrode again with the spikes set further out",
    },
    readings: [
      shownReading("Ze", ze, about(ra.value + 1, deviation)),
      shownReading("RA", ra, about(Math.max(0, ze.value - 1), deviation)),
    ],
    grounds: [ze.evidence, ra.evidence, ...fallbacks(ze, ra)],
  });
}

/** External loops as met, on a logarithmic scale: middle and spread. A judgement of practice, wide on purpose. */
const LOOPS = { "TN-C-S": [0.18, 0.5], "TN-S": [0.4, 0.5], TT: [60, 1.2] } as const;
type LoopSystem = keyof typeof LOOPS;

/** Ze against what the recorded earthing system can give. */
function systemMisfit(supply: Supply): Misfit | undefined {
  const ze = readingOf(supply.ze);
  const { earthing } = supply;
  if (ze === undefined || !(ze.value > 0) || !isKnownFact(earthing) || earthing.word === "IT") return undefined;
  const recordedAs = earthing.word;
  const own = wholeDeviation(ze) / ze.value;
  const density = (system: LoopSystem) => {
    const [middle, spread] = LOOPS[system];
    return logNormal(Math.log(ze.value / middle), 0, Math.hypot(spread, own));
  };
  const band = ([middle, spread]: readonly [number, number]) => ({
    value: middle,
    low: middle * Math.exp(-1.96 * spread),
    high: middle * Math.exp(1.96 * spread),
  });
  const suspect = (
    id: string,
    innocent: boolean,
    log: number,
    words: string,
    expects: Suspect["expects"],
    of: LoopSystem,
  ): Suspect => ({
    id,
    innocent,
    words,
    log,
    expects,
    would: [{ path: ze.evidence.detail.path, ...band(LOOPS[of]) }],
  });
  const over = (low: number, high: number) => logSpread(ze.value, low, high) + Math.log(ze.value);
  const others = (Object.keys(LOOPS) as LoopSystem[])
    .filter((one) => one !== recordedAs)
    .map((one) =>
      suspect(
        `system-is-${one}`,
        false,
        Math.log(0.02) + density(one),
        `the system is ${one} and not ${recordedAs}`,
        { look: `signs of ${one}`, ze: "as before" },
        one,
      ),
    );
  const suspects =
    recordedAs === "TT"
      ? [
          ...others,
          suspect(
            "earth-in-parallel",
            true,
            Math.log(0.02) + over(0.05, 5),
            "bonding or another earth was connected while Ze was read",
            { look: `signs of ${recordedAs}`, ze: "much higher" },
            recordedAs,
          ),
        ]
      : [
          ...others,
          suspect(
            "distributor-earth-poor",
            false,
            Math.log(0.015) + over(0.5, 1000),
            "the distributor's earth or the connection to it is poor",
            { look: `signs of ${recordedAs}`, ze: "as before" },
            recordedAs,
          ),
          suspect(
            "reading-wrong",
            true,
            Math.log(0.005) + over(0.005, 1e4),
            "Ze was misread or mistyped, or a lead did not make contact",
            { look: `signs of ${recordedAs}`, ze: "as usual for the system" },
            recordedAs,
          ),
        ];
  return lineUp({
    kind: "earthing-system",
    path: supply.path,
    title: `Ze is not what a ${recordedAs} supply gives`,
    formula: "Ze against what is met with the system",
    innocentCauses: [
      "a long service in the country",
      "a private transformer next door",
      "the system was taken from an older report",
    ],
    soundLog: Math.log(0.97) + density(recordedAs),
    suspects,
    nexts: {
      look: "look at the cut-out: where the earthing terminal comes from, sheath, neutral block or electrode",
      ze: "read Ze again, isolated and with the earthing conductor off",
    },
    readings: [shownReading("Ze", ze, band(LOOPS[recordedAs]))],
    grounds: [ze.evidence, earthing, ...fallbacks(ze)],
  });
}

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
function currentMisfits({ supply, boards }: Installation): readonly (Misfit | undefined)[] {
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
