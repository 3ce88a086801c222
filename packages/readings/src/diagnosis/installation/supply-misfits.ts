import { isAtOrigin } from "@good-grounds/computations";
import { type Evidence, isKnownFact, type Misfit, type Path, printQuantity } from "@good-grounds/core";
import type { Installation, Supply } from "@good-grounds/inspection";
import { systemMisfit } from "./earthing-system-misfit.ts";
import { currentMisfits } from "./fault-current-misfits.ts";
import { logSum } from "./gaussian.ts";
import { lineUp, logNormal, logSpread, type Suspect } from "./line-up.ts";
import { readingOf, wholeDeviation } from "./noise.ts";
import { about, FAULTY, fallbacks, LOG_SOUND, READ_ZE, shownReading } from "./pair-of-readings.ts";

const ohms = (value: number) => printQuantity(value, "ohm");

/** A distributor's earth that is sound hardly has more by itself, Ω: what is above it is no supply without its bonding. */
const MOST_IN_TN = 1;

/** Bonded metal with the neutral of the street hardly has less, Ω. */
const LEAST_BONDED = 0.02;

/** The misfits among the readings of the origin, and of the boards' fault currents. */
export function supplyMisfits(installation: Installation): readonly Misfit[] {
  const { supply, boards } = installation;
  return [
    ...boards.map((board) => (isAtOrigin(board) ? loopAtBoard(supply, board.zdb, board.path, board.name) : undefined)),
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
    bonded: { zdb: `still about ${ohms(zdb.value)}`, ze: `about ${ohms(zdb.value)}` },
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
          suspect(
            "bonding-on-at-ze",
            true,
            tt ? 0.3 : 0.03,
            tt || zdb.value <= MOST_IN_TN
              ? logSpread(ze.value, LEAST_BONDED, Math.max(0.05, zdb.value))
              : Number.NEGATIVE_INFINITY,
            "bonding or another earth was connected while Ze was read and took no part at the board",
            expects.bonded,
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
      ze: READ_ZE,
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
      ze: READ_ZE,
      ra: "read the electrode again with the spikes set further out",
    },
    readings: [
      shownReading("Ze", ze, about(ra.value + 1, deviation)),
      shownReading("RA", ra, about(Math.max(0, ze.value - 1), deviation)),
    ],
    grounds: [ze.evidence, ra.evidence, ...fallbacks(ze, ra)],
  });
}
