import { electrode } from "@good-grounds/computations";
import {
  type Evidence,
  isKnown,
  isKnownFact,
  notKnown,
  type Reckoner,
  TERM,
  type TrendPoint,
} from "@good-grounds/core";
import type { Circuit, Installation } from "@good-grounds/inspection";
import { standardOf } from "@good-grounds/measurement";
import { permittedInsulation, permittedTouchVoltage } from "@good-grounds/tables";
import { INSULATION_MOVES, type Job } from "../readings/circuit.ts";
import { ELECTRODE_MOVES } from "../readings/supply.ts";
import type { Series } from "./trend.ts";

/** An inspection and the circuit in it that is the same as the present one. */
export interface Earlier {
  readonly job: Job;
  readonly circuit: Circuit;
}

/** The insulation resistances of a circuit over the years; `all` oldest first, the present one last. */
export function insulationSeries(circuit: Circuit, all: readonly Earlier[]): readonly Series[] {
  return (["insulationLiveLive", "insulationLiveEarth"] as const).map((reading) => ({
    path: circuit.path,
    reading,
    term: TERM.insulation,
    limit: permittedInsulation("up to 500 V"),
    worse: "falling",
    points: all.flatMap(({ job, circuit: one }) =>
      sameVoltage(one, circuit) ? pointOf(one.readings[reading], job, INSULATION_MOVES) : [],
    ),
  }));
}

/** The resistance of the electrode over the years. */
export function electrodeSeries(all: readonly Job[], reckon: Reckoner): readonly Series[] {
  const now = all.at(-1)?.installation;
  if (now === undefined) return [];
  const readings = all.map(({ installation }) => installation.supply.ra);
  if (!readings.some(isKnown)) return [];
  return [
    {
      path: now.supply.path,
      reading: "ra",
      term: TERM.measuredRa,
      limit: permittedRa(now, reckon),
      worse: "rising",
      points: all.flatMap((job) => pointOf(job.installation.supply.ra, job, ELECTRODE_MOVES)),
    },
  ];
}

/** 50 V over the largest residual operating current that has to disconnect, as the check of the electrode has it. */
function permittedRa(installation: Installation, reckon: Reckoner): Evidence<"ohm"> {
  const given = electrode.gather(installation, installation);
  const residual = "residual" in given ? given.residual : notKnown(TERM.residualOperatingCurrent, ["boards"]);
  return reckon.quotient(TERM.permittedRa, permittedTouchVoltage, residual);
}

function sameVoltage({ readings: a }: Circuit, { readings: b }: Circuit): boolean {
  const [u, v] = [a.insulationVoltage, b.insulationVoltage];
  return !isKnownFact(u) || !isKnownFact(v) || u.word === v.word;
}

function pointOf(
  reading: Evidence<"ohm">,
  { doubt, installation }: Job,
  surroundings: number,
): readonly (TrendPoint & { readonly deviation: number })[] {
  if (reading.kind !== "measured" || !(reading.value > 0)) return [];
  const { text, bound } = reading.detail;
  const deviation = Math.hypot(standardOf(doubt.of(reading)) / reading.value, surroundings);
  return [{ on: installation.inspectedOn, value: reading.value, text, bound, deviation }];
}
