import type { Finding, OpenPoint, Path, Weighing } from "@good-grounds/core";
import type { Installation } from "@good-grounds/inspection";
import type { MisfitPoint } from "./misfits.ts";
import { isNotHeld } from "./not-held.ts";
import { followFrom } from "./same-cause.ts";

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

/** Open findings, and the points of readings that do not agree, with what is not met for the same cause. */
export interface Unanswered {
  readonly findings: readonly OpenPoint[];
  readonly misfits: readonly OpenPoint[];
}

/**
 * Findings of which no observation speaks, a point for each check; with an RCD or an electrode that fails stands what fails
 * for it, and with readings that do not agree the checks that say the same of them.
 */
export function unanswered(
  { supply, boards, circuits }: Weighing,
  installation: Installation,
  answered: ReadonlySet<Finding>,
  misfits: readonly MisfitPoint[],
): Unanswered {
  const open = new Map<Finding, Kind>();
  for (const finding of [...supply, ...boards.flat(), ...circuits.flat()]) {
    const kind = answered.has(finding) ? undefined : kindOf(finding, installation);
    if (kind !== undefined) open.set(finding, kind);
  }
  const take = (findings: readonly Finding[]) => {
    const taken = findings.flatMap((finding) => {
      const kind = open.get(finding);
      return kind === undefined ? [] : [[finding, kind] as const];
    });
    for (const [finding] of taken) open.delete(finding);
    return taken;
  };
  const misfitPoints = misfits.map(({ point, checks }) => {
    const at = new Set(point.places.map((path) => path.join("/")));
    return withFollow(
      point,
      take([...open.keys()].filter((one) => checks.includes(one.check) && at.has(one.path.join("/")))),
    );
  });
  const causes = [...open].filter(([{ check }]) => check === "rcd-time" || check === "electrode");
  const follow = new Map<string, (readonly [Finding, Kind])[]>();
  for (const [cause, kind] of causes) {
    const key = `${kind} ${cause.check}`;
    const found = followFrom(cause, [...open.keys()], installation).filter((one) => one !== cause);
    if (kind === "not-met") follow.set(key, [...(follow.get(key) ?? []), ...take(found)]);
  }
  const points = byCheck([...open]).map((point) => withFollow(point, follow.get(`${point.kind} ${point.check}`) ?? []));
  return { findings: points, misfits: misfitPoints };
}

function kindOf(finding: Finding, installation: Installation): Kind | undefined {
  const { check, judgement } = finding;
  if (judgement.verdict === "not-met") return "not-met";
  if (judgement.verdict === "too-near" && judgement.asRead === "not-met" && OF_A_READING.has(check))
    return "past-limit";
  return isNotHeld(finding, installation) ? "not-known" : undefined;
}

type OfACheck = OpenPoint & { readonly kind: Kind };

function byCheck(findings: readonly (readonly [Finding, Kind])[]): readonly OfACheck[] {
  return KINDS.flatMap((kind) => {
    const places = new Map<string, Path[]>();
    for (const [{ check, path }, one] of findings)
      if (one === kind) places.set(check, [...(places.get(check) ?? []), path]);
    return [...places].map(([check, at]) => ({ kind, check, places: at }));
  });
}

function withFollow<P extends OpenPoint>(point: P, findings: readonly (readonly [Finding, Kind])[]): P {
  return findings.length === 0 ? point : { ...point, follow: [...(point.follow ?? []), ...byCheck(findings)] };
}
