import {
  type AgainstEarlier,
  type CircuitAt,
  type MatchedCircuits,
  Reckoner,
  type ThenAndNow,
  type Trend,
} from "@good-grounds/core";
import type { Circuit, Installation } from "@good-grounds/inspection";
import type { DatedInstallation } from "./dated.ts";
import { type Divided, type Matching, matchCircuits } from "./match/match.ts";
import { differenceOf, LEVEL } from "./readings/change.ts";
import { circuitChanges, isAbsent, type Job } from "./readings/circuit.ts";
import { JobDoubt } from "./readings/doubt.ts";
import { asRead } from "./readings/normalise.ts";
import { supplyChanges } from "./readings/supply.ts";
import { electrodeSeries, insulationSeries } from "./trend/series.ts";
import { ASSURANCE, trendOf } from "./trend/trend.ts";

export interface ThenAndNowOptions {
  /** A change is called one where chance alone gives as much less often than this. */
  readonly level?: number;
}

/**
 * Holds an inspection against earlier ones of the same installation: which circuits are the same, which readings have
 * changed by more than repeating the test may give, and where insulation and electrode lead until the next inspection.
 * Earlier ones in any order. Throws RangeError where one is not earlier.
 */
export function thenAndNow(
  now: DatedInstallation,
  earlier: readonly DatedInstallation[],
  { level = LEVEL }: ThenAndNowOptions = {},
): ThenAndNow {
  const reckon = new Reckoner(true);
  const today = now.inspectedOn;
  if (earlier.some(({ inspectedOn }) => inspectedOn >= today))
    throw new RangeError("an earlier inspection has to be earlier");
  const ordered = [...earlier].sort((a, b) => order(a.inspectedOn, b.inspectedOn) || order(a.id ?? "", b.id ?? ""));
  const present: Job = { installation: now, doubt: new JobDoubt(now, "now") };
  const before = ordered.map((installation, i) => ({
    job: { installation, doubt: new JobDoubt(installation, String(i)) },
    matching: matchCircuits(installation, now),
  }));
  const nextOn = now.nextInspectionBy ?? null;
  return {
    level,
    assurance: ASSURANCE,
    nextOn,
    earlier: before.map(({ job, matching }) => against(job, present, matching, level, reckon)),
    trends: trendsOf(present, before, nextOn, reckon),
  };
}

function against(past: Job, now: Job, matching: Matching, level: number, reckon: Reckoner): AgainstEarlier {
  const jobs = { past, now, boards: matching.boards };
  const { id, inspectedOn } = past.installation;
  const position = new Map(now.installation.circuits.map((circuit, i) => [circuit, i]));
  const same = matching.pairs.map(
    ({ past: a, now: b, confidence, because }): MatchedCircuits => ({
      kind: "same",
      past: [at(a)],
      now: [at(b)],
      confidence,
      because,
      readings: circuitChanges(a, b, jobs, level, reckon),
    }),
  );
  const inOrder = matching.pairs.map((pair, i) => [position.get(pair.now) ?? 0, same[i] as MatchedCircuits] as const);
  return {
    id: id ?? "",
    inspectedOn,
    otherAddress: addressOf(past.installation) !== addressOf(now.installation),
    byNameOnly: matching.byNameOnly,
    circuits: [
      ...inOrder.sort(([a], [b]) => a - b).map(([, one]) => one),
      ...matching.splits.map((one) => divided("split", one)),
      ...matching.merges.map((one) => divided("merged", one)),
    ],
    unsettled: matching.unsettled.map((group) => ({ past: group.past.map(at), now: group.now.map(at) })),
    onlyThen: matching.onlyThen.map(at),
    onlyNow: matching.onlyNow.map(at),
    supply: supplyChanges(past, now, level, reckon),
    boards: [...matching.boards].map(([a, b]) => ({
      path: b.path,
      past: a.name,
      now: b.name,
      readings:
        isAbsent(a.zdb) && isAbsent(b.zdb)
          ? []
          : [differenceOf({ reading: "zdb", about: "" }, asRead(a.zdb, past.doubt), asRead(b.zdb, now.doubt), level)],
    })),
  };
}

function divided(kind: "split" | "merged", { whole, pieces, confidence, because }: Divided): MatchedCircuits {
  const [one, many] = [[at(whole)], pieces.map(at)];
  const sides = kind === "split" ? { past: one, now: many } : { past: many, now: one };
  return { kind, ...sides, confidence, because, readings: [] };
}

function trendsOf(
  present: Job,
  before: readonly { readonly job: Job; readonly matching: Matching }[],
  nextOn: string | null,
  reckon: Reckoner,
): readonly Trend[] {
  const today = present.installation.inspectedOn;
  const partners = before.map(({ matching }) => new Map(matching.pairs.map(({ past, now }) => [now, past])));
  const ofCircuits = present.installation.circuits.flatMap((circuit) => {
    const all = before.flatMap(({ job }, i) => {
      const partner = partners[i]?.get(circuit);
      return partner === undefined ? [] : [{ job, circuit: partner }];
    });
    return insulationSeries(circuit, [...all, { job: present, circuit }]);
  });
  const ofSupply = electrodeSeries([...before.map(({ job }) => job), present], reckon);
  return [...ofSupply, ...ofCircuits].flatMap((series) => trendOf(series, today, nextOn) ?? []);
}

function at({ path, board, id, designation, description }: Circuit): CircuitAt {
  return { path, board: board.name, id, designation, description };
}

function addressOf({ address }: Installation): string {
  return address
    .join(" ")
    .toLowerCase()
    .replaceAll(/[^\p{L}\p{N}]+/gu, " ")
    .trim();
}

function order(a: string, b: string): number {
  return a < b ? -1 : a > b ? 1 : 0;
}
