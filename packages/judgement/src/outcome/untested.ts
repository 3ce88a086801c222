import {
  ESSENTIAL_TESTS,
  type EssentialTest,
  type Evidence,
  type Fact,
  type OpenPoint,
  type Path,
  type Unit,
  type Weighing,
} from "@good-grounds/core";
import type { Circuit, Installation, ResidualDevice } from "@good-grounds/inspection";
import { rcdsOf } from "./rcds-of.ts";
import { isWrittenReason } from "./written-reason.ts";

type Leaf = Evidence<Unit> | Fact<string | boolean>;

/** One essential test at one place, and the records any of which answers it. */
interface Asked {
  readonly test: EssentialTest;
  readonly place: Path;
  readonly records: readonly Leaf[];
  /** Protection leans on it and nothing else shows it: a limitation is no answer. */
  readonly isLeanedOn?: boolean;
}

/** Tests that take a reading; a tick for polarity or for an RCD that is there measures nothing. */
const MEASURED: ReadonlySet<EssentialTest> = new Set(["continuity", "insulation", "zs", "rcd-time", "ze"]);

/**
 * Essential tests that were neither recorded nor limited with a written reason. Tests that lack at the very same places
 * are one point; where no circuit has a single reading recorded, limited or not, that is the point and nothing else is
 * said of the circuits. The time of an RCD that alone could disconnect a circuit is not answered by a limitation: without
 * it nothing shows that the circuit is protected.
 */
export function untested(installation: Installation, weighing: Weighing): readonly OpenPoint[] {
  const ofCircuits = installation.circuits.flatMap((circuit) => askedOfCircuit(circuit, installation));
  const leanedOn = devicesLeanedOn(installation, weighing);
  const others = [
    ...askedOfSupply(installation),
    ...rcdsOf(installation).map((device) => askedOfDevice(device, leanedOn.has(device))),
  ];
  const isReading = ({ test, records }: Asked) => MEASURED.has(test) && records.some(isRecorded);
  const isNothing = !ofCircuits.some(isReading);
  const isNothingAtAll = isNothing && !others.some(isReading);
  return [
    ...(isNothing ? [{ kind: "nothing-tested", places: installation.boards.map(({ path }) => path) } as const] : []),
    ...(isNothingAtAll ? [] : grouped(others)),
    ...(isNothing ? [] : grouped(ofCircuits)),
  ];
}

function askedOfSupply({ supply }: Installation): readonly Asked[] {
  const at = (test: EssentialTest, ...records: readonly Leaf[]): Asked => ({ test, place: supply.path, records });
  return [at("ze", supply.ze, supply.ra), at("supply-polarity", supply.polarity)];
}

function askedOfCircuit(
  { path, board, readings, residual, id }: Circuit,
  installation: Installation,
): readonly Asked[] {
  const at = (test: EssentialTest, ...records: readonly Leaf[]): Asked => ({ test, place: path, records });
  const { r1r2, r2Only, r2, crossLineCpc, zs, polarity, insulationLiveEarth } = readings;
  // The loop at the board a circuit feeds is the loop at its far end.
  const fed = installation.boards.filter(({ feeder }) => feeder?.id === id && feeder.board.id === board.id);
  return [
    at("continuity", r1r2, r2Only, r2, ...crossLineCpc.map(({ reading }) => reading)),
    at("insulation", insulationLiveEarth, board.insulationLiveEarth),
    at("polarity", polarity),
    at("zs", zs, ...fed.map(({ zdb }) => zdb)),
    at("rcd-present", residual.present),
  ];
}

function askedOfDevice({ path, timeAtRated }: ResidualDevice, isLeanedOn: boolean): Asked {
  return { test: "rcd-time", place: path, records: [timeAtRated], isLeanedOn };
}

/** RCDs before a circuit of which it is not known whether anything disconnects it. */
function devicesLeanedOn({ circuits }: Installation, weighing: Weighing): ReadonlySet<ResidualDevice> {
  const found = new Set<ResidualDevice>();
  for (const [i, circuit] of circuits.entries()) {
    const disconnects = weighing.circuits[i]?.find(({ check }) => check === "maximum-zs")?.judgement.verdict;
    if (disconnects !== "not-known") continue;
    for (let at: Circuit | undefined = circuit; at !== undefined; at = at.board.feeder)
      for (const device of at.residual.devices) found.add(device);
  }
  return found;
}

function grouped(asked: readonly Asked[]): readonly OpenPoint[] {
  const points = new Map<string, { readonly tests: EssentialTest[]; readonly places: readonly Path[] }>();
  for (const test of ESSENTIAL_TESTS) {
    const places = asked
      .filter(
        (one) =>
          one.test === test &&
          !one.records.some((leaf) => isRecorded(leaf) || (one.isLeanedOn !== true && isLimited(leaf))),
      )
      .map(({ place }) => place);
    if (places.length === 0) continue;
    const key = JSON.stringify(places);
    const same = points.get(key);
    if (same === undefined) points.set(key, { tests: [test], places });
    else same.tests.push(test);
  }
  return [...points.values()].map((point) => ({ kind: "not-tested", ...point }));
}

function isRecorded({ kind }: Leaf): boolean {
  return kind !== "not-known" && kind !== "fact-not-known" && kind !== "lacking";
}

/** Left out for a reason that is written down: "not verified" only says that nobody did. */
function isLimited(leaf: Leaf): boolean {
  if (leaf.kind !== "not-known" && leaf.kind !== "fact-not-known") return false;
  const { silence, reason } = leaf.detail;
  return (silence === "limited" || silence === "not-applicable") && isWrittenReason(reason);
}
