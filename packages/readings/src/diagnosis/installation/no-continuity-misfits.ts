import { type Evidence, isKnownFact, type Measured, type Misfit, type Unit } from "@good-grounds/core";
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

function misfitOf(circuit: Circuit, installation: Installation): Misfit | undefined {
  const { readings, shape, path, designation } = circuit;
  if (isKnownFact(shape) && shape.word === "ring") return undefined;
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
    readings: [
      {
        name,
        path: shown.detail.path,
        unit: shown.term.unit,
        shown: shown.detail.text,
        measured: shown.value,
        value: 0,
        low: 0,
        high: 0,
      },
    ],
    grounds: [shown, ...seen],
  });
}

/** Radial circuits whose protective conductor, or line, reads as not connected through. */
export function noContinuityMisfits(installation: Installation): readonly Misfit[] {
  return installation.boards.flatMap(({ circuits }) =>
    circuits.flatMap((circuit) => misfitOf(circuit, installation) ?? []),
  );
}
