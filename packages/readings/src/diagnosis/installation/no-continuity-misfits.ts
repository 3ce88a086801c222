import {
  type Evidence,
  isKnownFact,
  type Measured,
  type Misfit,
  type MisfitReading,
  type Unit,
} from "@good-grounds/core";
import type { Circuit, Installation } from "@good-grounds/inspection";
import { seenAt } from "../ring/seen.ts";
import { lineUp, type Suspect } from "./line-up.ts";
import { LARGEST_LOOP } from "./thresholds.ts";

/** How often a sound circuit is written down as without continuity. */
const LOG_SOUND = Math.log(1e-6);

/** How often something is wrong where it is. */
const FAULTY = 0.03;

type Display = Measured<Unit>;

/** A display beyond the end of its range. */
function beyond(evidence: Evidence<Unit>): Display | undefined {
  return evidence.kind === "measured" && evidence.detail.bound === "above" ? evidence : undefined;
}

function suspectsOf(
  r1r2: Display | undefined,
  zs: Circuit["readings"]["zs"],
  r2: Display | undefined,
): readonly Suspect[] {
  const open = beyond(zs) !== undefined || r2 !== undefined;
  const earthed = zs.kind === "measured" && zs.detail.bound === "exact" && zs.value < LARGEST_LOOP;
  const suspect = (is: Pick<Suspect, "id" | "words" | "innocent" | "expects">, prior: number): Suspect => ({
    ...is,
    log: Math.log(FAULTY * prior),
    would: [],
  });
  return [
    suspect(
      {
        id: "protective-conductor-absent",
        words: earthed
          ? "the protective conductor is open or absent, and something else earths the circuit in the live test"
          : "there is no protective conductor at the far end, or it is open",
        innocent: false,
        expects: { r2: "no connection", line: "as the cable gives" },
      },
      earthed ? 0.45 : 0.6,
    ),
    suspect(
      {
        id: "line-conductor-open",
        words: "the line conductor is open",
        innocent: false,
        expects: { r2: "as the cable gives", line: "no connection" },
      },
      earthed || r2 !== undefined || r1r2 === undefined ? 0.01 : 0.08,
    ),
    suspect(
      {
        id: "no-link-at-the-far-end",
        words: "the far end was not linked, or a switch on the way was open",
        innocent: true,
        expects: { r2: "as the cable gives", line: "as the cable gives" },
      },
      open ? 0.05 : 0.35,
    ),
  ];
}

/** A ring whose conductors are closed from end to end is open only where R1+R2 was read. */
const SUSPECTS_AT_A_POINT: readonly Suspect[] = [
  {
    id: "line-neutral-swapped-at-the-point",
    words: "line and neutral are reversed at the point where R1+R2 was read: neutral stands on its line terminal",
    innocent: false,
    prior: 0.5,
    expects: { point: "no connection line to protective conductor, one from neutral", again: "no connection" },
  },
  {
    id: "conductor-off-at-the-point",
    words: "a conductor is not connected to the point where R1+R2 was read",
    innocent: false,
    prior: 0.3,
    expects: { point: "no connection to the protective conductor, or from line", again: "no connection" },
  },
  {
    id: "not-cross-connected",
    words: "the ends were not cross-connected when R1+R2 was read, or the probe had no contact",
    innocent: true,
    prior: 0.15,
    expects: { point: "a connection from line to protective conductor", again: "a quarter of r1 and r2 together" },
  },
].map(({ prior, ...is }) => ({ ...is, log: Math.log(FAULTY * prior), would: [] }));

const isClosed = (end: Evidence<Unit>) => end.kind === "measured" && end.detail.bound === "exact";

/** Reads R1+R2 as not connected through, though the ring is closed; undefined where it may itself be open. */
function atAPoint({ path, designation, readings }: Circuit): Misfit | undefined {
  const { r1, rn, r2 } = readings;
  const shown = beyond(readings.r1r2);
  if (shown === undefined || ![r1, r2].every(isClosed) || beyond(rn) !== undefined) return undefined;
  return lineUp({
    kind: "circuit-readings",
    path,
    title: `Circuit ${designation}: the ring is closed, and its furthest point reads nothing`,
    formula: "R1+R2 ≈ (r1 + r2)/4",
    innocentCauses: ["the ends were not cross-connected", "the probe had no contact"],
    soundLog: LOG_SOUND,
    suspects: SUSPECTS_AT_A_POINT,
    nexts: {
      point:
        "with line and protective conductor cross-connected at the board, read at that point from each terminal to the protective conductor",
      again: "read R1+R2 again at that point",
    },
    readings: [shownOpen("R1+R2", shown)],
    grounds: [shown, r1, r2].flatMap((one) => (one.kind === "measured" ? [one] : [])),
  });
}

function shownOpen(name: string, { detail, term, value }: Display): MisfitReading {
  return { name, path: detail.path, unit: term.unit, shown: detail.text, measured: value, value: 0, low: 0, high: 0 };
}

function misfitOf(circuit: Circuit, installation: Installation): Misfit | undefined {
  const { readings, shape, path, designation } = circuit;
  if (isKnownFact(shape) && shape.word === "ring") return atAPoint(circuit);
  const [r1r2, r2] = [beyond(readings.r1r2), beyond(readings.r2Only)];
  const shown = r1r2 ?? r2;
  if (shown === undefined) return undefined;
  const seen = installation.observations.length > 0 ? seenAt(circuit, installation).grounds : [];
  const name = r1r2 === undefined ? "R2" : "R1+R2";
  return lineUp({
    kind: "circuit-readings",
    path,
    title: `Circuit ${designation}: no continuity`,
    formula: `${name} < the end of the range`,
    innocentCauses: ["the far end was not linked", "a switch or an isolator on the way was open"],
    soundLog: LOG_SOUND,
    suspects: suspectsOf(r1r2, readings.zs, r2),
    nexts: {
      r2: "read R2 by itself with a long lead to the furthest point",
      line: "with the circuit isolated, join line and neutral at the furthest point, read R1+Rn at the board and take the link off",
    },
    readings: [shownOpen(name, shown)],
    grounds: [shown, ...seen],
  });
}

/** Circuits of which a conductor reads as not connected through: radials, and rings at one point. */
export function noContinuityMisfits(installation: Installation): readonly Misfit[] {
  return installation.boards.flatMap(({ circuits }) =>
    circuits.flatMap((circuit) => misfitOf(circuit, installation) ?? []),
  );
}
