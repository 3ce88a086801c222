import type { Finding, OpenPoint, Path, Weighing } from "@good-grounds/core";
import type { Installation } from "@good-grounds/inspection";
import type { MisfitPoint } from "./misfits.ts";
import { isNotHeld } from "./not-held.ts";
import type { OpenedSubject } from "./opened/opened-subjects.ts";
import { byCause, followFrom, isCause } from "./same-cause.ts";

/**
 * Checks that hold one reading against its limit. A reading past the limit is a point although the instrument cannot
 * tell: nobody passes a reading that does not meet its limit without a word. Elsewhere "too near" comes from figures
 * that are known only as a range, and is told beside the outcome.
 */
const OF_A_READING: ReadonlySet<string> = new Set([
  "maximum-zs",
  "insulation-resistance",
  "rcd-time",
  "electrode",
  "bonding-continuity",
]);

/** How a finding stands open. */
const KINDS = ["not-met", "past-limit", "not-known"] as const;
type Kind = (typeof KINDS)[number];

/** What is open of an inspection besides what was not done. */
export interface Unspoken {
  readonly answered: ReadonlySet<Finding>;
  readonly opened: readonly OpenedSubject[];
  readonly misfits: readonly MisfitPoint[];
}

/** An open point with the findings it tells of. */
interface Told {
  readonly point: OpenPoint;
  readonly findings: readonly Finding[];
}

/**
 * Findings of which no observation speaks, subjects that open by themselves and readings that do not agree. A finding is
 * told once: in the subject that it opens, in the readings that make it, or in the point of its check. What is as it is
 * because an RCD or an electrode fails stands with that.
 */
export function unanswered(weighing: Weighing, installation: Installation, unspoken: Unspoken): readonly OpenPoint[] {
  const all = [...weighing.supply, ...weighing.boards.flat(), ...weighing.circuits.flat()];
  const open = new Map<Finding, Kind>();
  for (const finding of all) {
    const kind = unspoken.answered.has(finding) ? undefined : kindOf(finding, installation);
    if (kind !== undefined) open.set(finding, kind);
  }
  const causes = causesOf([...open.keys()].filter(isCause), all, installation);
  const told = tell(open, unspoken, causes);
  // What follows from a cause goes to the point that tells of the cause.
  const follow = new Map<Told, OpenPoint[]>();
  for (const one of told) {
    const cause = causeOfAll(one.findings, causes);
    const teller =
      cause === undefined ? undefined : told.find((other) => other !== one && other.findings.includes(cause));
    if (teller !== undefined) follow.set(teller, [...(follow.get(teller) ?? []), one.point]);
  }
  const followers = new Set([...follow.values()].flat());
  return told
    .filter(({ point }) => !followers.has(point))
    .map((one) => {
      const more = [...(one.point.follow ?? []), ...(follow.get(one) ?? [])];
      return more.length === 0 ? one.point : { ...one.point, follow: more };
    });
}

/** The open cause of each finding that is as it is because of one; a cause that has a cause of its own hands it on. */
function causesOf(
  open: readonly Finding[],
  all: readonly Finding[],
  installation: Installation,
): ReadonlyMap<Finding, Finding> {
  const causes = new Map<Finding, Finding>();
  for (const cause of [...open].sort(byCause))
    for (const finding of followFrom(cause, all, installation))
      if (finding !== cause && !causes.has(finding)) causes.set(finding, causes.get(cause) ?? cause);
  return causes;
}

function causeOfAll(findings: readonly Finding[], causes: ReadonlyMap<Finding, Finding>): Finding | undefined {
  const [first, ...others] = findings.map((finding) => causes.get(finding));
  return first !== undefined && others.every((other) => other?.check === first.check) ? first : undefined;
}

/** Every open point with what it tells of. */
function tell(
  open: ReadonlyMap<Finding, Kind>,
  { opened, misfits }: Unspoken,
  causes: ReadonlyMap<Finding, Finding>,
): readonly Told[] {
  const left = new Map(open);
  const take = (findings: readonly Finding[]) => findings.filter((finding) => left.delete(finding));
  const subjects = grouped(opened, ({ topic, possible, findings }) => {
    const cause = causeOfAll(findings, causes)?.check ?? "";
    return `${topic.id} ${possible.join(" ")} ${cause}`;
  }).map((group): Told => {
    const [{ topic, possible }] = group;
    const places = group.map(({ path }) => path);
    const findings = group.flatMap((one) => one.findings);
    take(findings);
    return { point: { kind: "opened", topic: topic.id, title: topic.title, possible, places }, findings };
  });
  const readings = misfits.map(({ point, checks }): Told => {
    const at = new Set(point.places.map((path) => path.join("/")));
    const same = take([...left.keys()].filter(({ check, path }) => checks.includes(check) && at.has(path.join("/"))));
    const follow = byCheck(same, open).map((one) => one.point);
    return { point: follow.length === 0 ? point : { ...point, follow }, findings: [] };
  });
  const caused = [...left.keys()].filter((finding) => causes.has(finding));
  const others = [...left.keys()].filter((finding) => !causes.has(finding));
  return [...subjects, ...byCheck(others, open), ...byCheck(caused, open), ...readings];
}

function kindOf(finding: Finding, installation: Installation): Kind | undefined {
  const { check, judgement } = finding;
  if (judgement.verdict === "not-met") return "not-met";
  if (judgement.verdict === "too-near" && judgement.asRead === "not-met" && OF_A_READING.has(check))
    return "past-limit";
  return isNotHeld(finding, installation) ? "not-known" : undefined;
}

/** A point for each check and each way in which it stands open. */
function byCheck(findings: readonly Finding[], kinds: ReadonlyMap<Finding, Kind>): readonly Told[] {
  return KINDS.flatMap((kind) =>
    grouped(
      findings.filter((one) => kinds.get(one) === kind),
      ({ check }) => check,
    ).map((group): Told => {
      const [{ check }] = group;
      const places: readonly Path[] = group.map(({ path }) => path);
      return { point: { kind, check, places }, findings: group };
    }),
  );
}

/** Entries of one key together, in the order of the first of each. */
function grouped<T>(entries: readonly T[], keyOf: (entry: T) => string): readonly (readonly [T, ...T[]])[] {
  const groups = new Map<string, [T, ...T[]]>();
  for (const entry of entries) {
    const key = keyOf(entry);
    const group = groups.get(key);
    if (group === undefined) groups.set(key, [entry]);
    else group.push(entry);
  }
  return [...groups.values()];
}
